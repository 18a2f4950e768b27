package dev.warmlane.site;

import dev.warmlane.files.BoundedFile;
import dev.warmlane.files.Printable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Reads a horizon from a csv file in one of two layouts.
 *
 * <ul>
 *   <li>The horizon profile of PVGIS as its documentation describes it (Joint Research Centre, "Horizon profile", read): some
 *       lines of a heading, a line of column names that begins with {@code A} or {@code A_hor} and {@code H_hor}, then a line
 *       for each of 48 directions with azimuth (0 in the south, 90 in the west, −90 in the east) and height in degrees; what
 *       stands in further columns, the sun of two days, is passed over.
 *   <li>Two columns, azimuth in degrees clockwise from north and height in degrees, with or without the line
 *       {@code azimuth,height} above them.
 * </ul>
 *
 * Columns are parted by tabs, semicolons or commas; with the first two a decimal comma is read too.
 */
public final class HorizonFile {

    /** The longest file, MB; own choice. */
    private static final int MEGABYTES = 1;

    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)");

    private static final double SOUTH_DEG = 180;

    private HorizonFile() {}

    /**
     * The horizon of a file.
     *
     * @throws IOException if it cannot be opened or is longer than 1 MB
     * @throws IllegalArgumentException naming the line, what is wrong with it and how to mend it
     */
    public static Horizon read(Path file) throws IOException {
        return parse(new String(BoundedFile.read(file, MEGABYTES, "a horizon"), StandardCharsets.UTF_8));
    }

    /** The same of a text. */
    static Horizon parse(String text) {
        List<String> lines =
                (text.startsWith("\uFEFF") ? text.substring(1) : text).lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String[] names = cells(lines.get(i));
            if (names.length > 1 && (names[0].equals("A") || names[0].equals("A_hor")) && names[1].equals("H_hor")) {
                return rows(lines, i + 1, SOUTH_DEG, true);
            }
        }
        int first = 0;
        while (first < lines.size() && lines.get(first).isBlank()) {
            first++;
        }
        boolean named = first < lines.size() && isHeading(cells(lines.get(first)));
        return rows(lines, named ? first + 1 : first, 0, false);
    }

    private static boolean isHeading(String[] names) {
        return names.length == 2
                && names[0].toLowerCase(Locale.ROOT).equals("azimuth")
                && names[1].toLowerCase(Locale.ROOT).equals("height");
    }

    private static Horizon rows(List<String> lines, int from, double zeroDeg, boolean more) {
        List<Horizon.Height> heights = new ArrayList<>();
        int i = from;
        while (i < lines.size()) {
            String line = lines.get(i);
            i++;
            if (line.isBlank()) {
                if (more && !heights.isEmpty()) {
                    break;
                }
                continue;
            }
            String[] cells = cells(line);
            if (cells.length < 2 || (!more && cells.length > 2)) {
                throw wrong(i, line, "an azimuth and a height, as in 90,12.5");
            }
            double azimuth = number(i, cells[0]);
            double height = number(i, cells[1]);
            double turned = (azimuth + zeroDeg + 720) % 360;
            try {
                Horizon.AZIMUTH.from(-360).check(azimuth);
                heights.add(new Horizon.Height(turned, height));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException("line " + i + ": " + e.getMessage(), e);
            }
        }
        if (heights.isEmpty()) {
            throw new IllegalArgumentException(
                    "holds no horizon: it must have lines of an azimuth, degrees clockwise from"
                            + " north, and a height in degrees, or be a horizon profile of PVGIS as csv");
        }
        return new Horizon(heights);
    }

    private static String[] cells(String line) {
        boolean apart = line.indexOf('\t') >= 0 || line.indexOf(';') >= 0;
        String[] cells = line.strip().split(apart ? "[\\t;]+" : ",", -1);
        for (int i = 0; i < cells.length; i++) {
            String cell = cells[i].strip();
            cells[i] = apart ? cell.replace(',', '.') : cell;
        }
        return cells;
    }

    private static double number(int line, String cell) {
        if (!NUMBER.matcher(cell).matches()) {
            throw wrong(line, cell, "a number of degrees");
        }
        return Double.parseDouble(cell);
    }

    private static IllegalArgumentException wrong(int line, String found, String wanted) {
        return new IllegalArgumentException(
                "line " + line + ": found \"" + Printable.quote(found) + "\"; wanted " + wanted);
    }
}
