package dev.warmlane.validation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.DocBlock;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.collector.CollectorMoment;
import dev.warmlane.collector.FreePlate;
import dev.warmlane.collector.HeatAtMoment;
import dev.warmlane.collector.PlaneLight;
import dev.warmlane.collector.PlateToFluid;
import dev.warmlane.irradiance.AngleCoefficient;
import dev.warmlane.physics.Constants;
import dev.warmlane.physics.Water;
import dev.warmlane.report.chart.Chart;
import dev.warmlane.report.chart.ComputedOverMeasured;
import dev.warmlane.report.chart.ComputedOverMeasured.Points;
import dev.warmlane.validation.CollectorDay.Moved;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Two days of a measured collector: docs/validation/collector.md, with {@code -Dmeasured.dir=}. {@code -Ddocs.write=true}
 * writes its tables and charts. Sums and statistics are told, no row of the measurement.
 */
@Tag("handbook")
class MeasuredCollectorTest {

    private static final String PAGE = "validation/collector.md";

    /** Certificate: Jonas et al. 2019, Solar Energy 193:51-64; coefficients for the plain wind. */
    private static final TestStand STAND = new TestStand(false, 1.65, 0, 5);

    private static final double ETA0 = 0.475;
    private static final double C1 = 7.411;
    private static final double C3 = 1.7;
    private static final double C4 = 0.437;
    private static final double C6 = 0.003;
    private static final double CAPACITY = 42_200;

    private static final CertificateCurve CERTIFICATE = CertificateCurve.plainWindBuilder(ETA0, C1, STAND)
            .a3(C3)
            .a4(C4)
            .a6(C6)
            .build();

    /** Slanting light taken as straight on: what a curve is that ignores its incidence modifier. */
    private static final CertificateCurve STRAIGHT_ON = CertificateCurve.plainWindBuilder(ETA0, C1, STAND)
            .a3(C3)
            .a4(C4)
            .a6(C6)
            .incidence(new AngleCoefficient(0, 1))
            .build();

    private static final CertificateCurve MISREAD =
            CertificateCurve.builder(ETA0, C1, STAND).a3(C3).a4(C4).a6(C6).build();

    /** Light that a photovoltaic module of crystalline silicon absorbs: handbook value, from memory. */
    private static final double ABSORPTANCE = 0.90;

    /** Emittance of glass: handbook value, from memory. */
    private static final double EMITTANCE = 0.88;

    /** A module of 1.66 m² of the usual proportions; common practice, no source, m. */
    private static final double LENGTH_M = 1.65;

    private static final double WIDTH_M = 0.99;

    /** The blower ran or not: nothing lies between, m/s. */
    private static final double BLOWER_MS = 2;

    /** Least accuracy that ISO 9806 asks of flow and temperature difference (from memory): 1 %, 0.05 K. */
    private static final double FLOW_WITHIN = 0.01;

    private static final double DIFFERENCE_WITHIN_K = 0.05;

    /** What the inputs are uncertain by, standard: own estimates, reasons in the page. */
    private static final List<Input> INPUTS = List.of(
            new Input("irradiance, 2 %", new Moved(1.02, 0, 0, 0)),
            new Input("long-wave, 20 W/m²", new Moved(1, 20, 0, 0)),
            new Input("air, 0.3 K", new Moved(1, 0, 0.3, 0)),
            new Input("wind, 0.5 m/s", new Moved(1, 0, 0, 0.5)));

    private record Input(String name, Moved moved) {}

    @Test
    void pageIsWhatIsComputed() throws IOException {
        List<CollectorDay> days = List.of(CollectorDay.read(1), CollectorDay.read(2));
        DocBlock.check(PAGE, "deduced", deduced(days));
        DocBlock.check(PAGE, "days", days(days));
        DocBlock.check(PAGE, "why", why(days));
        DocBlock.check(PAGE, "uncertainty", uncertainty(days));
        DocBlock.check(PAGE, "choices", choices(days));
        Handbook.check(PAGE, quantities(days));
        DocChart.check(
                chart(days, "collector-certificate", "Heat by the certificate, with incidence and capacity", true));
        DocChart.check(chart(days, "collector-absorber", "Heat by the absorber deduced from the certificate", false));
    }

