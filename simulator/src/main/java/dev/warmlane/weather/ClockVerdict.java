package dev.warmlane.weather;

import dev.warmlane.site.Site;
import java.util.List;
import java.util.Optional;

/** What a shift of the whole year against the sun means: labels, the header's UTC offset, or a time that a user gave. */
final class ClockVerdict {

    private static final double LABEL_ERROR_AT_MOST_H = 1.25;
    /** From here on it is an hour and no longer half of one. */
    private static final double LABELS_HALF_AN_HOUR_OFF_H = 0.75;

    private final HourTable table;
    private final boolean insisted;
    private final double common;
    private final Optional<HeaderSlips.Slip> slip;
    private final boolean headerIsWrong;

    /** For a year whose irradiance belongs to a time so many hours later than stated. */
    ClockVerdict(HourTable table, WeatherReadOptions options, double common) {
        this.table = table;
        this.insisted = options.centreHours() != null;
        this.common = common;
        this.slip = HeaderSlips.find(table.site, common);
        this.headerIsWrong = !insisted
                && options.utcOffsetHours() == null
                && table.header.clock() == RawHeader.Clock.LOCAL_STANDARD
                && isOfTheHeader();
    }

    /**
     * Whether a shift of whole or half hours is an error of the header's UTC offset: if the offset that closes is kept
     * somewhere, and is nearer to the one of the longitude than the header's. Half an hour alone is one of the labels, and
     * an hour and a half is one of both.
     */
    private boolean isOfTheHeader() {
        return slip.isPresent()
                && isHalfHours(common)
                && HeaderSlips.isNearer(table.site, slip.get().offset())
                && Math.abs(common)
                        > (slip.get().labelsOffHours() == 0 ? LABELS_HALF_AN_HOUR_OFF_H : LABEL_ERROR_AT_MOST_H);
    }

    /** The site, with the offset that fits where the header's is wrong. */
    Site site() {
        Site s = table.site;
        return headerIsWrong
                ? new Site(
                        s.name(),
                        s.latitudeDeg(),
                        s.longitudeDeg(),
                        s.elevationM(),
                        slip.orElseThrow().offset())
                : s;
    }

    /** The part of the shift that the site's offset takes over, hours. */
    double ofTheHeader() {
        return headerIsWrong ? common - slip.orElseThrow().labelsOffHours() : 0;
    }

    /** Says it in words; refuses a shift that no usual mistake explains. */
    void tell(boolean worse, Findings findings) throws Refusal {
        String sun = table.sourceWord() + "'s sun is " + ClockWords.sunIs(common);
        int line = table.header.siteLine();
        if (common == 0) {
            return;
        }
        if (insisted) {
            String message = "irradiance is taken " + ClockWords.later(common) + " than " + table.sourceWord()
                    + " says, as given";
            if (worse) {
                findings.warning(0, 0, message + ": the sun contradicts");
            } else {
                findings.note(0, 0, message);
            }
        } else if (headerIsWrong) {
            findings.warning(line, 0, wrongOffset());
        } else if (Math.abs(common) > LABEL_ERROR_AT_MOST_H) {
            throw tooFar(line);
        } else if (!table.header.centreKnown()) {
            findings.note(
                    line,
                    0,
                    table.sourceWord() + " does not tell the time of its irradiance: by the sun it is "
                            + ClockWords.later(common) + " than the label; taken so, nothing to do");
        } else if (Math.abs(common) < LABELS_HALF_AN_HOUR_OFF_H && !needsBoth()) {
            findings.repair(
                    0,
                    0,
                    sun + ": corrected" + (moves() ? ", rows are moved by an hour" : "") + "; nothing to do"
                            + slip.filter(s -> isHalfHours(common))
                                    .map(s -> ", unless it is the header's UTC offset that is wrong: "
                                            + ClockWords.utc(s.offset()) + " would fit as well as " + stated())
                                    .orElse(""));
        } else if (needsBoth()) {
            double other = slip.orElseThrow().offset();
            findings.warning(
                    line,
                    0,
                    "the UTC offset in the header is wrong, or the labels are: with " + stated() + " the sun is "
                            + ClockWords.sunIs(common) + ", with " + ClockWords.utc(other)
                            + ", which goes with the longitude, "
                            + ClockWords.sunIs(slip.orElseThrow().labelsOffHours())
                            + ". The sun is corrected either way; if " + ClockWords.utc(other)
                            + " is the clock of the place, " + Advice.utcOffset(table));
        } else {
            findings.warning(
                    0,
                    0,
                    sun + ": the labels are wrong, or the UTC offset in the header is"
                            + slip.map(s -> " and should be " + ClockWords.utc(s.offset()) + " in place of " + stated())
                                    .orElse("")
                            + ". Corrected as an error of the labels"
                            + (moves() ? ": rows are moved by an hour" : "")
                            + "; if the offset is wrong, "
                            + Advice.utcOffset(table));
        }
    }

    private String wrongOffset() {
        HeaderSlips.Slip found = slip.orElseThrow();
        String fits = ClockWords.utc(found.offset());
        List<String> signs = HeaderSlips.lostSigns(table, ClosureCheck.CLOSES_WM2);
        return "the UTC offset in the header is wrong: it says " + stated()
                + ", but irradiance follows the sun with " + fits
                + (found.labelsOffHours() == 0
                        ? ""
                        : ", " + ClockWords.sunIs(found.labelsOffHours()) + " by its labels")
                + "; " + fits + " is used. Correct the header"
                + (signs.isEmpty()
                        ? ""
                        : ", or its " + String.join(" and ", signs) + " if that is where a sign was lost")
                + "; if the offset is right, " + Advice.utcOffset(table);
    }

    private Refusal tooFar(int line) {
        return new Refusal(
                line,
                "",
                "",
                "irradiance that follows the sun only " + ClockWords.later(common),
                "labels within an hour of the sun",
                lostSign(table)
                        + slip.map(s -> "With " + ClockWords.utc(s.offset()) + " in place of " + stated()
                                        + " it would follow: if that is the clock of " + table.sourceWord() + ", "
                                        + Advice.utcOffset(table) + ". ")
                                .orElse("")
                        + "Check longitude and UTC offset; if you know " + table.sourceWord() + " to be right, "
                        + Advice.irradianceTime(table) + ".");
    }

    /** A sentence on what the header would have to say for the year to close; empty where no sign was lost. */
    static String lostSign(HourTable table) {
        List<String> signs = HeaderSlips.lostSigns(table, ClosureCheck.CLOSES_WM2);
        return signs.isEmpty()
                ? ""
                : "It would close with " + String.join(", or with ", signs) + ": the header lost a sign. ";
    }

    /** Whether offset and labels would have to be wrong together. */
    private boolean needsBoth() {
        return slip.isPresent() && slip.get().labelsOffHours() != 0;
    }

    private String stated() {
        return ClockWords.utc(table.site.utcOffsetHours());
    }

    private boolean moves() {
        return RowMoves.wholeHours(table.centreHours + common) != 0;
    }

    static boolean isHalfHours(double shift) {
        return shift * 2 == Math.rint(shift * 2);
    }
}
