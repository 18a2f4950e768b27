package dev.warmlane.validation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.DocBlock;
import dev.warmlane.fit.FitOptions;
import dev.warmlane.fit.FittedPool;
import dev.warmlane.fit.Found;
import dev.warmlane.fit.PoolFit;
import dev.warmlane.fit.Unknown;
import dev.warmlane.fit.WaterBand;
import dev.warmlane.fit.WaterLog;
import dev.warmlane.pool.Pool;
import dev.warmlane.season.Installation;
import dev.warmlane.season.RecordState;
import dev.warmlane.weather.WeatherRecord;
import java.io.IOException;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Fits to thirty days of the measured basin, held against the rest of its nine months: docs/validation/fit.md, with
 * {@code -Dmeasured.dir=}. {@code -Ddocs.write=true} writes its tables. No number was chosen to bring one of them nearer.
 */
@Tag("handbook")
class MeasuredFitTest {

    private static final String PAGE = "validation/fit.md";

    private static final double UTC_OFFSET = 12;
    private static final int WINDOW_DAYS = 30;
    private static final int EVERY_DAYS = 10;

    /** Fewer hours of the 720 are no thirty days; own choice. */
    private static final int FEWEST_HOURS = 480;

    private static final FitOptions OPTIONS = FitOptions.USUAL.withDraws(2000);

    /** Between which shares of the rest a band that should hold nine of ten is counted. */
    private static final double LEAST = 0.85;

    private static final double MOST = 0.95;

    /** An hour of the log, its clock put right by what {@link LogClock} found without the model. */
    private record Hour(LocalDateTime time, double waterC) {}

    private record Basin(WeatherRecord weather, WaterLog log, WaterLog clockRight, List<Hour> right) {

        static Basin read() throws IOException {
            WeatherRecord weather = BasinLog.weather();
            List<WaterLog.Reading> readings = new ArrayList<>();
            List<Hour> right = new ArrayList<>();
            for (BasinLog.Piece piece : BasinLog.read().pieces()) {
                long shift = Math.round(LogClock.shiftHours(piece, weather));
                for (int i = 0; i < piece.times().size(); i++) {
                    LocalDateTime clock = piece.times().get(i);
                    if (readings.isEmpty()
                            || readings.get(readings.size() - 1).clock().isBefore(clock)) {
                        readings.add(new WaterLog.Reading(clock, piece.waterC().get(i)));
                        right.add(
                                new Hour(clock.plusHours(shift), piece.waterC().get(i)));
                    }
                }
            }
            return new Basin(
                    weather,
                    new WaterLog("the basin's log", UTC_OFFSET, readings),
                    new WaterLog(
                            "the same with its clock put right",
                            UTC_OFFSET,
                            right.stream()
                                    .map(hour -> new WaterLog.Reading(hour.time, hour.waterC))
                                    .toList()),
                    right);
        }

        FittedPool fit(Pool pool, WaterLog of, LocalDateTime from, LocalDateTime to) {
            Installation built = Installation.builder("measured basin", pool).build();
            return new PoolFit(built, weather, of.between(from, to))
                    .with(OPTIONS)
                    .fit();
        }
    }

    /** What thirty days say of the rest. */
    private record Start(
            LocalDateTime from, FittedPool fit, WaterBand band, int rest, double held, double bias, double rms) {

        static Start of(Basin basin, Pool pool, WaterLog log, LocalDateTime from) {
            LocalDateTime to = from.plusDays(WINDOW_DAYS);
            FittedPool fit = basin.fit(pool, log, from, to);
            Hour first = basin.right.get(0);
            LocalDateTime begin = first.time.truncatedTo(ChronoUnit.HOURS);
            LocalDateTime end = basin.right
                    .get(basin.right.size() - 1)
                    .time
                    .truncatedTo(ChronoUnit.HOURS)
                    .plusHours(1);
            WaterBand band = WaterBand.of(fit, RecordState.water(begin, first.waterC), end);
            int rest = 0;
            int held = 0;
            double sum = 0;
            double square = 0;
            for (Hour hour : basin.right) {
                if (hour.time.isBefore(from.minusHours(2)) || hour.time.isAfter(to.plusHours(2))) {
                    int index = (int) ChronoUnit.HOURS.between(begin, hour.time);
                    rest++;
                    held += band.lowC(index) <= hour.waterC && hour.waterC <= band.highC(index) ? 1 : 0;
                    double difference = band.likelyC(index) - hour.waterC;
                    sum += difference;
                    square += difference * difference;
                }
            }
            return new Start(from, fit, band, rest, held / (double) rest, sum / rest, Math.sqrt(square / rest));
        }

        double chanceOfBeingCounted() {
            return band.chanceOfFewerThan(MOST) - band.chanceOfFewerThan(LEAST);
        }
    }