    /** Twice the uncertainty of measurement and inputs together: a day outside that would be a fault of the model. */
    @Test
    void energyOfEachDayLiesWithinTheUncertainty() throws IOException {
        for (int number = 1; number <= 2; number++) {
            CollectorDay day = CollectorDay.read(number);
            assertThat(Math.abs(held(day, absorber(day)).sumPercent()))
                    .as("absorber, day %d", number)
                    .isLessThan(2 * together(day, absorber(day)));
            assertThat(Math.abs(held(day, CERTIFICATE).sumPercent()))
                    .as("certificate, day %d", number)
                    .isLessThan(2 * together(day, CERTIFICATE));
        }
    }

    @Test
    void incidenceAndCapacityBringTheCertificateNearer() throws IOException {
        for (int number = 1; number <= 2; number++) {
            CollectorDay day = CollectorDay.read(number);
            double straight = new Residuals(day.heatWm2(), day.steady(STRAIGHT_ON)).rms();
            double incidence = new Residuals(day.heatWm2(), day.steady(CERTIFICATE)).rms();
            assertThat(incidence).isLessThan(straight);
            assertThat(held(day, CERTIFICATE).rms()).isLessThan(incidence);
        }
    }

    /** The absorber, whose plate is warmer than its water, answers to the wind better than the straight curve. */
    @Test
    void absorberTellsCalmFromBlowerBetterThanTheCertificate() throws IOException {
        CollectorDay day = CollectorDay.read(2);
        assertThat(Math.abs(blowerLessCalm(day, held(day, absorber(day)))))
                .isLessThan(0.6 * Math.abs(blowerLessCalm(day, held(day, CERTIFICATE))));
    }

    /** F′ = η0/α with the electricity taken off the light, at the reference wind. */
    private static double efficiencyFactor(CollectorDay day) {
        return CERTIFICATE.eta0() / (ABSORPTANCE - day.electricShare());
    }

    /** U_i = F′U_L/(1 − F′), where F′U_L is the certificate's loss. */
    private static double conductance(CollectorDay day) {
        return CERTIFICATE.a1() / (1 - efficiencyFactor(day));
    }

    /** What c6 must be for a plate of that conductance: −dη0/du = η0·c3·(1 − F′)/(F′·F′U_L). */
    private static double impliedC6(CollectorDay day) {
        double factor = efficiencyFactor(day);
        return CERTIFICATE.eta0() * C3 * (1 - factor) / (factor * CERTIFICATE.a1());
    }

    private static FreePlate absorber(CollectorDay day) {
        return absorber(day, ABSORPTANCE, EMITTANCE, LENGTH_M, WIDTH_M);
    }

    private static FreePlate absorber(
            CollectorDay day, double absorptance, double emittance, double lengthM, double widthM) {
        double taken = absorptance - day.electricShare();
        double loss = CERTIFICATE.a1() / (1 - CERTIFICATE.eta0() / taken);
        Absorber absorber = new Absorber(taken, emittance, 1, new PlateToFluid.Conductance(loss));
        return new FreePlate(absorber, lengthM, widthM, 0, 99);
    }

    private static Residuals held(CollectorDay day, HeatAtMoment collector) {
        return new Residuals(day.heatWm2(), day.warming(collector, CAPACITY, Moved.NOTHING));
    }

    private static Residuals windy(CollectorDay day, Residuals residuals) {
        return residuals.where(row -> day.windMs(row) > BLOWER_MS);
    }

    private static Residuals calm(CollectorDay day, Residuals residuals) {
        return residuals.where(row -> day.windMs(row) <= BLOWER_MS);
    }

    private static double blowerLessCalm(CollectorDay day, Residuals residuals) {
        return windy(day, residuals).bias() - calm(day, residuals).bias();
    }

