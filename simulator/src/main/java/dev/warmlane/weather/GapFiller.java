package dev.warmlane.weather;

import java.util.BitSet;
import java.util.function.IntToDoubleFunction;

/** Fills short gaps by straight lines and refuses long ones. How long is short is our own judgement. */
final class GapFiller {

    /** Six hours at most: a straight line over more than a quarter of a day loses the day's rhythm. */
    static final int LINE_AT_MOST = 6;

    private GapFiller() {}

    static void fill(HourTable table, WeatherColumn column, Findings findings) throws Refusal {
        double[] values = table.column(column);
        int hours = values.length;
        if (table.isEmpty(column)) {
            throw tooLong(table, column, 0, hours);
        }
        Occurrences missing = new Occurrences(table);
        Occurrences untold = new Occurrences(table);
        Occurrences impossible = new Occurrences(table);
        BitSet without = without(values);
        refuseOpenEnds(table, column, without);
        int known = without.nextClearBit(0);
        // once round the year from a known hour, so that a gap may cross New Year
        int last = known;
        int longest = 0;
        for (int step = 1; step <= hours; step++) {
            int hour = (known + step) % hours;
            if (without.get(hour)) {
                missing.add(hour, Double.NaN);
                table.filled(column, hour);
                if (!table.isTold(column, hour)) {
                    untold.add(hour, Double.NaN);
                }
                note(table, column, hour, impossible);
                continue;
            }
            int gap = Math.floorMod(hour - last, hours) - 1;
            longest = Math.max(longest, gap);
            if (gap > table.hours().options().gapHours()) {
                throw tooLong(table, column, (last + 1) % hours, gap);
            }
            for (int i = 1; i <= gap; i++) {
                int at = (last + i) % hours;
                values[at] = gap <= LINE_AT_MOST
                        ? values[last] + (values[hour] - values[last]) * i / (gap + 1)
                        : fromDays(table, column, at, without, which -> values[which]);
            }
            last = hour;
        }
        if (missing.count() > table.hours().missingAtMost()) {
            throw table.refuse(
                    missing.firstHour(),
                    column.label(),
                    missing.count() + " missing values" + told(table, column, impossible),
                    "at most " + table.hours().missingAtMost() + " in the "
                            + table.hours().word(),
                    Refusal.sentence(table.remedy()));
        }
        if (untold.count() > 0) {
            findings.repair(
                    untold,
                    "missing " + column.label() + " " + untold.places() + ": filled by straight lines over gaps of at"
                            + " most " + LINE_AT_MOST + " hours" + longer(longest));
        }
    }

    /** What is said of gaps that no line fills. */
    static String longer(int longest) {
        return longest <= LINE_AT_MOST
                ? ""
                : ", and longer ones, of up to " + longest
                        + " hours, from the same hour of the nearest days before and after";
    }

    static BitSet without(double[] values) {
        BitSet without = new BitSet();
        for (int hour = 0; hour < values.length; hour++) {
            without.set(hour, Double.isNaN(values[hour]));
        }
        return without;
    }

    /** A record that begins or ends in a gap has nothing on its other side. */
    private static void refuseOpenEnds(HourTable table, WeatherColumn column, BitSet without) throws Refusal {
        int last = table.hours().count() - 1;
        if (!table.hours().closed() && (without.get(0) || without.get(last))) {
            int hour = without.get(0) ? 0 : last;
            throw table.refuse(
                    hour,
                    column.label(),
                    "no value in the " + (hour == 0 ? "first" : "last") + " hour of the record",
                    "a value, since a gap is filled from both of its sides",
                    "Let the record begin or end where it has all columns.");
        }
    }

    /** From the same hour of the nearest days before and after, the nearer counting more. */
    static double fromDays(HourTable table, WeatherColumn column, int hour, BitSet without, IntToDoubleFunction value)
            throws Refusal {
        int count = table.hours().count();
        int before = hour - 24;
        while (before >= 0 && without.get(before)) {
            before -= 24;
        }
        int after = hour + 24;
        while (after < count && without.get(after)) {
            after += 24;
        }
        if (before < 0 && after >= count) {
            throw tooLong(table, column, hour, 1);
        }
        if (before < 0 || after >= count) {
            return value.applyAsDouble(before < 0 ? after : before);
        }
        double share = (double) (hour - before) / (after - before);
        return (1 - share) * value.applyAsDouble(before) + share * value.applyAsDouble(after);
    }

    static Refusal tooLong(HourTable table, WeatherColumn column, int firstHour, int gap) {
        Occurrences impossible = new Occurrences(table);
        for (int i = 0; i < gap; i++) {
            note(table, column, (firstHour + i) % table.hours().count(), impossible);
        }
        int most = table.hours().options().gapHours();
        String allowed = "gaps of at most " + most + " hours";
        String remedy = impossible.count() > 0
                ? "Check the column's unit: " + table.remedy() + "."
                : "Fill the gap from a neighbouring station, or " + table.remedy() + ".";
        return table.refuse(
                firstHour,
                column.label(),
                gap + " hours in a row without a value from " + table.hours().label(firstHour)
                        + told(table, column, impossible),
                most == LINE_AT_MOST ? allowed + " (3 in daylight for irradiance)" : allowed,
                table.hours().closed()
                        ? remedy
                        : "Let longer gaps be filled, cut the record there, or use two: a gap that is filled is a guess.");
    }

    private static void note(HourTable table, WeatherColumn column, int hour, Occurrences impossible) {
        double value = table.thrownOut(column, hour);
        if (!Double.isNaN(value)) {
            impossible.add(hour, value);
        }
    }

    /** What was there before it was taken out. */
    private static String told(HourTable table, WeatherColumn column, Occurrences impossible) {
        return impossible.count() == 0
                ? ""
                : "; " + impossible.count() + " of them were thrown out because they cannot be, " + impossible.first()
                        + " " + column.unit() + " first " + table.on(impossible.firstHour()) + " (" + column.range()
                        + " can be, no jumps)";
    }
}
