package dev.warmlane.weather;

import java.util.Locale;

/** Counts where one fault occurs and writes the places down as a person would: the first few, and how many more. */
final class Occurrences {

    private static final int NAMED = 3;

    private final HourTable table;
    private final int[] hours = new int[NAMED];
    private int count;
    private double first = Double.NaN;

    Occurrences(HourTable table) {
        this.table = table;
    }

    void add(int hour, double value) {
        if (count < NAMED) {
            hours[count] = hour;
        }
        if (count == 0) {
            first = value;
        }
        count++;
    }

    int count() {
        return count;
    }

    int firstHour() {
        return hours[0];
    }

    int firstLine() {
        return table.line[hours[0]];
    }

    /** The value at the first occurrence. */
    String first() {
        return number(first);
    }

    /** For example {@code on lines 12, 13, 14 and 5 more}, or {@code in hours 3 and 4} of a year without a file. */
    String places() {
        StringBuilder text =
                new StringBuilder(table.placeWord(count)).append(' ').append(table.place(hours[0]));
        for (int i = 1; i < Math.min(count, NAMED); i++) {
            text.append(i == count - 1 ? " and " : ", ").append(table.place(hours[i]));
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
