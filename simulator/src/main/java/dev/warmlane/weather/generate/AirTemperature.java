package dev.warmlane.weather.generate;

import dev.warmlane.site.HourOfYear;

/**
 * Air temperature of a generated year: a smooth course through the months, a daily wave that is larger on clear days, and
 * a persistent random part.
 *
 * <p>Wave: Erbs, Klein and Beckman 1983, ASHRAE Journal 25(6):60-65, from memory. Its size is solved so that the mean of
 * the days' highest less lowest temperature is the month's daily range; where the random part alone comes near that
 * range (mild seas) it is made smaller. The random part's spread follows the same source: daily temperatures have a
 * logistic distribution with 3.396/(σm√N), N the days of the month, σm = 1.45 - 0.0290·T + 0.0664·σy the spread of the
 * month's mean between years (T the month's mean, σy the standard deviation of the twelve means); a typical year has no
 * spread between years, so that part is taken off: s² = (π²/3/3.396²·N - 1)·σm². Persistence: Knight, Klein and Duffie
 * 1991, Solar Energy 46:109-120, from memory: hourly, second order, 1.178 and -0.202. The month means are met exactly:
 * by the smooth course, then by a small shift of the month.
 */
final class AirTemperature {

    private static final double FIRST_PERSISTENCE = 1.178;
    private static final double SECOND_PERSISTENCE = -0.202;

    /**
     * How much a day's range grows with its clearness, relative change over relative change. No published value for days
     * was found; least squares on four typical years (36 N, 26 N, 44 N, 4 S) gave 0.84, 0.47, 0.25, 0.70.
     */
    private static final double RANGE_WITH_CLEARNESS = 0.57;

    /** The daily wave has at least this share of the daily range; own choice. */
    private static final double LEAST_WAVE = 0.5;

    private static final int HALVINGS = 40;

    private final double[] wave = new double[HourOfYear.HOURS];
    private final double[] random;
    private final double[] spreadK = new double[12];
    private final double[] temperature = new double[HourOfYear.HOURS];

    AirTemperature(MonthlyNormals normals, double[] dailyClearness, double solarMinusStandardHours, long seed) {
        this.random = Noise.secondOrder(
                seed, Noise.Stream.TEMPERATURE, HourOfYear.HOURS, FIRST_PERSISTENCE, SECOND_PERSISTENCE);
        fillWave(dailyClearness, solarMinusStandardHours);
        double[] means = new double[12];
        for (int m = 0; m < 12; m++) {
            means[m] = normals.month(m + 1).airTemperatureC();
        }
        double betweenMonths = spreadOf(means);
        for (int month = 1; month <= 12; month++) {
            spreadK[month - 1] = spread(means[month - 1], betweenMonths, HourOfYear.daysIn(month));
            solveRange(month, normals.month(month).dailyRangeK());
        }
        addToMeans(temperature, means);
    }

    /** Hourly air temperature, °C. */
    double[] temperatureC() {
        return temperature;
    }

    /** The random part, mean 0, variance 1, before it is given its size. */
    double[] deviate() {
        return random;
    }

    /** Standard deviation of the random part that the source gives for a month, 1 to 12, K. */
    double spreadK(int month) {
        return spreadK[month - 1];
    }

    /**
     * Adds a smooth course to an hourly column so that each month has its mean: most of it smoothly, the remainder, which
     * comes from the straight lines between noons, as a shift of the month.
     */
    static void addToMeans(double[] hourly, double[] means) {
        double[] missing = new double[12];
        for (int month = 1; month <= 12; month++) {
            missing[month - 1] = means[month - 1] - Noise.monthMean(hourly, month);
        }
        double[] course = SmoothYear.days(missing);
        for (int hour = 0; hour < hourly.length; hour++) {
            hourly[hour] += SmoothYear.atHour(course, hour);
        }
        for (int month = 1; month <= 12; month++) {
            double rest = means[month - 1] - Noise.monthMean(hourly, month);
            for (int hour = HourOfYear.firstHourOf(month); hour < HourOfYear.firstHourOf(month + 1); hour++) {
                hourly[hour] += rest;
            }
        }
    }

    /** Erbs, Klein and Beckman 1983: departure from the day's mean over its range at an hour of solar time. */
    static double profile(double solarHour) {
        double t = 2 * Math.PI * (solarHour - 1) / 24;
        return 0.4632 * StrictMath.cos(t - 3.805)
                + 0.0984 * StrictMath.cos(2 * t - 0.360)
                + 0.0168 * StrictMath.cos(3 * t - 0.822)
                + 0.0138 * StrictMath.cos(4 * t - 3.513);
    }

    private static double spread(double mean, double betweenMonths, int days) {
        // the fit leaves its data in very hot months; half a kelvin keeps it positive
        double betweenYears = Math.max(0.5, 1.45 - 0.0290 * mean + 0.0664 * betweenMonths);
        return betweenYears * Math.sqrt(Math.PI * Math.PI / 3 / (3.396 * 3.396) * days - 1);
    }

    private static double spreadOf(double[] values) {
        double sum = 0;
        double squares = 0;
        for (double value : values) {
            sum += value;
            squares += value * value;
        }
        double mean = sum / values.length;
        return Math.sqrt(Math.max(0, squares / values.length - mean * mean));
    }

    private void fillWave(double[] clearness, double solarMinusStandardHours) {
        double[] size = new double[HourOfYear.DAYS];
        for (int month = 1; month <= 12; month++) {
            int from = HourOfYear.firstHourOf(month) / 24;
            int to = HourOfYear.firstHourOf(month + 1) / 24;
            double mean = 0;
            for (int day = from; day < to; day++) {
                mean += clearness[day] / (to - from);
            }
            for (int day = from; day < to; day++) {
                size[day] = 1 + RANGE_WITH_CLEARNESS * (clearness[day] / mean - 1);
            }
        }
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double solarHour = HourOfYear.hourOfDay(hour) + 0.5 + solarMinusStandardHours;
            wave[hour] = SmoothYear.atHour(size, hour) * profile(solarHour);
        }
    }

    private void solveRange(int month, double wanted) {
        boolean calm = meanRange(month, LEAST_WAVE * wanted, 1) > wanted;
        double low = calm ? 0 : LEAST_WAVE * wanted;
        double high = calm ? 1 : 2 * wanted;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            double range = calm ? meanRange(month, LEAST_WAVE * wanted, middle) : meanRange(month, middle, 1);
            if (range < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double solved = (low + high) / 2;
        for (int hour = HourOfYear.firstHourOf(month); hour < HourOfYear.firstHourOf(month + 1); hour++) {
            temperature[hour] = calm
                    ? at(hour, LEAST_WAVE * wanted, solved * spreadK[month - 1])
                    : at(hour, solved, spreadK[month - 1]);
        }
    }

    private double at(int hour, double waveK, double randomK) {
        return waveK * wave[hour] + randomK * random[hour];
    }

    private double meanRange(int month, double waveK, double randomShare) {
        double randomK = randomShare * spreadK[month - 1];
        double sum = 0;
        for (int from = HourOfYear.firstHourOf(month); from < HourOfYear.firstHourOf(month + 1); from += 24) {
            double lowest = Double.POSITIVE_INFINITY;
            double highest = Double.NEGATIVE_INFINITY;
            for (int hour = from; hour < from + 24; hour++) {
                double value = at(hour, waveK, randomK);
                lowest = Math.min(lowest, value);
                highest = Math.max(highest, value);
            }
            sum += highest - lowest;
        }
        return sum / HourOfYear.daysIn(month);
    }
}
