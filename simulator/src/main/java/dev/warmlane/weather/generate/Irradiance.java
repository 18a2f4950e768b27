package dev.warmlane.weather.generate;

import dev.warmlane.physics.DiffuseFraction;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import dev.warmlane.units.Units;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Irradiance of a generated year.
 *
 * <p>A month's days have the clearness of evenly spaced probabilities (rank - ½)/days of the distribution {@link
 * DailyClearness}, in the order of a first-order autoregressive Gaussian series: Graham, Hollands and Huget 1988 (Solar
 * Energy 40:83-92) for the series, Knight, Klein and Duffie 1991 (Solar Energy 46:109-120) for fixing the values to the
 * distribution, so that the month is typical; both from memory. The distribution's parameter is solved so that the month
 * has its irradiation. Hours follow {@link HourlyClearness}, brought to the day's clearness by a factor; what would be
 * clearer than a cloudless sky is cut there and the rest of the day takes up the difference.
 */
final class Irradiance {

    /**
     * Lag-one correlation of the Gaussian daily series, Graham, Hollands and Huget 1988, from memory. Fixing each month to
     * its distribution leaves about 0.22 of it among the days; typical years measured have 0.15 to 0.30.
     */
    static final double DAILY_PERSISTENCE = 0.29;

    /** λ of {@link DailyClearness} is sought in here: mean clearness from 0.02 to 0.85. */
    private static final double STEEPEST = 60;

    private static final int HALVINGS = 60;

    private final SunPath sun;
    private final double[] outside = new double[HourOfYear.HOURS];
    private final double[] clearSky = new double[HourOfYear.HOURS];
    private final double[] clearness = new double[HourOfYear.DAYS];
    private final double[] deviate;
    private final double[] global = new double[HourOfYear.HOURS];
    private final double[] direct = new double[HourOfYear.HOURS];
    private final double[] diffuse = new double[HourOfYear.HOURS];

    Irradiance(Site site, SunPath sun, MonthlyNormals normals, long seed) {
        this.sun = sun;
        this.deviate = Noise.firstOrder(seed, Noise.Stream.DAILY_CLEARNESS, HourOfYear.DAYS, DAILY_PERSISTENCE);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            if (sun.isUp(hour)) {
                outside[hour] = sun.extraterrestrialNormalWm2(hour) * sun.cosZenith(hour) * sun.upFraction(hour);
                clearSky[hour] = HourlyClearness.clearSky(sun.zenithDeg(hour), site.elevationM());
            }
        }
        for (int month = 1; month <= 12; month++) {
            solveMonth(month, normals.month(month).globalHorizontalKwhM2Day());
        }
        fillHours(seed);
    }

    /** Global horizontal irradiance, W/m². */
    double[] global() {
        return global;
    }

    /** Direct normal irradiance, W/m², from closure: (global - diffuse) / cos(zenith). */
    double[] direct() {
        return direct;
    }

    /** Diffuse horizontal irradiance, W/m². */
    double[] diffuse() {
        return diffuse;
    }

    /** Clearness of each day. */
    double[] dailyClearness() {
        return clearness;
    }

    /** The standard normal deviates that put the days in order. */
    double[] dailyDeviate() {
        return deviate;
    }

    private void solveMonth(int month, double kwhM2Day) {
        int first = HourOfYear.firstHourOf(month) / 24;
        int days = HourOfYear.daysIn(month);
        double wanted = 1000 * kwhM2Day * days;
        double cloudless = 0;
        for (int day = first; day < first + days; day++) {
            cloudless += clearestDay(day);
        }
        double lowest = monthTotal(first, days, -STEEPEST);
        double highest = monthTotal(first, days, STEEPEST);
        if (wanted < lowest || wanted > highest) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s: mean global horizontal irradiation must be %.2f to %.2f kWh/m² a day at this site, was %s"
                            + " (cloudless with very clean air: %.2f); check its unit and the site's latitude",
                    MonthlyNormals.monthName(month),
                    Units.kwhOfWattHours(lowest) / days,
                    Units.kwhOfWattHours(highest) / days,
                    kwhM2Day,
                    Units.kwhOfWattHours(cloudless) / days));
        }
        double low = -STEEPEST;
        double high = STEEPEST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (monthTotal(first, days, middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        monthTotal(first, days, (low + high) / 2);
    }

    /** Sets the clearness of a month's days for a λ and returns the month's irradiation, Wh/m². */
    private double monthTotal(int first, int days, double lambda) {
        DailyClearness distribution = new DailyClearness(lambda);
        int[] byRank = IntStream.range(first, first + days)
                .boxed()
                .sorted(Comparator.comparingDouble(day -> deviate[day]))
                .mapToInt(Integer::intValue)
                .toArray();
        double total = 0;
        for (int rank = 0; rank < days; rank++) {
            int day = byRank[rank];
            double wh = Math.min(clearestDay(day), distribution.quantile((rank + 0.5) / days) * dayTotal(outside, day));
            clearness[day] = wh / dayTotal(outside, day);
            total += wh;
        }
        return total;
    }

    private double clearestDay(int day) {
        double sum = 0;
        for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
            sum += clearSky[hour] * outside[hour];
        }
        return sum;
    }

    private static double dayTotal(double[] hourly, int day) {
        return Arrays.stream(hourly, 24 * day, 24 * day + 24).sum();
    }

    private void fillHours(long seed) {
        var random = Noise.stream(seed, Noise.Stream.HOURLY_CLEARNESS);
        double y = 0;
        for (int day = 0; day < HourOfYear.DAYS; day++) {
            double phi = HourlyClearness.persistence(clearness[day]);
            double spread = Math.sqrt(1 - phi * phi);
            for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
                y = phi * y + spread * random.nextGaussian();
                if (outside[hour] > 0) {
                    global[hour] = outside[hour]
                            * HourlyClearness.index(clearness[day], sun.cosZenith(hour), clearSky[hour], y);
                }
            }
            scaleDay(day, clearness[day] * dayTotal(outside, day));
            for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
                if (outside[hour] > 0) {
                    diffuse[hour] = global[hour] * DiffuseFraction.erbs(global[hour] / outside[hour]);
                    direct[hour] = (global[hour] - diffuse[hour]) / sun.cosZenith(hour);
                }
            }
        }
    }

    /** Multiplies the hours of a day to a total, none above a cloudless sky. Each round cuts at least one more hour. */
    private void scaleDay(int day, double wanted) {
        for (int round = 0; round < 24; round++) {
            double cut = 0;
            double free = 0;
            for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
                double most = clearSky[hour] * outside[hour];
                if (global[hour] >= most) {
                    cut += most;
                } else {
                    free += global[hour];
                }
            }
            if (free <= 0) {
                return;
            }
            double factor = (wanted - cut) / free;
            boolean again = false;
            for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
                double most = clearSky[hour] * outside[hour];
                if (global[hour] < most) {
                    global[hour] *= factor;
                    again |= global[hour] > most;
                }
                global[hour] = Math.min(most, global[hour]);
            }
            if (!again) {
                return;
            }
        }
    }
}
