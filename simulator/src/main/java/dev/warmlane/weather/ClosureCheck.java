package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Finds what time a file's irradiance really belongs to, and refuses what belongs to none. The limits are our own
 * judgement of real files: sound ones close within 0.5 to 3 W/m², TMY2 up to 9, and half an hour of error makes about
 * 45.
 */
final class ClosureCheck {

    /** A month that closes better than this tells its own time. */
    private static final double CLOSES_WM2 = 20;
    /** A month that closes worse than this cannot be trusted. */
    private static final double REFUSED_WM2 = 40;
    /** Shifts smaller than this are within what rounding and cloud make of a sound file, hours. */
    private static final double NOTICED_H = 0.1;

    private static final double MONTH_NOTICED_H = 0.25;
    private static final int MONTHS_THAT_DECIDE = 3;
    private static final double LABEL_ERROR_AT_MOST_H = 1.25;
    /** From here on it is an hour and no longer half of one. */
    private static final double LABELS_HALF_AN_HOUR_OFF_H = 0.75;

    /** A month further off is not a slip of the clock. */
    private static final double MONTH_ERROR_AT_MOST_H = 3;

    private final HourTable table;
    private final WeatherReadOptions options;
    private final Findings findings;
    private final ClosureScan scan;

    private ClosureCheck(HourTable table, WeatherReadOptions options, Findings findings) {
        this.table = table;
        this.options = options;
        this.findings = findings;
        this.scan = new ClosureScan(table, table.site);
    }

    /**
     * What was found.
     *
     * @param site the site, with another UTC offset where the header's was wrong
     * @param sun the sun positions that belong to the irradiance
     * @param closure the test; null where the file has too little sun for one
     */
    record Result(Site site, SunPath sun, @Nullable Closure closure) {}

    static Result check(HourTable table, WeatherReadOptions options, Findings findings) throws Refusal {
        return new ClosureCheck(table, options, findings).check();
    }

    private Result check() throws Refusal {
        ClosureScan.Fit[] fits = new ClosureScan.Fit[12];
        for (int month = 0; month < 12; month++) {
            fits[month] = scan.bestOfMonth(month + 1, CLOSES_WM2);
        }
        double best = median(fits);
        Double given = options.centreHours();
        double common = given != null ? given - table.centreHours : common(fits, best);
        double[] shifts = new double[12];
        Arrays.fill(shifts, common);
        if (given == null) {
            moveMonths(fits, common, shifts);
        }
        int tested = IntStream.rangeClosed(1, 12).map(scan::testedHours).sum();
        if (tested == 0) {
            findings.warning(0, 0, "no hour has enough sun to test whether global, direct and diffuse agree");
            return new Result(table.site, sun(table.site, shifts, 0), null);
        }
        boolean wrongHeader = given == null && headerIsWrong(common);
        OptionalDouble fitting = HeaderSlips.offset(table.site, common);
        double moved = wrongHeader ? common : 0;
        Site site = wrongHeader ? withOffset(fitting.orElseThrow()) : table.site;
        SunPath sun = sun(site, shifts, moved);
        double[] used = scan.rmse(sun);
        boolean asStated = Arrays.stream(shifts).allMatch(shift -> shift == 0);
        double statedRmse = asStated ? used[12] : scan.rmseAsStated();
        judge(used, shifts, fits, given != null);
        explain(common, statedRmse, used[12], given != null, wrongHeader);
        double statedShift = table.centreHours - table.labelHours;
        Closure closure =
                new Closure(statedShift, statedRmse, statedShift + best, statedShift + common, used[12], tested);
        return new Result(site, sun, closure);
    }

