package dev.warmlane.season;

import dev.warmlane.pool.PoolSetting.Outdoor;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import java.time.MonthDay;

/**
 * How far wind, sun and sky at a pool are known from a log of its water, in the log's own season and in others, and how far
 * a model with them is from its readings. The values found of wind and sun are the pool's own ({@link WindAndSun}).
 *
 * @param source in a few words what log it is, and of which days
 * @param from its first day
 * @param to its last day, counted with it; the day before {@code from} for a log of a whole year or more
 * @param wind doubt of the wind factor
 * @param sun doubt of the share of the sun that warms the water
 * @param skyWm2 what the sky was found to send to the water beyond the long-wave of the weather, W/m²
 * @param sky doubt of that
 * @param correlations how the three go together
 * @param errorK standard deviation of what model and log disagree in, K
 * @param fadeHours time in which the correlation of that falls to 1/e, h
 */
public record FittedDoubt(
        String source,
        MonthDay from,
        MonthDay to,
        Spread wind,
        Spread sun,
        double skyWm2,
        Spread sky,
        Correlations correlations,
        double errorK,
        double fadeHours) {

    /** Range of a standard deviation of the wind factor. */
    public static final Range WIND_SD = Range.number("standard deviation of the wind factor", 0, 1);

    /** Range of a standard deviation of the share of the sun. */
    public static final Range SUN_SD = Range.number("standard deviation of the share of the sun", 0, 1);

    /** Range of {@link #skyWm2}: between a clear sky and one of low cloud lie about 100 W/m² (common experience, no source). */
    public static final Range SKY = Range.of("long-wave beyond the weather's", Dimension.IRRADIANCE, -100, 100);

    /** Range of a standard deviation of that. */
    public static final Range SKY_SD =
            Range.of("standard deviation of the long-wave beyond the weather's", Dimension.IRRADIANCE, 0, 100);

    /** Range of a share of the sun that warms the water. */
    public static final Range SUN_SHARE = Range.number("share of the sun that warms the water", 0, 1);

    /** Range of a correlation. */
    public static final Range CORRELATION = Range.number("correlation", -1, 1);

    /** Range of {@link #errorK}. */
    public static final Range ERROR = Range.of("error that the fit left", Dimension.TEMPERATURE_DIFFERENCE, 0, 10);

    /** Range of {@link #fadeHours}. */
    public static final Range FADE = Range.of("time in which that error fades", Dimension.DURATION, "h", 1, 2000);

    /** Standard deviations on either side that hold nine of ten of a normal distribution. */
    public static final double NINE_OF_TEN = 1.645;

    /** Checks every range. */
    public FittedDoubt {
        wind.check(WIND_SD, Outdoor.WIND_FACTOR);
        sun.check(SUN_SD, SUN_SHARE);
        SKY.check(skyWm2);
        sky.check(SKY_SD, SKY);
        ERROR.check(errorK);
        FADE.check(fadeHours);
    }

    /**
     * The doubt of one of the three.
     *
     * @param sd standard deviation in the season of the log
     * @param before what was taken for most likely before the log
     * @param beforeSd standard deviation before the log
     * @param apart by how many of the standard deviations of {@link OtherSeasons#width} other seasons are taken to lie apart
     *     from what is most likely of them: 0 in a forecast, another number where a study asks what it would do
     */
    public record Spread(double sd, double before, double beforeSd, double apart) {

        /** As it is in a forecast. */
        public Spread(double sd, double before, double beforeSd) {
            this(sd, before, beforeSd, 0);
        }

        /** The same with other seasons as far apart. */
        public Spread apart(double deviations) {
            return new Spread(sd, before, beforeSd, deviations);
        }

        private void check(Range width, Range value) {
            width.check(sd);
            value.check(before);
            width.check(beforeSd);
        }

        private double in(double found, double left, Range range) {
            if (left == 1) {
                return found;
            }
            double value = OtherSeasons.likely(found, before, left) + apart * OtherSeasons.width(beforeSd, left);
            return range.nearest(value);
        }
    }

    /**
     * How wind, sun and sky go together.
     *
     * @param windSun of wind and sun
     * @param windSky of wind and sky
     * @param sunSky of sun and sky
     */
    public record Correlations(double windSun, double windSky, double sunSky) {

        /** By rounding three true correlations may miss what is possible by so much, own choice. */
        private static final double ROUNDING = 1e-3;

        /** Checks each, and that three numbers can have all of them. */
        public Correlations {
            CORRELATION.check(windSun);
            CORRELATION.check(windSky);
            CORRELATION.check(sunSky);
            double determinant =
                    1 + 2 * windSun * windSky * sunSky - windSun * windSun - windSky * windSky - sunSky * sunSky;
            if (determinant < -ROUNDING) {
                throw new IllegalArgumentException("no three numbers have the correlations " + windSun + ", " + windSky
                        + " and " + sunSky + ": take them from the fit again");
            }
        }

        /** What of the sun is independent of the wind: its part of Cholesky's factor. */
        public double sunAlone() {
            return Math.sqrt(1 - windSun * windSun);
        }

        /** By how much the sky goes with the sun's independent part. */
        public double skyWithSun() {
            double alone = sunAlone();
            double with = alone == 0 ? 0 : (sunSky - windSun * windSky) / alone;
            double most = Math.sqrt(1 - windSky * windSky);
            return Math.max(-most, Math.min(most, with));
        }

        /** What of the sky is independent of both. */
        public double skyAlone() {
            double withSun = skyWithSun();
            return Math.sqrt(Math.max(0, 1 - windSky * windSky - withSun * withSun));
        }
    }

    /** The same with other doubts of wind, sun and sky, and another value of the sky. */
    public FittedDoubt with(Spread newWind, Spread newSun, double newSkyWm2, Spread newSky) {
        return new FittedDoubt(source, from, to, newWind, newSun, newSkyWm2, newSky, correlations, errorK, fadeHours);
    }

    /** How much of the log's season is left in an hour of the year, {@link OtherSeasons#left}; the year is a circle. */
    public double seasonLeft(int hourOfYear) {
        int first = HourOfYear.startOf(from);
        int hours = Math.floorMod(HourOfYear.startOf(to) + 23 - first, HourOfYear.HOURS) + 1;
        int into = Math.floorMod(hourOfYear - first, HourOfYear.HOURS);
        return into < hours ? 1 : OtherSeasons.left(Math.min(into - hours + 1, HourOfYear.HOURS - into));
    }

    /** Wind factor in an hour, where one was found. */
    public double windFactor(double found, double seasonLeft) {
        return wind.in(found, seasonLeft, Outdoor.WIND_FACTOR);
    }

    /** Share of the sun that warms the water in an hour, where one was found. */
    public double sunShare(double found, double seasonLeft) {
        return sun.in(found, seasonLeft, SUN_SHARE);
    }

    /** What the sky sends beyond the weather's in an hour, W/m². */
    public double skyWm2(double seasonLeft) {
        return sky.in(skyWm2, seasonLeft, SKY);
    }

    /**
     * Within what the mean of the error over some hours stays nine times of ten, K: the mean of an Ornstein-Uhlenbeck process
     * of time τ over a time T has the variance 2σ²·(τ/T)·(1 - (τ/T)·(1 - exp(-T/τ))) (derived from its correlation).
     *
     * @param hours the time T, h, above 0
     */
    public double errorOfMeanK(double hours) {
        double x = fadeHours / hours;
        return NINE_OF_TEN * errorK * Math.sqrt(2 * x * (1 + x * Math.expm1(-1 / x)));
    }
}
