package dev.warmlane.weather.generate;

import dev.warmlane.files.BoundedFile;
import dev.warmlane.files.Printable;
import dev.warmlane.site.Site;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A small csv with the monthly normals of a site and the seed of its typical year, for a person to write and read:
 *
 * <pre>{@code
 * # Warmlane monthly normals csv
 * # name: Windlemouth
 * # latitude, degrees north: 48
 * # longitude, degrees east: -123
 * # elevation, m: 20
 * # utc offset, h: -8
 * # seed: 1
 * month,global kWh/m2 day,air degC,daily range K,dew point degC,wind m/s
 * 1,1.05,6.2,4.8,3.6,5.2
 * }</pre>
 *
 * <p>Twelve rows, January first. A seventh column {@code pressure kPa} may follow. Other lines that start with # are
 * remarks.
 *
 * @param site where
 * @param normals the twelve months
 * @param seed the seed of the year
 */
public record NormalsFile(Site site, MonthlyNormals normals, long seed) {

    private static final List<String> COLUMNS = List.of(
            "month", "global kwh/m2 day", "air degc", "daily range k", "dew point degc", "wind m/s", "pressure kpa");

    private static final int MEGABYTES_AT_MOST = 1;

    private static final int WITHOUT_PRESSURE = COLUMNS.size() - 1;

    /** The typical year of this file: {@link TypicalYearGenerator#generate} of its three parts. */
    public WeatherYear generate() {
        return TypicalYearGenerator.generate(site, normals, seed);
    }

    /**
     * Reads a file, UTF-8.
     *
     * @throws IOException if the file cannot be read
     * @throws IllegalArgumentException if it is not of this form, with file, line, what was found and what is allowed
     */
    public static NormalsFile read(Path file) throws IOException {
        byte[] bytes = BoundedFile.read(file, MEGABYTES_AT_MOST, "a file of monthly normals");
        String text = new String(bytes, StandardCharsets.UTF_8);
        return new Reader(Printable.line(file.toString()), text.lines().toList()).read();
    }

    /** One reading of a file. */
    private record Reader(String file, List<String> lines, Map<String, Integer> keyLines) {

        Reader(String file, List<String> lines) {
            this(file, lines, new HashMap<>());
        }

        NormalsFile read() {
            int line = 0;
            for (; line < lines.size() && lines.get(line).startsWith("#"); line++) {
                int colon = lines.get(line).indexOf(':');
                if (colon > 0) {
                    keyLines.put(lines.get(line).substring(1, colon).strip().toLowerCase(Locale.ROOT), line);
                }
            }
            MonthlyNormals normals = normals(line);
            double seed = number("seed");
            if (seed != Math.rint(seed) || Math.abs(seed) > 1e15) {
                throw wrong(
                        keyLine("seed"),
                        "seed " + Printable.quote(value("seed")),
                        "a whole number of at most 15 digits");
            }
            try {
                Site site = new Site(
                        Printable.quote(value("name")),
                        number("latitude, degrees north"),
                        number("longitude, degrees east"),
                        number("elevation, m"),
                        number("utc offset, h"));
                return new NormalsFile(site, normals, (long) seed);
            } catch (OutOfRange already) {
                throw already;
            } catch (IllegalArgumentException range) {
                throw new OutOfRange(file + ": " + range.getMessage() + "; correct the header line");
            }
        }

        private MonthlyNormals normals(int header) {
            List<String> names = header < lines.size()
                    ? Arrays.stream(lines.get(header).toLowerCase(Locale.ROOT).split(",", -1))
                            .map(String::strip)
                            .toList()
                    : List.of();
            if (!names.equals(COLUMNS) && !names.equals(COLUMNS.subList(0, WITHOUT_PRESSURE))) {
                throw wrong(
                        header,
                        "the column names " + Printable.cut(names.toString(), 200),
                        String.join(", ", COLUMNS) + " in this order, the last if there is pressure");
            }
            double[][] columns = new double[names.size()][12];
            for (int month = 1; month <= 12; month++) {
                row(header + month, month, columns);
            }
            for (int line = header + 13; line < lines.size(); line++) {
                if (!lines.get(line).isBlank()) {
                    throw wrong(line, "another row", "twelve months");
                }
            }
            MonthlyNormals.Builder builder = MonthlyNormals.builder()
                    .globalHorizontalKwhM2Day(columns[1])
                    .airTemperatureC(columns[2])
                    .dailyRangeK(columns[3])
                    .dewPointC(columns[4])
                    .windSpeedMs(columns[5]);
            if (names.size() > WITHOUT_PRESSURE) {
                builder.pressureKpa(columns[WITHOUT_PRESSURE]);
            }
            try {
                return builder.build();
            } catch (IllegalArgumentException range) {
                throw new OutOfRange(file + ": " + range.getMessage() + "; correct the cell");
            }
        }

        private void row(int line, int month, double[][] columns) {
            String[] cells = line < lines.size() ? lines.get(line).split(",", -1) : new String[0];
            if (cells.length != columns.length) {
                throw wrong(line, cells.length + " cells", columns.length + " cells for month " + month);
            }
            for (int i = 0; i < cells.length; i++) {
                columns[i][month - 1] = parse(line, COLUMNS.get(i), cells[i].strip());
            }
            if (columns[0][month - 1] != month) {
                throw wrong(
                        line, "month " + Printable.quote(cells[0].strip()), "month " + month + ", the twelve in order");
            }
        }

        private int keyLine(String key) {
            Integer line = keyLines.get(key);
            if (line == null) {
                throw new OutOfRange(file + ": no header line \"# " + key + ": ...\"; add it before the column names");
            }
            return line;
        }

        private String value(String key) {
            String line = lines.get(keyLine(key));
            return line.substring(line.indexOf(':') + 1).strip();
        }

        private double number(String key) {
            return parse(keyLine(key), key, value(key));
        }

        private double parse(int line, String what, String text) {
            try {
                return Double.parseDouble(text);
            } catch (NumberFormatException notANumber) {
                throw wrong(line, what + " \"" + Printable.quote(text) + "\"", "a number with a decimal point");
            }
        }

        private OutOfRange wrong(int line, String found, String allowed) {
            return new OutOfRange(file + ":" + (line + 1) + ": found " + found + ", allowed is " + allowed);
        }
    }

    /** A finding that already says where in the file it is. */
    private static final class OutOfRange extends IllegalArgumentException {
        private static final long serialVersionUID = 1;

        OutOfRange(String message) {
            super(message);
        }
    }
}
