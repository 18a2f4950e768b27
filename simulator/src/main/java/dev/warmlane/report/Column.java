package dev.warmlane.report;

import dev.warmlane.files.Printable;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;

/**
 * A column of a table.
 *
 * @param header its heading for people, line breaks allowed
 * @param unit the unit of its numbers; empty for words and plain counts
 * @param csvName its name in a csv file, snake case, with the unit at its end
 * @param decimals decimals of its numbers for people, 0 to 6
 * @param words whether it holds words
 */
public record Column(String header, String unit, String csvName, int decimals, boolean words) {

    /** Keeps a heading that bears somebody's words printable. */
    public Column {
        header = Printable.lines(header);
    }

    /** A column of words. */
    public static Column ofWords(String header, String csvName) {
        return new Column(header, "", csvName, 0, true);
    }

    /** A column of plain counts. */
    public static Column ofCounts(String header, String csvName) {
        return new Column(header, "", csvName, 0, false);
    }

    /** A column of numbers of a measure; {@code name} is the csv name without the unit. */
    public static Column of(String header, String name, Measure measure, UnitSystem units) {
        String suffix = measure.suffix(units);
        return new Column(
                header,
                measure.unit(units),
                suffix.isEmpty() ? name : name + "_" + suffix,
                measure.decimals(units),
                false);
    }
}
