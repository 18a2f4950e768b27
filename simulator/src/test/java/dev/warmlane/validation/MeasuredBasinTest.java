package dev.warmlane.validation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.DocBlock;
import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.EvaporationCorrelation;
import dev.warmlane.pool.Freeboard;
import dev.warmlane.pool.GroundStore;
import dev.warmlane.pool.InflowTemperature;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.SurfaceReflection;
import dev.warmlane.pool.ThroughFlow;
import dev.warmlane.pool.Walls;
import dev.warmlane.report.chart.ComputedOverMeasured;
import dev.warmlane.report.chart.ComputedOverMeasured.Points;
import dev.warmlane.report.chart.ResidualsOver;
import dev.warmlane.units.Units;
import dev.warmlane.weather.WeatherRecord;
import java.io.IOException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Nine months of a measured basin: docs/validation/basin.md, with {@code -Dmeasured.dir=}. {@code -Ddocs.write=true} writes its
 * tables and charts. Sums and statistics are told, no row of the measurement.
 */
@Tag("handbook")
class MeasuredBasinTest {

    private static final String PAGE = "validation/basin.md";

    private static final double LENGTH_M = 3.42;
    private static final double WIDTH_M = 1;
    private static final double DEPTH_M = 0.25;

    /** Green water, as the data's own note has it, "perhaps". */
    private static final double ABSORPTANCE = 0.9;

    /** Floor to the ground, W/K; own choice before the first run, in the middle of 0 and twice as much. */
    private static final double GROUND_WK = 3;

    /** Perimeter of 1 m by 3.42 m times the water's depth, m². */
    private static final double WALL_M2 = 2 * (WIDTH_M + LENGTH_M) * DEPTH_M;

    /** Between 12 of bare plastic or concrete, whose outer surface alone has 25, and 1 of an insulated wall, W/m²K. */
    private static final double WALL_WM2K = 6;

    /** The part in step with the water of ground that begins at the floor: effusivity over √(2ω), docs/model.md, m. */
    private static final double STORE_M = 0.04;

    private static final double RETENTION_S = 7.9 * Units.DAY;

    /** In daylight and wind classes, W/m² and m/s. */
    private static final double[] LIGHT = {0, 1, 200, 400, 600, 800, 1500};

    private static final double[] WIND = {0, 1, 2, 3, 4, 6, 20};

    private static final Pool WATER_ALONE = new Pool(
            WIDTH_M * LENGTH_M,
            DEPTH_M,
            new PoolSetting.Outdoor(0.30),
            ABSORPTANCE,
            Pool.WATER_EMITTANCE,
            Evaporation.SMITH_LOF_JONES,
            GROUND_WK,
            0);

    /** As this page had it first: the part of the ground's store that is in step with the water, reflexion of all light alike. */
    static final Pool EARLIER = WATER_ALONE
            .withWalls(new Walls(WALL_M2, WALL_WM2K, Walls.USUAL_ABSORPTANCE.value()))
            .withShellStoreM(STORE_M)
            .withThroughFlow(new ThroughFlow(
                    RETENTION_S, new InflowTemperature.MeanAir(InflowTemperature.MeanAir.USUAL_DAYS.value())));

    static final Pool DESCRIBED =
            EARLIER.withShellStoreM(0).withGroundStore(GroundStore.SAND).withReflection(SurfaceReflection.BY_ANGLE);

    /** What the inputs are uncertain by, standard: own estimates, reasons in the page. */
    private static final List<BasinLog.Input> INPUTS = List.of(
            new BasinLog.Input("light, 5 %", 1.05, 0, 0, 0),
            new BasinLog.Input("air, 0.3 K", 1, 0.3, 0, 0),
            new BasinLog.Input("dew point, 0.5 K", 1, 0, 0.5, 0),
            new BasinLog.Input("long-wave of the sky, 20 W/m²", 1, 0, 0, 20));

    private record Variant(String name, Pool pool) {}

