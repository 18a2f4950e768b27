package dev.warmlane.report.chart;

import dev.warmlane.fit.FittedPool;
import dev.warmlane.fit.FittedPool.Residual;
import dev.warmlane.season.RecordLedger;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** A log and the model that was fitted to it, and what it leaves between the two. */
public final class FitCharts {

    /** The name of the model's line. */
    static final String MODELLED = "as simulated with what was found";

    /** The name of the log's points. */
    static final String WATER = "as logged, each hour";

    /** The name of the log's line. */
    static final String LOGGED = "logged less modelled, each hour";

    private static final int STEPS = 6;

    private FitCharts() {}

    /** The water that was logged, over the water that the model has with what was found, between the log's gaps too. */
    public static Optional<Chart> water(String name, FittedPool fit, UnitSystem units) {
        List<Residual> all = fit.residuals();
        RecordLedger run = fit.run();
        LocalDateTime start = all.get(0).time().truncatedTo(ChronoUnit.DAYS);
        double[] logs = all.stream().mapToDouble(one -> days(start, one.time())).toArray();
        double last = logs[logs.length - 1];
        int hours = (int) IntStream.range(0, run.hours())
                .filter(hour -> days(start, run.time(hour)) <= last)
                .count();
        double[] ran = IntStream.range(0, hours)
                .mapToDouble(hour -> days(start, run.time(hour)) + 0.5 / 24)
                .toArray();
        double[] modelled = IntStream.range(0, hours)
                .mapToDouble(hour -> Measure.TEMPERATURE.in(units, run.waterC(hour)))
                .toArray();
        double[] logged = all.stream()
                .mapToDouble(one -> Measure.TEMPERATURE.in(units, one.loggedC()))
                .toArray();
        double[] held = DoubleStream.concat(Arrays.stream(modelled), Arrays.stream(logged))
                .toArray();
        LinePlot plot = new LinePlot(
                sinceDay(start),
                Scale.holding(0, Math.max(1, last), STEPS),
                Plot.Label.WHOLE,
                "water, " + Measure.TEMPERATURE.unit(units),
                Scale.holding(
                        Arrays.stream(held).min().orElseThrow(),
                        Arrays.stream(held).max().orElseThrow(),
                        STEPS));
        plot.points(WATER, logs, logged, Palette.SKY_BLUE);
        plot.line(MODELLED, ran, modelled, Palette.INK, Pen.HAIR);
        return Optional.of(new Chart(
                name, "How well does the simulation follow the log?", fit.log().source(), plot));
    }

    private static String sinceDay(LocalDateTime start) {
        return "days since " + start.toLocalDate();
    }

    private static double days(LocalDateTime start, LocalDateTime time) {
        return ChronoUnit.MINUTES.between(start, time) / 1440.0;
    }

    /** The difference hour by hour, and that of every hour of the day. */
    public static Optional<Chart> residuals(String name, FittedPool fit, UnitSystem units) {
        List<Residual> all = fit.residuals();
        LocalDateTime start = all.get(0).time().truncatedTo(ChronoUnit.DAYS);
        double[] days = all.stream().mapToDouble(one -> days(start, one.time())).toArray();
        double[] shown = all.stream()
                .mapToDouble(one -> Measure.TEMPERATURE_DIFFERENCE.in(units, one.differenceK()))
                .toArray();
        double last = days[days.length - 1];
        double most = Arrays.stream(shown).map(Math::abs).max().orElse(1);
        LinePlot plot = new LinePlot(
                sinceDay(start),
                Scale.holding(0, Math.max(1, last), STEPS),
                Plot.Label.WHOLE,
                Measure.TEMPERATURE_DIFFERENCE.unit(units),
                Scale.holding(-most, most, STEPS));
        double width = Measure.TEMPERATURE_DIFFERENCE.in(
                units, 1.645 * fit.error().likely().errorK());
        plot.band(
                "nine of ten should lie here",
                new double[] {0, last},
                new double[] {-width, -width},
                new double[] {width, width},
                Palette.GRID);
        plot.level("no difference", 0, Palette.INK, Pen.HAIR);
        plot.points(LOGGED, days, shown, Palette.BLUE);
        return Optional.of(new Chart(
                name, "What the fit leaves between log and model", fit.log().source(), plot));
    }
}
