package dev.warmlane.weather;

import java.util.Locale;

/** Counts where one fault occurs and writes the lines down as a person would: the first few, and how many more. */
final class Occurrences {

    private static final int NAMED = 3;

    private final int[] lines = new int[NAMED];
    private int count;
    private double first = Double.NaN;

    void add(int line, double value) {
        if (count < NAMED) {
            lines[count] = line;
        }
        if (count == 0) {
            first = value;
        }
        count++;
    }

    int count() {
        return count;
    }

    int firstLine() {
        return lines[0];
    }

    /** The value at the first occurrence. */
    String first() {
        return number(first);
    }

    /** For example {@code lines 12, 13, 14 and 5 more}. */
    String lines() {
        StringBuilder text = new StringBuilder(count == 1 ? "line " : "lines ").append(lines[0]);
        for (int i = 1; i < Math.min(count, NAMED); i++) {
            text.append(i == count - 1 ? " and " : ", ").append(lines[i]);
        }
        if (count > NAMED) {
            text.append(" and ").append(count - NAMED).append(" more");
        }
        return text.toString();
    }

    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceFirst("\\.?0+$", "");
    }
}