    @Test
    void pageIsWhatIsComputed() throws IOException {
        BasinLog log = BasinLog.read();
        WeatherRecord weather = BasinLog.weather();
        List<Double> found = log.pieces().stream()
                .map(piece -> LogClock.shiftHours(piece, weather))
                .toList();
        List<Integer> clock = clock(found);
        BasinRun alone = BasinRun.of(WATER_ALONE, weather, log, clock);
        BasinRun described = BasinRun.of(DESCRIBED, weather, log, clock);
        DocBlock.check(PAGE, "clock", clockFound(log, found));
        DocBlock.check(PAGE, "results", results(weather, log, clock));
        DocBlock.check(PAGE, "months", months(alone, described));
        DocBlock.check(PAGE, "swings", swings(weather, log, clock));
        DocBlock.check(PAGE, "hours of day", hoursOfDay(alone, described));
        DocBlock.check(PAGE, "wind and light", windAndLight(weather, alone, described));
        DocBlock.check(PAGE, "one at a time", oneAtATime(weather, log, clock));
        DocBlock.check(PAGE, "uncertainty", uncertainty(log, clock, described));
        Handbook.check(PAGE, quantities(described));
        charts(described);
    }

    /** Legal summer time began on 25 September 2016 and ended on 2 April 2017; whoever read the logger out set its clock. */
    @Test
    void theClockIsThatOfSummerTimeInTheDataAlone() throws IOException {
        WeatherRecord weather = BasinLog.weather();
        for (BasinLog.Piece piece : BasinLog.read().pieces()) {
            boolean summer = piece.first().toLocalDate().toString().compareTo("2016-09-25") >= 0
                    && piece.first().toLocalDate().toString().compareTo("2017-04-02") <= 0;
            assertThat(LogClock.shiftHours(piece, weather))
                    .as("from %s", piece.first())
                    .isBetween(summer ? -1.4 : -0.4, summer ? -0.8 : 0.2);
        }
    }

    /** Each part of the description has a reason of its own, and together they bring the basin nearer by the hour and the day. */
    @Test
    void wallsStoreAndThroughFlowBringItNearer() throws IOException {
        BasinLog log = BasinLog.read();
        WeatherRecord weather = BasinLog.weather();
        List<Integer> clock = clock(log.pieces().stream()
                .map(piece -> LogClock.shiftHours(piece, weather))
                .toList());
        BasinRun alone = BasinRun.of(WATER_ALONE, weather, log, clock);
        BasinRun described = BasinRun.of(DESCRIBED, weather, log, clock);
        // the aim: 0.8 K by the hour, 0.5 K by the day, every month within 0.4 K
        assertThat(described.byHour().rms())
                .isLessThan(Math.min(0.8, alone.byHour().rms()));
        assertThat(described.byDay().rms())
                .isLessThan(Math.min(0.5, 0.95 * alone.byDay().rms()));
        assertThat(described.months())
                .allSatisfy(month ->
                        assertThat(Math.abs(described.month(month).bias())).isLessThan(0.4));
    }

    private static List<Integer> clock(List<Double> found) {
        return found.stream().map(hours -> (int) Math.round(hours)).toList();
    }

    private static String clockFound(BasinLog log, List<Double> found) {
        StringBuilder rows = new StringBuilder("""
                | months of the log | pieces | shift found, h, mean (least to most) | shift used |
                |---|---|---|---|
                """);
        clockRow(rows, log, found, "August and September, to the 8th", 0, 2);
        clockRow(rows, log, found, "27 September to 27 April", 2, log.pieces().size() - 1);
        clockRow(
                rows,
                log,
                found,
                "28 April to 30 May",
                log.pieces().size() - 1,
                log.pieces().size());
        return rows.toString();
    }

    private static void clockRow(StringBuilder rows, BasinLog log, List<Double> found, String name, int from, int to) {
        List<Double> shifts = found.subList(from, to);
        rows.append(String.format(
                Locale.ROOT,
                "| %s | %d of %d | %s (%s to %s) | %d h |\n",
                name,
                to - from,
                log.pieces().size(),
                DocBlock.signed(mean(shifts), 2),
                DocBlock.signed(shifts.stream().mapToDouble(s -> s).min().orElseThrow(), 2),
                DocBlock.signed(shifts.stream().mapToDouble(s -> s).max().orElseThrow(), 2),
                Math.round(mean(shifts))));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(value -> value).average().orElseThrow();
    }

    private static final String HEAD = """
            | | bias K | rms by the hour K | rms by the day K | day's swing | worst month K |
            |---|---|---|---|---|---|
            """;

