package dev.warmlane.fit;

import dev.warmlane.heater.Boiler;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.PoolSetting.Outdoor;
import dev.warmlane.season.FittedDoubt;
import dev.warmlane.season.Installation;
import dev.warmlane.season.WindAndSun;
import dev.warmlane.weather.WeatherRecord;
import dev.warmlane.weather.WeatherYear;
import java.util.ArrayList;
import java.util.List;

/** What is taken to be known of a pool before its log is looked at. */
final class Priors {

    /** Sheltered 0.15 to open 0.40 (ISO/TR 12596:1995 and the logarithmic profile) is 0.25; own choice to take more than half. */
    private static final double WIND_SD = 0.15;

    /** A finish is unknown by 0.05, shade by more; own choice. */
    private static final double SUN_SD = 0.1;

    /** Below this no pool under the sky is known to absorb, own choice. */
    private static final double LEAST_SUN = 0.1;

    /** From the United States minimum of 1990 to that of 2013 are 0.04; own choice to take twice as much. */
    private static final double EFFICIENCY_SD = 0.08;

    /** Share of its water that a leaking pool may lose in a day; own choice. */
    private static final double LEAK_SD = 0.02;

    /**
     * Of what is estimated from air, dew point and cloud, as in the handbook's measured basin, where it was stated before any
     * fit; own estimate, W/m².
     */
    private static final double ESTIMATED_SKY_SD_WM2 = 20;

    /** Of what the weather gives, measured or by a model of the whole atmosphere; own estimate, W/m². */
    private static final double GIVEN_SKY_SD_WM2 = 5;

    /** Where the log begins within a degree of what its first hour shows; own choice. */
    private static final double START_SD_K = 1;

    private static final double LITRES_IN_M3 = 1000;

    private Priors() {}

    /** Of what a log, and bills and meter where there are any, may tell. */
    static List<Prior> of(
            Installation built,
            WeatherRecord weather,
            double firstC,
            boolean bills,
            boolean meter,
            FitOptions options) {
        List<Prior> priors = new ArrayList<>();
        priors.add(new Prior(
                Unknown.WIND,
                PoolValues.outdoor(built).windFactor(),
                WIND_SD,
                Outdoor.WIND_FACTOR.lowest(),
                Outdoor.WIND_FACTOR.highest(),
                "as described; well sheltered 0.15 to open 0.40 (ISO/TR 12596:1995, from memory), width own choice"));
        priors.add(new Prior(
                Unknown.SUN,
                WindAndSun.of(built).sunShare(),
                SUN_SD,
                LEAST_SUN,
                1,
                "as described; a finish is known to 0.05 (ISO/TR 12596 as cited by Kalogirou), shade less, width own"
                        + " choice"));
        if (bills) {
            priors.add(new Prior(
                    Unknown.EFFICIENCY,
                    PoolValues.boiler(built).orElseThrow().efficiency(),
                    EFFICIENCY_SD,
                    Boiler.EFFICIENCY.lowest(),
                    Boiler.EFFICIENCY.highest(),
                    "as described, width own choice"));
        }
        if (meter) {
            priors.add(new Prior(
                    Unknown.MAKE_UP,
                    built.makeUp().litresPerDay(),
                    LEAK_SD * built.pool().volumeM3() * LITRES_IN_M3,
                    0,
                    MakeUp.WATER.highest(),
                    "as described; a leak of two hundredths of the water in a day, own choice"));
        }
        boolean given = weather.longWaveOrigin() == WeatherYear.LongWaveOrigin.FILE;
        priors.add(new Prior(
                Unknown.SKY,
                0,
                given ? GIVEN_SKY_SD_WM2 : ESTIMATED_SKY_SD_WM2,
                FittedDoubt.SKY.lowest(),
                FittedDoubt.SKY.highest(),
                (given ? "given by the weather" : "estimated from air, humidity and cloud") + ", width own choice"));
        priors.add(new Prior(Unknown.START, firstC, START_SD_K, 0, 60, "the first reading, width own choice"));
        priors.add(new Prior(
                Unknown.CLOCK,
                0,
                options.clockHours() / Math.sqrt(3),
                -options.clockHours(),
                options.clockHours(),
                "as wide as the range that was stated, evenly"));
        options.priors().forEach(own -> priors.replaceAll(usual -> usual.of() == own.of() ? own : usual));
        return List.copyOf(priors);
    }
}
