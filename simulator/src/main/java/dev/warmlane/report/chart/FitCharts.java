package dev.warmlane.report.chart;

import dev.warmlane.fit.FittedPool;
import dev.warmlane.fit.FittedPool.Residual;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a fit leaves between log and model. */
public final class FitCharts {

    /** The name of the log's line. */
    static final String LOGGED = "logged less modelled, each hour";

    private static final int STEPS = 6;

    private FitCharts() {}

    /** The difference hour by hour, and that of every hour of the day. */
    public static Optional<Chart> residuals(String name, FittedPool fit, UnitSystem units) {
        List<Residual> all = fit.residuals();
        LocalDateTime start = all.get(0).time().truncatedTo(ChronoUnit.DAYS);
        double[] days = all.stream()
                .mapToDouble(one -> ChronoUnit.MINUTES.between(start, one.time()) / 1440.0)
                .toArray();
        double[] shown = all.stream()
                .mapToDouble(one -> Measure.TEMPERATURE_DIFFERENCE.in(units, one.differenceK()))
                .toArray();
        double last = days[days.length - 1];
        double most = Arrays.stream(shown).map(Math::abs).max().orElse(1);
        LinePlot plot = new LinePlot(
                "days since " + start.toLocalDate(),
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
