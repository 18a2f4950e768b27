package dev.warmlane.weather.generate;

import dev.warmlane.physics.MoistAir;
import dev.warmlane.units.Checks;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What a climate table says of a site: twelve months of means, January first. Made by {@link #builder()}.
 *
 * @param months the twelve months
 */
public record MonthlyNormals(List<Values> months) {

    /** Checks that there are twelve. */
    public MonthlyNormals {
        months = List.copyOf(months);
        if (months.size() != 12) {
            throw new IllegalArgumentException("normals need 12 months, got " + months.size());
        }
    }

    /** The values of a month, 1 to 12. */
    public Values month(int month) {
        return months.get(month - 1);
    }

    /** Starts a set of normals. */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * The means of one month.
     *
     * @param globalHorizontalKwhM2Day irradiation of the horizontal on the mean day, kWh/m²; the generator refuses more
     *     than a cloudless month can have at the site
     * @param airTemperatureC mean air temperature, °C, -40 to 45
     * @param dailyRangeK mean over the days of highest less lowest air temperature, K, 1 to 30
     * @param dewPointC mean dew point, °C, -50 to the air temperature
     * @param windSpeedMs mean wind speed at 10 m over open ground, m/s, 0.3 to 15
     * @param pressureKpa mean air pressure at the site, kPa, 45 to 110; null takes the standard atmosphere
     */
    public record Values(
            double globalHorizontalKwhM2Day,
            double airTemperatureC,
            double dailyRangeK,
            double dewPointC,
            double windSpeedMs,
            @Nullable Double pressureKpa) {

        /** Checks every range. */
        public Values {
            Checks.within("mean global horizontal irradiation", globalHorizontalKwhM2Day, 0.01, 12, "kWh/m² a day");
            Checks.within("mean air temperature", airTemperatureC, -40, 45, "°C");
            Checks.within("mean daily range of air temperature", dailyRangeK, 1, 30, "K");
            Checks.within("mean dew point (not above the mean air temperature)", dewPointC, -50, airTemperatureC, "°C");
            Checks.within("mean wind speed", windSpeedMs, 0.3, 15, "m/s");
            if (pressureKpa != null) {
                Checks.within("mean air pressure", pressureKpa, 45, 110, "kPa");
            }
        }
    }

    /** Gathers normals, a row of twelve values for each quantity, January first. */
    public static final class Builder {
        private double @Nullable [] global;
        private double @Nullable [] air;
        private double @Nullable [] range;
        private double @Nullable [] dewPoint;
        private double @Nullable [] humidity;
        private double @Nullable [] wind;
        private double @Nullable [] pressure;

        private Builder() {}

        /** Irradiation of the horizontal on the mean day of each month, kWh/m². */
        public Builder globalHorizontalKwhM2Day(double... values) {
            this.global = values.clone();
            return this;
        }

        /** Mean air temperature, °C. */
        public Builder airTemperatureC(double... values) {
            this.air = values.clone();
            return this;
        }

        /** Mean over the days of highest less lowest air temperature, K. */
        public Builder dailyRangeK(double... values) {
            this.range = values.clone();
            return this;
        }

        /** Mean dew point, °C. Give this or {@link #relativeHumidity}. */
        public Builder dewPointC(double... values) {
            this.dewPoint = values.clone();
            return this;
        }

        /**
         * Mean relative humidity, above 0 to 1. It is turned into the dew point of air that has this humidity at the
         * month's mean temperature, which is near the mean dew point but not the same.
         */
        public Builder relativeHumidity(double... values) {
            this.humidity = values.clone();
            return this;
        }

        /** Mean wind speed at 10 m over open ground, m/s. */
        public Builder windSpeedMs(double... values) {
            this.wind = values.clone();
            return this;
        }

        /** Mean air pressure at the site, kPa. Without it the standard atmosphere at the site's height is taken. */
        public Builder pressureKpa(double... values) {
            this.pressure = values.clone();
            return this;
        }

        /**
         * The checked normals.
         *
         * @throws IllegalArgumentException naming the quantity and the month if one is missing or out of range
         */
        public MonthlyNormals build() {
            double[] airs = twelve("air temperature", air);
            double[] dews = dewPoint != null && humidity == null
                    ? twelve("dew point", dewPoint)
                    : dewPoints(airs, twelve("dew point or relative humidity (one of the two)", oneHumidity()));
            double[] globals = twelve("global horizontal irradiation", global);
            double[] ranges = twelve("daily range of air temperature", range);
            double[] winds = twelve("wind speed", wind);
            double @Nullable [] pressures = pressure == null ? null : twelve("pressure", pressure);
            Values[] months = new Values[12];
            for (int m = 0; m < 12; m++) {
                try {
                    months[m] = new Values(
                            globals[m], airs[m], ranges[m], dews[m], winds[m], pressures == null ? null : pressures[m]);
                } catch (IllegalArgumentException wrong) {
                    throw new IllegalArgumentException(monthName(m + 1) + ": " + wrong.getMessage(), wrong);
                }
            }
            return new MonthlyNormals(List.of(months));
        }

        private double @Nullable [] oneHumidity() {
            return dewPoint != null ? null : humidity;
        }

        private static double[] dewPoints(double[] air, double[] humidity) {
            double[] dew = new double[12];
            for (int m = 0; m < 12; m++) {
                Checks.within(monthName(m + 1) + ": mean relative humidity", humidity[m], 0.01, 1, "");
                dew[m] = Math.min(air[m], MoistAir.dewPointC(humidity[m] * MoistAir.saturationPressureKpa(air[m])));
            }
            return dew;
        }

        private static double[] twelve(String what, double @Nullable [] values) {
            if (values == null || values.length != 12) {
                throw new IllegalArgumentException("normals need 12 values of " + what + ", January first, got "
                        + (values == null ? 0 : values.length));
            }
            return values;
        }
    }

    static String monthName(int month) {
        return Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }
}
