package dev.warmlane.validation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.DocBlock;
import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.EvaporationCorrelation;
import dev.warmlane.report.chart.ComputedOverMeasured;
import dev.warmlane.report.chart.ComputedOverMeasured.Points;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Twenty-one months of a class A pan: docs/validation/pan.md, with {@code -Dmeasured.dir=}. {@code -Ddocs.write=true} writes its
 * tables and chart. Means and statistics are told, no row of the measurement.
 */
@Tag("handbook")
class MeasuredPanTest {

    private static final String PAGE = "validation/pan.md";

    private static final double SHELTERED = 0.15;
    private static final double USUAL = 0.30;
    private static final double OPEN = 0.40;

    /**
     * Thom, Thony and Vauclin 1981 for class A pans, as PenPan has it (from memory): 1.39e-8 (1 + 1.35 u) kg/m²sPa, u at 2 m; times
     * the latent heat of 2.45 MJ/kg, in W/m²kPa.
     */
    private static final EvaporationCorrelation OF_PANS = wind -> 1.39e-8 * (1 + 1.35 * wind) * 2.45e6 * 1000;

    /** Wind at 2 m over that at 10 m: logarithm of the height over a roughness length of 0.03 m, open ground. */
    private static final double AT_TWO_METRES = Math.log(2 / 0.03) / Math.log(10 / 0.03);

    /** What a bird guard keeps from evaporating: van Dijk 1985, from memory. */
    private static final double GUARD = 0.07;

    /** A pan read once a day to half a millimetre, well kept: own estimate of a month's standard uncertainty, per cent. */
    private static final double MEASURED_WITHIN_PERCENT = 5;

    private record Case(String name, Residuals months) {}

    @Test
    void pageIsWhatIsComputed() throws IOException {
        PanStation station = PanStation.read();
        DocBlock.check(PAGE, "correlations", correlations(station));
        DocBlock.check(PAGE, "months", months(station));
        DocBlock.check(PAGE, "wind", wind(station));
        DocBlock.check(PAGE, "uncertainty", uncertainty(station));
        Handbook.check(PAGE, quantities(station));
        DocChart.check(ComputedOverMeasured.of(
                "pan-months",
                "Evaporation of a class A pan by Smith, Löf and Jones",
                "Twenty-one months of Kent Town, Adelaide; weather bureau, by way of an R package",
                "evaporation, mm a month",
                0,
                List.of(
                        points("wind factor 0.15", station, SHELTERED, true),
                        points("wind factor 0.30", station, USUAL, true),
                        points("0.15, no walls", station, SHELTERED, false))));
    }

    /**
     * The pan lies between a well sheltered one without walls and one in the open with them, by every correlation: all that may be
     * said of a pan whose own wind is not known.
     */
    @Test
    void sheltersBracketThePan() throws IOException {
        PanStation station = PanStation.read();
        for (Evaporation correlation : Evaporation.values()) {
            assertThat(of(station, correlation, SHELTERED, false).sumPercent()).isNegative();
            assertThat(of(station, correlation, OPEN, true).sumPercent()).isPositive();
        }
    }

    /** Month by month, the mean taken off, a correlation follows the pan: through 150 mm of yearly swing within 15 %. */
    @Test
    void shapeOfTheYearIsThePans() throws IOException {
        PanStation station = PanStation.read();
        Residuals months = of(station, Evaporation.SMITH_LOF_JONES, SHELTERED, true);
        assertThat(months.scatter() / months.meanMeasured()).isLessThan(0.15);
    }

    private static Residuals of(
            PanStation station, EvaporationCorrelation correlation, double windFactor, boolean walls) {
        return of(station, correlation, windFactor, walls ? Pan.Shell.SHEET_METAL : Pan.Shell.NONE);
    }

    private static Residuals of(
            PanStation station, EvaporationCorrelation correlation, double windFactor, Pan.Shell shell) {
        double[] hours = new Pan(station.weather(), correlation, windFactor, shell).evaporatedMm();
        double[] months = IntStream.range(0, station.months())
                .mapToDouble(month -> IntStream.range(station.firstHour(month), station.endHour(month))
                        .mapToDouble(hour -> hours[hour])
                        .sum())
                .toArray();
        return new Residuals(station.measuredMm(), months);
    }

    private static Points points(String name, PanStation station, double windFactor, boolean walls) {
        Residuals months = of(station, Evaporation.SMITH_LOF_JONES, windFactor, walls);
        return new Points(name, months.measured(), months.computed());
    }

    private static String correlations(PanStation station) {
        StringBuilder rows = new StringBuilder("""
                | correlation | wind factor | water alone | with wall and bottom | scatter of months |
                |---|---|---|---|---|
                """);
        for (Evaporation correlation : Evaporation.values()) {
            for (double factor : new double[] {SHELTERED, USUAL, OPEN}) {
                row(rows, correlation.source(), station, correlation, factor);
            }
        }
        // the equation alone, without the factor for quiet water that the constant has
        EvaporationCorrelation full = wind -> Evaporation.ASHRAE_CARRIER.heatWm2Kpa(wind);
        row(rows, "ASHRAE Handbook, not reduced for quiet water", station, full, SHELTERED);
        row(rows, "Thom et al. 1981, of pans", station, OF_PANS, AT_TWO_METRES);
        return rows.append(String.format(
                        Locale.ROOT,
                        "\nWith the library's own walls of bare steel and no bottom, Smith, Löf and Jones: %s %% at 0.15, %s %% at 0.30.\n",
                        DocBlock.signed(librarysWalls(station, SHELTERED), 0),
                        DocBlock.signed(librarysWalls(station, USUAL), 0)))
                .toString();
    }

