package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Locale;
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
    private static final double FAR_FROM_ZONE_H = 2;
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
        this.scan = new ClosureScan(table);
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
        double moved = wrongHeader ? common : 0;
        Site site = wrongHeader ? withOffset(table.site.utcOffsetHours() - moved) : table.site;
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
        for (int month = 0; month < 12; month++) {
            ClosureScan.Fit fit = fits[month];
            if (!closes(fit) || Math.abs(fit.shiftHours() - common) < MONTH_NOTICED_H) {
                continue;
            }
            double asCommon = scan.rmse(month + 1, common);
            if (asCommon > 2 * fit.rmseWm2() && asCommon > CLOSES_WM2) {
                shifts[month] = toHalfHours(fit.shiftHours());
                int firstHour = HourOfYear.firstHourOf(month + 1);
                if (Math.abs(shifts[month] - common) > MONTH_ERROR_AT_MOST_H) {
                    throw table.refuse(
                            firstHour,
                            "",
                            "in " + monthName(month + 1) + " irradiance that closes "
                                    + hoursLater(shifts[month] - common) + " than in the rest of the year",
                            "one time of day in all months",
                            "The month is of another clock or in disorder: fetch the file again.");
                }
                findings.warning(
                        table.line[firstHour],
                        HourOfYear.daysIn(month + 1) * 24,
                        String.format(
                                Locale.ROOT,
                                "%s, from %s: irradiance is shifted against the rest of the year; it closes %s"
                                        + " (RMSE %.1f W/m², %.1f as labelled). The sun is taken at that time in this month;"
                                        + " a month kept in daylight saving time or pasted in with a shift looks like this",
                                monthName(month + 1),
                                table.at(firstHour),
                                hoursLater(shifts[month] - common),
                                fit.rmseWm2(),
                                asCommon));
            }
        }
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
                            wholeYear ? "all year" : "in " + monthName(worst + 1),
                            wholeYear ? used[12] : used[worst],
                            wholeYear ? Math.min(best[12], used[12]) : Math.min(best[worst], used[worst])),
                    "agreement within " + Occurrences.number(REFUSED_WM2)
                            + " W/m² at one time shift (GHI = DHI + DNI cos z)",
                    "Its irradiance cannot be trusted: check place, UTC offset and columns, or give the time that"
                            + " irradiance belongs to if you know the file to be right.");
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
                            monthName(worst + 1),
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
     * Whether a shift of whole hours is an error of the header's UTC offset: if the offset that closes is nearer to the
     * one of the longitude than the header's.
     */
    private boolean headerIsWrong(double common) {
        double offset = table.site.utcOffsetHours();
        double zone = table.site.longitudeDeg() / 15;
        double implied = offset - common;
        return common != 0
                && common == Math.rint(common)
                && Math.abs(implied - zone) < Math.min(FAR_FROM_ZONE_H, Math.abs(offset - zone))
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
        double offset = table.site.utcOffsetHours();
        if (insisted) {
            findings.warning(0, 0, "irradiance is taken " + hoursLater(common) + ", as given" + evidence);
        } else if (wrongHeader) {
            String implied = "UTC" + TimeResolver.signed(offset - common);
            findings.warning(
                    table.header.siteLine(),
                    0,
                    "the UTC offset in the header is wrong: it says UTC" + TimeResolver.signed(offset)
                            + ", but irradiance follows the sun with " + implied + evidence + "; " + implied
                            + " is used. Correct the header, or give the UTC offset if the labels are wrong instead");
        } else if (Math.abs(common) > LABEL_ERROR_AT_MOST_H) {
            throw new Refusal(
                    table.header.siteLine(),
                    "",
                    "",
                    "irradiance that follows the sun only " + hoursLater(common) + evidence,
                    "labels within an hour of the sun",
                    "Check longitude and UTC offset in the header; or give the time that irradiance belongs to.");
        } else if (!table.header.centreKnown()) {
            findings.note(
                    table.header.siteLine(),
                    0,
                    "the file does not tell the time of its irradiance; it closes " + hoursLater(common)
                            + " than the label" + evidence + ", and the sun is taken at that time");
        } else {
            findings.warning(
                    table.line[0],
                    0,
                    cause(Math.abs(common)) + "irradiance closes " + hoursLater(common) + evidence
                            + "; the sun is taken at that time. Temperature, humidity and wind stay at their labels");
        }
    }

    private static String cause(double hours) {
        if (Math.abs(hours - 0.5) < NOTICED_H) {
            return "the labels are off by half an hour: ";
        }
        return Math.abs(hours - 1) < NOTICED_H
                ? "the labels are off by an hour, or the UTC offset is: "
                : "the labels do not agree with the sun: ";
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

    private static String hoursLater(double hours) {
        return String.format(Locale.ROOT, "%.2f h %s", Math.abs(hours), hours > 0 ? "later" : "earlier");
    }

    private static String monthName(int month) {
        return Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }
}
