package dev.warmlane.validation;

import dev.warmlane.physics.MoistAir;
import dev.warmlane.weather.WeatherRecord;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;

/**
 * Finds by how much a logger's clock was off, without the model: in each hour the water's change is regressed on light,
 * air less water and vapour less that of the water, the latter two also times the wind, all coefficients free. The shift
 * that leaves least unexplained is the clock's; free coefficients leave no room for stores and losses to pull at it.
 */
final class LogClock {

    private static final int STEP_MINUTES = 15;
    private static final int FROM_STEPS = -8;
    private static final int TO_STEPS = 4;

    /** Values farther apart than this span no hour, minutes. */
    private static final long APART_MINUTES = 36;

    private LogClock() {}

    /** What must be added to a piece's clock to have that of the weather, h: to the tenth, from a parabola. */
    static double shiftHours(BasinLog.Piece piece, WeatherRecord weather) {
        double[] left = new double[TO_STEPS - FROM_STEPS + 1];
        int best = 1;
        for (int i = 0; i < left.length; i++) {
            left[i] = unexplainedK(piece, weather, Duration.ofMinutes((long) STEP_MINUTES * (FROM_STEPS + i)));
            best = i < left.length - 1 && left[i] < left[best] ? i : best;
        }
        double before = left[Math.max(0, best - 1)];
        double after = left[best + 1];
        double vertex = (before - after) / (2 * (before - 2 * left[best] + after));
        return (FROM_STEPS + best + vertex) * STEP_MINUTES / 60.0;
    }

    private static double unexplainedK(BasinLog.Piece piece, WeatherRecord weather, Duration shift) {
        List<double[]> terms = new ArrayList<>();
        List<Double> changes = new ArrayList<>();
        List<LocalDateTime> times =
                piece.times().stream().map(time -> time.plus(shift)).toList();
        LocalDateTime hour = times.get(0).truncatedTo(ChronoUnit.HOURS).plusHours(1);
        for (int at = 1; at < times.size(); hour = hour.plusHours(1)) {
            double start = waterC(times, piece.waterC(), hour);
            double end = waterC(times, piece.waterC(), hour.plusHours(1));
            int index = weather.hourAt(hour);
            if (!Double.isNaN(start) && !Double.isNaN(end) && !weather.isFilled(index)) {
                double mean = (start + end) / 2;
                double air = weather.airTemperatureC(index) - mean;
                double vapour = weather.vapourPressureKpa(index) - MoistAir.saturationPressureKpa(mean);
                double wind = weather.windSpeedMs(index);
                terms.add(new double[] {weather.globalHorizontalWm2(index), air, air * wind, vapour, vapour * wind});
                changes.add(end - start);
            }
            while (at < times.size() && times.get(at).isBefore(hour.plusHours(1))) {
                at++;
            }
        }
        OLSMultipleLinearRegression fit = new OLSMultipleLinearRegression();
        fit.newSampleData(changes.stream().mapToDouble(Double::doubleValue).toArray(), terms.toArray(double[][]::new));
        return Math.sqrt(fit.calculateResidualSumOfSquares() / changes.size());
    }

    /** On a line between the values around a time; not a number where they are too far apart. */
    private static double waterC(List<LocalDateTime> times, List<Double> waterC, LocalDateTime time) {
        int after = Collections.binarySearch(times, time);
        after = after < 0 ? -after - 1 : after;
        if (after == 0 || after == times.size()) {
            return Double.NaN;
        }
        double apart = ChronoUnit.SECONDS.between(times.get(after - 1), times.get(after));
        if (apart > 60 * APART_MINUTES) {
            return Double.NaN;
        }
        double part = ChronoUnit.SECONDS.between(times.get(after - 1), time) / apart;
        return (1 - part) * waterC.get(after - 1) + part * waterC.get(after);
    }
}
