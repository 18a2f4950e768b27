package dev.warmlane.weather;

import dev.warmlane.site.Site;

/**
 * What a file says of itself.
 *
 * @param format the name of the format
 * @param site the place; for a file in UTC its offset is 0 until the time is resolved
 * @param siteLine the line with the place
 * @param utc whether the file's hours are of UTC and not of local standard time
 * @param instants whether irradiance is an instant and not a mean over an hour
 * @param centreHours the time that irradiance belongs to, hours after the start of the row's hour
 * @param centreKnown whether the file or its format tells that time
 * @param labelHours the file's own label, hours after the start of the row's hour
 * @param longWave where the long-wave column comes from, if there is one
 */
record RawHeader(
        String format,
        Site site,
        int siteLine,
        boolean utc,
        boolean instants,
        double centreHours,
        boolean centreKnown,
        double labelHours,
        WeatherYear.LongWaveOrigin longWave) {

    /** A file of local standard time whose labels are the end of the hour that irradiance is the mean of. */
    static RawHeader hourEnding(String format, Site site, int siteLine) {
        return new RawHeader(format, site, siteLine, false, false, 0.5, true, 1, WeatherYear.LongWaveOrigin.FILE);
    }
}
