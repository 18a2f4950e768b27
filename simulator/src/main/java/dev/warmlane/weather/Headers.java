package dev.warmlane.weather;

import dev.warmlane.site.Site;

/** Turns what a header says into a site, with the line in the error. */
final class Headers {

    private Headers() {}

    static Site site(
            FileText text, int line, String name, double latitude, double longitude, double elevation, double offset)
            throws WeatherFileException {
        try {
            return new Site(name.isBlank() ? "unnamed" : name, latitude, longitude, elevation, offset);
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
