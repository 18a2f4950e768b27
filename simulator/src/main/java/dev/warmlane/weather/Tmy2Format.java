package dev.warmlane.weather;

import dev.warmlane.site.Site;
import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * TMY2 (Marion and Urban 1995, User's Manual for TMY2s, NREL): a header of fixed places with degrees and minutes, then
 * records of 142 characters. Irradiance is of the hour that ends at the label.
 */
final class Tmy2Format implements WeatherFormat {

    private static final Pattern HEADER =
            Pattern.compile("^ \\d{5} .{22} .{2} [ +-]?[ \\d]+ [NS] [ \\d]{2} [ \\d]{2} [EW].*");
    private static final Set<WeatherColumn> COLUMNS = EnumSet.complementOf(
            EnumSet.of(WeatherColumn.DIRECT_HORIZONTAL, WeatherColumn.SUNSHINE, WeatherColumn.LONG_WAVE));

    private static final int RECORD = 142;
    /** Years are written with two digits and lie in 1961 to 1990. */
    private static final int CENTURY = 1900;

    @Override
    public String title() {
        return "TMY2";
    }

    @Override
    public boolean recognises(FileText text) {
        Matcher header = HEADER.matcher(text.line(text.first()));
        return header.matches()
                || (text.line(text.first() + 1).length() == RECORD
                        && text.line(text.first() + 1).startsWith(" "));
    }

    @Override
    public RawWeather read(FileText text) throws WeatherFileException {
        RawWeather raw = new RawWeather(text, RawHeader.hourEnding(title(), site(text), text.first()));
        COLUMNS.forEach(raw::declare);
        for (int line = text.first() + 1; line <= text.lines(); line++) {
            String record = text.line(line);
            if (record.isBlank()) {
                continue;
            }
            if (record.length() < RECORD) {
                throw text.error(
                        line,
                        "",
                        record.length() + " characters",
                        "a record of " + RECORD,
                        "The line is cut off or lost its blanks: fetch the file again.");
            }
            Fields fields = new Fields(text, line, record);
            int hour = (int) fields.value("hour", 8, 9);
            raw.add(
                    line,
                    CENTURY + (int) fields.value("year", 2, 3),
                    (int) fields.value("month", 4, 5),
                    (int) fields.value("day", 6, 7),
                    hour - 1);
            raw.set(WeatherColumn.GLOBAL, fields.value("global horizontal", 18, 21, 9999, 1));
            raw.set(WeatherColumn.DIRECT, fields.value("direct normal", 24, 27, 9999, 1));
            raw.set(WeatherColumn.DIFFUSE, fields.value("diffuse horizontal", 30, 33, 9999, 1));
            raw.set(WeatherColumn.CLOUD, fields.value("total sky cover", 60, 61, 99, 1));
            raw.set(WeatherColumn.AIR, fields.value("dry bulb", 68, 71, 9999, 0.1));
            raw.set(WeatherColumn.DEW, fields.value("dew point", 74, 77, 9999, 0.1));
            raw.set(WeatherColumn.RELATIVE_HUMIDITY, fields.value("relative humidity", 80, 82, 999, 1));
            raw.set(WeatherColumn.PRESSURE, fields.value("pressure", 85, 88, 9999, 0.1));
            raw.set(WeatherColumn.WIND, fields.value("wind speed", 96, 98, 999, 0.1));
        }
        return raw;
    }

    private static Site site(FileText text) throws WeatherFileException {
        int line = text.first();
        String header = text.line(line);
        if (header.length() < 59) {
            throw text.error(
                    line,
                    "",
                    "a header of " + header.length() + " characters",
                    "59 characters with the station's place",
                    "Restore the first line of the file.");
        }
        Fields fields = new Fields(text, line, header);
        double latitude = fields.value("latitude degrees", 40, 41) + fields.value("latitude minutes", 43, 44) / 60;
        double longitude = fields.value("longitude degrees", 48, 50) + fields.value("longitude minutes", 52, 53) / 60;
        return Headers.site(
                text,
                line,
                header.substring(7, 29).strip(),
                header.charAt(37) == 'S' ? -latitude : latitude,
                header.charAt(45) == 'W' ? -longitude : longitude,
                fields.value("elevation", 56, 59),
                fields.value("time zone", 34, 36));
    }

    /** Numbers at fixed places, counted from 1, ends included. */
    private record Fields(FileText text, int line, String record) {

        double value(String name, int from, int to) throws WeatherFileException {
            String cell = record.substring(from - 1, to).strip();
            try {
                return Integer.parseInt(cell);
            } catch (NumberFormatException e) {
                throw text.error(
                        line,
                        name + " (places " + from + " to " + to + ")",
                        "\"" + cell + "\"",
                        "a whole number",
                        "The record has moved or is broken: fetch the file again.");
            }
        }

        double value(String name, int from, int to, int missing, double scale) throws WeatherFileException {
            double value = value(name, from, to);
            return value >= missing ? Double.NaN : value * scale;
        }
    }
}
