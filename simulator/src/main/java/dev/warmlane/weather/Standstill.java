package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import java.util.Arrays;

/**
 * Columns that do not change as weather does. One that stands still all year is refused, or not used where another can
 * stand in; wind and humidity, which a person may have set, are kept with a warning. A part of a year is told and kept.
 * Pressure may stand still: 1 % of it moves the demo's solar heat by 0.2 % and its gas by 0.7 %.
 */
final class Standstill {

    private final HourTable table;
    private final Findings findings;

    private Standstill(HourTable table, Findings findings) {
        this.table = table;
        this.findings = findings;
    }

    static void check(HourTable table, Findings findings) throws Refusal {
        Standstill checks = new Standstill(table, findings);
        for (WeatherColumn column : WeatherColumn.values()) {
            int hours = hoursFrom(column);
            if (hours <= HourOfYear.HOURS && !table.isEmpty(column)) {
                checks.check(column, hours);
            }
        }
    }

    /**
     * From how many hours on one value is told. Common practice, no source, for air, dew point and wind; for infrared and
     * relative humidity well above the longest in seven published years, 12 and 55 hours, the latter in fog. Light that
     * stands still while the sun moves is for {@link StillLight} to find.
     */
    private static int hoursFrom(WeatherColumn column) {
        return switch (column) {
            case AIR, DEW, WIND, LONG_WAVE -> 36;
            case RELATIVE_HUMIDITY -> 120;
            case GLOBAL, DIRECT, DIFFUSE -> HourOfYear.HOURS;
            case PRESSURE, CLOUD, DIRECT_HORIZONTAL, SUNSHINE -> Integer.MAX_VALUE;
        };
    }

    private void check(WeatherColumn column, int hoursFrom) throws Refusal {
        double[] values = table.column(column);
        int[] run = longestRun(values);
        double first = Arrays.stream(values)
                .filter(value -> !Double.isNaN(value))
                .findFirst()
                .orElse(Double.NaN);
        boolean allYear = Arrays.stream(values).allMatch(value -> Double.isNaN(value) || value == first);
        String value = Occurrences.number(first) + " " + column.unit();
        if (allYear && table.canDoWithout(column)) {
            Arrays.fill(values, Double.NaN);
            findings.warning(
                    table.line[0],
                    values.length,
                    column.label() + " is " + value + " in the whole "
                            + table.hours().word() + ": not measured, and not used");
        } else if (allYear && (column.isIrradiance() || column == WeatherColumn.AIR)) {
            throw table.refuse(
                    0,
                    column.label(),
                    value + ", the same value in the whole " + table.hours().word(),
                    "weather",
                    column == WeatherColumn.DIRECT || column == WeatherColumn.DIFFUSE
                            ? "Give a year in which global irradiance is split into direct and diffuse."
                            : Refusal.sentence(table.remedy()));
        } else if (column == WeatherColumn.WIND && run[1] > values.length / 2) {
            findings.gravest(
                    table.line[run[0]],
                    run[1],
                    "the wind is " + Occurrences.number(values[run[0]]) + " m/s in " + run[1]
                            + " hours on end: it was not measured. What wind takes from the water and the collectors is"
                            + " no better known than this one number: use a file with measured wind");
        } else if (run[1] >= hoursFrom) {
            findings.warning(
                    table.line[run[0]],
                    run[1],
                    column.label() + " does not change for " + run[1] + " hours from " + table.at(run[0]) + " ("
                            + Occurrences.number(values[run[0]]) + " " + column.unit()
                            + "): kept, but hardly measured");
        }
    }

    /** First hour and length of the longest run of one value. */
    private static int[] longestRun(double[] values) {
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
