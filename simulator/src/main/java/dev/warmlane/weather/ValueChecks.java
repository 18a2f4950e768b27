package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import java.util.Arrays;

/**
 * Takes out values that cannot be and names them; what it takes out is filled by the next step or refused there. Limits
 * on jumps and on values that do not move are common practice, no source.
 */
final class ValueChecks {

    /** Instruments read a little below zero at night. */
    private static final double ZERO_OFFSET_WM2 = -10;

    private static final double AIR_SPIKE_K = 10;
    private static final double AIR_JUMP_K = 15;
    private static final double DEW_SPIKE_K = 15;
    private static final double WIND_SPIKE_MS = 20;
    private static final int STUCK_HOURS = 36;
    /** Hardly a place at 10 m is windier in the mean of a year, nor calmer (our own choice). */
    private static final double MEAN_WIND_AT_MOST_MS = 9;

    private static final double MEAN_WIND_AT_LEAST_MS = 0.3;

    private final HourTable table;
    private final Findings findings;

    private ValueChecks(HourTable table, Findings findings) {
        this.table = table;
        this.findings = findings;
    }

    static void check(HourTable table, Findings findings) throws Refusal {
        ValueChecks checks = new ValueChecks(table, findings);
        checks.needColumns();
        for (WeatherColumn column : WeatherColumn.values()) {
            checks.range(column);
        }
        checks.spikes(WeatherColumn.AIR, AIR_SPIKE_K);
        checks.spikes(WeatherColumn.DEW, DEW_SPIKE_K);
        checks.spikes(WeatherColumn.WIND, WIND_SPIKE_MS);
        checks.jumps();
        checks.constants();
        checks.meanWind();
    }

    private void needColumns() throws Refusal {
        for (WeatherColumn column : new WeatherColumn[] {
            WeatherColumn.GLOBAL, WeatherColumn.DIRECT, WeatherColumn.DIFFUSE, WeatherColumn.AIR, WeatherColumn.WIND
        }) {
            if (table.isEmpty(column)) {
                throw table.refuse(
                        -1,
                        column.label(),
                        "no value in the whole year" + table.codes.told(column),
                        "hourly values",
                        "Fetch a file that has them.");
            }
        }
        if (table.isEmpty(WeatherColumn.DEW) && table.isEmpty(WeatherColumn.RELATIVE_HUMIDITY)) {
            throw table.refuse(
                    -1,
                    "humidity",
                    "neither dew point nor relative humidity in the whole year",
                    "one of the two",
                    "Fetch a file that has it.");
        }
    }

    private void range(WeatherColumn column) throws Refusal {
        double[] values = table.column(column);
        double[] asGiven = values.clone();
        Occurrences outside = new Occurrences(table);
        Occurrences offsets = new Occurrences(table);
        for (int hour = 0; hour < values.length; hour++) {
            double value = values[hour];
            if (column.isIrradiance() && value < 0 && value >= ZERO_OFFSET_WM2) {
                offsets.add(hour, value);
                values[hour] = 0;
            } else if (value < column.lowest() || value > column.highest()) {
                outside.add(hour, value);
                table.throwOut(column, hour);
            } else if (value == 0) {
                values[hour] = 0; // no negative zero
            }
        }
        if (offsets.count() > 0) {
            findings.repair(
                    offsets,
                    "negative " + column.label() + " " + offsets.places() + " (" + offsets.first()
                            + " W/m² first): set to 0");
        }
        boolean fraction = column == WeatherColumn.RELATIVE_HUMIDITY && UnitGuess.isFraction(asGiven);
        if (outside.count() > GapFiller.MISSING_AT_MOST || fraction) {
            distrust(column, asGiven, outside);
        } else if (outside.count() > 0) {
            findings.repair(
                    outside,
                    "impossible " + column.label() + " " + outside.places() + " (" + outside.first() + " "
                            + column.unit() + " first, " + column.range() + " can be): taken as missing");
        }
    }

    /**
     * A column with so much in it that cannot be is in another unit or another column's: what could be is not believed
     * either. The year goes on without it where it can.
     */
    private void distrust(WeatherColumn column, double[] asGiven, Occurrences outside) throws Refusal {
        Occurrences doubtful = outside.count() > 0 ? outside : known(asGiven);
        String found = outside.count() > 0
                ? outside.count() + " impossible values"
                : "no value above " + Occurrences.number(column.highest() / 100);
        found += ", " + doubtful.first() + " first";
        String guess = UnitGuess.of(column, asGiven);
        if (!canDoWithout(column)) {
            throw table.refuse(
                    doubtful.firstHour(),
                    column.label(),
                    found,
                    column.range() + " " + column.unit(),
                    guess + " Correct the column, or fetch a file that has it right.");
        }
        Arrays.fill(table.column(column), Double.NaN);
        findings.warning(
                doubtful,
                column.label() + " has " + found + " (" + column.range() + " " + column.unit()
                        + " can be); the column is not used. " + guess);
    }