    private static String results(WeatherRecord weather, BasinLog log, List<Integer> clock) {
        StringBuilder rows = new StringBuilder(HEAD);
        for (double factor : new double[] {0.15, 0.30, 0.50}) {
            row(rows, "water alone, wind factor " + two(factor), weather, log, clock, windy(WATER_ALONE, factor));
        }
        for (double factor : new double[] {0.15, 0.30, 0.50}) {
            row(rows, "as described, wind factor " + two(factor), weather, log, clock, windy(DESCRIBED, factor));
        }
        List<Integer> asLogged = clock.stream().map(any -> 0).toList();
        row(rows, "as first described, wind factor 0.30", weather, log, clock, EARLIER);
        row(rows, "as described, 0.30, clock as logged", weather, log, asLogged, DESCRIBED);
        return rows.toString();
    }

    private static Pool windy(Pool pool, double factor) {
        return pool.withSetting(new PoolSetting.Outdoor(factor));
    }

    private static BasinRun row(
            StringBuilder rows, String name, WeatherRecord weather, BasinLog log, List<Integer> clock, Pool pool) {
        BasinRun run = BasinRun.of(pool, weather, log, clock);
        double worst = 0;
        for (YearMonth month : run.months()) {
            double bias = run.month(month).bias();
            worst = Math.abs(bias) > Math.abs(worst) ? bias : worst;
        }
        rows.append(String.format(
                Locale.ROOT,
                "| %s | %s | %.2f | %.2f | %s %% | %s |\n",
                name,
                DocBlock.signed(run.byHour().bias(), 2),
                run.byHour().rms(),
                run.byDay().rms(),
                DocBlock.signed(run.swing().sumPercent(), 0),
                DocBlock.signed(worst, 2)));
        return run;
    }

    private static String months(BasinRun alone, BasinRun described) {
        StringBuilder rows = new StringBuilder("| bias, K |");
        described.months().forEach(month -> rows.append(' ').append(month).append(" |"));
        rows.append("\n|---").append("|---".repeat(described.months().size())).append("|\n");
        for (BasinRun run : List.of(alone, described)) {
            rows.append(run == alone ? "| water alone |" : "| as described |");
            run.months().forEach(month -> rows.append(' ')
                    .append(DocBlock.signed(run.month(month).bias(), 2))
                    .append(" |"));
            rows.append('\n');
        }
        return rows.toString();
    }

    /** By how much the computed day swings more than the measured one, sum over the days of each month. */
    private static String swings(WeatherRecord weather, BasinLog log, List<Integer> clock) {
        StringBuilder rows = new StringBuilder();
        for (Variant variant : List.of(
                new Variant("as first described", EARLIER),
                new Variant("as described", DESCRIBED),
                new Variant("with walls 0.2 m above the water", rim(0.2, 0)))) {
            BasinRun run = BasinRun.of(variant.pool, weather, log, clock);
            if (rows.isEmpty()) {
                rows.append("| day's swing, computed over measured |");
                run.months().forEach(month -> rows.append(' ').append(month).append(" |"));
                rows.append("\n|---").append("|---".repeat(run.months().size())).append("|\n");
            }
            rows.append("| ").append(variant.name).append(" |");
            for (YearMonth month : run.months()) {
                Residuals days = run.swing()
                        .where(day -> YearMonth.from(run.dayStarts().get(day)).equals(month));
                rows.append(' ').append(DocBlock.signed(days.sumPercent(), 0)).append(" % |");
            }
            rows.append('\n');
        }
        return rows.toString();
    }

    private static String hoursOfDay(BasinRun alone, BasinRun described) {
        StringBuilder rows = new StringBuilder("| bias, K, in the hour that begins at |");
        for (int hour = 0; hour < 24; hour += 3) {
            rows.append(' ').append(hour).append(" |");
        }
        rows.append("\n|---").append("|---".repeat(8)).append("|\n");
        for (BasinRun run : List.of(alone, described)) {
            rows.append(run == alone ? "| water alone |" : "| as described |");
            for (int hour = 0; hour < 24; hour += 3) {
                int of = hour;
                rows.append(' ')
                        .append(DocBlock.signed(
                                run.byHour()
                                        .where(row -> run.start(row).getHour() == of)
                                        .bias(),
                                2))
                        .append(" |");
            }
            rows.append('\n');
        }
        return rows.toString();
    }

    private static String windAndLight(WeatherRecord weather, BasinRun alone, BasinRun described) {
        StringBuilder rows = new StringBuilder();
        classes(rows, "sun is down, station's wind, m/s", WIND, alone, described, weather, true);
        rows.append('\n');
        classes(rows, "sun is up, station's wind, m/s", WIND, alone, described, weather, false);
        rows.append('\n');
        rows.append("| bias, K, light, W/m² |");
        bounds(rows, LIGHT);
        for (BasinRun run : List.of(alone, described)) {
            classRow(
                    rows,
                    run == alone ? "water alone" : "as described",
                    LIGHT,
                    run,
                    row -> true,
                    row -> weather.globalHorizontalWm2(run.hour(row)));
        }
        return rows.toString();
    }

