package dev.warmlane.study;

import dev.warmlane.season.FittedDoubt;
import dev.warmlane.season.OpeningSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.WaterCourse;
import dev.warmlane.units.Estimate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * How far a season's numbers are to be trusted, the same for all of them: the season again with each doubtful input at its
 * two ends, everything else as described, and the deviations put together as {@link Estimate#combined} says. One year's
 * weather is not among the doubts: a typical year says nothing of it.
 *
 * @param likely the season as described
 * @param doubts what each doubtful input alone does to it
 * @param fitted how far wind and sun are known from a log of the water, where they were fitted to one
 */
public record SeasonBand(PeriodSummary likely, List<Sensitivity> doubts, Optional<FittedDoubt> fitted) {

    /**
     * What is varied for every forecast: the inputs that move heat, temperature or fuel most in the examples, and that
     * nobody knows from a drawing; what a fit to a log left is in the place of wind, sun and evaporation where there was
     * one. Of the doubt that all of {@link Parameters#ALL} make together the others make 0.89
     * and more in the examples (measured); a whole {@link SensitivityStudy} takes some three times as long.
     */
    public static final List<Parameter> USUAL = Stream.concat(
                    FittedParameter.ALL.stream(),
                    Stream.of(
                            PoolParameters.WIND,
                            PoolParameters.EVAPORATION,
                            PoolParameters.BASIN,
                            new CoverHoursParameter(),
                            new TerrainParameter(),
                            RoofParameters.PARAPET,
                            CollectorParameters.ROUGHNESS,
                            new TestBackParameter(),
                            PlantParameters.STOP))
            .toList();

    /** Keeps its own copy of the list. */
    public SeasonBand {
        doubts = List.copyOf(doubts);
    }

    /** The band of a forecast over {@link #USUAL}, on all cores. */
    public static SeasonBand of(SeasonForecast forecast) {
        return of(forecast, USUAL, new SharedForcing(forecast.weather()), Runs.onAllCores());
    }

    /**
     * Simulates the season at both ends of each doubtful input.
     *
     * @param forecast the season as described; its forcing is used again
     * @param doubtful what to vary
     * @param forcing of the same weather; shared with other studies of it
     * @param runs how to run
     * @throws IllegalArgumentException if the forcing is of another weather year
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public static SeasonBand of(SeasonForecast forecast, List<Parameter> doubtful, SharedForcing forcing, Runs runs) {
        forcing.hold(forecast.installation(), forecast.forcing());
        return of(
                SensitivityStudy.vary(forecast.installation(), doubtful, forcing, runs),
                forecast.installation().fitted());
    }

    /**
     * The band that all parameters of a sensitivity study make.
     *
     * @param study the study
     * @param fitted what its installation has of it, {@link dev.warmlane.season.Installation#fitted}
     */
    public static SeasonBand of(SensitivityStudy study, Optional<FittedDoubt> fitted) {
        return new SeasonBand(study.described(), study.effects(), fitted);
    }

    /** A number of the season with its doubt. */
    public Estimate of(ToDoubleFunction<PeriodSummary> number) {
        return Estimate.combined(
                number.applyAsDouble(likely),
                doubts.stream().map(doubt -> alone(doubt, number)).toList());
    }

    /**
     * Mean water temperature of some hours with its doubt, °C; the error that a fit left is among its doubts.
     *
     * @param described the season as described
     * @param from first hour, counted from that of the ledger
     * @param to the hour after the last, above {@code from}
     */
    public Estimate waterC(WaterCourse described, int from, int to) {
        return waterC(described.meanC(from, to), to - from, end -> end.water().meanC(from, to));
    }

    /**
     * Water temperature at opening with its doubt, °C, that of the fit among it as for an hour.
     *
     * @param described how the season as described opens
     */
    public Estimate openingC(OpeningSummary described) {
        return waterC(described.waterC(), 1, end -> end.opening().waterC());
    }

    private Estimate waterC(double likelyC, int hours, ToDoubleFunction<Sensitivity.End> waterC) {
        double left = fitted.map(doubt -> doubt.errorOfMeanK(hours)).orElse(0.0);
        return Estimate.combined(
                likelyC,
                Stream.concat(
                                doubts.stream()
                                        .map(doubt -> Estimate.around(
                                                likelyC,
                                                waterC.applyAsDouble(doubt.low()),
                                                waterC.applyAsDouble(doubt.high()))),
                                Stream.of(new Estimate(likelyC - left, likelyC, likelyC + left)))
                        .toList());
    }

    /** The input that leaves a number least certain; nothing where none of them moves it. */
    public Optional<Sensitivity> leastCertain(ToDoubleFunction<PeriodSummary> number) {
        return doubts.stream()
                .filter(doubt -> span(doubt, number) > 0)
                .max(Comparator.comparingDouble(doubt -> span(doubt, number)));
    }

    /** What a number may be for one input's sake. */
    public Estimate alone(Sensitivity doubt, ToDoubleFunction<PeriodSummary> number) {
        return Estimate.around(
                number.applyAsDouble(likely),
                number.applyAsDouble(doubt.low().season()),
                number.applyAsDouble(doubt.high().season()));
    }

    private double span(Sensitivity doubt, ToDoubleFunction<PeriodSummary> number) {
        Estimate alone = alone(doubt, number);
        return alone.high() - alone.low();
    }
}
