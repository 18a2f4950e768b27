package dev.warmlane.study;

import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.circuit.PumpChoice;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Period;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.PoolSummary;
import dev.warmlane.season.Prices;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonSimulator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * One installation with more and less flow through its collectors, each driven by a pump of the same efficiency that is
 * chosen for it: a faster flow takes up more heat and costs more electricity. All arrays change in proportion. Where prices
 * are known the flow of the highest net gain is looked for: a season at the top of the parabola through the best of the
 * flows tried and its neighbours, over the logarithm of the flow, is simulated too.
 *
 * @param choices the flows from small to large
 * @param prices what energy costs, where it is known
 */
public record FlowStudy(List<Choice> choices, Optional<Prices> prices) {

    /** Flows over that described; own choice. */
    private static final double[] OVER_DESCRIBED = {0.3, 0.45, 0.65, 0.8, 1, 1.25, 1.6, 2.2};

    /** A flow closer to one that was tried than this share is the same. */
    private static final double SAME = 0.03;

    /** A net gain that is lower by less than this share of the highest is as good as it; own choice. */
    private static final double AS_GOOD = 0.01;

    /** Keeps its own copy of the list. */
    public FlowStudy {
        choices = List.copyOf(choices);
    }

    /**
     * A flow.
     *
     * @param overDescribed flow over that of the installation as described
     * @param circuit its water
     * @param season its season
     */
    public record Choice(double overDescribed, WaterCircuit circuit, PeriodSummary season) {

        /** Flow for each m² of collector, the mean over the arrays, kg/s m². */
        public double flowKgSM2() {
            Installation built = circuit.installation();
            return built.arrays().stream()
                            .mapToDouble(array -> array.areaM2() * array.flowKgSM2())
                            .sum()
                    / built.collectorAreaM2();
        }

        /** What is saved of the heater's energy less what the pump's electricity costs, in the currency of the prices. */
        public double netGain(Prices prices) {
            return season.gas().replacedKwh() * prices.gasPerKwh()
                    - season.pump().electricityKwh() * prices.electricityPerKwh();
        }
    }

    /**
     * Simulates the flows.
     *
     * @param forecast the season as described
     * @param forcing of the same weather
     * @param runs how to run
     * @return nothing where the circuit is not described
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public static Optional<FlowStudy> of(SeasonForecast forecast, SharedForcing forcing, Runs runs) {
        Installation built = forecast.installation();
        if (built.hydraulics().isEmpty() || built.arrays().isEmpty()) {
            return Optional.empty();
        }
        List<Double> flows = new ArrayList<>();
        for (double over : OVER_DESCRIBED) {
            if (mayFlow(built, over)) {
                flows.add(over);
            }
        }
        List<Choice> tried = new ArrayList<>(runs.map(flows, over -> choice(forecast, forcing, over)));
        built.prices()
                .ifPresent(prices -> top(tried, prices).ifPresent(over -> tried.add(choice(forecast, forcing, over))));
        tried.sort(Comparator.comparingDouble(Choice::overDescribed));
        return Optional.of(new FlowStudy(tried, built.prices()));
    }

    private static boolean mayFlow(Installation built, double over) {
        return built.arrays().stream().allMatch(array -> CollectorArray.FLOW.holds(over * array.flowKgSM2()));
    }

    private static Choice choice(SeasonForecast forecast, SharedForcing forcing, double over) {
        Installation described = forecast.installation();
        Hydraulics told = described.hydraulics().orElseThrow();
        Hydraulics chosen = new Hydraulics(
                told.panel(),
                told.pipe(),
                told.banks(),
                told.lift(),
                new PumpChoice(told.pump().efficiency(), Optional.empty()));
        Installation built = WaterCircuit.applied(described.toBuilder()
                .hydraulics(chosen)
                .arrays(described.arrays().stream()
                        .map(array -> array.withFlowKgSM2(over * array.flowKgSM2()))
                        .toList())
                .build());
        SeasonForcing prepared = forcing.of(built);
        SeasonForecast season = new SeasonForecast(
                SeasonSimulator.simulate(built, prepared), forecast.without(), prepared, forcing.weather());
        Period whole = Periods.season(season.with());
        return new Choice(
                over,
                WaterCircuit.of(built).orElseThrow(),
                PeriodSummary.of(season, whole, PoolSummary.of(forecast.without(), whole)));
    }

    /** Where the parabola through the best and its neighbours is highest; nothing at an end, or where it was tried. */
    private static Optional<Double> top(List<Choice> tried, Prices prices) {
        int best = best(tried, prices);
        if (best == 0 || best == tried.size() - 1) {
            return Optional.empty();
        }
        double[] x = new double[3];
        double[] y = new double[3];
        for (int i = 0; i < 3; i++) {
            x[i] = Math.log(tried.get(best - 1 + i).overDescribed);
            y[i] = tried.get(best - 1 + i).netGain(prices);
        }
        double before = (y[1] - y[0]) / (x[1] - x[0]);
        double after = (y[2] - y[1]) / (x[2] - x[1]);
        double bend = (after - before) / (x[2] - x[0]);
        double top = Math.exp((x[0] + x[1]) / 2 - before / (2 * bend));
        boolean known = tried.stream().anyMatch(one -> Math.abs(one.overDescribed / top - 1) < SAME);
        return known || !(bend < 0) ? Optional.empty() : Optional.of(top);
    }

    private static int best(List<Choice> of, Prices prices) {
        int best = 0;
        for (int i = 1; i < of.size(); i++) {
            if (of.get(i).netGain(prices) > of.get(best).netGain(prices)) {
                best = i;
            }
        }
        return best;
    }

    /** The flow of the highest net gain; nothing where no prices are known. */
    public Optional<Choice> best() {
        return prices.map(known -> choices.get(best(choices, known)));
    }

    /** Whether the best is the least or the greatest of the flows tried. */
    public boolean bestIsAtAnEnd() {
        return prices.map(known -> best(choices, known))
                .filter(best -> best == 0 || best == choices.size() - 1)
                .isPresent();
    }

    /** The least of the flows tried whose net gain is as good as the best, within a hundredth, kg/s m². */
    public OptionalDouble asGoodFromKgSM2() {
        return asGood().mapToDouble(Choice::flowKgSM2).min();
    }

    /** The greatest of them. */
    public OptionalDouble asGoodUpToKgSM2() {
        return asGood().mapToDouble(Choice::flowKgSM2).max();
    }

    private Stream<Choice> asGood() {
        return prices.stream().flatMap(known -> {
            double highest = best().orElseThrow().netGain(known);
            return choices.stream().filter(one -> highest - one.netGain(known) <= AS_GOOD * Math.abs(highest));
        });
    }
}
