package dev.warmlane.pool;

import dev.warmlane.units.Checks;
import dev.warmlane.wind.PoolShelter;

/** Whether sun, sky and wind reach the water. */
public sealed interface PoolSetting {

    /**
     * Wind at 0.3 m above the water, m/s: the wind factor times the station's wind, or the hall's air speed.
     *
     * @param stationWindMs wind of the weather station at 10 m, m/s
     */
    double windAtWaterMs(double stationWindMs);

    /**
     * A pool under the sky.
     *
     * @param windFactor wind at 0.3 m above the water over the station's wind at 10 m, 0 to 1.2; {@link PoolShelter} has
     *     usual ones
     * @param shadedShare share of the sun that buildings and trees keep from the water, 0 to 1
     * @param skyShare share of the sky that the water sees, 0 to 1; the rest radiates at air temperature
     */
    record Outdoor(double windFactor, double shadedShare, double skyShare) implements PoolSetting {

        /** Checks every range. */
        public Outdoor {
            Checks.within("pool wind factor", windFactor, 0, 1.2, "");
            Checks.within("shaded share of the pool", shadedShare, 0, 1, "");
            Checks.within("sky share of the pool", skyShare, 0, 1, "");
        }

        @Override
        public double windAtWaterMs(double stationWindMs) {
            return windFactor * stationWindMs;
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
            return new Outdoor(value, shadedShare, skyShare);
        }
    }

    /**
     * A pool in a hall: no sun, no sky, still air.
     *
     * @param hallTemperatureC air and walls of the hall, °C, 10 to 45
     * @param hallHumidity relative humidity of the hall, 0.2 to 1
     * @param airSpeedMs air speed at the water, m/s, 0 to 0.5; 0.05 to 0.1 is usual
     */
    record Indoor(double hallTemperatureC, double hallHumidity, double airSpeedMs) implements PoolSetting {

        /** Checks every range. */
        public Indoor {
            Checks.within("hall temperature", hallTemperatureC, 10, 45, "degC");
            Checks.within("hall humidity", hallHumidity, 0.2, 1, "");
            Checks.within("air speed in the hall", airSpeedMs, 0, 0.5, "m/s");
        }

        @Override
        public double windAtWaterMs(double stationWindMs) {
            return airSpeedMs;
        }
    }
}