    @Test
    void pageIsWhatIsComputed() throws IOException {
        Basin basin = Basin.read();
        DocBlock.check(PAGE, "starts", table(starts(basin, BasinPools.EARLIER, basin.log)));
        DocBlock.check(PAGE, "as described by now", table(starts(basin, BasinPools.DESCRIBED, basin.clockRight)));
        DocBlock.check(PAGE, "halves", halves(basin, BasinPools.EARLIER, basin.log));
        DocBlock.check(PAGE, "halves as described by now", halves(basin, BasinPools.DESCRIBED, basin.clockRight));
    }

    private static List<Start> starts(Basin basin, Pool pool, WaterLog log) {
        LocalDateTime first = log.readings().get(0).clock();
        LocalDateTime last = log.readings().get(log.readings().size() - 1).clock();

        List<LocalDateTime> from = new ArrayList<>();
        for (LocalDateTime at = first; !at.plusDays(WINDOW_DAYS).isAfter(last); at = at.plusDays(EVERY_DAYS)) {
            if (hours(log, at) >= FEWEST_HOURS) {
                from.add(at);
            }
        }
        assertThat(from).hasSizeGreaterThan(10);
        return from.parallelStream().map(at -> Start.of(basin, pool, log, at)).toList();
    }

    private static long hours(WaterLog log, LocalDateTime from) {
        return log.readings().stream()
                .map(reading -> reading.clock().truncatedTo(ChronoUnit.HOURS))
                .filter(hour -> !hour.isBefore(from) && hour.isBefore(from.plusDays(WINDOW_DAYS)))
                .distinct()
                .count();
    }

    private static String table(List<Start> starts) {
        StringBuilder rows = new StringBuilder("""
                | thirty days from | hours | wind factor | share of the sun | clock ahead, h | sky, W/m² | error, K | fades in, h | rest within the band | chance of 85 to 95 % | bias of the rest, K | rms, K |
                |---|---|---|---|---|---|---|---|---|---|---|---|
                """);
        for (Start start : starts) {
            rows.append(String.format(
                    Locale.ROOT,
                    "| %s | %d | %s | %s | %.1f | %s | %.2f | %.0f | %.1f %% | %.0f %% | %s | %.2f |\n",
                    start.from.toLocalDate(),
                    start.fit.residuals().size(),
                    interval(start.fit, Unknown.WIND),
                    interval(start.fit, Unknown.SUN),
                    start.fit.found(Unknown.CLOCK).orElseThrow().likely(),
                    DocBlock.signed(start.fit.found(Unknown.SKY).orElseThrow().likely(), 0),
                    start.fit.error().likely().errorK(),
                    start.fit.error().likely().fadeHours(),
                    100 * start.held,
                    100 * start.chanceOfBeingCounted(),
                    DocBlock.signed(start.bias, 2),
                    start.rms));
        }
        long within = starts.stream()
                .filter(start -> start.held >= LEAST && start.held <= MOST)
                .count();
        rows.append(String.format(
                Locale.ROOT,
                "\nOf %d starts %d hold between 85 and 95 of 100 hours of the rest, %d fewer, %d more; all together %.0f %%."
                        + " If all that the fits state were right, %.0f would.\n",
                starts.size(),
                within,
                starts.stream().filter(start -> start.held < LEAST).count(),
                starts.stream().filter(start -> start.held > MOST).count(),
                100 * starts.stream().mapToDouble(Start::held).average().orElseThrow(),
                starts.stream().mapToDouble(Start::chanceOfBeingCounted).sum()));
        return rows.toString();
    }

    private static String interval(FittedPool fit, Unknown unknown) {
        Found found = fit.found(unknown).orElseThrow();
        return String.format(Locale.ROOT, "%.2f (%.2f to %.2f)", found.likely(), found.low(), found.high());
    }

    private static String halves(Basin basin, Pool pool, WaterLog log) {
        List<WaterLog.Reading> all = log.readings();
        LocalDateTime middle = all.get(all.size() / 2).clock();
        FittedPool one = basin.fit(pool, log, all.get(0).clock(), middle);
        FittedPool other = basin.fit(pool, log, middle, LocalDateTime.MAX);
        StringBuilder rows = new StringBuilder("""
                | | to %s | from then on | difference over its standard deviation |
                |---|---|---|---|
                """.formatted(middle.toLocalDate()));
        for (Unknown unknown : List.of(Unknown.WIND, Unknown.SUN, Unknown.SKY)) {
            Found first = one.found(unknown).orElseThrow();
            Found second = other.found(unknown).orElseThrow();
            rows.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %.1f |\n",
                    unknown.label(),
                    interval(one, unknown),
                    interval(other, unknown),
                    Math.abs(first.likely() - second.likely())
                            / Math.hypot(first.chainStandardDeviation(), second.chainStandardDeviation())));
        }
        return rows.toString();
    }
}