    private static double librarysWalls(PanStation station, double windFactor) {
        return of(station, Evaporation.SMITH_LOF_JONES, windFactor, Pan.Shell.LIBRARYS_WALLS)
                .sumPercent();
    }

    private static void row(
            StringBuilder rows, String name, PanStation station, EvaporationCorrelation correlation, double factor) {
        Residuals bare = of(station, correlation, factor, false);
        Residuals walls = of(station, correlation, factor, true);
        rows.append(String.format(
                Locale.ROOT,
                "| %s | %.2f | %s %% | %s %% | %.0f %% |\n",
                name,
                factor,
                DocBlock.signed(bare.sumPercent(), 0),
                DocBlock.signed(walls.sumPercent(), 0),
                100 * walls.scatter() / walls.meanMeasured()));
    }

    private static String months(PanStation station) {
        List<Case> cases = new ArrayList<>();
        for (Evaporation correlation : Evaporation.values()) {
            cases.add(new Case(correlation.source(), of(station, correlation, SHELTERED, true)));
        }
        cases.add(new Case("Smith, Löf and Jones, 0.30", of(station, Evaporation.SMITH_LOF_JONES, USUAL, true)));
        StringBuilder rows = new StringBuilder("| month | wind at 10 m, m/s |");
        cases.forEach(one -> rows.append(' ').append(one.name).append(" |"));
        rows.append("\n|---|---|").append("---|".repeat(cases.size())).append('\n');
        for (int of = 1; of <= 12; of++) {
            int monthOfYear = of;
            int[] which = IntStream.range(0, station.months())
                    .filter(month -> station.monthOfYear(month) == monthOfYear)
                    .toArray();
            rows.append(String.format(
                    Locale.ROOT,
                    "| %s | %.1f |",
                    List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
                            .get(of - 1),
                    IntStream.of(which)
                            .mapToDouble(station::meanWindMs)
                            .average()
                            .orElseThrow()));
            rows.append(cases.stream()
                    .map(one -> one.months.where(month -> station.monthOfYear(month) == monthOfYear))
                    .map(months -> " " + DocBlock.signed(months.sumPercent(), 0) + " % |")
                    .collect(Collectors.joining()));
            rows.append('\n');
        }
        return rows.toString();
    }

    /** Months parted into three by their wind. */
    private static String wind(PanStation station) {
        List<double[]> classes = List.of(new double[] {0, 3}, new double[] {3, 3.55}, new double[] {3.55, 10});
        StringBuilder rows = new StringBuilder("""
                | correlation, wind factor | below 3.0 m/s | 3.0 to 3.5 m/s | above |
                |---|---|---|---|
                """);
        for (Evaporation correlation : Evaporation.values()) {
            for (double factor : new double[] {SHELTERED, USUAL}) {
                Residuals months = of(station, correlation, factor, true);
                rows.append(String.format(Locale.ROOT, "| %s, %.2f |", correlation.source(), factor));
                for (double[] range : classes) {
                    Residuals part = months.where(
                            month -> station.meanWindMs(month) >= range[0] && station.meanWindMs(month) < range[1]);
                    rows.append(" ")
                            .append(DocBlock.signed(part.sumPercent(), 0))
                            .append(" % |");
                }
                rows.append('\n');
            }
        }
        return rows.toString();
    }

    private static String uncertainty(PanStation station) {
        double usual = of(station, Evaporation.SMITH_LOF_JONES, USUAL, true).sumPercent();
        double sheltered =
                of(station, Evaporation.SMITH_LOF_JONES, SHELTERED, true).sumPercent();
        double bare = of(station, Evaporation.SMITH_LOF_JONES, SHELTERED, false).sumPercent();
        double iso = of(station, Evaporation.ISO_TR_12596, SHELTERED, true).sumPercent();
        double carrier =
                of(station, Evaporation.ASHRAE_CARRIER, SHELTERED, true).sumPercent();
        return String.format(
                Locale.ROOT,
                """
                | of what | moves the sum by |
                |---|---|
                | wind factor 0.30 for 0.15 | %s %% |
                | wall and bottom, or none | %s %% |
                | ISO/TR 12596 for Smith, Löf and Jones | %s %% |
                | ASHRAE, reduced for quiet water, for Smith, Löf and Jones | %s %% |
                | bird guard, if there is one: the pan then measures less by | %.0f %% |
                | readings of the pan, standard, own estimate | %.0f %% |
                """,
                DocBlock.signed(usual - sheltered, 0),
                DocBlock.signed(sheltered - bare, 0),
                DocBlock.signed(iso - sheltered, 1),
                DocBlock.signed(carrier - sheltered, 1),
                100 * GUARD,
                MEASURED_WITHIN_PERCENT);
    }

    private static String quantities(PanStation station) {
        return quantity("well sheltered", of(station, Evaporation.SMITH_LOF_JONES, SHELTERED, true))
                + quantity("usual shelter", of(station, Evaporation.SMITH_LOF_JONES, USUAL, true));
    }

    private static String quantity(String shelter, Residuals months) {
        return Handbook.percent(
                "evaporation of a month, " + shelter,
                "pan",
                months,
                "mm",
                String.format(Locale.ROOT, "%.0f %%", MEASURED_WITHIN_PERCENT));
    }
}
