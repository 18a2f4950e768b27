package dev.warmlane.weather;

import java.nio.file.Path;

/** Why a year of weather cannot be trusted, before it is known whether it came from a file or from a program. */
final class Refusal extends Exception {

    private static final long serialVersionUID = 1L;

    private final int line;
    private final String hour;
    private final String column;
    private final String found;
    private final String expected;
    private final String remedy;

    /**
     * What was found.
     *
     * @param line the line of the file, 0 where it is of the whole year or there is no file
     * @param hour the hour in words, empty where it is of the whole year
     */
    Refusal(int line, String hour, String column, String found, String expected, String remedy) {
        super(found);
        this.line = line;
        this.hour = hour;
        this.column = column;
        this.found = found;
        this.expected = expected;
        this.remedy = remedy;
    }

    static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    /** The same as an error of a file, which speaks of lines. */
    WeatherFileException of(Path file) {
        return new WeatherFileException(file, line, column, found, expected, remedy);
    }

    /** The same as an error of a program's own columns, which speaks of hours. */
    IllegalArgumentException of(String source) {
        String where = source + (hour.isEmpty() ? "" : ", " + hour);
        return new IllegalArgumentException(WeatherFileException.message(where, column, found, expected, remedy), this);
    }
}
