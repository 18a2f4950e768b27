package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A year of weather, typical or real, 8760 hours in local standard time, every gap resolved: what a reader or the generator
 * hands to everything else. Immutable and safe to share between threads.
 *
 * <p>Hour {@code h} is the one that starts {@code h} hours after the start of 1 January. Irradiance stands for that
 * hour and belongs to the sun position that {@link #sun()} has for it; temperature, humidity, pressure and wind are the
 * file's values for it, unshifted.
 */
public final class WeatherYear extends HourlyWeather {

    /** The hottest air that a reader takes for a value, °C; see {@link #airTemperatureC}. */
    public static final double HOTTEST_AIR_C = WeatherColumn.AIR.highest();

    private final @Nullable Closure closure;

    /** Takes over the columns of a table in which every gap is resolved. */
    WeatherYear(HourTable table, String source, ClosureCheck.Result time, LongWave.Result longWave, Findings findings) {
        super(
                new Origin(
                        time.site(),
                        source,
                        table.isOfFile(),
                        longWave.origin(),
                        longWave.estimatedHours(),
                        findings.all()),
                time.sun(),
                table::column);
        this.closure = time.closure();
    }

    /** Takes over what was composed of several years. */
    WeatherYear(WeatherSplice splice) {
        super(
                new Origin(
                        splice.first().site(),
                        splice.source(),
                        splice.all(WeatherYear::fromFile),
                        splice.longWaveOrigin(),
                        splice.longWaveEstimatedHours(),
                        splice.findings()),
                splice.sun(),
                splice::column);
        this.closure = null;
    }

    /** Starts a year for a site; {@code source} says in a few words where the data come from. */
    public static Builder builder(Site site, String source, SunPath sun) {
        return new Builder(site, source, sun);
    }

    /** How well global irradiance equals diffuse plus beam; null where it was not tested. */
    public @Nullable Closure closure() {
        return closure;
    }

    @Override
    public int hourOfYear(int hour) {
        return hour;
    }

    @Override
    public <T> T match(Function<WeatherYear, T> year, Function<WeatherRecord, T> record) {
        return year.apply(this);
    }

    @Override
    public String label(int hour) {
        return HourOfYear.label(hour) + " (month-day hour)";
    }

    /** The first harmonic of the 8760 hours, and the span of the means of the twelve months. */
    @Override
    public YearlyAir yearlyAir() {
        return YearlyAir.ofYear(this);
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
         * Global horizontal irradiance alone, W/m²: its diffuse part is estimated from the clearness of each hour, by
         * {@link DiffuseSplit#ERBS}.
         */
        public Builder globalWm2(double[] global) {
            return put(WeatherColumn.GLOBAL, global);
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

        /** Air temperature, °C, and relative humidity, %, from which the dew point is found. */
        public Builder airAndHumidity(double[] temperatureC, double[] relativeHumidityPercent) {
            return put(WeatherColumn.AIR, temperatureC).put(WeatherColumn.RELATIVE_HUMIDITY, relativeHumidityPercent);
        }

        /** Cloud cover, tenths, from which long-wave irradiance is estimated where it is not given. */
        public Builder cloudTenths(double[] values) {
            return put(WeatherColumn.CLOUD, values);
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
            Set<WeatherColumn> given = EnumSet.noneOf(WeatherColumn.class);
            given.addAll(columns.keySet());
            HourTable table = HourTable.of(site, sun, longWaveOrigin, given, TableHours.ofYear());
            columns.forEach((column, values) -> System.arraycopy(values, 0, table.column(column), 0, HourOfYear.HOURS));
            return table;
        }
    }
}
