package dev.warmlane.weather;

import dev.warmlane.physics.MoistAir;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A year of weather, typical or real, 8760 hours in local standard time, every gap resolved: what a reader or the generator
 * hands to everything else. Immutable and safe to share between threads.
 *
 * <p>Hour {@code h} is the one that starts {@code h} hours after the start of 1 January. Irradiance stands for that
 * hour and belongs to the sun position that {@link #sun()} has for it; temperature, humidity, pressure and wind are the
 * file's values for it, unshifted.
 */
public final class WeatherYear {

    /** The hottest air that a reader takes for a value, °C; see {@link #airTemperatureC}. */
    public static final double HOTTEST_AIR_C = WeatherColumn.AIR.highest();

    private final Site site;
    private final String source;
    private final boolean fromFile;
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

    /** Takes over the columns of a table in which every gap is resolved. */
    WeatherYear(HourTable table, String source, ClosureCheck.Result time, LongWave.Result longWave, Findings findings) {
        this.site = time.site();
        this.source = source;
        this.fromFile = table.isOfFile();
        this.sun = time.sun();
        this.longWaveOrigin = longWave.origin();
        this.longWaveEstimatedHours = longWave.estimatedHours();
        this.findings = findings.all();
        this.closure = time.closure();
        this.globalHorizontal = table.column(WeatherColumn.GLOBAL);
        this.directNormal = table.column(WeatherColumn.DIRECT);
        this.diffuseHorizontal = table.column(WeatherColumn.DIFFUSE);
        this.skyLongWave = table.column(WeatherColumn.LONG_WAVE);
        this.airTemperature = table.column(WeatherColumn.AIR);
        this.dewPoint = table.column(WeatherColumn.DEW);
        this.pressure = table.column(WeatherColumn.PRESSURE);
        this.windSpeed = table.column(WeatherColumn.WIND);
        this.vapourPressure =
                Arrays.stream(dewPoint).map(MoistAir::saturationPressureKpa).toArray();
    }

    /** Takes over what was composed of several years. */
    WeatherYear(WeatherSplice splice) {
        WeatherYear first = splice.first();
        this.site = first.site;
        this.source = splice.source();
        this.fromFile = splice.all(WeatherYear::fromFile);
        this.sun = splice.sun();
        this.longWaveOrigin = splice.longWaveOrigin();
        this.longWaveEstimatedHours = splice.longWaveEstimatedHours();
        this.findings = splice.findings();
        this.closure = null;
        this.globalHorizontal = splice.column(WeatherColumn.GLOBAL);
        this.directNormal = splice.column(WeatherColumn.DIRECT);
        this.diffuseHorizontal = splice.column(WeatherColumn.DIFFUSE);
        this.skyLongWave = splice.column(WeatherColumn.LONG_WAVE);
        this.airTemperature = splice.column(WeatherColumn.AIR);
        this.dewPoint = splice.column(WeatherColumn.DEW);
        this.pressure = splice.column(WeatherColumn.PRESSURE);
        this.windSpeed = splice.column(WeatherColumn.WIND);
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

    /** Whether a weather file was read; else a program has made the year by {@link #builder} or the generator. */
    public boolean fromFile() {
        return fromFile;
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

    /** What was found, mended or estimated while reading, the gravest first. */
    public List<WeatherFinding> findings() {
        return findings;
    }

    /** How well global irradiance equals diffuse plus beam; null where it was not tested. */
    public @Nullable Closure closure() {
        return closure;
    }

    /** A column as it stands, not to be written to. */
    double[] column(WeatherColumn column) {
        return switch (column) {
            case GLOBAL -> globalHorizontal;
            case DIRECT -> directNormal;
            case DIFFUSE -> diffuseHorizontal;
            case LONG_WAVE -> skyLongWave;
            case AIR -> airTemperature;
            case DEW -> dewPoint;
            case PRESSURE -> pressure;
            case WIND -> windSpeed;
            case RELATIVE_HUMIDITY, CLOUD, DIRECT_HORIZONTAL, SUNSHINE ->
                throw new IllegalArgumentException("a year keeps no " + column.label());
        };
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

    /**
     * Gathers the columns of a year that a program has, 8760 values each from the hour that starts on 1 January at 00:00
     * local standard time; NaN is a missing value. The year goes through the same checks and repairs as that of a file,
     * and carries what they found; where a finding or an error names hours, they are counted from 0 as in the columns.
     */
    public static final class Builder {
        private final Site site;
        private final String source;
        private final SunPath sun;
        private final Map<WeatherColumn, double[]> columns = new EnumMap<>(WeatherColumn.class);
        private final Findings findings = new Findings();
        private LongWaveOrigin longWaveOrigin = LongWaveOrigin.FILE;

        private Builder(Site site, String source, SunPath sun) {
            this.site = site;
            this.source = source;
            this.sun = sun;
        }

        /** Global horizontal, direct normal and diffuse horizontal irradiance, W/m². */
        public Builder irradianceWm2(double[] global, double[] direct, double[] diffuse) {
            return put(WeatherColumn.GLOBAL, global)
                    .put(WeatherColumn.DIRECT, direct)
                    .put(WeatherColumn.DIFFUSE, diffuse);
        }

        /**
         * Long-wave irradiance of the sky, W/m², and where it comes from in most hours. Where it is not given it is
         * estimated from air temperature, dew point and the day's clearness.
         */
        public Builder skyLongWaveWm2(double[] longWave, LongWaveOrigin origin) {
            longWaveOrigin = origin;
            return put(WeatherColumn.LONG_WAVE, longWave);
        }

        /** Air temperature and dew point, °C. */
        public Builder airC(double[] temperature, double[] dew) {
            return put(WeatherColumn.AIR, temperature).put(WeatherColumn.DEW, dew);
        }

        /** Air pressure, kPa. Where it is not given it is that of the standard atmosphere. */
        public Builder pressureKpa(double[] values) {
            return put(WeatherColumn.PRESSURE, values);
        }

        /** Wind speed at 10 m, m/s. */
        public Builder windSpeedMs(double[] values) {
            return put(WeatherColumn.WIND, values);
        }

        /** What a reader of the year should know of how it was made. */
        public Builder note(String message) {
            findings.note(0, 0, message);
            return this;
        }

        private Builder put(WeatherColumn column, double[] values) {
            if (values.length != HourOfYear.HOURS) {
                throw new IllegalArgumentException(column.label() + " needs 8760 values, got " + values.length);
            }
            columns.put(column, values.clone());
            return this;
        }

        /**
         * The finished year.
         *
         * @throws IllegalArgumentException if a column is missing, or the year cannot be trusted: the message says which
         *     column, what was found, what was expected and what to do
         */
        public WeatherYear build() {
            try {
                return WeatherChecks.year(table(), source, WeatherReadOptions.defaults(), findings.copy());
            } catch (Refusal refusal) {
                throw refusal.of(source);
            }
        }

        /** The columns as they stand, for tests of what makes no weather; all of them must be given. */
        WeatherYear unchecked() {
            ClosureCheck.Result time = new ClosureCheck.Result(site, sun, null);
            return new WeatherYear(table(), source, time, new LongWave.Result(longWaveOrigin, 0), findings.copy());
        }

        private HourTable table() {
            HourTable table = HourTable.of(site, sun, longWaveOrigin);
            columns.forEach((column, values) -> System.arraycopy(values, 0, table.column(column), 0, HourOfYear.HOURS));
            return table;
        }
    }
}
