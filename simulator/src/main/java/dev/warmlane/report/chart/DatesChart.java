package dev.warmlane.report.chart;

import dev.warmlane.report.DatesReport;
import dev.warmlane.report.FuelWords;
import dev.warmlane.study.DatesStudy;
import dev.warmlane.study.DatesStudy.Dates;
import dev.warmlane.study.DatesStudy.Way;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a longer season takes with collectors, against what today's takes without; the pool's mean where there is no heater. */
public final class DatesChart {

    private static final int STEPS = 6;

    private DatesChart() {}

    /** A line for each way of moving the season's ends. */
    public static Optional<Chart> of(String name, DatesStudy study, UnitSystem units) {
        boolean heated = study.today().boughtKwh().isPresent();
        Measure measure = heated ? Measure.HEAT : Measure.TEMPERATURE;
        FuelWords fuel = FuelWords.of(study.today().season());
        double today = measure.in(
                units,
                heated
                        ? study.today().boughtWithoutKwh().orElseThrow()
                        : study.today().season().waterWithout().meanC());
        double[] all = study.dates().stream()
                .mapToDouble(d -> measure.in(units, DatesReport.drawn(d)))
                .toArray();
        int most = study.dates().stream().mapToInt(Dates::weeks).max().orElse(1);
        LinePlot plot = new LinePlot(
                "weeks that an end of the season moves",
                new Scale(0, Math.max(1, most), 1),
                Plot.Label.WHOLE,
                heated
                        ? measure.unit(units) + " of " + fuel.word() + " in the season"
                        : "mean of the pool over the season, " + measure.unit(units),
                heated ? Scale.withZero(STEPS, all, new double[] {today}) : holding(all, today));
        plot.level("today, without collectors", today, Palette.VERMILLION, Pen.DASHED);
        line(plot, study, Way.LATER, units, measure);
        line(plot, study, Way.EARLIER, units, measure);
        line(plot, study, Way.BOTH, units, measure);
        return Optional.of(new Chart(
                name,
                heated
                        ? "How much longer for the " + fuel.word() + " of today?"
                        : "How much longer for the warmth of today?",
                study.installation().name(),
                plot));
    }

    /** A little more than what is drawn, so that lines do not run along its edges. */
    private static Scale holding(double[] values, double level) {
        double low = Math.min(level, Arrays.stream(values).min().orElse(level));
        double high = Math.max(level, Arrays.stream(values).max().orElse(level));
        double room = (high - low) / STEPS;
        return Scale.holding(low - room, high + room, STEPS);
    }

    private static void line(LinePlot plot, DatesStudy study, Way way, UnitSystem units, Measure measure) {
        List<Dates> seasons = study.of(way);
        double[] weeks = seasons.stream().mapToDouble(Dates::weeks).toArray();
        double[] values = seasons.stream()
                .mapToDouble(d -> measure.in(units, DatesReport.drawn(d)))
                .toArray();
        switch (way) {
            case EARLIER -> plot.line(way.label() + ", with collectors", weeks, values, Palette.BLUE, Pen.THICK);
            case LATER -> plot.line(way.label() + ", with collectors", weeks, values, Palette.GREEN, Pen.DOTTED);
            case BOTH -> plot.line(way.label() + ", with collectors", weeks, values, Palette.INK, Pen.DASH_DOT);
        }
    }
}
