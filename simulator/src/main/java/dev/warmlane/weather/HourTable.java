package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;

/** The 8760 hours of a file in local standard time, still with gaps (NaN) and faults. Worked on in place. */
final class HourTable {

    final FileText text;
    final RawHeader header;
    final Site site;
    /** The time that irradiance belongs to by the format's convention, hours after the start of the hour. */
    final double centreHours;
    /** The file's label, hours after the start of the hour. */
    final double labelHours;
    /** The line of each hour; where a row is missing, that of the row before. */
    final int[] line = new int[HourOfYear.HOURS];

    final int[] year = new int[HourOfYear.HOURS];
    private final Columns values = new Columns(HourOfYear.HOURS);

    HourTable(RawWeather raw, Site site, double centreHours, double labelHours) {
        this.text = raw.text();
        this.header = raw.header();
        this.site = site;
        this.centreHours = centreHours;
        this.labelHours = labelHours;
    }

    double[] column(WeatherColumn column) {
        return values.of(column);
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
