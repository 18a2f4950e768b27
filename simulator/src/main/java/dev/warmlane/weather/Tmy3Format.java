package dev.warmlane.weather;

import dev.warmlane.site.Site;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * TMY3 csv (Wilcox and Marion 2008, NREL/TP-581-43156): a line on the station, a line of column names, then rows with
 * date and time; 68 or 71 columns. Irradiance is of the hour that ends at the label.
 */
final class Tmy3Format implements WeatherFormat {

    private static final double MISSING = -9900;

    @Override
    public String title() {
        return "TMY3";
    }

    @Override
    public boolean recognises(FileText text) {
        String names = text.line(text.first() + 1);
        return names.startsWith("Date (MM/DD/YYYY)") || (names.startsWith("Date") && names.contains("GHI (W/m^2)"));
    }

    @Override
    public RawWeather read(FileText text) throws WeatherFileException {
        RawWeather raw = new RawWeather(text, RawHeader.hourEnding(title(), site(text), text.first()));
        String[] names = CsvRows.cells(text.line(text.first() + 1));
        List<CsvField> fields = fields(text, names);
        RowTime time = new RowTime();
        CsvRows.read(raw, text.first() + 2, text.lines() + 1, names.length, new int[] {0, 1}, time, fields);
        return raw;
    }

    private static Site site(FileText text) throws WeatherFileException {
        int line = text.first();
        String[] cells = CsvRows.cells(text.line(line));
        if (cells.length < 7) {
            throw text.error(
                    line,
                    "",
                    cells.length + " values",
                    "station number, name, state, UTC offset, latitude, longitude and elevation",
                    "Restore the first line of the file.");
        }
        double[] numbers = new double[4];
        String[] what = {"UTC offset", "latitude", "longitude", "elevation"};
        for (int i = 0; i < 4; i++) {
            numbers[i] = text.number(line, what[i], cells[3 + i]);
        }
        return Headers.site(text, line, cells[1].strip(), numbers[1], numbers[2], numbers[3], numbers[0]);
    }

    private static List<CsvField> fields(FileText text, String[] names) throws WeatherFileException {
        List<CsvField> fields = new ArrayList<>();
        add(fields, text, names, WeatherColumn.GLOBAL, "GHI (W/m^2)", 1);
        add(fields, text, names, WeatherColumn.DIRECT, "DNI (W/m^2)", 1);
        add(fields, text, names, WeatherColumn.DIFFUSE, "DHI (W/m^2)", 1);
        add(fields, text, names, WeatherColumn.AIR, "Dry-bulb (C)", 1);
        add(fields, text, names, WeatherColumn.DEW, "Dew-point (C)", 1);
        add(fields, text, names, WeatherColumn.RELATIVE_HUMIDITY, "RHum (%)", 1);
        add(fields, text, names, WeatherColumn.PRESSURE, "Pressure (mbar)", 0.1);
        add(fields, text, names, WeatherColumn.WIND, "Wspd (m/s)", 1);
        add(fields, text, names, WeatherColumn.CLOUD, "TotCld (tenths)", 1);
        return fields;
    }

    private static void add(
            List<CsvField> fields, FileText text, String[] names, WeatherColumn column, String name, double scale)
            throws WeatherFileException {
        for (int i = 0; i < names.length; i++) {
            if (names[i].strip().toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT))) {
                fields.add(new CsvField(column, i, name, scale, value -> value <= MISSING));
                return;
            }
        }
        throw text.error(
                text.first() + 1,
                name,
                "no such column among " + names.length,
                "the column names of TMY3",
                "Restore the second line of the file.");
    }

    /**
     * Date and time of a row. A spreadsheet turns 24:00 into 0:00, of the same date or of the next one; either way it
     * is the hour that follows 23:00.
     */
    private static final class RowTime implements CsvRows.TimeCells {
        @Override
        public void add(RawWeather raw, int line, @Nullable String[] cells) throws WeatherFileException {
            FileText text = raw.text();
            LocalDate date = date(text, line, cells[0]);
            int label = label(text, line, cells[1]);
            if (label == 0) {
                int last = raw.rows() - 1;
                boolean sameDay = last >= 0
                        && raw.hour(last) == 22
                        && raw.month(last) == date.getMonthValue()
                        && raw.day(last) == date.getDayOfMonth();
                if (!sameDay) {
                    LocalDate before = date.minusDays(1);
                    boolean stitched = last >= 0 && before.getDayOfMonth() == raw.day(last);
                    raw.add(
                            line,
                            stitched ? raw.year(last) : before.getYear(),
                            before.getMonthValue(),
                            before.getDayOfMonth(),
                            23);
                    return;
                }
                label = 24;
            }
            raw.add(line, date.getYear(), date.getMonthValue(), date.getDayOfMonth(), label - 1);
        }

        private static LocalDate date(FileText text, int line, @Nullable String cell) throws WeatherFileException {
            String[] parts = cell == null ? new String[0] : cell.split("/", -1);
            if (parts.length == 3) {
                try {
                    return LocalDate.of(
                            Integer.parseInt(parts[2]), Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
                } catch (NumberFormatException | DateTimeException e) {
                    // told below
                }
            }
            throw text.error(
                    line,
                    "Date",
                    cell == null ? "an empty cell" : "\"" + cell + "\"",
                    "a date as month/day/year",
                    "Correct the date; a spreadsheet may have rewritten it.");
        }

        private static int label(FileText text, int line, @Nullable String cell) throws WeatherFileException {
            String[] parts = cell == null ? new String[0] : cell.split(":", -1);
            if (parts.length >= 2 && parts[1].equals("00")) {
                try {
                    int hour = Integer.parseInt(parts[0]);
                    if (hour >= 0 && hour <= 24) {
                        return hour;
                    }
                } catch (NumberFormatException e) {
                    // told below
                }
            }
            throw text.error(
                    line,
                    "Time",
                    cell == null ? "an empty cell" : "\"" + cell + "\"",
                    "a full hour, 01:00 to 24:00",
                    "Correct the time; only hourly files can be read.");
        }
    }
}
