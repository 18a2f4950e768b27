package dev.warmlane.weather;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The rows of a file as they stand in it, in the units of {@link WeatherYear}; NaN is missing. */
final class RawWeather {

    private final FileText text;
    private final RawHeader header;
    private final int[] line;
    private final int[] year;
    private final int[] month;
    private final int[] day;
    private final int[] hour;
    private final Columns values;
    private final MissingCodes codes = new MissingCodes();
    private final List<String> notes = new ArrayList<>();
    private final Set<WeatherColumn> declared = EnumSet.noneOf(WeatherColumn.class);
    private double windHeightM = WeatherReadOptions.USUAL_WIND_HEIGHT_M;
    private boolean ofAnyYear;
    private int rows;

    RawWeather(FileText text, RawHeader header) {
        this(text, header, text.lines());
    }

    /** With room for so many rows. */
    RawWeather(FileText text, RawHeader header, int capacity) {
        this.text = text;
        this.header = header;
        this.line = new int[capacity];
        this.year = new int[capacity];
        this.month = new int[capacity];
        this.day = new int[capacity];
        this.hour = new int[capacity];
        this.values = new Columns(capacity);
    }

    /** Adds a row for the hour of day (0 to 23) that starts then. */
    void add(int lineNumber, int yearOfRow, int monthOfYear, int dayOfMonth, int hourOfDay) {
        line[rows] = lineNumber;
        year[rows] = yearOfRow;
        month[rows] = monthOfYear;
        day[rows] = dayOfMonth;
        hour[rows] = hourOfDay;
        rows++;
    }

    /** Says that the rows have no year of their own. */
    void hasNoYears() {
        ofAnyYear = true;
    }

    /** Whether the rows have no year. */
    boolean isOfAnyYear() {
        return ofAnyYear;
    }

    /** Says of which year rows without one are. */
    void isOf(int yearOfRows) {
        for (int row = 0; row < rows; row++) {
            year[row] += yearOfRows - PlainFormat.YEAR_UNLESS_GIVEN;
        }
    }

    /** Sets a value of the row added last. */
    void set(WeatherColumn column, double value) {
        values.of(column)[rows - 1] = value;
    }

    /** Passes over a value of the row added last that is the format's code for a missing one. */
    void missing(WeatherColumn column, double asWritten) {
        codes.add(column, asWritten);
    }

    /** Says that the file has a column, be it empty. */
    void declare(WeatherColumn column) {
        declared.add(column);
    }

    /** The columns that the file has; what it never had is not lost. */
    Set<WeatherColumn> declared() {
        return declared;
    }

    /** Sets the height of the wind above open ground, m. */
    void windHeight(double heightM) {
        windHeightM = heightM;
    }

    double windHeightM() {
        return windHeightM;
    }

    /** What a reader of the year should know of how the file was understood. */
    void note(String message) {
        notes.add(message);
    }

    List<String> notes() {
        return notes;
    }

    MissingCodes codes() {
        return codes;
    }

    FileText text() {
        return text;
    }

    RawHeader header() {
        return header;
    }

    int rows() {
        return rows;
    }

    int line(int row) {
        return line[row];
    }

    int year(int row) {
        return year[row];
    }

    int month(int row) {
        return month[row];
    }

    int day(int row) {
        return day[row];
    }

    int hour(int row) {
        return hour[row];
    }

    /** Takes over what is told of the rows of another. */
    void tellAs(RawWeather other) {
        codes.addAll(other.codes);
        notes.addAll(other.notes);
        declared.addAll(other.declared);
        windHeightM = other.windHeightM;
    }

    double value(WeatherColumn column, int row) {
        return values.of(column)[row];
    }
}