    private static String deduced(List<CollectorDay> days) {
        StringBuilder rows = new StringBuilder("""
                | | day 1 | day 2 |
                |---|---|---|
                """);
        row(rows, "rows", days, day -> String.format(Locale.ROOT, "%d", day.rows()));
        row(rows, "measured heat, MJ/m²", days, day -> number(day.energyMjM2(), 2));
        row(rows, "cloud taken for the sky's long-wave", days, day -> number(day.cloud(), 2));
        row(rows, "electricity over light", days, day -> number(day.electricShare(), 3));
        row(rows, "F′ at 3 m/s", days, day -> number(efficiencyFactor(day), 3));
        row(rows, "conductance from plate to fluid, W/m²K", days, day -> number(conductance(day), 1));
        row(rows, "c6 that such a plate must have, s/m", days, day -> number(impliedC6(day), 3));
        row(
                rows,
                "its loss U_L at 3 m/s, W/m²K, deduced",
                days,
                day -> number(CERTIFICATE.a1() / efficiencyFactor(day), 1));
        row(
                rows,
                "the same by our films and radiation, plate 10 K above air of 25 °C",
                days,
                day -> number(ourLossWm2K(day), 1));
        return rows.toString();
    }

    /** Loss per kelvin of the deduced plate with no light: its heat at two mean temperatures over F′. */
    private static double ourLossWm2K(CollectorDay day) {
        FreePlate plate = absorber(day);
        var at = new CollectorMoment(new PlaneLight(0, 0, 0, CollectorDay.TILT_DEG), 400, 25, 3);
        double slope = (plate.heatAtMeanWm2(at, 35) - plate.heatAtMeanWm2(at, 45)) / 10;
        double between = conductance(day);
        // slope = F′U_L and F′ = U_i/(U_i + U_L)
        return slope * between / (between - slope);
    }

    private static String days(List<CollectorDay> days) {
        StringBuilder rows = new StringBuilder("""
                | computed by | day | energy | bias W/m² | rms W/m² | bias with the blower | without it |
                |---|---|---|---|---|---|---|
                """);
        for (int i = 0; i < days.size(); i++) {
            CollectorDay day = days.get(i);
            double[] heat = day.heatWm2();
            line(rows, "certificate, light taken as straight on", i, day, new Residuals(heat, day.steady(STRAIGHT_ON)));
            line(rows, "certificate with incidence", i, day, new Residuals(heat, day.steady(CERTIFICATE)));
            line(rows, "certificate with incidence and capacity", i, day, held(day, CERTIFICATE));
            line(rows, "absorber deduced from it, with capacity", i, day, held(day, absorber(day)));
        }
        return rows.toString();
    }

    private static String why(List<CollectorDay> days) {
        StringBuilder rows = new StringBuilder("""
                | with incidence and capacity | day | energy | bias W/m² | rms W/m² | bias with the blower | without it |
                |---|---|---|---|---|---|---|
                """);
        for (int i = 0; i < days.size(); i++) {
            CollectorDay day = days.get(i);
            line(rows, "certificate as printed", i, day, held(day, CERTIFICATE));
            CertificateCurve implied = CertificateCurve.builder(CERTIFICATE.eta0(), CERTIFICATE.a1(), STAND)
                    .a3(C3)
                    .a4(C4)
                    .a6(impliedC6(day))
                    .build();
            line(rows, "with the c6 that its plate must have, the same at 3 m/s", i, day, held(day, implied));
            line(rows, "certificate read as the form of 2017", i, day, held(day, MISREAD));
        }
        CollectorMoment held = new CollectorMoment(
                new PlaneLight(800, 0, 0, CollectorDay.TILT_DEG), Constants.blackBody(25) - 60, 25, 3);
        rows.append(String.format(
                Locale.ROOT,
                "\nHeld 20 K above the air, at 800 W/m² and 3 m/s under a clear sky: %.0f W/m² as printed, %.0f W/m² read as the"
                        + " form of 2017.\n",
                CERTIFICATE.heatAtMeanWm2(held, 45),
                MISREAD.heatAtMeanWm2(held, 45)));
        return rows.toString();
    }

