package dev.warmlane.pool;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import dev.warmlane.weather.HourlyWeather;
import dev.warmlane.wind.PoolShelter;
import java.util.Optional;
import java.util.function.Function;

/** Whether sun, sky and wind reach the water. */
public sealed interface PoolSetting {

    /**
     * Wind at 0.3 m above the water, m/s: the wind factor times the station's wind, or the hall's air speed.
     *
     * @param stationWindMs wind of the weather station at 10 m, m/s
     */
    double windAtWaterMs(double stationWindMs);

    /** Sun on the water in an hour, W/m². */
    double sunWm2(PoolLight light, int hour);

    /** Air over the water in an hour, °C. */
    double airC(HourlyWeather weather, int hour);

    /** Vapour pressure of that air, kPa. */
    double vapourKpa(HourlyWeather weather, int hour);

    /** The air that a basin's walls seem to meet in an hour, sun and sky counted in, °C; see {@link Walls}. */
    double wallAirC(Walls walls, PoolLight light, HourlyWeather weather, int hour);

    /** Long-wave of sky and surroundings on the water in an hour, W/m². */
    double longWaveWm2(PoolLight light, HourlyWeather weather, int hour);

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<Outdoor, T> outdoor, Function<Indoor, T> indoor);

    /** The surroundings of a pool under the sky; nothing for one in a hall. */
    default Optional<Outdoor> outdoor() {
        return match(Optional::of, indoor -> Optional.empty());
    }

    /**
     * A pool under the sky.
     *
     * @param windFactor wind at 0.3 m above the water over the station's wind at 10 m; {@link PoolShelter} has
     *     usual ones
     * @param shadedShare share of the sun that buildings and trees keep from the water at all times, of what the skyline lets
     *     past
     * @param skyShare share of the sky that the water sees, of what the skyline leaves; the rest radiates at air temperature
     * @param skyline what hides sun and sky from it by direction
     */
    record Outdoor(double windFactor, double shadedShare, double skyShare, PoolSkyline skyline) implements PoolSetting {

        /** Range of {@link #windFactor}. */
        public static final Range WIND_FACTOR = Range.number("pool wind factor", 0, 1.2);

        /** Range of {@link #shadedShare}. */
        public static final Range SHADED_SHARE = Range.share("shaded share of the pool", 0, 1);

        /** Range of {@link #skyShare}. */
        public static final Range SKY_SHARE = Range.share("sky share of the pool", 0, 1);

        /** Of the ground around a basin; common practice, no source. */
        private static final double GROUND_ALBEDO = 0.2;

        /** Checks every range. */
        public Outdoor {
            WIND_FACTOR.check(windFactor);
            SHADED_SHARE.check(shadedShare);
            SKY_SHARE.check(skyShare);
        }

        @Override
        public double windAtWaterMs(double stationWindMs) {
            return windFactor * stationWindMs;
        }

        @Override
        public double sunWm2(PoolLight light, int hour) {
            return light.globalWm2(hour) * (1 - shadedShare);
        }

        @Override
        public double airC(HourlyWeather weather, int hour) {
            return weather.airTemperatureC(hour);
        }

        @Override
        public double vapourKpa(HourlyWeather weather, int hour) {
            return weather.vapourPressureKpa(hour);
        }

        @Override
        public double longWaveWm2(PoolLight light, HourlyWeather weather, int hour) {
            double seen = skyShare * light.skyShare();
            return seen * weather.skyLongWaveWm2(hour)
                    + (1 - seen) * Constants.blackBody(weather.airTemperatureC(hour));
        }

        @Override
        public double wallAirC(Walls walls, PoolLight light, HourlyWeather weather, int hour) {
            double air = weather.airTemperatureC(hour);
            double cosZenith = weather.sun().cosZenith(hour);
            double beam =
                    light.lit(hour) * weather.directNormalWm2(hour) * Math.sqrt(1 - cosZenith * cosZenith) / Math.PI;
            double even =
                    (light.skyShare() * weather.diffuseHorizontalWm2(hour) + GROUND_ALBEDO * light.globalWm2(hour)) / 2;
            double cold = skyShare * light.skyShare() * (weather.skyLongWaveWm2(hour) - Constants.blackBody(air)) / 2;
            return air
                    + Walls.OUTER_RESISTANCE
                            * (walls.absorptance() * (1 - shadedShare) * (beam + even) + Walls.EMITTANCE * cold);
        }

        /** A pool of which no direction is more open than others. */
        public Outdoor(double windFactor, double shadedShare, double skyShare) {
            this(windFactor, shadedShare, skyShare, PoolSkyline.OPEN);
        }

        /** An unshaded pool that sees the whole sky, in usual surroundings. */
        public Outdoor(PoolShelter shelter) {
            this(shelter.factor());
        }

        /** An unshaded pool that sees the whole sky. */
        public Outdoor(double windFactor) {
            this(windFactor, 0, 1);
        }

        /** The same surroundings with another wind factor. */
        public Outdoor withWindFactor(double value) {
            return new Outdoor(value, shadedShare, skyShare, skyline);
        }

        /** The same surroundings with another shaded share. */
        public Outdoor withShadedShare(double value) {
            return new Outdoor(windFactor, value, skyShare, skyline);
        }

        /** The same surroundings with another skyline. */
        public Outdoor withSkyline(PoolSkyline value) {
            return new Outdoor(windFactor, shadedShare, skyShare, value);
        }

        @Override
        public <T> T match(Function<Outdoor, T> outdoor, Function<Indoor, T> indoor) {
            return outdoor.apply(this);
        }
    }

    /**
     * A pool in a hall: no sun, no sky, still air.
     *
     * @param hallTemperatureC air and walls of the hall, °C
     * @param hallHumidity relative humidity of the hall
     * @param airSpeedMs air speed at the water, m/s
     */
    record Indoor(double hallTemperatureC, double hallHumidity, double airSpeedMs) implements PoolSetting {

        /** Range of {@link #hallTemperatureC}. */
        public static final Range TEMPERATURE = Range.of("hall temperature", Dimension.TEMPERATURE, 10, 45);

        /** Range of {@link #hallHumidity}. */
        public static final Range HUMIDITY = Range.share("hall humidity", 0.2, 1);

        /** Range of {@link #airSpeedMs}. */
        public static final Range AIR_SPEED = Range.of("air speed in the hall", Dimension.SPEED, 0, 0.5);

        /** Usual {@link #airSpeedMs}. */
        public static final Usual USUAL_AIR_SPEED = AIR_SPEED.usually(0.075, "middle of the usual 0.05 to 0.1 m/s");

        /** Checks every range. */
        public Indoor {
            TEMPERATURE.check(hallTemperatureC);
            HUMIDITY.check(hallHumidity);
            AIR_SPEED.check(airSpeedMs);
        }

        @Override
        public double windAtWaterMs(double stationWindMs) {
            return airSpeedMs;
        }

        @Override
        public double sunWm2(PoolLight light, int hour) {
            return 0;
        }

        @Override
        public double airC(HourlyWeather weather, int hour) {
            return hallTemperatureC;
        }

        @Override
        public double vapourKpa(HourlyWeather weather, int hour) {
            return hallHumidity * MoistAir.saturationPressureKpa(hallTemperatureC);
        }

        @Override
        public double wallAirC(Walls walls, PoolLight light, HourlyWeather weather, int hour) {
            return hallTemperatureC;
        }

        @Override
        public double longWaveWm2(PoolLight light, HourlyWeather weather, int hour) {
            return Constants.blackBody(hallTemperatureC);
        }

        @Override
        public <T> T match(Function<Outdoor, T> outdoor, Function<Indoor, T> indoor) {
            return indoor.apply(this);
        }
    }
}
