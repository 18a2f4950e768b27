package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.pool.Flow;
import dev.warmlane.pool.GroundStore;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.Walls;
import dev.warmlane.weather.WeatherRecord;
import dev.warmlane.weather.WeatherYear;
import java.time.LocalDateTime;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ground that stores heat about a basin. */
class GroundHeatTest {

    private static final LocalDateTime START = LocalDateTime.of(2019, 5, 1, 0, 0);
    private static final int DAYS = 40;

    private final WeatherRecord weather = weather();

    /**
     * A half-space takes b·√(iω) = b·√ω·(1 + i)/√2 for each kelvin of a swing (Carslaw and Jaeger, from memory); the row of
     * stores does so over a day to two months within 2 %, with the steady conductance of what is slower than a year, which it
     * leaves to the steady heat to the ground: that of the next store and of half as much each beyond it.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 3, 10, 60})
    void theStoresAreAHalfSpace(double days) {
        double omega = 2 * Math.PI / (86_400 * days);
        double[] rates = GroundStore.SAND.rates();
        double[] conductances = GroundStore.SAND.conductancesWm2K();
        double real = 0;
        double imaginary = omega * GroundStore.SAND.inStepJm2K();
        for (int k = 0; k < rates.length; k++) {
            double ratio = omega / rates[k];
            real += conductances[k] * ratio * ratio / (1 + ratio * ratio);
            imaginary += conductances[k] * ratio / (1 + ratio * ratio);
        }
        double half = 2000 * Math.sqrt(omega / 2);
        double slower = conductances[0];
        assertThat(imaginary / half).isCloseTo(1, within(0.02));
        // what is in step by the hour is not out of step by half a day
        assertThat((real + slower) / half).isCloseTo(1, within(days < 1 ? 0.06 : 0.02));
    }

    /** What the water gave is in the water or came back: the ledger closes to the joule, every hour. */
    @Test
    void theLedgerCloses() {
        RecordLedger run = run(basin().withGroundStore(GroundStore.CLAY), START.plusDays(DAYS));
        for (int hour = 0; hour < run.hours(); hour++) {
            double sum = 0;
            double size = 0;
            for (Flow flow : Flow.values()) {
                sum += run.heatJm2(flow, hour);
                size += Math.abs(run.heatJm2(flow, hour));
            }
            assertThat(run.storedJm2(hour)).isCloseTo(sum, within(1e-9 * (size + 1)));
        }
    }

    /** The day's swing falls, and what the ground took by day it gives back by night. */
    @Test
    void theDaySwingsLess() {
        RecordLedger without = run(basin(), START.plusDays(DAYS));
        RecordLedger with = run(basin().withGroundStore(GroundStore.SAND), START.plusDays(DAYS));
        assertThat(swingK(with)).isBetween(0.6 * swingK(without), 0.9 * swingK(without));
        double back = 0;
        for (int hour = 24 * 20; hour < with.hours(); hour++) {
            back = Math.max(back, with.heatJm2(Flow.GROUND, hour));
        }
        assertThat(back / 3600).isGreaterThan(10);
    }

    @Test
    void runsInTwoPartsAreTheRunToTheBit() {
        Pool pool = basin().withGroundStore(GroundStore.ROCK);
        Installation built = Installation.builder("basin", pool).build();
        SeasonForcing forcing = SeasonForcing.of(built, weather);
        RecordLedger whole = run(pool, START.plusDays(9));
        RecordLedger first =
                RecordSimulator.simulate(built, forcing, RecordState.water(START, 15), START.plusHours(101));
        RecordLedger second = RecordSimulator.simulate(built, forcing, first.endState(), START.plusDays(9));
        assertThat(second.endState()).isEqualTo(whole.endState());
        assertThat(first.endState().groundC()).hasSize(GroundStore.ROCK.rates().length);
        assertThat(run(basin(), START.plusDays(1)).endState().groundC()).isEmpty();
    }

    /** Walls that stand in the air have no ground behind them. */
    @Test
    void theFaceIsFloorAndWallsInTheGround() {
        Pool pool = Pool.of(50, 1.5, new PoolSetting.Outdoor(0.3)).withGroundStore(GroundStore.SAND);
        // twice as long as wide: 10 m by 5 m
        assertThat(face(pool)).isCloseTo(1 + 30 * 1.5 / 50, within(1e-12));
        assertThat(face(pool.withWalls(new Walls(45, 3, 0.6)))).isEqualTo(1);
    }

    private double face(Pool pool) {
        return SeasonForcing.of(Installation.builder("pool", pool).build(), weather)
                .pool()
                .groundFace();
    }

    private static Pool basin() {
        return Pool.of(8, 0.3, new PoolSetting.Outdoor(0.3)).withGroundConductanceWK(0);
    }

    private RecordLedger run(Pool pool, LocalDateTime end) {
        Installation built = Installation.builder("basin", pool).build();
        return RecordSimulator.simulate(built, SeasonForcing.of(built, weather), RecordState.water(START, 15), end);
    }

    private static double swingK(RecordLedger run) {
        double sum = 0;
        for (int day = 10; day < DAYS; day++) {
            int first = 24 * day;
            double high = IntStream.range(first, first + 24)
                    .mapToDouble(run::waterC)
                    .max()
                    .orElseThrow();
            double low = IntStream.range(first, first + 24)
                    .mapToDouble(run::waterC)
                    .min()
                    .orElseThrow();
            sum += high - low;
        }
        return sum / (DAYS - 10);
    }

    private static WeatherRecord weather() {
        WeatherYear year = Demo.weather("warm-inland");
        return WeatherRecord.builder(year.site(), "invented", START)
                .globalWm2(column(year::globalHorizontalWm2))
                .airC(column(year::airTemperatureC))
                .dewPointC(column(year::dewPointC))
                .windSpeedMs(column(year::windSpeedMs))
                .build();
    }

    private static double[] column(IntToDoubleFunction value) {
        int first = 24 * 120;
        return IntStream.range(first, first + 24 * DAYS).mapToDouble(value).toArray();
    }
}
