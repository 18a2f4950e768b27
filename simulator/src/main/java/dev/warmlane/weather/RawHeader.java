package dev.warmlane.weather;

import dev.warmlane.site.Site;

/**
 * What a file says of itself.
 *
 * @param format the name of the format
 * @param site the place; its offset is 0 where the file does not tell it
 * @param siteLine the line with the place
 * @param clock what the file's hours are of
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
        Clock clock,
        boolean instants,
        double centreHours,
        boolean centreKnown,
        double labelHours,
        WeatherYear.LongWaveOrigin longWave) {

    /** What the hours of a file are of. */
    enum Clock {
        /** Local standard time. */
        LOCAL_STANDARD,
        /** UTC, and the file does not tell local time. */
        UTC,
        /** UTC, and the site has the offset that the file tells. */
        UTC_WITH_OFFSET
    }

    /** A file of local standard time whose labels are the end of the hour that irradiance is the mean of. */
    static RawHeader hourEnding(String format, Site site, int siteLine) {
        return new RawHeader(
                format, site, siteLine, Clock.LOCAL_STANDARD, false, 0.5, true, 1, WeatherYear.LongWaveOrigin.FILE);
    }
}
