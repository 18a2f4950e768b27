package dev.warmlane.study;

import dev.warmlane.money.Worth;
import dev.warmlane.season.CollectorsWorth;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.units.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * What the areas of a study are worth over the years, each with its doubt, and which is worth most. Of many areas the doubt
 * is computed for some {@link #MOST_DOUBTED} that lie evenly among them, and for the one that is worth most.
 *
 * @param study the study, of an installation with a heater and known prices
 * @param doubted the designs whose doubt is known, from small to large
 */
public record AreaWorth(AreaStudy study, List<Doubted> doubted) {

    /** The most designs whose doubt is computed beside that of the best: it takes some 17 seasons each. */
    public static final int MOST_DOUBTED = 16;

    /** A net present value that is lower by less than this share of the highest is as good as it; own choice. */
    public static final double AS_GOOD = 0.05;

    /** Keeps its own copy of the list. */
    public AreaWorth {
        doubted = List.copyOf(doubted);
    }

    /**
     * A design with what is uncertain of its season.
     *
     * @param design the design
     * @param band its season's doubt
     */
    public record Doubted(AreaDesign design, SeasonBand band) {

        /** A sum of money that its worth comes to, with its doubt. */
        public Estimate of(ToDoubleFunction<Worth> sum) {
            return band.of(season ->
                    sum.applyAsDouble(CollectorsWorth.of(design.built(), season).orElseThrow()));
        }

        /** Net present value. */
        public Estimate netPresentValue() {
            return of(Worth::netPresentValue);
        }

        private double valueIn(PeriodSummary season) {
            return CollectorsWorth.of(design.built(), season).orElseThrow().netPresentValue();
        }
    }

    /**
     * Simulates the doubt of a study's areas.
     *
     * @param study the study
     * @param bands of the same weather
     * @return nothing where the collectors' price is not known, or no heater is there to save for
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public static Optional<AreaWorth> of(AreaStudy study, SeasonBands bands) {
        List<AreaDesign> designs = study.designs();
        if (designs.stream().anyMatch(design -> design.worth().isEmpty())) {
            return Optional.empty();
        }
        List<Doubted> doubted = new ArrayList<>();
        int step = (designs.size() + MOST_DOUBTED - 1) / MOST_DOUBTED;
        int best = best(designs);
        AreaDesign fits = fitting(designs).orElse(designs.get(best));
        for (int i = 0; i < designs.size(); i++) {
            if (i % step == 0
                    || i == best
                    || i == designs.size() - 1
                    || designs.get(i).equals(fits)
                    || designs.get(i).asDescribed()) {
                doubted.add(new Doubted(designs.get(i), bands.of(designs.get(i).built())));
            }
        }
        return Optional.of(new AreaWorth(study, doubted));
    }

    /** A design with its doubt, where it is known. */
    public Optional<Doubted> of(AreaDesign design) {
        return doubted.stream().filter(one -> one.design.equals(design)).findFirst();
    }

    /** The design of the highest net present value; the smaller of two alike. */
    public Doubted best() {
        AreaDesign best = study.designs().get(best(study.designs()));
        return of(best).orElseThrow();
    }

    /** The best of those that leave room on the roof; nothing where none does. */
    public Optional<Doubted> bestThatFits() {
        return fitting(study.designs()).flatMap(this::of);
    }

    private static Optional<AreaDesign> fitting(List<AreaDesign> designs) {
        List<AreaDesign> fit = designs.stream().filter(AreaDesign::fitsRoof).toList();
        return fit.isEmpty() ? Optional.empty() : Optional.of(fit.get(best(fit)));
    }

    /**
     * The area of the highest net present value, m², and how far each doubtful input alone, at its ends, moves it among the
     * designs whose doubt is known.
     */
    public Estimate bestAreaM2() {
        double likely = best().design.areaM2();
        double[] moved = IntStream.range(0, best().band.doubts().size())
                .mapToObj(i -> best().band.doubts().get(i).name())
                .flatMapToDouble(this::bestAreasM2)
                .toArray();
        return new Estimate(
                Math.min(likely, DoubleStream.of(moved).min().orElse(likely)),
                likely,
                Math.max(likely, DoubleStream.of(moved).max().orElse(likely)));
    }

    /** With one doubtful input at either end. */
    private DoubleStream bestAreasM2(String doubt) {
        return DoubleStream.of(
                bestAreaM2(doubt, sensitivity -> sensitivity.low().season()),
                bestAreaM2(doubt, sensitivity -> sensitivity.high().season()));
    }

    private double bestAreaM2(String doubt, Function<Sensitivity, PeriodSummary> end) {
        double best = Double.NEGATIVE_INFINITY;
        double area = 0;
        for (Doubted one : doubted) {
            PeriodSummary season = one.band.doubts().stream()
                    .filter(sensitivity -> sensitivity.name().equals(doubt))
                    .findFirst()
                    .map(end)
                    .orElse(one.design.season());
            double value = one.valueIn(season);
            if (value > best) {
                best = value;
                area = one.design.areaM2();
            }
        }
        return area;
    }

    /**
     * The areas around the best whose net present value is lower by no more than {@link #AS_GOOD} of it, m²: from, likely and
     * to. Straight between two designs; it ends with the study's own range. Nothing where the best is worth nothing.
     */
    public Optional<Estimate> asGoodM2() {
        List<AreaDesign> designs = study.designs();
        int best = best(designs);
        double highest = value(designs.get(best));
        if (highest <= 0) {
            return Optional.empty();
        }
        double least = highest * (1 - AS_GOOD);
        return Optional.of(
                new Estimate(end(designs, best, -1, least), designs.get(best).areaM2(), end(designs, best, 1, least)));
    }

    private static double end(List<AreaDesign> designs, int best, int step, double least) {
        int last = best;
        while (last + step >= 0 && last + step < designs.size() && value(designs.get(last + step)) >= least) {
            last += step;
        }
        double area = designs.get(last).areaM2();
        if (last + step < 0 || last + step >= designs.size()) {
            return area;
        }
        AreaDesign beyond = designs.get(last + step);
        double share = (value(designs.get(last)) - least) / (value(designs.get(last)) - value(beyond));
        return area + share * (beyond.areaM2() - area);
    }

    private static int best(List<AreaDesign> designs) {
        int best = 0;
        for (int i = 1; i < designs.size(); i++) {
            if (value(designs.get(i)) > value(designs.get(best))) {
                best = i;
            }
        }
        return best;
    }

    private static double value(AreaDesign design) {
        return design.worth().orElseThrow().netPresentValue();
    }
}