    private static void line(StringBuilder rows, String name, int i, CollectorDay day, Residuals residuals) {
        boolean calm = IntStream.range(0, day.rows()).anyMatch(row -> day.windMs(row) <= BLOWER_MS);
        rows.append(String.format(
                Locale.ROOT,
                "| %s | %d | %s %% | %s | %.1f | %s | %s |\n",
                name,
                i + 1,
                DocBlock.signed(residuals.sumPercent(), 1),
                DocBlock.signed(residuals.bias(), 1),
                residuals.rms(),
                DocBlock.signed(windy(day, residuals).bias(), 1),
                calm ? DocBlock.signed(calm(day, residuals).bias(), 1) : "-"));
    }

    private static String uncertainty(List<CollectorDay> days) {
        StringBuilder rows = new StringBuilder("""
                | standard uncertainty of | moves the certificate's day 1, day 2 | the absorber's |
                |---|---|---|
                """);
        for (Input input : INPUTS) {
            rows.append(String.format(
                    Locale.ROOT,
                    "| %s | %s, %s %% | %s, %s %% |\n",
                    input.name,
                    moves(days.get(0), CERTIFICATE, input),
                    moves(days.get(1), CERTIFICATE, input),
                    moves(days.get(0), absorber(days.get(0)), input),
                    moves(days.get(1), absorber(days.get(1)), input)));
        }
        rows.append(String.format(
                Locale.ROOT,
                "| measured heat: flow 1 %%, difference 0.05 K | %.1f, %.1f %% | the same |\n",
                measuredWithin(days.get(0)),
                measuredWithin(days.get(1))));
        rows.append(String.format(
                Locale.ROOT,
                "| all together | %.1f, %.1f %% | %.1f, %.1f %% |\n",
                together(days.get(0), CERTIFICATE),
                together(days.get(1), CERTIFICATE),
                together(days.get(0), absorber(days.get(0))),
                together(days.get(1), absorber(days.get(1)))));
        return rows.toString();
    }

    private static String moves(CollectorDay day, HeatAtMoment collector, Input input) {
        return DocBlock.signed(moved(day, collector, input), 1);
    }

    private static double moved(CollectorDay day, HeatAtMoment collector, Input input) {
        double usual = mean(day.warming(collector, CAPACITY, Moved.NOTHING));
        return 100 * (mean(day.warming(collector, CAPACITY, input.moved)) - usual) / mean(day.heatWm2());
    }

    /** Of the day's energy, per cent: both are the same in every row, so they do not average out. */
    private static double measuredWithin(CollectorDay day) {
        double differenceWm2 = IntStream.range(0, day.rows())
                .mapToDouble(row -> day.flowKgSM2(row) * Water.specificHeatJKgK(25) * DIFFERENCE_WITHIN_K)
                .average()
                .orElseThrow();
        return 100 * Math.hypot(FLOW_WITHIN, differenceWm2 / mean(day.heatWm2()));
    }

    private static double together(CollectorDay day, HeatAtMoment collector) {
        double squares = Math.pow(measuredWithin(day), 2);
        for (Input input : INPUTS) {
            squares += Math.pow(moved(day, collector, input), 2);
        }
        return Math.sqrt(squares);
    }

    private static double mean(double[] values) {
        return DoubleStream.of(values).average().orElseThrow();
    }