    private static void classes(
            StringBuilder rows,
            String name,
            double[] bounds,
            BasinRun alone,
            BasinRun described,
            WeatherRecord weather,
            boolean night) {
        rows.append("| bias, K, ").append(name).append(" |");
        bounds(rows, bounds);
        for (BasinRun run : List.of(alone, described)) {
            classRow(
                    rows,
                    run == alone ? "water alone" : "as described",
                    bounds,
                    run,
                    row -> weather.sun().isUp(run.hour(row)) != night,
                    row -> weather.windSpeedMs(run.hour(row)));
        }
    }

    private static void bounds(StringBuilder rows, double[] bounds) {
        for (int i = 0; i + 1 < bounds.length; i++) {
            rows.append(String.format(Locale.ROOT, " %.0f to %.0f |", bounds[i], bounds[i + 1]));
        }
        rows.append("\n|---").append("|---".repeat(bounds.length - 1)).append("|\n");
    }

    private static void classRow(
            StringBuilder rows,
            String name,
            double[] bounds,
            BasinRun run,
            IntPredicate wanted,
            IntToDoubleFunction value) {
        rows.append("| ").append(name).append(" |");
        for (int i = 0; i + 1 < bounds.length; i++) {
            double from = bounds[i];
            double to = bounds[i + 1];
            Residuals of = run.byHour()
                    .where(row ->
                            wanted.test(row) && value.applyAsDouble(row) >= from && value.applyAsDouble(row) < to);
            rows.append(' ').append(DocBlock.signed(of.bias(), 2)).append(" |");
        }
        rows.append('\n');
    }

    private static String oneAtATime(WeatherRecord weather, BasinLog log, List<Integer> clock) {
        EvaporationCorrelation halved = new HalfOfAshrae();
        ThroughFlow cold = new ThroughFlow(RETENTION_S, new InflowTemperature.Given(12));
        ThroughFlow warm = new ThroughFlow(RETENTION_S, new InflowTemperature.Given(18));
        ThroughFlow slow = new ThroughFlow(RETENTION_S, new InflowTemperature.MeanAir(30));
        List<Variant> variants = List.of(
                new Variant("as described, wind factor 0.30", DESCRIBED),
                new Variant("evaporation by ISO/TR 12596", DESCRIBED.withEvaporation(Evaporation.ISO_TR_12596)),
                new Variant("by ASHRAE, 0.74 when quiet", DESCRIBED.withEvaporation(Evaporation.ASHRAE_CARRIER)),
                new Variant("by ASHRAE, 0.5 when quiet", DESCRIBED.withEvaporation(halved)),
                new Variant("wind factor 0.25", windy(DESCRIBED, 0.25)),
                new Variant("wind factor 0.35", windy(DESCRIBED, 0.35)),
                new Variant("absorptance 0.85", DESCRIBED.withSolarAbsorptance(0.85)),
                new Variant("absorptance 0.95", DESCRIBED.withSolarAbsorptance(0.95)),
                new Variant("walls of 1 W/m²K, insulated", walls(1, 0.6)),
                new Variant("walls of 12 W/m²K, bare", walls(12, 0.6)),
                new Variant("walls that absorb 0.3 of the sun", walls(WALL_WM2K, 0.3)),
                new Variant("reflexion of all light alike", DESCRIBED.withReflection(SurfaceReflection.EVEN)),
                new Variant("ground's store as 0.04 m of water", EARLIER.withReflection(SurfaceReflection.BY_ANGLE)),
                new Variant("both of these, as first described", EARLIER),
                new Variant("first described, twice the store, 0.08 m", EARLIER.withShellStoreM(2 * STORE_M)),
                new Variant("first described, no store but the water's", EARLIER.withShellStoreM(0)),
                new Variant("ground's store that of clay", DESCRIBED.withGroundStore(GroundStore.CLAY)),
                new Variant("that of rock", DESCRIBED.withGroundStore(GroundStore.ROCK)),
                new Variant("walls 0.1 m above the water", rim(0.1, 0)),
                new Variant("walls 0.2 m above the water, lying north", rim(0.2, 0)),
                new Variant("the same lying east", rim(0.2, 90)),
                new Variant("ground of 0 W/K", DESCRIBED.withGroundConductanceWK(0)),
                new Variant("ground of 16 W/K, by area and depth", DESCRIBED.withGroundConductanceWK(16)),
                new Variant("through-flow that follows 30 days of air", DESCRIBED.withThroughFlow(slow)),
                new Variant("through-flow of 12 °C", DESCRIBED.withThroughFlow(cold)),
                new Variant("through-flow of 18 °C", DESCRIBED.withThroughFlow(warm)),
                new Variant(
                        "sky share 0.8, walls' freeboard and surroundings",
                        DESCRIBED.withSetting(new PoolSetting.Outdoor(0.30, 0, 0.8))));
        StringBuilder rows = new StringBuilder(HEAD);
        variants.forEach(variant -> row(rows, variant.name, weather, log, clock, variant.pool));
        return rows.toString();
    }

