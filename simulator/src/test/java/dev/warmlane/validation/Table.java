package dev.warmlane.validation;

import dev.warmlane.MeasuredData;
import java.io.IOException;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Columns of numbers of a measured csv file, asked by their name. What is empty or no number is not a number. */
final class Table {

    private final Map<String, double[]> columns = new HashMap<>();
    private final int rows;

    private Table(String[] names, List<String> lines) {
        rows = lines.size();
        double[][] values = new double[names.length][rows];
        for (int row = 0; row < rows; row++) {
            String[] cells = lines.get(row).split(",", -1);
            for (int column = 0; column < names.length; column++) {
                values[column][row] = number(cells[column]);
            }
        }
        for (int column = 0; column < names.length; column++) {
            columns.put(names[column], values[column]);
        }
    }

    /** Reads a file of the folder of measured data; a test that asks is skipped without the folder. */
    static Table read(String file) throws IOException {
        List<String> lines = Files.readAllLines(MeasuredData.file(file));
        return new Table(lines.get(0).split(",", -1), lines.subList(1, lines.size()));
    }

    int rows() {
        return rows;
    }

    double[] column(String name) {
        return Objects.requireNonNull(columns.get(name), name);
    }

    double at(String name, int row) {
        return column(name)[row];
    }

    private static double number(String cell) {
        try {
            return Double.parseDouble(cell);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
