package dev.warmlane.weather;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Small tools to break the lines of a file. */
final class Breakage {

    private Breakage() {}

    /** Sets a cell, counted from 1, of a comma separated line, counted from 1. */
    static void set(List<String> lines, int line, int cell, String value) {
        setCell(lines, line, cell, value, ',');
    }

    /** The same where another character stands between the cells. */
    static void setCell(List<String> lines, int line, int cell, String value, char separator) {
        String[] cells = lines.get(line - 1).split(String.valueOf(separator), -1);
        cells[cell - 1] = value;
        lines.set(line - 1, String.join(String.valueOf(separator), cells));
    }

    static String get(List<String> lines, int line, int cell) {
        return lines.get(line - 1).split(",", -1)[cell - 1];
    }

    /** Gives the lines from first to last the cells from {@code firstCell} on of the line that many further down. */
    static void shift(List<String> lines, int first, int last, int by, int firstCell, int lastCell) {
        List<String> before = List.copyOf(lines);
        for (int line = first; line <= last; line++) {
            for (int cell = firstCell; cell <= lastCell; cell++) {
                set(lines, line, cell, get(before, line + by, cell));
            }
        }
    }

    static WeatherYear read(Path folder, List<String> lines) throws IOException {
        return read(folder, String.join("\n", lines) + "\n");
    }

    static WeatherYear read(Path folder, String text) throws IOException {
        return WeatherFiles.read(write(folder, text));
    }

    static Path write(Path folder, String text) throws IOException {
        return Files.write(folder.resolve("broken.txt"), text.getBytes(StandardCharsets.UTF_8));
    }
}
