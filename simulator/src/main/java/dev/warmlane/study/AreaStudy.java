package dev.warmlane.study;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.season.Installation;
import dev.warmlane.season.NextSquareMetre;
import dev.warmlane.season.Period;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.PoolSummary;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.weather.WeatherYear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One installation with more and less collector area. All its arrays grow and shrink together, keeping their shares; an
 * array made of panels comes in whole panels, so that a design is as near to the area it aims at as its panels allow,
 * and designs that come out the same are kept once. Rows of racks stay as many as they are and get longer or shorter.
 * The flow grows with the area, and the pump's power with the flow (as {@code PumpByFlow} says); everything else stays as it is, the
 * pipes' heat loss too.
 *
 * @param installation the installation it started from
 * @param designs the sizes from small to large
 * @param roofLimitM2 see {@link #roofLimitM2(Installation)}
 */
public record AreaStudy(Installation installation, List<AreaDesign> designs, OptionalDouble roofLimitM2) {

    /** Roof left over that is no more than rounding, m². */
    private static final double ROUNDING_M2 = 1e-6;

    /** Keeps its own copy of the list. */
    public AreaStudy {
        designs = List.copyOf(designs);
    }

    /** The study alone in its weather, on all cores; see {@link #of(Installation, AreaRange, SharedForcing, Runs)}. */
    public static AreaStudy of(Installation installation, WeatherYear weather, AreaRange range) {
        return of(installation, range, new SharedForcing(weather), Runs.onAllCores());
    }

    /**
     * Simulates the season with every area, and with one more beyond the largest for what growing from there is worth.
     *
     * @param installation what is built; its collectors are the pattern
     * @param range the areas
     * @param forcing of the weather; shared with other studies of it
     * @param runs how to run
     * @throws IllegalArgumentException if {@link AreaRange#checkFor} refuses the installation
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public static AreaStudy of(Installation installation, AreaRange range, SharedForcing forcing, Runs runs) {
        range.checkFor(installation);
        Optional<DrawnLimits> drawn = DrawnLimits.of(installation);
        List<Installation> sizes = new AreaSteps(installation, range, drawn).withOneBeyond();
        SeasonForcing prepared = forcing.of(installation);
        SeasonLedger without = SeasonSimulator.simulate(installation.withoutCollectors(), prepared.withoutCollectors());
        Period season = Periods.season(without);
        PoolSummary withoutAny = PoolSummary.of(without, season);
        List<PeriodSummary> seasons = runs.map(sizes, built -> season(built, without, forcing, season, withoutAny));
        List<AreaDesign> designs = new ArrayList<>();
        for (int i = 0; i < sizes.size() - 1; i++) {
            Installation built = sizes.get(i);
            boolean fits = drawn.map(limits -> limits.fits(built)).orElseGet(() -> fitsUsableArea(built));
            designs.add(design(installation, built, fits, seasons.get(i), sizes.get(i + 1), seasons.get(i + 1)));
        }
        return new AreaStudy(installation, designs, noLessThanFits(roofLimitM2(installation, drawn), designs));
    }

    /** What of arrays that share a surface was found to fit, fits, even where a little less did not. */
    private static OptionalDouble noLessThanFits(OptionalDouble limit, List<AreaDesign> designs) {
        if (limit.isEmpty() || !ArrayLayout.share(designs.get(0).built())) {
            return limit;
        }
        return OptionalDouble.of(designs.stream()
                .filter(AreaDesign::fitsRoof)
                .mapToDouble(AreaDesign::areaM2)
                .reduce(limit.getAsDouble(), Math::max));
    }

    /** Of another area the same forcing serves, save where things stand on the roof: each has the shade of its own layout. */
    private static PeriodSummary season(
            Installation built, SeasonLedger without, SharedForcing forcing, Period season, PoolSummary withoutAny) {
        SeasonForcing prepared = forcing.of(built);
        return PeriodSummary.of(
                new SeasonForecast(SeasonSimulator.simulate(built, prepared), without, prepared, forcing.weather()),
                season,
                withoutAny);
    }

    private static AreaDesign design(
            Installation template,
            Installation built,
            boolean fits,
            PeriodSummary season,
            Installation larger,
            PeriodSummary grown) {
        return new AreaDesign(
                built,
                built.arrays().equals(template.arrays()),
                fits,
                season,
                larger,
                NextSquareMetre.between(season, grown, built));
    }

    /**
     * Collector area of all arrays together at which the flat roof's usable area is used up, m²; nothing where none of
     * them is on the flat roof. It compares areas alone: whether rows of that length fit between the roof's edges is for
     * the layout to decide. On a roof that is drawn it is that layout: what fits of the array that has no more room first.
     */
    public static OptionalDouble roofLimitM2(Installation installation) {
        return roofLimitM2(installation, DrawnLimits.of(installation));
    }

    private static OptionalDouble roofLimitM2(Installation installation, Optional<DrawnLimits> drawn) {
        if (drawn.isPresent()) {
            return drawn.get().limitM2(installation);
        }
        double taken = roofTakenM2(installation);
        return taken > 0
                ? OptionalDouble.of(
                        installation.collectorAreaM2() * installation.roof().usableAreaM2() / taken)
                : OptionalDouble.empty();
    }

    private static boolean fitsUsableArea(Installation built) {
        return roofTakenM2(built) <= built.roof().usableAreaM2() + ROUNDING_M2;
    }

    private static double roofTakenM2(Installation built) {
        return built.arrays().stream()
                .mapToDouble(CollectorArray::flatRoofTakenM2)
                .sum();
    }
}
