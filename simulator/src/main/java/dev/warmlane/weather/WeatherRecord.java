package dev.warmlane.weather;

import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import dev.warmlane.units.Checks;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Weather that was measured hour by hour over any period, from a day to twenty years, across New Year and with 29 February:
 * what a log of the water is held against. Read from a file by {@link WeatherFiles#readRecord}, or made of columns by
 * {@link #builder}. Immutable and safe to share between threads.
 */
public final class WeatherRecord extends HourlyWeather {

    /** The least hours of a record. */
    public static final int FEWEST_HOURS = 24;

    /** The most hours of a record, twenty years; own choice. */
    public static final int MOST_HOURS = 175_320;

    private final LocalDateTime start;
    private final YearlyAir yearlyAir;
    private final int[] hourOfYear;
    private final BitSet filled = new BitSet();
    private final List<FilledGap> gaps = new ArrayList<>();

    /** Takes over the columns of a table in which every gap is resolved. */
    WeatherRecord(
            HourTable table,
            LocalDateTime start,
            String source,
            SunPath sun,
            YearlyAir yearlyAir,
            LongWave.Result longWave,
            Findings findings) {
        super(
                new Origin(
                        table.site,
                        source,
                        table.isOfFile(),
                        longWave.origin(),
                        longWave.estimatedHours(),
                        findings.all()),
                sun,
                table::column);
        this.start = start;
        this.yearlyAir = yearlyAir;
        this.hourOfYear = new int[hours()];
        Arrays.setAll(hourOfYear, hour -> RecordTime.hourOfYear(start.plusHours(hour)));
        table.filled().forEach((column, hours) -> {
            filled.or(hours);
            for (int from = hours.nextSetBit(0); from >= 0; ) {
                int to = hours.nextClearBit(from);
                gaps.add(new FilledGap(column.label(), start.plusHours(from), to - from));
                from = hours.nextSetBit(to);
            }
        });
    }

    /**
     * Starts a record of columns in memory.
     *
     * @param site where it was measured
     * @param source in a few words where the data come from
     * @param start when its first hour begins, local standard time of the site, at a full hour
     */
    public static Builder builder(Site site, String source, LocalDateTime start) {
        return new Builder(site, source, start);
    }

    /** When its first hour begins, local standard time. */
    public LocalDateTime start() {
        return start;
    }

    /** When its last hour ends, local standard time. */
    public LocalDateTime end() {
        return start.plusHours(hours());
    }

    /** When an hour begins, local standard time. */
    public LocalDateTime time(int hour) {
        return start.plusHours(hour);
    }

    /**
     * The hour that a time lies in.
     *
     * @throws IllegalArgumentException if the record has none
     */
    public int hourAt(LocalDateTime time) {
        long hour = Math.floorDiv(ChronoUnit.MINUTES.between(start, time), 60L);
        if (hour < 0 || hour >= hours()) {
            throw new IllegalArgumentException("the weather record runs from " + RecordTime.label(start) + " to "
                    + RecordTime.label(end()) + ", and " + RecordTime.label(time)
                    + " lies outside: take a time within, or a longer record");
        }
        return (int) hour;
    }

    /** Whether any value of an hour was missing and filled. */
    public boolean isFilled(int hour) {
        return filled.get(hour);
    }

    /** What was filled: every run of hours without a value, column by column. */
    public List<FilledGap> gaps() {
        return List.copyOf(gaps);
    }

    @Override
    public int hourOfYear(int hour) {
        return hourOfYear[hour];
    }

    @Override
    public <T> T match(Function<WeatherYear, T> year, Function<WeatherRecord, T> record) {
        return record.apply(this);
    }

    @Override
    public String label(int hour) {
        return RecordTime.label(start.plusHours(hour));
    }

    /**
     * As it was given; else the first harmonic by least squares, and twice its amplitude as the months' span; of fewer
     * than 300 days the mean alone, which a finding tells.
     */
    @Override
    public YearlyAir yearlyAir() {
        return yearlyAir;
    }

    /**
     * Gathers columns of one length, one value for each hour; NaN is a missing value. Global irradiance, air, wind, and dew
     * point or relative humidity must be there; what else is missing is completed as for a file. Where a finding or an error
     * names hours, they are counted from 0 as in the columns.
     */
    public static final class Builder {
        private final Site site;
        private final String source;
        private final LocalDateTime start;
        private final Map<WeatherColumn, double[]> columns = new EnumMap<>(WeatherColumn.class);
        private RecordOptions options = RecordOptions.USUAL;
        private double centreHours = 0.5;
        private boolean instants;
        private int hours;

        private Builder(Site site, String source, LocalDateTime start) {
            this.site = site;
            this.source = source;
            this.start = start;
            if (!start.equals(start.truncatedTo(ChronoUnit.HOURS))) {
                throw new IllegalArgumentException("a record begins at a full hour, was " + start);
            }
        }

        /** Global horizontal irradiance, W/m². */
        public Builder globalWm2(double[] values) {
            return put(WeatherColumn.GLOBAL, values);
        }

        /** Diffuse horizontal irradiance, W/m²; without it, it is estimated from the clearness of each hour. */
        public Builder diffuseWm2(double[] values) {
            return put(WeatherColumn.DIFFUSE, values);
        }

        /** Beam irradiance normal to the sun, W/m²; without it, it is what diffuse leaves of global. */
        public Builder directNormalWm2(double[] values) {
            return put(WeatherColumn.DIRECT, values);
        }

        /** Air temperature, °C. */
        public Builder airC(double[] values) {
            return put(WeatherColumn.AIR, values);
        }

        /** Dew point, °C. */
        public Builder dewPointC(double[] values) {
            return put(WeatherColumn.DEW, values);
        }

        /** Relative humidity, %, which stands in where there is no dew point. */
        public Builder relativeHumidityPercent(double[] values) {
            return put(WeatherColumn.RELATIVE_HUMIDITY, values);
        }

        /** Wind speed, m/s, at 10 m or the height of the options. */
        public Builder windSpeedMs(double[] values) {
            return put(WeatherColumn.WIND, values);
        }

        /** Air pressure, kPa; without it, that of the standard atmosphere. */
        public Builder pressureKpa(double[] values) {
            return put(WeatherColumn.PRESSURE, values);
        }

        /** Long-wave irradiance of the sky, W/m²; without it, it is estimated from air, dew point and cloud. */
        public Builder skyLongWaveWm2(double[] values) {
            return put(WeatherColumn.LONG_WAVE, values);
        }

        /** Cloud cover, tenths; without it, it is estimated from the clearness of each day. */
        public Builder cloudTenths(double[] values) {
            return put(WeatherColumn.CLOUD, values);
        }

        /** What is done with gaps, light and the wind's height; its period is not asked. */
        public Builder options(RecordOptions value) {
            options = value;
            return this;
        }

        /**
         * The middle of the hour that irradiance is the mean of, hours after the start of its hour: 0.5 unless it is said.
         */
        public Builder centreHours(double value) {
            centreHours = WeatherReadOptions.CENTRE.check(value);
            return this;
        }

        /** Irradiance is an instant, some hours after the start of its hour. */
        public Builder instants(double offsetHours) {
            instants = true;
            return centreHours(offsetHours);
        }

        private Builder put(WeatherColumn column, double[] values) {
            if (!columns.isEmpty() && values.length != hours) {
                throw new IllegalArgumentException(column.label() + " has " + values.length + " values, "
                        + columns.keySet().iterator().next().label() + " has " + hours
                        + ": all columns have one length");
            }
            hours = values.length;
            Checks.within("hours of a record", hours, FEWEST_HOURS, MOST_HOURS, "h");
            columns.put(column, values.clone());
            return this;
        }

        /**
         * The finished record.
         *
         * @throws IllegalArgumentException if a column is missing, a gap too long, or the record cannot be trusted: the
         *     message says which column and hour, what was found, what was expected and what to do
         */
        public WeatherRecord build() {
            if (columns.isEmpty()) {
                throw new IllegalArgumentException(
                        "a weather record needs columns: irradiance, air, humidity and wind");
            }
            SunPath sun = SunPath.ofRecord(site, start, hours, centreHours, !instants);
            HourTable table = HourTable.of(
                    site,
                    sun,
                    WeatherYear.LongWaveOrigin.FILE,
                    EnumSet.copyOf(columns.keySet()),
                    TableHours.ofRecord(hours, start, options));
            columns.forEach((column, values) -> System.arraycopy(values, 0, table.column(column), 0, hours));
            try {
                return RecordChecks.record(table, start, source, new Findings());
            } catch (Refusal refusal) {
                throw refusal.of(source);
            }
        }
    }
}
