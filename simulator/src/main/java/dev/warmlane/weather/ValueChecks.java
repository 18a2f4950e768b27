package dev.warmlane.weather;

import java.util.Arrays;

/**
 * Takes out values that cannot be and names them; what it takes out is filled by the next step or refused there.
 */
final class ValueChecks {

    /** Instruments read a little below zero at night. */
    private static final double ZERO_OFFSET_WM2 = -10;

    /** Hardly a place at 10 m is windier in the mean of a year, nor calmer (our own choice). */
    private static final double MEAN_WIND_AT_MOST_MS = 9;

    private static final double MEAN_WIND_AT_LEAST_MS = 0.3;

    /**
     * The upper end of light air on the Beaufort scale, which is 0.3 to 1.5 m/s at 10 m (WMO No. 8, from memory). That a mean
     * below it is told is our own choice: of the real files at hand stations have 3.1 to 4.2 m/s, one grid in a calm plain 1.2.
     */
    private static final double LIGHT_AIR_MS = 1.5;

    private final HourTable table;
    private final Findings findings;

    private ValueChecks(HourTable table, Findings findings) {
        this.table = table;
        this.findings = findings;
    }

    static void check(HourTable table, WeatherReadOptions options, Findings findings) throws Refusal {
        ValueChecks checks = new ValueChecks(table, findings);
        if (LightParts.areMissing(table)) {
            for (WeatherColumn column : WeatherColumn.values()) {
                if (column.isIrradiance() || column == WeatherColumn.SUNSHINE) {
                    checks.range(column);
                }
            }
            LightParts.complete(table, options, findings);
        }
        DewPointGuess.fill(table, findings);
        checks.needColumns();
        for (WeatherColumn column : WeatherColumn.values()) {
            checks.range(column);
        }
        WindHeight.carry(table, options, findings);
        Ramps.check(table, findings);
        Standstill.check(table, findings);
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
                        "no value in the whole " + table.hours().word() + table.codes.told(column),
                        "hourly values",
                        Refusal.sentence(table.remedy()));
            }
        }
        if (table.isEmpty(WeatherColumn.DEW) && table.isEmpty(WeatherColumn.RELATIVE_HUMIDITY)) {
            throw table.refuse(
                    -1,
                    "humidity",
                    "neither dew point nor relative humidity in the whole "
                            + table.hours().word(),
                    "one of the two",
                    Refusal.sentence(table.remedy()));
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
        if (outside.count() > table.hours().missingAtMost() || fraction) {
            distrust(column, asGiven, outside);
        } else if (outside.count() > 0) {
            findings.repair(
                    outside,
                    "impossible " + column.label() + " " + outside.places() + " (" + outside.first() + " "
                            + column.unit() + " first, " + column.range() + " can be): taken as missing and filled");
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
        if (!table.canDoWithout(column)) {
            throw table.refuse(
                    doubtful.firstHour(),
                    column.label(),
                    found,
                    column.range() + " " + column.unit(),
                    guess + " " + Refusal.sentence(table.remedy()));
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

    private void meanWind() {
        double mean = Arrays.stream(table.column(WeatherColumn.WIND))
                .filter(wind -> !Double.isNaN(wind))
                .average()
                .orElse(Double.NaN);
        if (mean > MEAN_WIND_AT_MOST_MS || mean < MEAN_WIND_AT_LEAST_MS) {
            findings.warning(
                    0,
                    0,
                    "mean wind speed of the " + table.hours().word() + " is " + Occurrences.number(mean) + " m/s, but "
                            + Occurrences.number(MEAN_WIND_AT_LEAST_MS) + " to "
                            + Occurrences.number(MEAN_WIND_AT_MOST_MS) + " m/s is usual at 10 m: kept; "
                            + (mean > MEAN_WIND_AT_MOST_MS
                                    ? "is the column in km/h, mph or knots?"
                                    : "was wind not measured?"));
        } else if (mean < LIGHT_AIR_MS) {
            findings.note(
                    0,
                    0,
                    "mean wind speed of the " + table.hours().word() + " is " + Occurrences.number(mean)
                            + " m/s, light air: kept; wind of a grid may be calmer than the place, and calm air forecasts a"
                            + " warmer pool than a windy one: compare a station nearby");
        }
    }
}
