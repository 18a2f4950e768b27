package dev.warmlane.roof;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.List;
import java.util.function.Function;

/**
 * How panels are made and put together. The same rules hold for mats and for racks.
 *
 * @param widthM width of a panel, across its tubes, m
 * @param lengths how long panels are, along their tubes, without headers
 * @param headerEnds at which ends of a panel its headers are
 * @param headerM what the headers at one end take of the roof beyond the panel, m
 * @param panelsPerBank the most panels side by side on one pair of headers
 * @param walkwayM way that is left free between banks, in both directions, m
 * @param splitsAroundM the widest obstacle, measured across the tubes, that the tubes of a mat are parted around, m; 0
 *     for none. Headers keep clear of it all the same
 */
public record PanelRules(
        double widthM,
        Lengths lengths,
        HeaderEnds headerEnds,
        double headerM,
        int panelsPerBank,
        double walkwayM,
        double splitsAroundM) {

    /** Range of {@link #widthM}. */
    public static final Range WIDTH = Range.of("panel width", Dimension.LENGTH, 0.1, 10);

    /** Range of a length of panels. */
    public static final Range LENGTH = Range.of("panel length", Dimension.LENGTH, 0.3, 60);

    /** Range of {@link #headerM}. */
    public static final Range HEADER = Range.of("room for the headers", Dimension.LENGTH, 0, 2);

    /** Range of {@link #panelsPerBank}. */
    public static final Range PER_BANK = Range.number("panels in a bank", 1, 1000);

    /** Range of {@link #walkwayM}. */
    public static final Range WALKWAY = Range.of("walkway between banks", Dimension.LENGTH, 0, 10);

    /** Range of {@link #splitsAroundM}. */
    public static final Range SPLITS_AROUND = Range.of("obstacle that a panel is split around", Dimension.LENGTH, 0, 2);

    /** Usual {@link #headerM}. */
    public static final Usual USUAL_HEADER = HEADER.usually(0.1, "common practice, no source");

    /** Usual {@link #panelsPerBank}. */
    public static final Usual USUAL_PER_BANK = PER_BANK.usually(10, "common practice, no source");

    /** Usual {@link #walkwayM}. */
    public static final Usual USUAL_WALKWAY = WALKWAY.usually(0.6, "common practice, no source");

    /** Usual {@link #splitsAroundM}. */
    public static final Usual USUAL_SPLITS_AROUND = SPLITS_AROUND.usually(0, "no panel is split");

    /** Checks every range. */
    public PanelRules {
        WIDTH.check(widthM);
        HEADER.check(headerM);
        PER_BANK.check(panelsPerBank);
        WALKWAY.check(walkwayM);
        SPLITS_AROUND.check(splitsAroundM);
    }

    /** Panels of fixed lengths, all else as usual, with headers at both ends. */
    public static PanelRules usual(double widthM, Double... lengthsM) {
        return new PanelRules(
                widthM,
                new Fixed(List.of(lengthsM)),
                HeaderEnds.BOTH,
                USUAL_HEADER.value(),
                (int) USUAL_PER_BANK.value(),
                USUAL_WALKWAY.value(),
                USUAL_SPLITS_AROUND.value());
    }

    /** The same rules for other lengths. */
    PanelRules withLengths(Lengths value) {
        return new PanelRules(widthM, value, headerEnds, headerM, panelsPerBank, walkwayM, splitsAroundM);
    }

    /** Room that the headers take of a panel's direction, m. */
    double headersM() {
        return headerM * (headerEnds == HeaderEnds.BOTH ? 2 : 1);
    }

    /** Room of the headers at the far end, m. */
    double farHeaderM() {
        return headerEnds == HeaderEnds.BOTH ? headerM : 0;
    }

    /** At which ends of a panel its two headers are. */
    public enum HeaderEnds {
        /** Both at the same end. */
        ONE,
        /** One at each end. */
        BOTH
    }

    /** How long panels are. */
    public sealed interface Lengths {

        /** One answer for each kind. */
        <T> T match(Function<Fixed, T> fixed, Function<Cut, T> cut);
    }

    /**
     * Panels that are made in some lengths.
     *
     * @param lengthsM the lengths, m, 1 to 12 of them
     */
    public record Fixed(List<Double> lengthsM) implements Lengths {

        /** The most lengths; own choice. */
        public static final int MOST = 12;

        /** Checks every range and keeps its own copy of the list. */
        public Fixed {
            Range.number("number of panel lengths", 1, MOST).check(lengthsM.size());
            lengthsM.forEach(LENGTH::check);
            lengthsM = lengthsM.stream().distinct().sorted().toList();
        }

        @Override
        public <T> T match(Function<Fixed, T> fixed, Function<Cut, T> cut) {
            return fixed.apply(this);
        }
    }

    /**
     * Panels that are cut to length, in whole centimetres where they fill a depth.
     *
     * @param shortestM the shortest, m
     * @param longestM the longest, m
     */
    public record Cut(double shortestM, double longestM) implements Lengths {

        /** Checks every range. */
        public Cut {
            LENGTH.check(shortestM);
            LENGTH.from(shortestM).check(longestM);
        }

        @Override
        public <T> T match(Function<Fixed, T> fixed, Function<Cut, T> cut) {
            return cut.apply(this);
        }
    }
}
