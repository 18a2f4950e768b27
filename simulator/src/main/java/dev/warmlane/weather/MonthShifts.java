package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The time that irradiance of each month belongs to, hours later than stated: that of most months, or one of its own. */
final class MonthShifts {

    /** Shifts smaller than this are within what rounding and cloud make of a sound file, hours. */
    private static final double NOTICED_H = 0.1;

    private static final double MONTH_NOTICED_H = 0.25;
    private static final int MONTHS_THAT_DECIDE = 3;

    /** A month further off is not a slip of the clock. */
    private static final double MONTH_ERROR_AT_MOST_H = 3;

    private final HourTable table;
    private final ClosureScan scan;
    private final ClosureScan.Fit[] fits = new ClosureScan.Fit[12];

    MonthShifts(HourTable table, ClosureScan scan) {
        this.table = table;
        this.scan = scan;
        for (int month = 0; month < 12; month++) {
            fits[month] = scan.bestOfMonth(month + 1, ClosureCheck.CLOSES_WM2);
        }
    }

    /** Where the year closes best: the median of the months that close. */
    double best() {
        double[] shifts = Arrays.stream(fits)
                .filter(MonthShifts::closes)
                .mapToDouble(ClosureScan.Fit::shiftHours)
                .sorted()
                .toArray();
        return shifts.length == 0 ? 0 : (shifts[(shifts.length - 1) / 2] + shifts[shifts.length / 2]) / 2;
    }

    /** The shift of most of the year: the stated one if a few months keep it, else the one the months agree on. */
    double common() {
        double median = best();
        long asStated = Arrays.stream(fits)
                .filter(MonthShifts::closes)
                .filter(fit -> Math.abs(fit.shiftHours()) < NOTICED_H)
                .count();
        if (asStated >= MONTHS_THAT_DECIDE || Math.abs(median) < NOTICED_H) {
            return 0;
        }
        long agreeing = Arrays.stream(fits)
                .filter(MonthShifts::closes)
                .filter(fit -> Math.abs(fit.shiftHours() - median) < NOTICED_H)
                .count();
        if (agreeing < MONTHS_THAT_DECIDE) {
            return 0;
        }
        return toHalfHours(median);
    }

    /** People err by whole and half hours; a fit that is near one is taken for it. */
    private static double toHalfHours(double shift) {
        double halfHours = Math.rint(shift * 2) / 2;
        return Math.abs(shift - halfHours) < NOTICED_H / 2 ? halfHours : shift;
    }

    private static boolean closes(ClosureScan.Fit fit) {
        return fit.exists() && fit.rmseWm2() <= ClosureCheck.CLOSES_WM2;
    }

    /** Of all months: the common one, but of a month that closes clearly at a time of its own that one. */
    double[] each(double common, Findings findings) throws Refusal {
        double[] shifts = new double[12];
        Arrays.fill(shifts, common);
        Map<Double, List<Integer>> moved = new LinkedHashMap<>();
        for (int month = 1; month <= 12; month++) {
            ClosureScan.Fit fit = fits[month - 1];
            if (!closes(fit) || Math.abs(fit.shiftHours() - common) < MONTH_NOTICED_H) {
                continue;
            }
            double asCommon = scan.rmse(month, common);
            if (asCommon > 2 * fit.rmseWm2() && asCommon > ClosureCheck.CLOSES_WM2) {
                double shift = toHalfHours(fit.shiftHours());
                if (Math.abs(shift - common) > MONTH_ERROR_AT_MOST_H) {
                    throw table.refuse(
                            HourOfYear.firstHourOf(month),
                            "",
                            "in " + ClockWords.month(month) + " irradiance that closes "
                                    + ClockWords.later(shift - common) + " than in the rest of the year",
                            "one time of day in all months",
                            "The month is of another clock or in disorder: " + table.remedy() + ".");
                }
                shifts[month - 1] = shift;
                // a fit is good to some minutes: months that say about the same say it together
                double quarters = Math.rint((shift - common) * 4) / 4;
                moved.computeIfAbsent(quarters, k -> new ArrayList<>()).add(month);
            }
        }
        if (!moved.isEmpty()) {
            tell(moved, findings);
        }
        return shifts;
    }

    private void tell(Map<Double, List<Integer>> moved, Findings findings) {
        List<Integer> all =
                moved.values().stream().flatMap(List::stream).sorted().toList();
        int firstHour = HourOfYear.firstHourOf(all.get(0));
        List<String> parts = new ArrayList<>();
        moved.forEach(
                (shift, months) -> parts.add("in " + ClockWords.months(months) + " it is " + ClockWords.sunIs(shift)));
        findings.warning(
                table.line[firstHour],
                all.stream().mapToInt(HourOfYear::daysIn).sum() * 24,
                table.sourceWord() + "'s sun is not of one clock: " + ClockWords.joined(parts)
                        + " against the rest of the year, from " + table.at(firstHour)
                        + " on. Corrected there, rows are"
                        + " moved with the sun. Months kept in daylight saving time or pasted in with a shift look like"
                        + " this: " + table.remedy());
    }

    /** The shift of each month that closes it best; the one in use where the month has too little sun to tell. */
    double[] best(double[] shifts) {
        double[] best = shifts.clone();
        for (int month = 0; month < 12; month++) {
            if (fits[month].exists()) {
                best[month] = fits[month].shiftHours();
            }
        }
        return best;
    }
}
