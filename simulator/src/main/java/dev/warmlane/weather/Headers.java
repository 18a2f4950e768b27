package dev.warmlane.weather;

import dev.warmlane.files.Printable;
import dev.warmlane.site.Site;

/** Turns what a header says into a site, with the line in the error. */
final class Headers {

    private static final double CENTRE_AT_MOST = 12;

    private Headers() {}

    /** The time that irradiance belongs to, hours after the start of its hour. */
    static double centre(FileText text, int line, String key, double hours) throws WeatherFileException {
        if (!(Math.abs(hours) <= CENTRE_AT_MOST)) {
            throw text.error(line, key, Double.toString(hours), "-12 to 12 hours", "Correct the header line.");
        }
        return hours;
    }

    static Site site(
            FileText text, int line, String name, double latitude, double longitude, double elevation, double offset)
            throws WeatherFileException {
        try {
            return new Site(Printable.quote(name.strip()), latitude, longitude, elevation, offset);
        } catch (IllegalArgumentException e) {
            throw text.error(
                    line,
                    "",
                    String.valueOf(e.getMessage()),
                    "the place of the weather station",
                    "Correct the header; longitude is positive east of Greenwich.");
        }
    }
}