    /** Height and direction of what stands above the water are not told. */
    private static Pool rim(double heightM, double axisDeg) {
        return DESCRIBED.withFreeboard(
                new Freeboard(heightM, LENGTH_M, WIDTH_M, axisDeg, Freeboard.USUAL_REFLECTANCE.value()));
    }

    private static Pool walls(double uValueWm2K, double absorptance) {
        return DESCRIBED.withWalls(new Walls(WALL_M2, uValueWm2K, absorptance));
    }

    /** The handbook's factor of a residential pool in a hall, asked of a basin outdoors. */
    private record HalfOfAshrae() implements EvaporationCorrelation {
        @Override
        public double heatWm2Kpa(double windMs) {
            return 0.5 * Evaporation.ASHRAE_CARRIER.heatWm2Kpa(windMs);
        }
    }

    private static String uncertainty(BasinLog log, List<Integer> clock, BasinRun usual) throws IOException {
        StringBuilder rows = new StringBuilder("""
                | standard uncertainty of | moves the mean of the computed water by, K |
                |---|---|
                """);
        double squares = 0;
        for (BasinLog.Input input : INPUTS) {
            BasinRun moved = BasinRun.of(DESCRIBED, BasinLog.weather(input), log, clock);
            double by = moved.byHour().bias() - usual.byHour().bias();
            squares += by * by;
            rows.append(String.format(Locale.ROOT, "| %s | %s |\n", input.name(), DocBlock.signed(by, 2)));
        }
        rows.append(String.format(Locale.ROOT, "| all together | %.2f |\n", Math.sqrt(squares)));
        return rows.toString();
    }

    private static String quantities(BasinRun run) {
        return Handbook.kelvin("water temperature by the hour, nothing fitted", "basin", run.byHour(), "0.3 K")
                + Handbook.kelvin("water temperature by the day, nothing fitted", "basin", run.byDay(), "0.3 K");
    }

    private static void charts(BasinRun run) throws IOException {
        Residuals days = run.byDay();
        List<Points> seasons = new ArrayList<>();
        String[] names = {"winter, August", "spring", "summer", "autumn"};
        for (int season = 0; season < 4; season++) {
            int of = season;
            Residuals rows = days.where(row -> season(run.dayStarts().get(row).getMonthValue()) == of);
            seasons.add(new Points(names[season], rows.measured(), rows.computed()));
        }
        DocChart.check(ComputedOverMeasured.of(
                "basin-days",
                "The basin's water, mean of each day, nothing fitted",
                "Pilot pond of Chambonnière, Bronlund and Guieysse, August 2016 to May 2017; as described, wind factor 0.30",
                "water, °C",
                0.3,
                seasons));
        Residuals hours = run.byHour();
        DocChart.check(ResidualsOver.of(
                "basin-hours",
                "The basin's water, computed less measured, by the hour of the day",
                "As described, wind factor 0.30; each hour, and the mean of all of one hour of the day",
                "hour of the day, New Zealand standard time",
                "computed less measured, K",
                IntStream.range(0, hours.rows())
                        .mapToDouble(row -> run.start(row).getHour() + 0.5)
                        .toArray(),
                IntStream.range(0, hours.rows())
                        .mapToDouble(row -> hours.computed()[row] - hours.measured()[row])
                        .toArray()));
    }

    /** Of the southern half of the earth, from winter on. */
    private static int season(int month) {
        return (month + 6) / 3 % 4;
    }

    private static String two(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
