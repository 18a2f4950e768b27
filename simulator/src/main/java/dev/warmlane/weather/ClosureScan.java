package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunClock;
import dev.warmlane.sun.SunPath;
import java.util.Arrays;

/**
 * The residual of GHI = DHI + DNI cos z as a function of the time that irradiance is taken to belong to. A scan uses a
 * part of the days, spread over the year.
 */
final class ClosureScan {

    /** Below this the residual says little, W/m². */
    static final double GLOBAL_ABOVE_WM2 = 50;

    private static final int EVERY_NTH_DAY = 4;
    /** A month with less sun than this cannot tell its own shift. */
    private static final int HOURS_AT_LEAST = 20;

    private static final double FINE_STEP_H = 0.125;
    private static final double FINE_REACH_H = 1.25;
    private static final double WIDE_STEP_H = 0.5;
    private static final double WIDE_REACH_H = 12;

    private final HourTable table;
    private final double[] global;
    private final double[] direct;
    private final double[] diffuse;
    private final SunClock clock;

    /** Where the residual is smallest, hours from the stated time, and its root mean square there, W/m². */
    record Fit(double shiftHours, double rmseWm2) {
        static final Fit NONE = new Fit(Double.NaN, Double.NaN);

        boolean exists() {
            return !Double.isNaN(shiftHours);
        }
    }

    /** At a place that may be another than the table's. */
    ClosureScan(HourTable table, Site site) {
        this.table = table;
        this.global = table.column(WeatherColumn.GLOBAL);
        this.direct = table.column(WeatherColumn.DIRECT);
        this.diffuse = table.column(WeatherColumn.DIFFUSE);
        this.clock = new SunClock(site);
    }

    /**
     * The shift that closes one month: within about an hour of the stated time if one does, else anywhere in the day; none
     * where the light does not tell, as without direct irradiance.
     */
    Fit bestOfMonth(int month, double acceptedRmseWm2) {
        int[] hours = sample(month);
        if (hours.length < HOURS_AT_LEAST) {
            return Fit.NONE;
        }
        Fit near = best(hours, 0, FINE_REACH_H, FINE_STEP_H);
        if (near.rmseWm2 <= acceptedRmseWm2) {
            return near;
        }
        Fit wide = best(hours, 0, WIDE_REACH_H, WIDE_STEP_H);
        Fit far = wide.exists() ? best(hours, wide.shiftHours, WIDE_STEP_H, FINE_STEP_H) : Fit.NONE;
        return !near.exists() || far.rmseWm2 < near.rmseWm2 ? far : near;
    }

    /** Root mean square of the residual of a month at a shift, W/m²; 0 where no hour is tested. */
    double rmse(int month, double shiftHours) {
        int tested = testedHours(month);
        return tested == 0 ? 0 : Math.sqrt(sumOfSquares(month, shiftHours) / tested);
    }

    /** Root mean square of the year's residual so much later than stated, W/m². */
    double rmseAt(double shiftHours) {
        double[] shifts = new double[12];
        Arrays.fill(shifts, shiftHours);
        return rmse(shifts)[12];
    }

    /** Root mean square at a shift for each month, W/m²: in each month, and of the year in the thirteenth place. */
    double[] rmse(double[] shiftHours) {
        double[] rmse = new double[13];
        double sum = 0;
        int tested = 0;
        for (int month = 1; month <= 12; month++) {
            double squares = sumOfSquares(month, shiftHours[month - 1]);
            int hours = testedHours(month);
            rmse[month - 1] = Math.sqrt(squares / Math.max(1, hours));
            sum += squares;
            tested += hours;
        }
        rmse[12] = Math.sqrt(sum / Math.max(1, tested));
        return rmse;
    }

    /** Root mean square with the positions finally used: in each month, and of the year in the thirteenth place. */
    double[] rmse(SunPath sun) {
        double[] squares = new double[13];
        int[] tested = new int[13];
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            if (isTested(hour)) {
                double residual = global[hour] - diffuse[hour] - direct[hour] * sun.cosZenith(hour);
                int month = HourOfYear.monthOf(hour) - 1;
                squares[month] += residual * residual;
                squares[12] += residual * residual;
                tested[month]++;
                tested[12]++;
            }
        }
        for (int i = 0; i < squares.length; i++) {
            squares[i] = tested[i] == 0 ? 0 : Math.sqrt(squares[i] / tested[i]);
        }
        return squares;
    }

    private double sumOfSquares(int month, double shiftHours) {
        double sum = 0;
        for (int hour = HourOfYear.firstHourOf(month); hour < HourOfYear.firstHourOf(month + 1); hour++) {
            if (isTested(hour)) {
                double residual = residual(hour, shiftHours);
                sum += residual * residual;
            }
        }
        return sum;
    }

    /** How many hours of a month are tested. */
    int testedHours(int month) {
        int count = 0;
        for (int hour = HourOfYear.firstHourOf(month); hour < HourOfYear.firstHourOf(month + 1); hour++) {
            count += isTested(hour) ? 1 : 0;
        }
        return count;
    }

    /** The lowest point of a scan; none where that is the scan's own edge, beyond which it may fall on. */
    private Fit best(int[] hours, double around, double reach, double step) {
        int steps = (int) Math.round(reach / step);
        double[] squares = new double[2 * steps + 1];
        for (int hour : hours) {
            for (int i = 0; i < squares.length; i++) {
                double residual = residual(hour, around + (i - steps) * step);
                squares[i] += residual * residual;
            }
        }
        int lowest = 0;
        for (int i = 1; i < squares.length; i++) {
            lowest = squares[i] < squares[lowest] ? i : lowest;
        }
        if (lowest == 0 || lowest == squares.length - 1) {
            return Fit.NONE;
        }
        // the sum of squares is a parabola near its minimum
        double before = squares[lowest - 1] - squares[lowest];
        double after = squares[lowest + 1] - squares[lowest];
        double shift = around + (lowest - steps) * step + step * 0.5 * (before - after) / (before + after);
        double sum = 0;
        for (int hour : hours) {
            double residual = residual(hour, shift);
            sum += residual * residual;
        }
        return new Fit(shift, Math.sqrt(sum / hours.length));
    }

    private int[] sample(int month) {
        int[] hours = new int[HourOfYear.HOURS];
        int count = 0;
        for (int hour = HourOfYear.firstHourOf(month); hour < HourOfYear.firstHourOf(month + 1); hour++) {
            if (HourOfYear.dayOf(hour) % EVERY_NTH_DAY == 0 && isTested(hour)) {
                hours[count++] = hour;
            }
        }
        return Arrays.copyOf(hours, count);
    }

    private boolean isTested(int hour) {
        return global[hour] > GLOBAL_ABOVE_WM2 && !Double.isNaN(direct[hour]) && !Double.isNaN(diffuse[hour]);
    }

    private double residual(int hour, double shiftHours) {
        if (direct[hour] <= 0) {
            return global[hour] - diffuse[hour];
        }
        double zenith = clock.zenithDeg(table.year[hour], hour + table.centreHours + shiftHours);
        return global[hour] - diffuse[hour] - direct[hour] * Math.max(0, Math.cos(Math.toRadians(zenith)));
    }
}
