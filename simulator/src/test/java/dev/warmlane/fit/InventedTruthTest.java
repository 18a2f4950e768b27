package dev.warmlane.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.season.Installation;
import dev.warmlane.season.RecordLedger;
import dev.warmlane.season.RecordState;
import dev.warmlane.season.WindAndSun;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a fit makes of logs whose truth is known. Pools and logs invented. */
class InventedTruthTest {

    /** Good to 0.3 K, errors that fade over five days, and a reading's noise. */
    private static final ErrorSize ERROR = new ErrorSize(0.3, 120, 0.05);

    private static final int DAYS = 40;
    private static final int LOGS = 20;

    /**
     * Of twenty intervals that hold nine of ten, fewer than 15 hold by chance in 1 of 24 cases, 20 in 1 of 8 (binomial).
     */
    private static final int LEAST_HELD = 15;

    /** What a band is held against after the days of the logs. */
    private static final int REST_DAYS = 60;

    private static final RecordLedger TRUTH =
            InventedLog.run(InventedLog.truth(InventedLog.POOL), InventedLog.JUNE, DAYS + 1);

    /** Of the first twenty logs, for every test that needs no other: they take the longest. */
    private static List<FittedPool> fits = List.of();

    @BeforeAll
    static void fitAll() {
        fits = LongStream.rangeClosed(1, LOGS)
                .parallel()
                .mapToObj(seed -> fit(seed, FitOptions.USUAL.withDraws(1000)))
                .toList();
    }

    private static FittedPool fit(long seed, FitOptions options) {
        WaterLog log = InventedLog.log(TRUTH, ERROR, seed).between(InventedLog.JUNE, InventedLog.JUNE.plusDays(DAYS));
        return new PoolFit(InventedLog.POOL, InventedLog.WEATHER, log)
                .with(options)
                .fit();
    }

    private static boolean holds(FittedPool fit, Unknown unknown, double truth) {
        Found found = fit.found(unknown).orElseThrow();
        return found.low() <= truth && truth <= found.high();
    }

    @Test
    void whatIsTrueLiesWithinTheIntervalsNineTimesOfTen() {
        assertThat(fits.stream()
                        .filter(fit -> holds(fit, Unknown.WIND, InventedLog.WIND))
                        .count())
                .isBetween((long) LEAST_HELD, (long) LOGS);
        assertThat(fits.stream()
                        .filter(fit -> holds(fit, Unknown.SUN, InventedLog.SUN))
                        .count())
                .isBetween((long) LEAST_HELD, (long) LOGS);
        assertThat(fits.stream().filter(fit -> holds(fit, Unknown.CLOCK, 1)).count())
                .isBetween((long) LEAST_HELD, (long) LOGS);
        // intervals as wide as the priors would hold the truth too, and say nothing
        assertThat(fits).allSatisfy(fit -> {
            assertThat(fit.found(Unknown.WIND).orElseThrow().shareOfPrior()).isLessThan(0.2);
            assertThat(fit.found(Unknown.SUN).orElseThrow().shareOfPrior()).isLessThan(0.2);
        });
    }

    /** A refusal would say nothing of intervals, neither here nor above: it fails either test. */
    @Test
    void errorsTakenForIndependentWouldMakeItTooSure() {
        FitOptions independent = FitOptions.USUAL.withDraws(400).withFadeHours(1);
        long held = LongStream.rangeClosed(1, LOGS)
                .parallel()
                .filter(seed -> holds(fit(seed, independent), Unknown.SUN, InventedLog.SUN))
                .count();
        assertThat(held).isLessThan(LEAST_HELD);
    }

    @Test
    void laplaceAndChainAgreeAndTheSameSeedGivesTheSameBits() {
        FittedPool one = fit(3, FitOptions.USUAL.withDraws(4000));
        // the chain also knows that the error's size is uncertain, so it may be wider by some tenths
        for (Unknown unknown : List.of(Unknown.WIND, Unknown.SUN, Unknown.CLOCK)) {
            Found found = one.found(unknown).orElseThrow();
            assertThat(found.chainStandardDeviation() / found.standardDeviation())
                    .isBetween(0.8, 1.4);
            assertThat(found.chainMean()).isCloseTo(found.likely(), within(0.5 * found.standardDeviation()));
        }
        assertThat(one.acceptedShare()).isBetween(0.3, 0.9);
        assertThat(fit(3, FitOptions.USUAL.withDraws(600)).found())
                .isEqualTo(fit(3, FitOptions.USUAL.withDraws(600)).found());
        FittedPool other = fit(3, FitOptions.USUAL.withDraws(4000).withSeed(5));
        Found wind = one.found(Unknown.WIND).orElseThrow();
        assertThat(other.found(Unknown.WIND).orElseThrow().chainMean())
                .isNotEqualTo(wind.chainMean())
                .isCloseTo(wind.chainMean(), within(0.3 * wind.standardDeviation()));
    }

    /** The truth departs with the season as far as it is said to, and the log's error goes on. */
    @Test
    void otherDaysLieWithinTheBandNineHoursOfTen() {
        double held = LongStream.rangeClosed(1, 8)
                .parallel()
                .mapToDouble(seed -> restHeld(seed))
                .average()
                .orElseThrow();
        // eight times sixty days of errors that fade over five are about fifty independent ones: 0.9 within 0.09, twice
        // what chance makes of it
        assertThat(held).isBetween(0.81, 0.99);
    }

