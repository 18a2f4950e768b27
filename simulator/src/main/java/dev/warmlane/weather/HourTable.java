package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;

/** The 8760 hours of a file in local standard time, still with gaps (NaN) and faults. Worked on in place. */
final class HourTable {

    final FileText text;
    final RawHeader header;
    final MissingCodes codes;
    final Site site;
    /** The time that irradiance belongs to by the format's convention, hours after the start of the hour. */
    final double centreHours;
    /** The file's label, hours after the start of the hour. */
    final double labelHours;
    /** The line of each hour; where a row is missing, that of the row before. */
    final int[] line = new int[HourOfYear.HOURS];

    final int[] year = new int[HourOfYear.HOURS];
    private final Columns values = new Columns(HourOfYear.HOURS);
    /** What was taken out because it cannot be. */
    private final Columns thrownOut = new Columns(HourOfYear.HOURS);

    HourTable(RawWeather raw, Site site, double centreHours, double labelHours) {
        this.text = raw.text();
        this.header = raw.header();
        this.codes = raw.codes();
        this.site = site;
        this.centreHours = centreHours;
        this.labelHours = labelHours;
    }

    double[] column(WeatherColumn column) {
        return values.of(column);
    }

    /** Takes out a value that cannot be; it counts as missing from here on, and the messages remember it. */
    void throwOut(WeatherColumn column, int hour) {
        double[] there = column(column);
        thrownOut.of(column)[hour] = there[hour];
        there[hour] = Double.NaN;
    }

    /** The value that was taken out of an hour; NaN where none was. */
    double thrownOut(WeatherColumn column, int hour) {
        return thrownOut.of(column)[hour];
    }

    boolean isEmpty(WeatherColumn column) {
        for (double value : column(column)) {
            if (!Double.isNaN(value)) {
                return false;
            }
        }
        return true;
    }
}