    /** The shift of most of the year: the stated one if a few months keep it, else the one the months agree on. */
    private static double common(ClosureScan.Fit[] fits, double median) {
        long asStated = Arrays.stream(fits)
                .filter(ClosureCheck::closes)
                .filter(fit -> Math.abs(fit.shiftHours()) < NOTICED_H)
                .count();
        if (asStated >= MONTHS_THAT_DECIDE || Math.abs(median) < NOTICED_H) {
            return 0;
        }
        long agreeing = Arrays.stream(fits)
                .filter(ClosureCheck::closes)
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

    private static double median(ClosureScan.Fit[] fits) {
        double[] shifts = Arrays.stream(fits)
                .filter(ClosureCheck::closes)
                .mapToDouble(ClosureScan.Fit::shiftHours)
                .sorted()
                .toArray();
        return shifts.length == 0 ? 0 : (shifts[(shifts.length - 1) / 2] + shifts[shifts.length / 2]) / 2;
    }

    private static boolean closes(ClosureScan.Fit fit) {
        return fit.exists() && fit.rmseWm2() <= CLOSES_WM2;
    }

    /** Months that close clearly at a time of their own are given that time. */
    private void moveMonths(ClosureScan.Fit[] fits, double common, double[] shifts) throws Refusal {
        Map<Double, List<Integer>> moved = new LinkedHashMap<>();
        double used = 0;
        double labelled = 0;
        for (int month = 1; month <= 12; month++) {
            ClosureScan.Fit fit = fits[month - 1];
            if (!closes(fit) || Math.abs(fit.shiftHours() - common) < MONTH_NOTICED_H) {
                continue;
            }
            double asCommon = scan.rmse(month, common);
            if (asCommon > 2 * fit.rmseWm2() && asCommon > CLOSES_WM2) {
                double shift = toHalfHours(fit.shiftHours());
                if (Math.abs(shift - common) > MONTH_ERROR_AT_MOST_H) {
                    throw table.refuse(
                            HourOfYear.firstHourOf(month),
                            "",
                            "in " + ClockWords.month(month) + " irradiance that closes "
                                    + ClockWords.later(shift - common) + " than in the rest of the year",
                            "one time of day in all months",
                            "The month is of another clock or in disorder: fetch the file again.");
                }
                shifts[month - 1] = shift;
                // a fit is good to some minutes: months that say about the same say it together
                double quarters = Math.rint((shift - common) * 4) / 4;
                moved.computeIfAbsent(quarters, k -> new ArrayList<>()).add(month);
                used = Math.max(used, fit.rmseWm2());
                labelled = Math.max(labelled, asCommon);
            }
        }
        if (!moved.isEmpty()) {
            tellMonths(moved, used, labelled);
        }
    }

    private void tellMonths(Map<Double, List<Integer>> moved, double used, double labelled) {
        List<Integer> all =
                moved.values().stream().flatMap(List::stream).sorted().toList();
        int firstHour = HourOfYear.firstHourOf(all.get(0));
        List<String> parts = new ArrayList<>();
        moved.forEach(
                (shift, months) -> parts.add("in " + ClockWords.months(months) + " it is " + ClockWords.sunIs(shift)));
        findings.warning(
                table.line[firstHour],
                all.stream().mapToInt(HourOfYear::daysIn).sum() * 24,
                String.format(
                        Locale.ROOT,
                        "the file's sun is not of one clock: %s against the rest of the year, from %s on. Corrected there"
                                + " (RMSE %.1f W/m² at most, %.1f as labelled), rows are moved with the sun. Months kept in daylight saving time or pasted in with a shift look like"
                                + " this: fetch the file again if you can",
                        ClockWords.joined(parts),
                        table.at(firstHour),
                        used,
                        labelled));
    }

    private void judge(double[] used, double[] shifts, ClosureScan.Fit[] fits, boolean insisted) throws Refusal {
        int worst = 0;
        for (int month = 1; month < 12; month++) {
            worst = used[month] > used[worst] ? month : worst;
        }
        if (used[worst] > REFUSED_WM2 && !insisted) {
            boolean wholeYear = Arrays.stream(used, 0, 12)
                            .filter(rmse -> rmse > REFUSED_WM2)
                            .count()
                    > 6;
            int firstHour = HourOfYear.firstHourOf(worst + 1);
            double[] best = scan.rmse(bestShifts(shifts, fits));
            throw table.refuse(
                    wholeYear ? -1 : firstHour,
                    "",
                    String.format(
                            Locale.ROOT,
                            "%s global irradiance that differs from diffuse plus beam by %.0f W/m² (RMSE) at the time taken"
                                    + " and by %.0f at the best one",
                            wholeYear ? "all year" : "in " + ClockWords.month(worst + 1),
                            wholeYear ? used[12] : used[worst],
                            wholeYear ? Math.min(best[12], used[12]) : Math.min(best[worst], used[worst])),
                    "agreement within " + Occurrences.number(REFUSED_WM2)
                            + " W/m² at one time shift (GHI = DHI + DNI cos z)",
                    "Its irradiance cannot be trusted: " + lostSign()
                            + "check place, UTC offset and columns; if you know the file to be right, "
                            + giveTime() + ".");
        }
        if (used[worst] > CLOSES_WM2) {
            findings.warning(
                    0,
                    0,
                    String.format(
                            Locale.ROOT,
                            "global irradiance and the sum of diffuse and beam differ by %.1f W/m² (RMSE over the year), most in"
                                    + " %s with %.1f: the parts come from different sources or times",
                            used[12],
                            ClockWords.month(worst + 1),
                            used[worst]));
        }
    }

    /** The shift of each month that closes it best; the one in use where the month has too little sun to tell. */
    private static double[] bestShifts(double[] shifts, ClosureScan.Fit[] fits) {
        double[] best = shifts.clone();
        for (int month = 0; month < 12; month++) {
            if (fits[month].exists()) {
                best[month] = fits[month].shiftHours();
            }
        }
        return best;
    }

    /**
     * Whether a shift of whole or half hours is an error of the header's UTC offset: if the offset that closes is kept
     * somewhere, and is nearer to the one of the longitude than the header's. Half an hour alone is one of the labels.
     */
    private boolean headerIsWrong(double common) {
        OptionalDouble fitting = HeaderSlips.offset(table.site, common);
        return Math.abs(common) > LABELS_HALF_AN_HOUR_OFF_H
                && isHalfHours(common)
                && fitting.isPresent()
                && HeaderSlips.isNearer(table.site, fitting.getAsDouble())
                && !table.header.utc()
                && options.utcOffsetHours() == null;
    }

    /** Says in words what a shift of the whole year means; refuses one that no usual mistake explains. */
    private void explain(double common, double statedRmse, double usedRmse, boolean insisted, boolean wrongHeader)
            throws Refusal {
        if (common == 0) {
            return;
        }
        String evidence =
                String.format(Locale.ROOT, " (RMSE %.1f W/m² so, %.1f as the file says)", usedRmse, statedRmse);
        String stated = ClockWords.utc(table.site.utcOffsetHours());
        OptionalDouble fitting = HeaderSlips.offset(table.site, common);
        int line = table.header.siteLine();
        if (insisted) {
            String message =
                    "irradiance is taken " + ClockWords.later(common) + " than the file says, as given" + evidence;
            if (usedRmse > statedRmse) {
                findings.warning(0, 0, message + ": the sun contradicts");
            } else {
                findings.note(0, 0, message);
            }
        } else if (wrongHeader) {
            String fits = ClockWords.utc(fitting.orElseThrow());
            List<String> signs = HeaderSlips.lostSigns(table, CLOSES_WM2);
            findings.warning(
                    line,
                    0,
                    "the UTC offset in the header is wrong: it says " + stated
                            + ", but irradiance follows the sun with "
                            + fits + evidence + "; " + fits + " is used. Correct the header"
                            + (signs.isEmpty()
                                    ? ""
                                    : ", or its " + String.join(" and ", signs) + " if that is where a sign was lost")
                            + "; if the offset is right, " + giveOffset());
        } else if (Math.abs(common) > LABEL_ERROR_AT_MOST_H) {
            throw new Refusal(
                    line,
                    "",
                    "",
                    "irradiance that follows the sun only " + ClockWords.later(common) + evidence,
                    "labels within an hour of the sun",
                    lostSign()
                            + (fitting.isPresent()
                                    ? "With " + ClockWords.utc(fitting.getAsDouble()) + " in place of " + stated
                                            + " it would follow: if that is the clock of the file, " + giveOffset()
                                            + ". "
                                    : "")
                            + "Check longitude and UTC offset; if you know the file to be right, "
                            + giveTime() + ".");
        } else if (!table.header.centreKnown()) {
            findings.note(
                    line,
                    0,
                    "the file does not tell the time of its irradiance: by the sun it is " + ClockWords.later(common)
                            + " than the label" + evidence + "; taken so, nothing to do");
        } else if (Math.abs(common) < LABELS_HALF_AN_HOUR_OFF_H) {
            findings.repair(
                    0,
                    0,
                    "the file's sun is " + ClockWords.sunIs(common) + evidence + ": corrected"
                            + (moves(common) ? ", rows are moved by an hour" : "") + "; nothing to do"
                            + (fitting.isPresent() && isHalfHours(common)
                                    ? ", unless it is the header's UTC offset that is wrong: "
                                            + ClockWords.utc(fitting.getAsDouble()) + " would fit as well as " + stated
                                    : ""));
        } else {
            findings.warning(
                    0,
                    0,
                    "the file's sun is " + ClockWords.sunIs(common) + evidence
                            + ": the labels are wrong, or the UTC offset"
                            + " in the header is"
                            + (fitting.isPresent()
                                    ? " and should be " + ClockWords.utc(fitting.getAsDouble()) + " in place of "
                                            + stated
                                    : "")
                            + ". Corrected as an error of the labels"
                            + (moves(common) ? ": rows are moved by an hour" : "")
                            + "; if the offset is wrong, "
                            + giveOffset());
        }
    }

    private String giveTime() {
        return table.sun == null ? Advice.IRRADIANCE_TIME : "give the time that it belongs to with the sun";
    }

    private String giveOffset() {
        return table.sun == null ? Advice.UTC_OFFSET : "give it with the site";
    }

    private boolean moves(double shift) {
        return RowMoves.wholeHours(table.centreHours + shift) != 0;
    }

    private static boolean isHalfHours(double shift) {
        return shift * 2 == Math.rint(shift * 2);
    }

    /** A sentence on what the header would have to say for the year to close; empty where no sign was lost. */
    private String lostSign() {
        List<String> signs = HeaderSlips.lostSigns(table, CLOSES_WM2);
        return signs.isEmpty()
                ? ""
                : "It would close with " + String.join(", or with ", signs) + ": the header lost a sign. ";
    }

    private Site withOffset(double offset) {
        Site s = table.site;
        return new Site(s.name(), s.latitudeDeg(), s.longitudeDeg(), s.elevationM(), offset);
    }

    private SunPath sun(Site site, double[] shifts, double moved) {
        if (table.sun != null && moved == 0 && Arrays.stream(shifts).allMatch(shift -> shift == 0)) {
            return table.sun;
        }
        double[] centres = Arrays.stream(shifts)
                .map(shift -> table.centreHours + shift - moved)
                .toArray();
        return table.header.instants()
                ? SunPath.ofInstants(site, table.year, centres)
                : SunPath.ofHourlyMeans(site, table.year, centres);
    }
}