    private static String choices(List<CollectorDay> days) {
        StringBuilder rows = new StringBuilder("""
                | choice for the absorber | energy of day 1, day 2 | rms W/m² | blower less calm, day 2, W/m² |
                |---|---|---|---|
                """);
        choice(rows, "as stated", days, ABSORPTANCE, EMITTANCE, LENGTH_M, WIDTH_M);
        choice(rows, "absorptance 0.87", days, 0.87, EMITTANCE, LENGTH_M, WIDTH_M);
        choice(rows, "absorptance 0.93", days, 0.93, EMITTANCE, LENGTH_M, WIDTH_M);
        double holding = C4 / efficiencyFactor(days.get(0));
        choice(rows, "emittance c4/F′, " + number(holding, 2), days, ABSORPTANCE, holding, LENGTH_M, WIDTH_M);
        choice(rows, "wind along the short side", days, ABSORPTANCE, EMITTANCE, WIDTH_M, LENGTH_M);
        return rows.toString();
    }

    private static void choice(
            StringBuilder rows,
            String name,
            List<CollectorDay> days,
            double absorptance,
            double emittance,
            double lengthM,
            double widthM) {
        Residuals one = held(days.get(0), absorber(days.get(0), absorptance, emittance, lengthM, widthM));
        Residuals two = held(days.get(1), absorber(days.get(1), absorptance, emittance, lengthM, widthM));
        rows.append(String.format(
                Locale.ROOT,
                "| %s | %s, %s %% | %.1f, %.1f | %s |\n",
                name,
                DocBlock.signed(one.sumPercent(), 1),
                DocBlock.signed(two.sumPercent(), 1),
                one.rms(),
                two.rms(),
                DocBlock.signed(blowerLessCalm(days.get(1), two), 1)));
    }

    private static String quantities(List<CollectorDay> days) {
        double within = Math.hypot(measuredWithin(days.get(0)), measuredWithin(days.get(1))) / Math.sqrt(2);
        return quantity("certificate", held(days.get(0), CERTIFICATE), held(days.get(1), CERTIFICATE), within)
                + quantity(
                        "absorber",
                        held(days.get(0), absorber(days.get(0))),
                        held(days.get(1), absorber(days.get(1))),
                        within);
    }

    private static String quantity(String by, Residuals one, Residuals two, double withinPercent) {
        return Handbook.percent(
                "collector heat by " + by + ", two minutes",
                "collector",
                both(one, two),
                "W/m²",
                String.format(Locale.ROOT, "%.1f %%", withinPercent));
    }

    private static Residuals both(Residuals one, Residuals two) {
        return new Residuals(join(one.measured(), two.measured()), join(one.computed(), two.computed()));
    }

    private static double[] join(double[] one, double[] two) {
        return DoubleStream.concat(DoubleStream.of(one), DoubleStream.of(two)).toArray();
    }

    private static Chart chart(List<CollectorDay> days, String name, String title, boolean certificate) {
        List<Residuals> windy = new ArrayList<>();
        List<Residuals> calm = new ArrayList<>();
        for (CollectorDay day : days) {
            Residuals held = held(day, certificate ? CERTIFICATE : absorber(day));
            windy.add(windy(day, held));
            if (IntStream.range(0, day.rows()).anyMatch(row -> day.windMs(row) <= BLOWER_MS)) {
                calm.add(calm(day, held));
            }
        }
        Residuals blown = both(windy.get(0), windy.get(1));
        double flowWm2K = days.get(0).flowKgSM2(0) * Water.specificHeatJKgK(25);
        return ComputedOverMeasured.of(
                name,
                title,
                "Two days of a photovoltaic-thermal collector, every two minutes; Jonas et al. 2019",
                "heat, W/m²",
                Math.hypot(flowWm2K * DIFFERENCE_WITHIN_K, FLOW_WITHIN * blown.meanMeasured()),
                List.of(
                        new Points("wind of the blower, about 3.6 m/s", blown.measured(), blown.computed()),
                        new Points(
                                "without it, about 0.7 m/s",
                                calm.get(0).measured(),
                                calm.get(0).computed())));
    }

    private static void row(
            StringBuilder rows, String name, List<CollectorDay> days, Function<CollectorDay, String> of) {
        rows.append("| ").append(name);
        days.forEach(day -> rows.append(" | ").append(of.apply(day)));
        rows.append(" |\n");
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