    private Occurrences known(double[] values) {
        Occurrences known = new Occurrences(table);
        for (int hour = 0; hour < values.length; hour++) {
            if (!Double.isNaN(values[hour])) {
                known.add(hour, values[hour]);
            }
        }
        return known;
    }

    private boolean canDoWithout(WeatherColumn column) {
        return switch (column) {
            case PRESSURE, LONG_WAVE, CLOUD -> true;
            case DEW -> !table.isEmpty(WeatherColumn.RELATIVE_HUMIDITY);
            case RELATIVE_HUMIDITY -> !table.isEmpty(WeatherColumn.DEW);
            default -> false;
        };
    }

    /** A value far from both neighbours on the same side. */
    private void spikes(WeatherColumn column, double limit) {
        double[] values = table.column(column);
        Occurrences spikes = new Occurrences(table);
        for (int hour = 1; hour < values.length - 1; hour++) {
            double up = values[hour] - values[hour - 1];
            double down = values[hour] - values[hour + 1];
            if ((up > limit && down > limit) || (up < -limit && down < -limit)) {
                spikes.add(hour, values[hour]);
                table.throwOut(column, hour);
                hour++;
            }
        }
        if (spikes.count() > 0) {
            findings.repair(
                    spikes,
                    "impossible jump of " + column.label() + " " + spikes.places() + " (" + spikes.first() + " "
                            + column.unit() + " first, more than " + Occurrences.number(limit)
                            + " from the hours before and after): taken as missing");
        }
    }

    /** A step of air temperature that stays; where months of different years meet it is to be expected. */
    private void jumps() {
        double[] air = table.column(WeatherColumn.AIR);
        Occurrences jumps = new Occurrences(table);
        for (int hour = 1; hour < air.length; hour++) {
            boolean seam = HourOfYear.monthOf(hour) != HourOfYear.monthOf(hour - 1);
            if (!seam && Math.abs(air[hour] - air[hour - 1]) > AIR_JUMP_K) {
                jumps.add(hour, air[hour] - air[hour - 1]);
            }
        }
        if (jumps.count() > 0) {
            findings.warning(
                    jumps,
                    "air temperature jumps within an hour " + jumps.places() + " (by " + jumps.first()
                            + " K first): kept, but hardly real");
        }
    }

    private void constants() throws Refusal {
        for (WeatherColumn column : new WeatherColumn[] {WeatherColumn.GLOBAL, WeatherColumn.AIR}) {
            if (longestRun(column)[1] == HourOfYear.HOURS) {
                throw table.refuse(
                        0, column.label(), "the same value in the whole year", "weather", "Fetch the file again.");
            }
        }
        stuck(WeatherColumn.AIR);
        stuck(WeatherColumn.DEW);
        stuck(WeatherColumn.WIND);
    }

    private void meanWind() {
        double mean = Arrays.stream(table.column(WeatherColumn.WIND))
                .filter(wind -> !Double.isNaN(wind))
                .average()
                .orElse(Double.NaN);
        if (mean > MEAN_WIND_AT_MOST_MS || mean < MEAN_WIND_AT_LEAST_MS) {
            findings.warning(
                    0,
                    0,
                    "mean wind speed of the year is " + Occurrences.number(mean) + " m/s, but "
                            + Occurrences.number(MEAN_WIND_AT_LEAST_MS) + " to "
                            + Occurrences.number(MEAN_WIND_AT_MOST_MS) + " m/s is usual at 10 m: kept; "
                            + (mean > MEAN_WIND_AT_MOST_MS
                                    ? "is the column in km/h, mph or knots?"
                                    : "was wind not measured?"));
        }
    }

    private void stuck(WeatherColumn column) {
        int[] run = longestRun(column);
        if (run[1] >= STUCK_HOURS) {
            findings.warning(
                    table.line[run[0]],
                    run[1],
                    column.label() + " does not change for " + run[1] + " hours from " + table.at(run[0])
                            + " (" + Occurrences.number(table.column(column)[run[0]]) + " " + column.unit()
                            + "): kept, but hardly measured");
        }
    }

    /** First hour and length of the longest run of one value. */
    private int[] longestRun(WeatherColumn column) {
        double[] values = table.column(column);
        int[] longest = {0, 0};
        int start = 0;
        for (int hour = 1; hour <= values.length; hour++) {
            if (hour == values.length || values[hour] != values[start]) {
                if (!Double.isNaN(values[start]) && hour - start > longest[1]) {
                    longest = new int[] {start, hour - start};
                }
                start = hour;
            }
        }
        return longest;
    }
}
