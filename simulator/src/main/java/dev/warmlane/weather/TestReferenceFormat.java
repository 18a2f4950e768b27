package dev.warmlane.weather;

import dev.warmlane.site.Site;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * German test reference years of 2010 and 2015, as their own headers describe them: lines in words on the place, a line of
 * column names, a line of three asterisks, then rows separated by blanks. Hours 1 to 24 of CET; beam and diffuse on the
 * horizontal, cloud in eighths, pressure in hPa. The place of 2010 is in degrees and minutes, that of 2015 in metres of a
 * Lambert projection.
 */
final class TestReferenceFormat implements WeatherFormat {

    private static final int HEADER_LINES_AT_MOST = 60;
    private static final double CET_HOURS = 1;
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    /** Latitude and longitude in degrees and minutes, and the height. */
    private static final Pattern PLACE = Pattern.compile(
            "Lage:\\s*(\\d+)\\D\\s*(\\d+)\\D\\s*([NS]).*?(\\d+)\\D\\s*(\\d+)\\D\\s*([OEW])\\b.*?(-?\\d+)\\s*Meter.*");

    private static final Pattern STATION = Pattern.compile("Station:\\s*(.*?)(?:\\s{2,}.*)?");
    private static final Pattern METRES = Pattern.compile("(\\w+)\\s*:\\s*(-?[\\d.]+)\\s*Meter.*");

    private record Quantity(WeatherColumn column, double scale, double missing) {}

    /** The codes for a missing value are those of the header's table. */
    private static final Map<String, Quantity> QUANTITIES = Map.of(
            "N", new Quantity(WeatherColumn.CLOUD, 10.0 / 8, 9),
            "WG", new Quantity(WeatherColumn.WIND, 1, 999),
            "t", new Quantity(WeatherColumn.AIR, 1, 999),
            "p", new Quantity(WeatherColumn.PRESSURE, 0.1, 9999),
            "RF", new Quantity(WeatherColumn.RELATIVE_HUMIDITY, 1, 999),
            "B", new Quantity(WeatherColumn.DIRECT_HORIZONTAL, 1, 9999),
            "D", new Quantity(WeatherColumn.DIFFUSE, 1, 9999),
            "A", new Quantity(WeatherColumn.LONG_WAVE, 1, 9999));

    private static final Set<String> TIME = Set.of("MM", "DD", "HH");

    @Override
    public String title() {
        return "German test reference year";
    }

    @Override
    public boolean recognises(FileText text) {
        return starsLine(text) > 1 && names(text).containsAll(TIME);
    }

    @Override
    public RawWeather read(FileText text) throws WeatherFileException {
        List<String> names = names(text);
        RawWeather raw = new RawWeather(text, RawHeader.hourEnding(title(), site(text), text.first()));
        for (Map.Entry<String, Quantity> wanted : QUANTITIES.entrySet()) {
            if (!names.contains(wanted.getKey())) {
                throw text.error(
                        starsLine(text) - 1,
                        wanted.getKey(),
                        "no such column",
                        "the columns of the years of 2010 or 2015",
                        "Restore the line of column names.");
            }
            raw.declare(wanted.getValue().column());
        }
        Row row = new Row(text, names);
        for (int line = starsLine(text) + 1; line <= text.lines(); line++) {
            if (!text.isBlank(line)) {
                row.read(raw, line);
            }
        }
        return raw;
    }

    /** The rows, cell by cell. */
    private static final class Row {
        private final FileText text;
        private final List<String> names;
        private final int month;
        private final int day;
        private final int hour;

        Row(FileText text, List<String> names) {
            this.text = text;
            this.names = names;
            this.month = names.indexOf("MM");
            this.day = names.indexOf("DD");
            this.hour = names.indexOf("HH");
        }

        void read(RawWeather raw, int line) throws WeatherFileException {
            String[] cells = BLANKS.split(text.line(line).strip(), -1);
            if (cells.length != names.size()) {
                throw text.error(
                        line,
                        "",
                        cells.length + " columns",
                        names.size() + " as in the line of names",
                        "The line is cut off or broken: fetch the file again, or complete the line.");
            }
            int monthOfYear = CsvRows.whole(text, line, "MM", cells[month]);
            int dayOfMonth = CsvRows.whole(text, line, "DD", cells[day]);
            int label = CsvRows.whole(text, line, "HH", cells[hour]);
            if (raw.rows() == 0 && monthOfYear == 12 && dayOfMonth == 31 && label == 24) {
                return; // the years of 2010 begin with their last record, which stands at the end again
            }
            raw.add(line, PlainFormat.YEAR_UNLESS_GIVEN, monthOfYear, dayOfMonth, label - 1);
            raw.hasNoYears();
            for (int i = 0; i < cells.length; i++) {
                Quantity quantity = QUANTITIES.get(names.get(i));
                if (quantity != null) {
                    double value = CsvRows.number(text, line, names.get(i), cells[i]);
                    if (value == quantity.missing || value <= -999) {
                        raw.missing(quantity.column, value);
                    } else {
                        raw.set(quantity.column, value * quantity.scale);
                    }
                }
            }
        }
    }

    private static int starsLine(FileText text) {
        for (int line = 1; line <= HEADER_LINES_AT_MOST; line++) {
            if (text.line(line).strip().equals("***")) {
                return line;
            }
        }
        return 0;
    }

    private static List<String> names(FileText text) {
        return List.of(BLANKS.split(text.line(starsLine(text) - 1).strip(), -1));
    }

    private static Site site(FileText text) throws WeatherFileException {
        String station = "";
        double east = Double.NaN;
        double north = Double.NaN;
        double height = Double.NaN;
        for (int line = 1; line < starsLine(text); line++) {
            String content = text.line(line).strip();
            Matcher place = PLACE.matcher(content);
            if (place.matches()) {
                double latitude = angle(place, 1) * (place.group(3).equals("S") ? -1 : 1);
                double longitude = angle(place, 4) * (place.group(6).equals("W") ? -1 : 1);
                return Headers.site(
                        text, line, station, latitude, longitude, Double.parseDouble(place.group(7)), CET_HOURS);
            }
            Matcher name = STATION.matcher(content);
            station = name.matches() ? name.group(1) : station;
            Matcher metres = METRES.matcher(content);
            if (metres.matches()) {
                double value = text.number(line, metres.group(1), metres.group(2));
                switch (metres.group(1)) {
                    case "Rechtswert" -> east = value;
                    case "Hochwert" -> north = value;
                    case "Hoehenlage" -> height = value;
                    default -> {}
                }
            }
        }
        if (Double.isNaN(east + north + height)) {
            throw text.error(
                    0,
                    "",
                    "no line \"Lage: ...\", nor all of Rechtswert, Hochwert and Hoehenlage",
                    "the place in the header",
                    "Restore the header of the file.");
        }
        double[] degrees = LambertConic.europe().degrees(east, north);
        return Headers.site(text, text.first(), "", degrees[0], degrees[1], height, CET_HOURS);
    }

    private static double angle(Matcher place, int group) {
        return Double.parseDouble(place.group(group)) + Double.parseDouble(place.group(group + 1)) / 60;
    }
}
