package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.season.OpeningSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.WaterCourse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One parameter at a time, everything else as described: what it does to the season. How far each is varied is a
 * judgement that stands beside it; the effects of several at once do not simply add up.
 *
 * @param described the season of the installation as it is
 * @param effects the parameters, the one with the largest effect on the heat delivered first
 * @param skipped the parameters that the installation does not have, in the order they were asked for
 */
public record SensitivityStudy(PeriodSummary described, List<Sensitivity> effects, List<Skipped> skipped) {

    /** Keeps its own copies of the lists. */
    public SensitivityStudy {
        effects = List.copyOf(effects);
        skipped = List.copyOf(skipped);
    }

    /**
     * A parameter that was not varied.
     *
     * @param name the parameter
     * @param why the reason
     */
    public record Skipped(String name, String why) {}

    /**
     * Varies {@link Parameters#ALL}, and wind and sun as they were fitted where they were; see {@link #of(Installation, List,
     * SharedForcing, Runs)}.
     */
    public static SensitivityStudy of(Installation installation, SharedForcing forcing, Runs runs) {
        List<Parameter> parameters = new ArrayList<>(Parameters.ALL);
        if (installation.fitted().isPresent()) {
            parameters.addAll(0, FittedParameter.ALL);
        }
        return of(installation, parameters, forcing, runs);
    }

    /**
     * Simulates the season at both ends of every parameter.
     *
     * @param installation what is built
     * @param parameters what to vary
     * @param forcing of the weather; shared with other studies of it
     * @param runs how to run
     * @throws IllegalArgumentException if the installation has no collectors
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public static SensitivityStudy of(
            Installation installation, List<Parameter> parameters, SharedForcing forcing, Runs runs) {
        if (installation.arrays().isEmpty()) {
            throw new IllegalArgumentException(
                    "a sensitivity study needs collectors, but " + installation.name() + " has none");
        }
        return vary(installation, parameters, forcing, runs);
    }

    /** The same for a pool without collectors too: what is uncertain of its temperature and its fuel. */
    static SensitivityStudy vary(
            Installation installation, List<Parameter> parameters, SharedForcing forcing, Runs runs) {
        List<Skipped> skipped = new ArrayList<>();
        List<Varied> varied = new ArrayList<>();
        List<Installation> installations = new ArrayList<>(List.of(installation));
        for (Parameter parameter : parameters) {
            parameter
                    .in(installation)
                    .match(
                            range -> changesNothing(range)
                                    ? skipped.add(new Skipped(parameter.name(), "it stays the same at both ends"))
                                    : varied.add(new Varied(parameter, range)),
                            notHere -> skipped.add(new Skipped(parameter.name(), notHere.why())));
        }
        for (Varied one : varied) {
            installations.add(one.range.low().installation());
            installations.add(one.range.high().installation());
        }
        List<Ran> seasons = runs.map(installations, built -> Ran.of(built, forcing));
        PeriodSummary described = seasons.get(0).season;
        List<Sensitivity> effects = new ArrayList<>();
        for (int i = 0; i < varied.size(); i++) {
            Variation.Range range = varied.get(i).range;
            effects.add(new Sensitivity(
                    varied.get(i).parameter.name(),
                    varied.get(i).parameter.why(),
                    range.described(),
                    end(range.low(), described, seasons.get(1 + 2 * i)),
                    end(range.high(), described, seasons.get(2 + 2 * i))));
        }
        effects.sort(Comparator.comparingDouble(Sensitivity::effectOnHeatKwh).reversed());
        return new SensitivityStudy(described, effects, skipped);
    }

    private record Varied(Parameter parameter, Variation.Range range) {}

    private static boolean changesNothing(Variation.Range range) {
        return range.low().setting().equals(range.described())
                && range.high().setting().equals(range.described());
    }

    private static Sensitivity.End end(Variation.End end, PeriodSummary described, Ran ran) {
        return new Sensitivity.End(
                end.setting(), ran.season, Sensitivity.Change.of(described, ran.season), ran.water, ran.opening);
    }

    /** A season without its ledger, which would take too much room for so many. */
    private record Ran(PeriodSummary season, WaterCourse water, OpeningSummary opening) {

        static Ran of(Installation built, SharedForcing forcing) {
            SeasonForecast forecast = SeasonForecast.of(built, forcing.ofSeason(built), forcing.weather());
            return new Ran(
                    PeriodSummary.of(forecast, Periods.season(forecast.with())),
                    WaterCourse.of(forecast.with()),
                    forecast.opening());
        }
    }
}