    /** The share of the rest of a log that lies within the band of its first days. */
    private static double restHeld(long seed) {
        FittedPool fit = fits.get((int) seed - 1);
        LocalDateTime from = InventedLog.JUNE.plusDays(DAYS);
        LocalDateTime to = from.plusDays(REST_DAYS);
        RecordState start = RecordState.water(from, TRUTH.waterStartC(24 * DAYS));
        WaterBand band = WaterBand.of(fit, start, to);
        double[] truth = fit.likely();
        truth[fit.index(Unknown.WIND)] = InventedLog.WIND;
        truth[fit.index(Unknown.SUN)] = InventedLog.SUN;
        truth[fit.index(Unknown.SKY)] = 0;
        RecordLedger run = fit.model()
                .run(
                        InventedLog.truth(InventedLog.POOL),
                        fit.seasons().drawn(fit, truth, new Well19937c(seed)::nextGaussian),
                        start,
                        to);
        // the logger's clock is an hour ahead
        List<WaterLog.Reading> rest = InventedLog.log(run, ERROR, seed).readings();
        assertThat(rest).hasSizeGreaterThan(24 * REST_DAYS);
        return rest.stream()
                        .filter(reading -> {
                            int hour = (int) ChronoUnit.HOURS.between(
                                    from, reading.clock().minusHours(1));
                            return band.lowC(hour) <= reading.waterC() && reading.waterC() <= band.highC(hour);
                        })
                        .count()
                / (double) rest.size();
    }

    /** A share that the band holds is the rarer the farther from nine of ten, and nothing is certain of it. */
    @Test
    void theBandTellsHowOftenChanceHoldsFewer() {
        LocalDateTime from = InventedLog.JUNE.plusDays(DAYS);
        WaterBand band = WaterBand.of(
                fits.get(0), RecordState.water(from, TRUTH.waterStartC(24 * DAYS)), from.plusDays(REST_DAYS));
        assertThat(band.chanceOfFewerThan(0)).isZero();
        assertThat(band.chanceOfFewerThan(1.001)).isEqualTo(1);
        assertThat(band.chanceOfFewerThan(0.9)).isBetween(0.3, 0.7);
        // sixty days of errors that last five, and of seasons that last three months, are few
        assertThat(band.chanceOfFewerThan(0.95) - band.chanceOfFewerThan(0.85)).isBetween(0.2, 0.8);
    }

    @Test
    void billsTellTheEfficiencyAndTheMeterTheLeak() {
        Installation described = InventedLog.POOL.toBuilder()
                .heater(new Boiler(Fuel.NATURAL_GAS, 0.82, 60, 22))
                .build();
        Installation truth = PoolValues.withMakeUp(PoolValues.withEfficiency(InventedLog.truth(described), 0.71), 9000);
        RecordLedger run = InventedLog.run(truth, InventedLog.JUNE, 60);
        List<Metered> bills = new ArrayList<>();
        List<Metered> meter = new ArrayList<>();
        for (int from = 1; from + 14 < 60; from += 14) {
            int first = 24 * from;
            LocalDate day = run.time(first).toLocalDate();
            bills.add(new Metered(
                    day,
                    day.plusDays(14),
                    IntStream.range(first, first + 24 * 14)
                            .mapToDouble(run::boughtKwh)
                            .sum()));
            meter.add(new Metered(
                    day,
                    day.plusDays(14),
                    14 * 9000
                            + IntStream.range(first, first + 24 * 14)
                                    .mapToDouble(run::evaporatedKg)
                                    .sum()));
        }
        WaterLog log = InventedLog.log(run, new ErrorSize(0.1, 24, 0.05), 2);
        FittedPool fit = new PoolFit(described, InventedLog.WEATHER, log)
                .withBills(bills)
                .withMeter(meter)
                .with(FitOptions.USUAL.withDraws(3000))
                .fit();
        assertThat(fit.bills()).hasSize(bills.size());
        assertThat(holds(fit, Unknown.EFFICIENCY, 0.71)).isTrue();
        assertThat(holds(fit, Unknown.MAKE_UP, 9000)).isTrue();
        assertThat(fit.found(Unknown.EFFICIENCY).orElseThrow().shareOfPrior()).isLessThan(0.6);
        assertThat(fit.found(Unknown.MAKE_UP).orElseThrow().shareOfPrior()).isLessThan(0.3);
        Installation fitted = fit.installation();
        assertThat(fitted.makeUp().litresPerDay())
                .isEqualTo(fit.found(Unknown.MAKE_UP).orElseThrow().likely());
        assertThat(((Boiler) fitted.heater().orElseThrow()).efficiency())
                .isEqualTo(fit.found(Unknown.EFFICIENCY).orElseThrow().likely());
    }

    @Test
    void theInstallationFoundHasWindAndSunFound() {
        FittedPool fit = fits.get(0);
        double wind = fit.found(Unknown.WIND).orElseThrow().likely();
        double sun = fit.found(Unknown.SUN).orElseThrow().likely();
        assertThat(fit.installation().pool().setting().outdoor().orElseThrow().windFactor())
                .isEqualTo(wind);
        assertThat(WindAndSun.of(fit.installation()).sunShare()).isCloseTo(sun, within(1e-12));
        // less than the finish absorbs is shade, more is finish
        assertThat(new WindAndSun(0.2, 0.97).in(InventedLog.POOL).pool().solarAbsorptance())
                .isEqualTo(0.97);
        assertThat(new WindAndSun(0.2, 0.5).in(InventedLog.POOL).pool().solarAbsorptance())
                .isEqualTo(0.85);
        assertThat(fit.installation().fitted()).contains(fit.doubt());
        assertThat(fit.doubt().wind().sd())
                .isEqualTo(fit.found(Unknown.WIND).orElseThrow().chainStandardDeviation());
        assertThat(new MakeUp(0, InventedLog.POOL.makeUp().mains())).isEqualTo(InventedLog.POOL.makeUp());
    }
}
