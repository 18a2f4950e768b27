package dev.warmlane.weather;

import dev.warmlane.site.Site;
import dev.warmlane.units.Units;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * EPW: eight header lines, then rows of 32 or 35 columns. The label is hour 1 to 24 in local standard time. Its minute is
 * the same in all rows and says nothing: 0 and 60, but 30 and others too, stand in files whose rows are of the same hours.
 * Irradiance is of the hour that ends at the label, and closure tests it. A value at or above its missing code is missing.
 */
final class EpwFormat implements WeatherFormat {

    private static final List<CsvField> FIELDS = List.of(
            field(WeatherColumn.AIR, 7, "dry bulb", 1, 99.9),
            field(WeatherColumn.DEW, 8, "dew point", 1, 99.9),
            field(WeatherColumn.RELATIVE_HUMIDITY, 9, "relative humidity", 1, 999),
            field(WeatherColumn.PRESSURE, 10, "pressure", Units.PASCAL, 999_999),
            field(WeatherColumn.LONG_WAVE, 13, "horizontal infrared", 1, 9999),
            field(WeatherColumn.GLOBAL, 14, "global horizontal", 1, 9999),
            field(WeatherColumn.DIRECT, 15, "direct normal", 1, 9999),
            field(WeatherColumn.DIFFUSE, 16, "diffuse horizontal", 1, 9999),
            field(WeatherColumn.WIND, 22, "wind speed", 1, 999),
            field(WeatherColumn.CLOUD, 23, "total sky cover", 1, 99));

    /** The oldest files have 32 of them. */
    private static final int COLUMNS = 35;

    private static final int HEADER_LINES_AT_MOST = 30;

    @Override
    public String title() {
        return "EPW";
    }

    @Override
    public boolean recognises(FileText text) {
        return text.line(text.first()).startsWith("LOCATION,");
    }

    @Override
    public RawWeather read(FileText text) throws WeatherFileException {
        RawWeather raw = new RawWeather(text, RawHeader.hourEnding(title(), site(text), text.first()));
        CsvRows.read(raw, firstRow(text), text.lines() + 1, COLUMNS, new int[] {0, 1, 2, 3, 4}, new RowTime(), FIELDS);
        return raw;
    }

    private static CsvField field(WeatherColumn column, int place, String name, double scale, double missing) {
        return new CsvField(column, place - 1, name + " (field " + place + ")", scale, value -> value >= missing);
    }

    private static int firstRow(FileText text) throws WeatherFileException {
        for (int line = text.first() + 1; line <= text.first() + HEADER_LINES_AT_MOST; line++) {
            if (text.line(line).startsWith("DATA PERIODS")) {
                String[] cells = CsvRows.cells(text.line(line));
                double perHour = cells.length > 2 ? text.number(line, "records per hour", cells[2]) : 1;
                if (perHour != 1) {
                    throw text.error(
                            line,
                            "records per hour",
                            cells[2].strip(),
                            "1",
                            "Only hourly files can be read: average the file to hours.");
                }
                return line + 1;
            }
        }
        throw text.error(
                0,
                "",
                "no line DATA PERIODS",
                "eight header lines, the last of them DATA PERIODS",
                "Restore the header of the file.");
    }

    private static Site site(FileText text) throws WeatherFileException {
        int line = text.first();
        String[] cells = CsvRows.cells(text.line(line));
        if (cells.length < 10) {
            throw text.error(
                    line,
                    "",
                    cells.length + " values",
                    "10: LOCATION, city, region, country, source, number, latitude,"
                            + " longitude, UTC offset, elevation",
                    "Restore the first line of the file.");
        }
        return Headers.site(
                text,
                line,
                cells[1].strip(),
                text.number(line, "latitude", cells[6]),
                text.number(line, "longitude", cells[7]),
                text.number(line, "elevation", cells[9]),
                text.number(line, "UTC offset", cells[8]));
    }

    /** The time of a row, whose minute must be that of the rows before. */
    private static final class RowTime implements CsvRows.TimeCells {

        private int minuteOfRows = -1;

        @Override
        public void add(RawWeather raw, int line, @Nullable String[] cells) throws WeatherFileException {
            FileText text = raw.text();
            int given = CsvRows.whole(text, line, "minute", cells[4]);
            int minute = given % 60;
            if (given < 0 || given > 60 || (minuteOfRows >= 0 && minute != minuteOfRows)) {
                throw text.error(
                        line,
                        "minute",
                        Integer.toString(given),
                        minuteOfRows < 0 ? "0 to 60" : minuteOfRows + " as in the rows before",
                        "Only hourly files can be read: one row an hour, all of the same minute.");
            }
            minuteOfRows = minute;
            raw.add(
                    line,
                    CsvRows.whole(text, line, "year", cells[0]),
                    CsvRows.whole(text, line, "month", cells[1]),
                    CsvRows.whole(text, line, "day", cells[2]),
                    CsvRows.whole(text, line, "hour", cells[3]) - 1);
        }
    }
}
