package dev.warmlane.report.chart;

import dev.warmlane.heater.Heater;
import dev.warmlane.report.Numbers;
import dev.warmlane.report.Subject;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.Arrays;
import java.util.stream.DoubleStream;

/** Water temperature through the season: every day's range and mean with the collectors, its mean without them. */
final class SeasonTemperatureChart {

    static final String RANGE = "lowest to highest hour of the day";
    static final String WITH = "with collectors";
    static final String WITHOUT = "without collectors";

    private static final int STEPS = 10;

    private SeasonTemperatureChart() {}

    static Chart of(String name, Subject subject) {
        UnitSystem units = subject.units();
        SeasonLedger ledger = subject.forecast().with();
        SeasonAxis axis = new SeasonAxis(ledger);
        WaterCurve with = WaterCurve.of(ledger, axis, units);
        WaterCurve without = WaterCurve.of(subject.forecast().without(), axis, units);
        LinePlot plot = plot(axis, subject, levels(subject), with.lowest(), with.highest(), without.mean());
        boolean collectors = !subject.installation().arrays().isEmpty();
        plot.band(RANGE, with.x(), with.lowest(), with.highest(), Palette.faint(Palette.SKY_BLUE, 0.45));
        levels(plot, subject);
        if (collectors) {
            plot.line(WITHOUT, without.x(), without.mean(), Palette.VERMILLION, Pen.DASHED);
        }
        plot.line(collectors ? WITH : "daily mean", with.x(), with.mean(), Palette.BLUE, Pen.THICK);
        return new Chart(
                name, "How warm is the pool, day by day?", subject.settings().title(), plot);
    }

    /** An empty plot along the season whose scale holds some curves. */
    static LinePlot plot(SeasonAxis axis, Subject subject, double[]... held) {
        double lowest =
                Arrays.stream(held).flatMapToDouble(Arrays::stream).min().orElse(0);
        double highest =
                Arrays.stream(held).flatMapToDouble(Arrays::stream).max().orElse(0);
        String unit = Measure.TEMPERATURE.unit(subject.units());
        return new LinePlot(
                "", axis.scale(), axis::label, "water temperature, " + unit, Scale.holding(lowest, highest, STEPS));
    }

    /** The comfort temperature and, where there is a heater, what it is set to. */
    static double[] levels(Subject subject) {
        Installation built = subject.installation();
        return DoubleStream.concat(
                        DoubleStream.of(built.comfortC()),
                        built.heater().stream().mapToDouble(Heater::setPointC))
                .map(celsius -> Measure.TEMPERATURE.in(subject.units(), celsius))
                .toArray();
    }

    /** Draws the levels; two that are the same as one, since one would lie on the other. */
    static void levels(LinePlot plot, Subject subject) {
        Numbers numbers = subject.numbers();
        double[] levels = levels(subject);
        String comfort =
                numbers.show(Measure.TEMPERATURE, subject.installation().comfortC());
        String set = subject.installation()
                .heater()
                .map(heater -> numbers.show(Measure.TEMPERATURE, heater.setPointC()))
                .orElse("");
        if (!set.isEmpty()) {
            String both = set.equals(comfort) ? "comfort, and " : "";
            plot.level(both + "heater set to " + set, levels[1], Palette.INK, Pen.DASH_DOT);
        }
        if (!set.equals(comfort)) {
            plot.level("comfort, " + comfort, levels[0], Palette.GREEN, Pen.DOTTED);
        }
    }
}
