package dev.warmlane.weather;

import dev.warmlane.files.Printable;
import java.io.IOException;
import java.nio.file.Path;

/**
 * A weather file that cannot be read or cannot be trusted: where, what was found, what was expected, how to mend it. The
 * message begins with the file as it was given, the line where there is one, and the column where there is one, such as
 * {@code weather/here.epw:500: wind speed (field 22): found "calm"}.
 */
public final class WeatherFileException extends IOException {

    private static final long serialVersionUID = 1L;

    private static final int FOUND_AT_MOST = 200;

    private final transient Path file;
    private final int line;
    private final String column;
    private final String found;
    private final String expected;
    private final String remedy;

    /**
     * A problem with a place.
     *
     * @param file the file
     * @param line the line, counted from 1; 0 where it is of the whole file
     * @param column the column, named as the file names it; empty where it is of the whole line
     * @param found what is there
     * @param expected what should be there
     * @param remedy what the reader of the message can do
     */
    public WeatherFileException(Path file, int line, String column, String found, String expected, String remedy) {
        super(message(file + (line > 0 ? ":" + line : ""), column, found, expected, remedy));
        this.file = file;
        this.line = line;
        this.column = Printable.quote(column);
        this.found = Printable.cut(found, FOUND_AT_MOST);
        this.expected = expected;
        this.remedy = remedy;
    }

    static String message(String where, String column, String found, String expected, String remedy) {
        String place = Printable.line(where) + (column.isEmpty() ? "" : ": " + Printable.quote(column));
        return place + ": found " + Printable.cut(found, FOUND_AT_MOST) + "; expected " + Printable.line(expected)
                + ". " + Printable.line(remedy);
    }

    /** Why nothing is told of what lies elsewhere than the file that names it. */
    static final String NOT_SHOWN =
            " outside of the scenario's folder, so that nothing of it is shown here: give it to the"
                    + " command \"weather\".";

    /** The same without anything that stands in the file: for whoever may not be meant to read it. */
    public WeatherFileException withoutContent() {
        WeatherFileException told =
                new WeatherFileException(file, line, "", "something else", expected, "The file lies" + NOT_SHOWN);
        told.setStackTrace(getStackTrace());
        return told;
    }

    /** The file. */
    public Path file() {
        return file;
    }

    /** The line, counted from 1; 0 where the problem is of the whole file. */
    public int line() {
        return line;
    }

    /** The column as the file names it; empty where the problem is of the whole line or file. */
    public String column() {
        return column;
    }

    /** What is there. */
    public String found() {
        return found;
    }

    /** What should be there. */
    public String expected() {
        return expected;
    }

    /** What can be done about it. */
    public String remedy() {
        return remedy;
    }
}
