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
    private static final double CLOSES_WM2 = 15;
    /** A month that closes worse than this cannot be trusted. */
    private static final double REFUSED_WM2 = 40;
    /** Shifts smaller than this are within what rounding and cloud make of a sound file, hours. */
    private static final double NOTICED_H = 0.1;

    private static final double MONTH_NOTICED_H = 0.25;
    private static final int MONTHS_THAT_DECIDE = 3;
    private static final double LABEL_ERROR_AT_MOST_H = 1.25;
    private static final double FAR_FROM_ZONE_H = 2;

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

    static Result check(HourTable table, WeatherReadOptions options, Findings findings) throws WeatherFileException {
        return new ClosureCheck(table, options, findings).check();
    }

    private Result check() throws WeatherFileException {
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
        double[] used = rmse(shifts);
        double[] stated = IntStream.range(0, 12).allMatch(m -> shifts[m] == 0) ? used : rmse(new double[12]);
        int tested = IntStream.rangeClosed(1, 12).map(scan::testedHours).sum();
        if (tested == 0) {
            findings.warning(0, 0, "no hour has enough sun to test whether global, direct and diffuse agree");
            return new Result(table.site, sun(table.site, shifts, 0), null);
        }
        judge(used, fits, given != null);
        double moved = explain(common, stated[12], used[12], given != null);
        Site site = moved == 0 ? table.site : withOffset(table.site.utcOffsetHours() - moved);
        double statedShift = table.centreHours - table.labelHours;
        Closure closure =
                new Closure(statedShift, stated[12], statedShift + best, statedShift + common, used[12], tested);
        return new Result(site, sun(site, shifts, moved), closure);
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
        double halfHours = Math.rint(median * 2) / 2;
        return Math.abs(median - halfHours) < NOTICED_H / 2 ? halfHours : median;
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
    private void moveMonths(ClosureScan.Fit[] fits, double common, double[] shifts) {
        for (int month = 0; month < 12; month++) {
            ClosureScan.Fit fit = fits[month];
            if (!closes(fit) || Math.abs(fit.shiftHours() - common) < MONTH_NOTICED_H) {
                continue;
            }
            double asCommon =
                    Math.sqrt(scan.sumOfSquares(month + 1, common) / Math.max(1, scan.testedHours(month + 1)));
            if (asCommon > 2 * fit.rmseWm2() && asCommon > CLOSES_WM2) {
                shifts[month] = fit.shiftHours();
                int firstHour = HourOfYear.firstHourOf(month + 1);
                findings.warning(
                        table.line[firstHour],
                        HourOfYear.daysIn(month + 1) * 24,
                        String.format(
                                Locale.ROOT,
                                "%s, from line %d: irradiance is shifted against the rest of the year; it closes %s"
                                        + " (RMSE %.1f W/m², %.1f as labelled). The sun is taken at that time in this month;"
                                        + " a month kept in daylight saving time or pasted in with a shift looks like this",
                                monthName(month + 1),
                                table.line[firstHour],
                                hoursLater(fit.shiftHours() - common),
                                fit.rmseWm2(),
                                asCommon));
            }
        }
    }

    /** Root mean square of the residual in each month, and of the year in the thirteenth place. */
    private double[] rmse(double[] shifts) {
        double[] result = new double[13];
        double sum = 0;
        int hours = 0;
        for (int month = 0; month < 12; month++) {
            double squares = scan.sumOfSquares(month + 1, shifts[month]);
            int tested = scan.testedHours(month + 1);
            result[month] = tested == 0 ? 0 : Math.sqrt(squares / tested);
            sum += squares;
            hours += tested;
        }
        result[12] = hours == 0 ? 0 : Math.sqrt(sum / hours);
        return result;
    }

    private void judge(double[] used, ClosureScan.Fit[] fits, boolean insisted) throws WeatherFileException {
        int worst = 0;
        for (int month = 1; month < 12; month++) {
            worst = used[month] > used[worst] ? month : worst;
        }
        if (used[worst] > REFUSED_WM2 && !insisted) {
            boolean wholeYear = Arrays.stream(used, 0, 12)
                            .filter(rmse -> rmse > REFUSED_WM2)
                            .count()
                    > 6;
            int line = table.line[HourOfYear.firstHourOf(worst + 1)];
            throw table.text.error(
                    wholeYear ? 0 : line,
                    "",
                    String.format(
                            Locale.ROOT,
                            "%s global irradiance that differs from diffuse plus beam by %.0f W/m² (RMSE) as labelled and by"
                                    + " %.0f at the best shift",
                            wholeYear ? "all year" : "in " + monthName(worst + 1),
                            wholeYear ? used[12] : used[worst],
                            fits[worst].exists() ? fits[worst].rmseWm2() : used[worst]),
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

    /** Says in words what a shift of the whole year means; returns the hours by which the header's UTC offset is off. */
    private double explain(double common, double statedRmse, double usedRmse, boolean insisted)
            throws WeatherFileException {
        if (common == 0) {
            return 0;
        }
        String evidence =
                String.format(Locale.ROOT, " (RMSE %.1f W/m² so, %.1f as the header says)", usedRmse, statedRmse);
        if (insisted) {
            findings.warning(0, 0, "irradiance is taken " + hoursLater(common) + ", as given" + evidence);
            return 0;
        }
        double offset = table.site.utcOffsetHours();
        double zone = table.site.longitudeDeg() / 15;
        boolean whole = common == Math.rint(common);
        double implied = offset - common;
        boolean nearer =
                Math.abs(implied - zone) < Math.abs(offset - zone) && Math.abs(implied - zone) < FAR_FROM_ZONE_H;
        if (whole && nearer && !table.header.utc() && options.utcOffsetHours() == null) {
            findings.warning(
                    table.header.siteLine(),
                    0,
                    "the UTC offset in the header is wrong: it says UTC" + TimeResolver.signed(offset)
                            + ", irradiance follows the sun with UTC" + TimeResolver.signed(implied) + evidence
                            + "; UTC" + TimeResolver.signed(implied)
                            + " is used. Correct the header, or give the UTC offset if the labels are wrong instead");
            return common;
        }
        if (Math.abs(common) > LABEL_ERROR_AT_MOST_H) {
            throw table.text.error(
                    table.header.siteLine(),
                    "",
                    "irradiance that follows the sun only " + hoursLater(common) + evidence,
                    "labels within an hour of the sun",
                    "Check longitude and UTC offset in the header; or give the time that irradiance belongs to.");
        }
        String cause = Math.abs(Math.abs(common) - 0.5) < NOTICED_H
                ? "the labels are off by half an hour: "
                : Math.abs(common) > 0.9
                        ? "the labels are off by an hour, or the UTC offset is: "
                        : "the labels do not agree with the sun: ";
        findings.warning(
                table.line[0],
                0,
                cause + "irradiance closes " + hoursLater(common) + evidence
                        + "; the sun is taken at that time. Temperature, humidity and wind stay at their labels");
        return 0;
    }

    private Site withOffset(double offset) {
        Site s = table.site;
        return new Site(s.name(), s.latitudeDeg(), s.longitudeDeg(), s.elevationM(), offset);
    }

    private SunPath sun(Site site, double[] shifts, double moved) {
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
