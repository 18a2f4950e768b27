package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;

/**
 * Changes from hour to hour that weather does not make. A single value far from both neighbours is taken out; a change
 * that lasts is told and kept, because fronts and local winds do much.
 */
final class Ramps {

    /** Limits on single values and on steps are common practice, no source. */
    private static final double AIR_SPIKE_K = 10;

    private static final double AIR_STEP_K = 15;
    private static final double DEW_SPIKE_K = 15;
    private static final double WIND_SPIKE_MS = 20;

    /**
     * Within three and six hours. The largest in seven published years are 16 and 21 K; a day's course of 30 K as a sine
     * makes 11 and 21 (own choice above these).
     */
    private static final double AIR_IN_THREE_HOURS_K = 22;

    private static final double AIR_IN_SIX_HOURS_K = 32;
    /** The largest in seven published years is 21 m/s (own choice above it). */
    private static final double WIND_IN_THREE_HOURS_MS = 25;
    /** Beaufort 12 (from memory): a typical year is chosen from months without a hurricane; seven have 22 at most. */
    private static final double HURRICANE_MS = 32.7;

    private final HourTable table;
    private final Findings findings;

    private Ramps(HourTable table, Findings findings) {
        this.table = table;
        this.findings = findings;
    }

    static void check(HourTable table, Findings findings) {
        Ramps ramps = new Ramps(table, findings);
        ramps.spikes(WeatherColumn.AIR, AIR_SPIKE_K);
        ramps.spikes(WeatherColumn.DEW, DEW_SPIKE_K);
        ramps.spikes(WeatherColumn.WIND, WIND_SPIKE_MS);
        if (!ramps.lasting(WeatherColumn.AIR, 1, AIR_STEP_K)
                && !ramps.lasting(WeatherColumn.AIR, 3, AIR_IN_THREE_HOURS_K)) {
            ramps.lasting(WeatherColumn.AIR, 6, AIR_IN_SIX_HOURS_K);
        }
        ramps.lasting(WeatherColumn.WIND, 3, WIND_IN_THREE_HOURS_MS);
        ramps.hurricane();
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
        findings.repair(
                spikes,
                "impossible jump of " + column.label() + " " + spikes.places() + " (" + spikes.first() + " "
                        + column.unit() + " first, more than " + Occurrences.number(limit)
                        + " from the hours before and after): taken as missing and filled");
    }

    /** A change that stays; where months of different years meet it is to be expected. */
    private boolean lasting(WeatherColumn column, int hours, double limit) {
        double[] values = table.column(column);
        Occurrences changes = new Occurrences(table);
        for (int hour = hours; hour < values.length; hour++) {
            double change = values[hour] - values[hour - hours];
            boolean seam = table.hours().closed() && HourOfYear.monthOf(hour) != HourOfYear.monthOf(hour - hours);
            if (!seam && Math.abs(change) > limit) {
                changes.add(hour, change);
            }
        }
        String unit = column == WeatherColumn.AIR ? "K" : column.unit();
        findings.warning(
                changes,
                column.label() + (hours == 1 ? " jumps within an hour " : " changes within " + hours + " hours ")
                        + changes.places() + " (by " + changes.first() + " " + unit + " first): kept, but hardly real");
        return changes.count() > 0;
    }

    private void hurricane() {
        double[] wind = table.column(WeatherColumn.WIND);
        Occurrences strong = new Occurrences(table);
        for (int hour = 0; hour < wind.length; hour++) {
            if (wind[hour] > HURRICANE_MS) {
                strong.add(hour, wind[hour]);
            }
        }
        findings.warning(
                strong,
                "wind of a hurricane, above " + Occurrences.number(HURRICANE_MS) + " m/s, " + strong.places() + " ("
                        + strong.first() + " m/s first): kept, but hardly of a typical year");
    }
}
