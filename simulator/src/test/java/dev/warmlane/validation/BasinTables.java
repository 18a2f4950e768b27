package dev.warmlane.validation;

import dev.warmlane.DocBlock;
import dev.warmlane.pool.Pool;
import dev.warmlane.weather.WeatherRecord;
import java.io.IOException;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/** The tables of docs/validation/basin.md. */
final class BasinTables {

    /** In daylight and wind classes, W/m² and m/s. */
    private static final double[] LIGHT = {0, 1, 200, 400, 600, 800, 1500};

    private static final double[] WIND = {0, 1, 2, 3, 4, 6, 20};

    private BasinTables() {}

    static String clockFound(BasinLog log, List<Double> found) {
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

    static String results(WeatherRecord weather, BasinLog log, List<Integer> clock) {
        StringBuilder rows = new StringBuilder(HEAD);
        for (double factor : new double[] {0.15, 0.30, 0.50}) {
            row(
                    rows,
                    "water alone, wind factor " + two(factor),
                    weather,
                    log,
                    clock,
                    BasinPools.windy(BasinPools.WATER_ALONE, factor));
        }
        for (double factor : new double[] {0.15, 0.30, 0.50}) {
            row(
                    rows,
                    "as described, wind factor " + two(factor),
                    weather,
                    log,
                    clock,
                    BasinPools.windy(BasinPools.DESCRIBED, factor));
        }
        List<Integer> asLogged = clock.stream().map(any -> 0).toList();
        row(rows, "as first described, wind factor 0.30", weather, log, clock, BasinPools.EARLIER);
        row(rows, "as described, 0.30, clock as logged", weather, log, asLogged, BasinPools.DESCRIBED);
        return rows.toString();
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

    static String months(BasinRun alone, BasinRun described) {
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
    static String swings(WeatherRecord weather, BasinLog log, List<Integer> clock) {
        StringBuilder rows = new StringBuilder();
        for (BasinPools.Variant variant : List.of(
                new BasinPools.Variant("as first described", BasinPools.EARLIER),
                new BasinPools.Variant("as described", BasinPools.DESCRIBED),
                new BasinPools.Variant("with walls 0.2 m above the water", BasinPools.rim(0.2, 0)))) {
            BasinRun run = BasinRun.of(variant.pool(), weather, log, clock);
            if (rows.isEmpty()) {
                rows.append("| day's swing, computed over measured |");
                run.months().forEach(month -> rows.append(' ').append(month).append(" |"));
                rows.append("\n|---").append("|---".repeat(run.months().size())).append("|\n");
            }
            rows.append("| ").append(variant.name()).append(" |");
            for (YearMonth month : run.months()) {
                Residuals days = run.swing()
                        .where(day -> YearMonth.from(run.dayStarts().get(day)).equals(month));
                rows.append(' ').append(DocBlock.signed(days.sumPercent(), 0)).append(" % |");
            }
            rows.append('\n');
        }
        return rows.toString();
    }

    static String hoursOfDay(BasinRun alone, BasinRun described) {
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

    static String windAndLight(WeatherRecord weather, BasinRun alone, BasinRun described) {
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

    static String oneAtATime(WeatherRecord weather, BasinLog log, List<Integer> clock) {
        StringBuilder rows = new StringBuilder(HEAD);
        BasinPools.oneAtATime().forEach(variant -> row(rows, variant.name(), weather, log, clock, variant.pool()));
        return rows.toString();
    }

    static String uncertainty(BasinLog log, List<Integer> clock, BasinRun usual) throws IOException {
        StringBuilder rows = new StringBuilder("""
                | standard uncertainty of | moves the mean of the computed water by, K |
                |---|---|
                """);
        double squares = 0;
        for (BasinLog.Input input : BasinPools.INPUTS) {
            BasinRun moved = BasinRun.of(BasinPools.DESCRIBED, BasinLog.weather(input), log, clock);
            double by = moved.byHour().bias() - usual.byHour().bias();
            squares += by * by;
            rows.append(String.format(Locale.ROOT, "| %s | %s |\n", input.name(), DocBlock.signed(by, 2)));
        }
        rows.append(String.format(Locale.ROOT, "| all together | %.2f |\n", Math.sqrt(squares)));
        return rows.toString();
    }

    static String quantities(BasinRun run) {
        return Handbook.kelvin("water temperature by the hour, nothing fitted", "basin", run.byHour(), "0.3 K")
                + Handbook.kelvin("water temperature by the day, nothing fitted", "basin", run.byDay(), "0.3 K");
    }

    private static String two(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
