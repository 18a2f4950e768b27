package dev.warmlane.weather;

import dev.warmlane.physics.MoistAir;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A typical year of weather, 8760 hours in local standard time, every gap resolved: what a reader or the generator
 * hands to everything else. Immutable and safe to share between threads.
 *
 * <p>Hour {@code h} is the one that starts {@code h} hours after the start of 1 January. Irradiance stands for that
 * hour and belongs to the sun position that {@link #sun()} has for it; temperature, humidity, pressure and wind are the
 * file's values for it, unshifted.
 */
public final class WeatherYear {

    private final Site site;
    private final String source;
    private final SunPath sun;
    private final LongWaveOrigin longWaveOrigin;
    private final int longWaveEstimatedHours;
    private final List<WeatherFinding> findings;
    private final @Nullable Closure closure;
    private final double[] globalHorizontal;
    private final double[] directNormal;
    private final double[] diffuseHorizontal;
    private final double[] skyLongWave;
    private final double[] airTemperature;
    private final double[] dewPoint;
    private final double[] vapourPressure;
    private final double[] pressure;
    private final double[] windSpeed;

    private WeatherYear(Builder b) {
        this.site = b.site;
        this.source = b.source;
        this.sun = b.sun;
        this.longWaveOrigin = b.longWaveOrigin;
        this.longWaveEstimatedHours = b.longWaveEstimatedHours;
        this.findings = List.copyOf(b.findings);
        this.closure = b.closure;
        this.globalHorizontal = b.column("global horizontal irradiance", b.globalHorizontal);
        this.directNormal = b.column("direct normal irradiance", b.directNormal);
        this.diffuseHorizontal = b.column("diffuse horizontal irradiance", b.diffuseHorizontal);
        this.skyLongWave = b.column("sky long-wave", b.skyLongWave);
        this.airTemperature = b.column("air temperature", b.airTemperature);
        this.dewPoint = b.column("dew point", b.dewPoint);
        this.pressure = b.column("pressure", b.pressure);
        this.windSpeed = b.column("wind speed", b.windSpeed);
        this.vapourPressure =
                Arrays.stream(dewPoint).map(MoistAir::saturationPressureKpa).toArray();
    }

    /** Starts a year for a site; {@code source} says in a few words where the data come from. */
    public static Builder builder(Site site, String source, SunPath sun) {
        return new Builder(site, source, sun);
    }

    /** Where the weather was measured or made. */
    public Site site() {
        return site;
    }

    /** Where the data come from, in a few words. */
    public String source() {
        return source;
    }

    /** The sun positions that belong to the irradiance. */
    public SunPath sun() {
        return sun;
    }

    /** Where {@link #skyLongWaveWm2} comes from in most hours. */
    public LongWaveOrigin longWaveOrigin() {
        return longWaveOrigin;
    }

    /**
     * In how many hours {@link #skyLongWaveWm2} was estimated while reading, because the file had no value or one that
     * cannot be, 0 to 8760.
     */
    public int longWaveEstimatedHours() {
        return longWaveEstimatedHours;
    }

    /** What was found, mended or estimated while reading, in the order it was found. */
    public List<WeatherFinding> findings() {
        return findings;
    }

    /** How well global irradiance equals diffuse plus beam; null where it was not tested. */
    public @Nullable Closure closure() {
        return closure;
    }

    /** Global irradiance on the horizontal, W/m². */
    public double globalHorizontalWm2(int hour) {
        return globalHorizontal[hour];
    }

    /** Beam irradiance on a plane normal to the sun, W/m². */
    public double directNormalWm2(int hour) {
        return directNormal[hour];
    }

    /** Diffuse irradiance on the horizontal, W/m². */
    public double diffuseHorizontalWm2(int hour) {
        return diffuseHorizontal[hour];
    }

    /** Beam irradiance on the horizontal as the file has it, global less diffuse, never below 0, W/m². */
    public double beamHorizontalWm2(int hour) {
        return Math.max(0, globalHorizontal[hour] - diffuseHorizontal[hour]);
    }

    /** Long-wave irradiance of the sky on the horizontal, W/m². */
    public double skyLongWaveWm2(int hour) {
        return skyLongWave[hour];
    }

    /** Air temperature, °C. */
    public double airTemperatureC(int hour) {
        return airTemperature[hour];
    }

    /** Dew point, °C. */
    public double dewPointC(int hour) {
        return dewPoint[hour];
    }

    /** Partial pressure of water vapour, kPa. */
    public double vapourPressureKpa(int hour) {
        return vapourPressure[hour];
    }

    /** Relative humidity over liquid water, 0 to 1. */
    public double relativeHumidity(int hour) {
        return vapourPressure[hour] / MoistAir.saturationPressureKpa(airTemperature[hour]);
    }

    /** Air pressure, kPa. */
    public double pressureKpa(int hour) {
        return pressure[hour];
    }

    /** Wind speed of the station at 10 m over open ground, m/s. */
    public double windSpeedMs(int hour) {
        return windSpeed[hour];
    }

    /** Where the long-wave irradiance of the sky comes from in most hours. */
    public enum LongWaveOrigin {
        /** From the file. */
        FILE,
        /** Estimated from the air, its humidity and the file's cloud cover. */
        CLOUD_COVER,
        /** Estimated from the air, its humidity and a cloud cover derived from the irradiance. */
        CLEARNESS
    }

    /** Gathers the columns of a year. Arrays are copied when the year is built. */
    public static final class Builder {
        private final Site site;
        private final String source;
        private final SunPath sun;
        private LongWaveOrigin longWaveOrigin = LongWaveOrigin.FILE;
        private int longWaveEstimatedHours;
        private List<WeatherFinding> findings = List.of();
        private @Nullable Closure closure;
        private double @Nullable [] globalHorizontal;
        private double @Nullable [] directNormal;
        private double @Nullable [] diffuseHorizontal;
        private double @Nullable [] skyLongWave;
        private double @Nullable [] airTemperature;
        private double @Nullable [] dewPoint;
        private double @Nullable [] pressure;
        private double @Nullable [] windSpeed;

        private Builder(Site site, String source, SunPath sun) {
            this.site = site;
            this.source = source;
            this.sun = sun;
        }

        /** Global horizontal, direct normal and diffuse horizontal irradiance, W/m². */
        public Builder irradianceWm2(double[] global, double[] direct, double[] diffuse) {
            this.globalHorizontal = global;
            this.directNormal = direct;
            this.diffuseHorizontal = diffuse;
            return this;
        }

        /** Long-wave irradiance of the sky, W/m², and where it comes from in most hours. */
        public Builder skyLongWaveWm2(double[] longWave, LongWaveOrigin origin) {
            this.skyLongWave = longWave;
            this.longWaveOrigin = origin;
            return this;
        }

        /** In how many hours the long-wave irradiance was estimated while reading, 0 to 8760; 0 unless given. */
        public Builder longWaveEstimatedHours(int value) {
            this.longWaveEstimatedHours = value;
            return this;
        }

        /** Air temperature and dew point, °C. */
        public Builder airC(double[] temperature, double[] dew) {
            this.airTemperature = temperature;
            this.dewPoint = dew;
            return this;
        }

        /** Air pressure, kPa. */
        public Builder pressureKpa(double[] values) {
            this.pressure = values;
            return this;
        }

        /** Wind speed at 10 m, m/s. */
        public Builder windSpeedMs(double[] values) {
            this.windSpeed = values;
            return this;
        }

        /** What was found, mended or estimated. */
        public Builder findings(List<WeatherFinding> values) {
            this.findings = values;
            return this;
        }

        /** How well global irradiance equals diffuse plus beam; null where it was not tested. */
        public Builder closure(@Nullable Closure value) {
            this.closure = value;
            return this;
        }

        /**
         * The finished year.
         *
         * @throws IllegalStateException if a column is missing, is not 8760 long or holds a value that is not finite
         */
        public WeatherYear build() {
            return new WeatherYear(this);
        }

        private double[] column(String name, double @Nullable [] values) {
            if (values == null || values.length != HourOfYear.HOURS) {
                throw new IllegalStateException(
                        name + " needs 8760 values, got " + (values == null ? 0 : values.length));
            }
            for (int hour = 0; hour < values.length; hour++) {
                if (!Double.isFinite(values[hour])) {
                    throw new IllegalStateException(
                            name + " is not a number in the hour " + HourOfYear.label(hour) + " of " + source);
                }
            }
            return values.clone();
        }
    }
}
