package dev.warmlane.pool;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.HourlyWeather;
import dev.warmlane.weather.YearlyAir;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * The temperature of the ground that a pool loses its heat to, in every hour of the year (ISO 13370, from memory): the
 * yearly mean of the air, and round it the air's yearly swing, damped and late.
 *
 * <p>The standard gives the heat to the ground, H·(T_w − mean) + H_pe·(swing of the air a month ago, turned round), with
 * the steady and the periodic conductances of {@link GroundLoss}. Divided by H that is a ground at mean + H_pe/H · swing.
 * A conductance that the user gives keeps H_pe/H of the standard's form (own choice). The swing is the air's first
 * harmonic over the year, so that its phase comes out of the weather, on either half of the earth.
 */
final class GroundTemperature {

    /** The swing of heat through the ground comes this part of a year after the air's: a month in ISO 13370, from memory. */
    private static final double LATE_BY = 1.0 / 12;

    // of every hour of the year, so that a pool is prepared quickly
    private static final double[] LATE_COSINE = late(Math::cos);
    private static final double[] LATE_SINE = late(Math::sin);

    private GroundTemperature() {}

    static double[] hourly(Pool pool, HourlyWeather weather) {
        YearlyAir air = weather.yearlyAir();
        double damped = GroundLoss.periodicConductanceWK(pool.areaM2(), pool.depthM())
                / GroundLoss.conductanceWK(pool.areaM2(), pool.depthM());
        double[] temperature = new double[weather.hours()];
        for (int hour = 0; hour < temperature.length; hour++) {
            int ofYear = weather.hourOfYear(hour);
            temperature[hour] =
                    air.meanC() + damped * (air.cosineK() * LATE_COSINE[ofYear] + air.sineK() * LATE_SINE[ofYear]);
        }
        return temperature;
    }

    private static double[] late(DoubleUnaryOperator function) {
        double[] values = new double[HourOfYear.HOURS];
        Arrays.setAll(values, hour -> function.applyAsDouble(YearlyAir.angle(hour) - 2 * Math.PI * LATE_BY));
        return values;
    }
}
