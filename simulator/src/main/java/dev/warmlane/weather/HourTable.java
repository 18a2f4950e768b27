package dev.warmlane.weather;

import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The hours of any source in local standard time, still with gaps (NaN) and faults: the 8760 of a year, or those of a
 * record. Worked on in place.
 */
final class HourTable {

    final RawHeader header;
    final MissingCodes codes;
    /** The columns that the source has; what it never had is not lost. */
    final Set<WeatherColumn> declared;
    /** Height of the wind above open ground, m. */
    final double windHeightM;

    final Site site;
    /** The time that irradiance belongs to by the format's convention, hours after the start of the hour. */
    final double centreHours;
    /** The file's label, hours after the start of the hour. */
    final double labelHours;
    /** The line of each hour; where a row is missing, that of the row before; 0 where there is no file. */
    final int[] line;

    final int[] year;
    /** Hours without a row; they are told together, whatever is missing in them. */
    final BitSet withoutRow = new BitSet();
    /** The sun that the source gives with its irradiance; null where it is found from the time. */
    final @Nullable SunPath sun;

    /** Whether a part of irradiance was found from the others, so that they agree at any time of the sun. */
    boolean lightIsDerived;

    private final Columns values;
    /** What was taken out because it cannot be. */
    private final Columns thrownOut;

    private final TableHours hours;
    private final Map<WeatherColumn, BitSet> filled = new EnumMap<>(WeatherColumn.class);

    /** For the hours of a file, in the order of the year once they are placed. */
    HourTable(RawWeather raw, Site site, double centreHours, double labelHours) {
        this(raw, site, centreHours, labelHours, TableHours.ofYear());
    }

    /** For the hours of a file, in the order of time once they are placed. */
    HourTable(RawWeather raw, Site site, double centreHours, double labelHours, TableHours hours) {
        this(raw.header(), raw.codes(), raw.declared(), raw.windHeightM(), site, centreHours, labelHours, null, hours);
    }

    private HourTable(
            RawHeader header,
            MissingCodes codes,
            Set<WeatherColumn> declared,
            double windHeightM,
            Site site,
            double centreHours,
            double labelHours,
            @Nullable SunPath sun,
            TableHours hours) {
        this.header = header;
        this.codes = codes;
        this.declared = declared;
        this.windHeightM = windHeightM;
        this.site = site;
        this.centreHours = centreHours;
        this.labelHours = labelHours;
        this.sun = sun;
        this.hours = hours;
        this.line = new int[hours.count()];
        this.year = new int[hours.count()];
        this.values = new Columns(hours.count());
        this.thrownOut = new Columns(hours.count());
    }

    /** Which hours they are. */
    TableHours hours() {
        return hours;
    }

    /** The sun of irradiance that belongs to a time after the start of its hour, h. */
    SunPath sunAt(double centre) {
        return hours.sun(site, year, centre, !header.instants());
    }

    /** Says that a value was filled in an hour. */
    void filled(WeatherColumn column, int hour) {
        filled.computeIfAbsent(column, any -> new BitSet()).set(hour);
    }

    /** The hours in which values were filled, by column. */
    Map<WeatherColumn, BitSet> filled() {
        return filled;
    }

    /** Whether the hours are those of a file. */
    boolean isOfFile() {
        return sun == null;
    }

    /** For columns that a program gives with the sun that belongs to them. */
    static HourTable of(
            Site site, SunPath sun, WeatherYear.LongWaveOrigin longWave, Set<WeatherColumn> given, TableHours hours) {
        double centre = sun.usualOffsetHours();
        RawHeader header = new RawHeader(
                "", site, 0, RawHeader.Clock.LOCAL_STANDARD, !sun.isHourlyMean(), centre, true, 0, longWave);
        HourTable table = new HourTable(
                header, new MissingCodes(), given, WeatherReadOptions.USUAL_WIND_HEIGHT_M, site, centre, 0, sun, hours);
        Arrays.setAll(table.year, sun::calendarYear);
        return table;
    }

    double[] column(WeatherColumn column) {
        return values.of(column);
    }

    /** Takes out a value that cannot be; it counts as missing from here on, and the messages remember it. */
    void throwOut(WeatherColumn column, int hour) {
        double[] there = column(column);
        thrownOut.of(column)[hour] = there[hour];
        there[hour] = Double.NaN;
    }

    /** The value that was taken out of an hour; NaN where none was. */
    double thrownOut(WeatherColumn column, int hour) {
        return thrownOut.of(column)[hour];
    }

    /** Where an hour stands, for example {@code line 12}, or {@code hour 3} where there is no file. */
    String at(int hour) {
        return (hasLines() ? "line " : "hour ") + place(hour);
    }

    int place(int hour) {
        return hasLines() ? line[hour] : hour;
    }

    /** For example {@code on line 12}. */
    String on(int hour) {
        return placeWord(1) + ' ' + place(hour);
    }

    /** What a message calls the source. */
    String sourceWord() {
        return hasLines() ? "the file" : "the " + hours.word();
    }

    /** What to do where the source lost values, or has wrong ones. */
    String remedy() {
        return hasLines() ? "correct the column, or fetch this file again, or another" : "correct the column given";
    }

    String placeWord(int count) {
        return (hasLines() ? "on line" : "in hour") + (count == 1 ? "" : "s");
    }

    private boolean hasLines() {
        return line[0] > 0;
    }

    /** The year cannot be trusted, because of what stands in an hour; -1 where it is the whole year. */
    Refusal refuse(int hour, String column, String found, String expected, String remedy) {
        if (hour < 0) {
            return new Refusal(0, "", column, found, expected, remedy);
        }
        String label = "hour " + hour + " (" + hours.label(hour) + ")";
        return new Refusal(line[hour], label, column, found, expected, remedy);
    }

    /** Whether a year can be completed without a column. */
    boolean canDoWithout(WeatherColumn column) {
        return switch (column) {
            case PRESSURE, LONG_WAVE, CLOUD, DIRECT_HORIZONTAL, SUNSHINE -> true;
            case DEW -> !isEmpty(WeatherColumn.RELATIVE_HUMIDITY);
            case RELATIVE_HUMIDITY -> !isEmpty(WeatherColumn.DEW);
            default -> false;
        };
    }

    /** Whether it was told already why an hour has no value: it has no row, or its value cannot be. */
    boolean isTold(WeatherColumn column, int hour) {
        return withoutRow.get(hour) || !Double.isNaN(thrownOut(column, hour));
    }

    boolean isEmpty(WeatherColumn column) {
        for (double value : column(column)) {
            if (!Double.isNaN(value)) {
                return false;
            }
        }
        return true;
    }
}
