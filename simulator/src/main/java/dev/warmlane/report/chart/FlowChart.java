package dev.warmlane.report.chart;

import dev.warmlane.report.Numbers;
import dev.warmlane.season.Prices;
import dev.warmlane.study.FlowStudy;
import dev.warmlane.study.FlowStudy.Choice;
import dev.warmlane.units.Measure;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** What the flow through the collectors gains over what its pump costs. */
public final class FlowChart {

    static final String SAVED = "saved of the heater's energy";
    static final String NET = "net gain, the pump's electricity paid";

    private static final int X_STEPS = 8;
    private static final int Y_STEPS = 7;

    private FlowChart() {}

    /**
     * The chart; nothing where no prices are known.
     *
     * @param name the name of its files
     * @param study the flows
     * @param numbers the units
     */
    public static Optional<Chart> of(String name, FlowStudy study, Numbers numbers) {
        return study.prices()
                .filter(prices -> study.choices().size() > 1)
                .map(prices -> chart(name, study, prices, numbers));
    }

    private static Chart chart(String name, FlowStudy study, Prices prices, Numbers numbers) {
        double[] x = shown(study, one -> Measure.FLOW_PER_AREA.in(numbers.units(), one.flowKgSM2()));
        double[] saved = shown(study, one -> one.season().gas().replacedKwh() * prices.gasPerKwh());
        double[] net = shown(study, one -> one.netGain(prices));
        Choice best = study.best().orElseThrow();
        Scale flows = Scale.withZero(X_STEPS, x);
        LinePlot plot = new LinePlot(
                "flow for each area of collector, " + Measure.FLOW_PER_AREA.unit(numbers.units()),
                flows,
                (at, notation) -> notation.show(at, flows.decimals()),
                prices.currency() + " in the season",
                Scale.withZero(Y_STEPS, saved, net));
        plot.upright(
                "gains most, " + numbers.show(Measure.FLOW_PER_AREA, best.flowKgSM2()),
                Measure.FLOW_PER_AREA.in(numbers.units(), best.flowKgSM2()),
                Palette.GREEN,
                Pen.DOTTED);
        plot.line(SAVED, x, saved, Palette.VERMILLION, Pen.DASHED);
        plot.line(NET, x, net, Palette.BLUE, Pen.THICK);
        return new Chart(
                name,
                "How fast should the water run?",
                best.circuit().installation().name(),
                plot);
    }

    private static double[] shown(FlowStudy study, ToDoubleFunction<Choice> number) {
        return study.choices().stream().mapToDouble(number).toArray();
    }
}
