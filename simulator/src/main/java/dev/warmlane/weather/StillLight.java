package dev.warmlane.weather;

import dev.warmlane.sun.SunPath;
import java.util.DoubleSummaryStatistics;
import java.util.stream.IntStream;

/** One value of light for hours while the sun moves; at night and near the pole there is nothing to see. */
final class StillLight {

    /** The longest in seven published years is 3 hours (own choice above it). */
    private static final int HOURS = 6;
    /** Of the cosine of the zenith angle: an hour or two of a day's course (own choice). */
    private static final double SUN_MOVES = 0.2;

    private StillLight() {}

    static void check(HourTable table, WeatherColumn column, SunPath sun, Findings findings) {
        double[] values = table.column(column);
        Occurrences still = new Occurrences(table);
        int start = 0;
        for (int hour = 1; hour <= values.length; hour++) {
            if (hour < values.length && values[hour] == values[start]) {
                continue;
            }
            if (values[start] > 0 && hour - start >= HOURS && moves(sun, start, hour)) {
                for (int h = start; h < hour; h++) {
                    still.add(h, values[h]);
                }
            }
            start = hour;
        }
        findings.warning(
                still,
                column.label() + " stands still while the sun moves " + still.places() + " (" + still.first()
                        + " W/m² first): kept, but hardly measured");
    }

    private static boolean moves(SunPath sun, int start, int end) {
        DoubleSummaryStatistics height =
                IntStream.range(start, end).mapToDouble(sun::cosZenith).summaryStatistics();
        return height.getMax() - height.getMin() > SUN_MOVES;
    }
}
