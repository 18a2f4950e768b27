package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
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
    static final double CLOSES_WM2 = 20;
    /** A month that closes worse than this cannot be trusted. */
    private static final double REFUSED_WM2 = 40;

    private final HourTable table;
    private final WeatherReadOptions options;
    private final Findings findings;
    private final ClosureScan scan;
    private final MonthShifts months;

    private ClosureCheck(HourTable table, WeatherReadOptions options, Findings findings) {
        this.table = table;
        this.options = options;
        this.findings = findings;
        this.scan = new ClosureScan(table, table.site);
        this.months = new MonthShifts(table, scan);
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
        Double given = options.centreHours();
        if (table.lightIsDerived) {
            double[] shifts = new double[12];
            Arrays.fill(shifts, given == null ? 0 : given - table.centreHours);
            return new Result(table.site, sun(table.site, shifts, 0), null);
        }
        double common = given != null ? given - table.centreHours : months.common();
        double[] shifts;
        if (given != null) {
            shifts = new double[12];
            Arrays.fill(shifts, common);
        } else {
            shifts = months.each(common, findings);
        }
        int tested = IntStream.rangeClosed(1, 12).map(scan::testedHours).sum();
        if (tested == 0) {
            findings.warning(0, 0, "no hour has enough sun to test whether global, direct and diffuse agree");
            return new Result(table.site, sun(table.site, shifts, 0), null);
        }
        ClockVerdict verdict = new ClockVerdict(table, options, common);
        Site site = verdict.site();
        SunPath sun = sun(site, shifts, verdict.ofTheHeader());
        double[] used = scan.rmse(sun);
        boolean asStated = Arrays.stream(shifts).allMatch(shift -> shift == 0);
        double statedRmse = asStated ? used[12] : scan.rmseAt(0);
        judge(used, shifts);
        verdict.tell(used[12] > statedRmse, findings);
        double stated = table.centreHours - table.labelHours;
        Closure closure = new Closure(stated, statedRmse, stated + months.best(), stated + common, used[12], tested);
        return new Result(site, sun, closure);
    }

    private void judge(double[] used, double[] shifts) throws Refusal {
        int worst = 0;
        for (int month = 1; month < 12; month++) {
            worst = used[month] > used[worst] ? month : worst;
        }
        if (used[worst] > REFUSED_WM2 && options.centreHours() == null) {
            boolean wholeYear = Arrays.stream(used, 0, 12)
                            .filter(rmse -> rmse > REFUSED_WM2)
                            .count()
                    > 6;
            int firstHour = HourOfYear.firstHourOf(worst + 1);
            double[] best = scan.rmse(months.best(shifts));
            throw table.refuse(
                    wholeYear ? -1 : firstHour,
                    "",
                    String.format(
                            Locale.ROOT,
                            "%s global irradiance that differs from diffuse plus beam by %.0f W/m² (root mean square) at the"
                                    + " time taken and by %.0f at the best one",
                            wholeYear ? "all year" : "in " + ClockWords.month(worst + 1),
                            wholeYear ? used[12] : used[worst],
                            wholeYear ? Math.min(best[12], used[12]) : Math.min(best[worst], used[worst])),
                    "agreement within " + Occurrences.number(REFUSED_WM2)
                            + " W/m² at one time shift (GHI = DHI + DNI cos z)",
                    "Its irradiance cannot be trusted: " + ClockVerdict.lostSign(table)
                            + "check place, UTC offset and columns; if you know the file to be right, "
                            + Advice.irradianceTime(table) + ".");
        }
        if (used[worst] > CLOSES_WM2) {
            findings.warning(
                    0,
                    0,
                    String.format(
                            Locale.ROOT,
                            "global irradiance and the sum of diffuse and beam differ by %.1f W/m² (root mean square over the"
                                    + " year), most in %s with %.1f: the parts come from different sources or times",
                            used[12],
                            ClockWords.month(worst + 1),
                            used[worst]));
        }
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
