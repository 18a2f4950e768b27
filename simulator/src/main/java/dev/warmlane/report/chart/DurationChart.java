package dev.warmlane.report.chart;

import dev.warmlane.report.Subject;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.site.Schedule;
import dev.warmlane.units.Measure;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/** In how many open hours of the season the water was at least how warm. */
final class DurationChart {

    /** Points of a curve; more cannot be seen. */
    private static final int POINTS = 500;

    private static final int X_STEPS = 8;
    private static final int Y_STEPS = 10;

    private DurationChart() {}

    /** Nothing for a season without open hours. */
    static Optional<Chart> of(String name, Subject subject) {
        double[] with = sorted(subject, subject.forecast().with());
        double[] without = sorted(subject, subject.forecast().without());
        if (with.length == 0) {
            return Optional.empty();
        }
        double comfort =
                Measure.TEMPERATURE.in(subject.units(), subject.installation().comfortC());
        double lowest = Math.min(comfort, Math.min(with[with.length - 1], without[without.length - 1]));
        double highest = Math.max(comfort, Math.max(with[0], without[0]));
        LinePlot plot = new LinePlot(
                "open hours at or above this temperature",
                Scale.holding(0, with.length, X_STEPS),
                Plot.Label.WHOLE,
                "water temperature, " + Measure.TEMPERATURE.unit(subject.units()),
                Scale.holding(lowest, highest, Y_STEPS));
        plot.level(
                "comfort, "
                        + subject.numbers()
                                .show(
                                        Measure.TEMPERATURE,
                                        subject.installation().comfortC()),
                comfort,
                Palette.GREEN,
                Pen.DOTTED);
        boolean collectors = !subject.installation().arrays().isEmpty();
        if (collectors) {
            line(plot, SeasonTemperatureChart.WITHOUT, without, false);
        }
        line(plot, collectors ? SeasonTemperatureChart.WITH : "water", with, true);
        return Optional.of(new Chart(
                name,
                "For how many open hours is the water at least how warm?",
                subject.settings().title(),
                plot));
    }

    private static void line(LinePlot plot, String name, double[] falling, boolean with) {
        int[] ranks = ranks(falling.length);
        plot.line(
                name,
                Arrays.stream(ranks).mapToDouble(rank -> rank + 1.0).toArray(),
                Arrays.stream(ranks).mapToDouble(rank -> falling[rank]).toArray(),
                with ? Palette.BLUE : Palette.VERMILLION,
                with ? Pen.THICK : Pen.DASHED);
    }

    /** Ranks spread evenly over all hours, the first and the last among them. */
    private static int[] ranks(int hours) {
        int points = Math.min(hours, POINTS);
        return IntStream.range(0, points)
                .map(i -> points == 1 ? 0 : (int) Math.round((double) i * (hours - 1) / (points - 1)))
                .toArray();
    }

    /** Water temperatures of the open hours, the warmest first. */
    private static double[] sorted(Subject subject, SeasonLedger ledger) {
        Schedule open = ledger.installation().season().openHours();
        double[] rising = IntStream.range(ledger.opening(), ledger.hours())
                .filter(index -> open.at(ledger.hourOfYear(index)) > 0)
                .mapToDouble(index -> Measure.TEMPERATURE.in(subject.units(), ledger.waterC(index)))
                .sorted()
                .toArray();
        return IntStream.range(0, rising.length)
                .mapToDouble(i -> rising[rising.length - 1 - i])
                .toArray();
    }
}
