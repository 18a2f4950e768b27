package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.sun.SunPath;
import java.util.Arrays;

/**
 * Puts rows into the hours that they belong to, where closure found irradiance outside the hour of its row: labels err for
 * whole rows, so that temperature, humidity and wind go with it. What is left of the shift, within an hour, stays with the
 * sun. A time that the user gives is that of irradiance alone.
 */
final class RowMoves {

    private RowMoves() {}

    /**
     * Whole hours from the row that irradiance stands in to the one it belongs to; 0 where its time lies within the row.
     *
     * @param centreHours the time it belongs to, hours after the start of its row
     */
    static int wholeHours(double centreHours) {
        if (centreHours > 1) {
            return (int) Math.ceil(centreHours) - 1;
        }
        return centreHours < 0 ? (int) Math.floor(centreHours) : 0;
    }

    /**
     * Moves the rows in place, as the last step, so that everything told before names the lines that things stand in.
     *
     * @param irradianceOnly whether the other columns stay
     * @return the same with the sun of irradiance where it stands now
     */
    static ClosureCheck.Result move(HourTable table, ClosureCheck.Result time, boolean irradianceOnly) {
        SunPath sun = time.sun();
        if (sun == table.sun) {
            return time;
        }
        int[] whole = new int[12];
        double[] centres = new double[12];
        for (int month = 0; month < 12; month++) {
            double centre = sun.offsetHours(HourOfYear.firstHourOf(month + 1));
            whole[month] = wholeHours(centre);
            centres[month] = centre - whole[month];
        }
        if (Arrays.stream(whole).allMatch(hours -> hours == 0)) {
            return time;
        }
        for (WeatherColumn column : WeatherColumn.values()) {
            if (column.isIrradiance() || !irradianceOnly) {
                move(table.column(column), whole);
            }
        }
        SunPath moved = table.header.instants()
                ? SunPath.ofInstants(time.site(), table.year, centres)
                : SunPath.ofHourlyMeans(time.site(), table.year, centres);
        return new ClosureCheck.Result(time.site(), moved, time.closure());
    }

    /** Where months of different shifts meet, at midnight, an hour is the neighbour's. */
    private static void move(double[] values, int[] wholeOfMonth) {
        double[] before = values.clone();
        for (int hour = 0; hour < values.length; hour++) {
            int whole = wholeOfMonth[HourOfYear.monthOf(hour) - 1];
            values[hour] = before[Math.floorMod(hour - whole, values.length)];
        }
    }
}
