package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TabulatedTest {

    /** A cubic is its own cubic, to rounding of values up to a thousand. */
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 3.99, 4, 7.3, 9.999999})
    void drawsACubicExactly(double atC) {
        Tabulated table = new Tabulated(TabulatedTest::cubic, 0, 10, 3);
        assertThat(table.at(atC)).isCloseTo(cubic(atC), within(ROUNDING * 1000));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-40, -1e-9, 10, 300})
    void asksTheFunctionOutside(double atC) {
        assertThat(new Tabulated(TabulatedTest::cubic, 0, 10, 3).at(atC)).isEqualTo(cubic(atC));
        assertThat(new Tabulated(TabulatedTest::cubic, 0, 10, 3).at(Double.NaN)).isNaN();
    }

    /** The table answers for its whole range, from its first degree to just below its last, and for no more. */
    @Test
    void asksTheFunctionNowhereInside() {
        AtomicInteger asked = new AtomicInteger();
        Tabulated table = new Tabulated(
                t -> {
                    asked.incrementAndGet();
                    return cubic(t);
                },
                -4,
                6,
                3);
        asked.set(0);
        for (double atC : new double[] {-4, -3.999, 0, 2.5, 5.999}) {
            assertThat(table.at(atC)).isCloseTo(cubic(atC), within(ROUNDING * 1000));
        }
        assertThat(asked).hasValue(0);
        table.at(6);
        table.at(-4.001);
        assertThat(asked).hasValue(2);
    }

    /** The remainder that is promised, for an exponential, of which each derivative is the next. */
    @Test
    void isOffByNoMoreThanTheRemainder() {
        int cellsPerK = 2;
        Tabulated table = new Tabulated(Math::exp, 0, 3, cellsPerK);
        double worst = 0;
        for (double t = 0; t < 3; t += 1e-3) {
            double end = Math.ceil(t * cellsPerK + 1e-9) / cellsPerK;
            double remainder = Math.exp(end) / Math.pow(cellsPerK, 4) / 1944;
            assertThat(table.at(t)).isCloseTo(Math.exp(t), within(remainder));
            worst = Math.max(worst, Math.abs(table.at(t) - Math.exp(t)) / remainder);
        }
        assertThat(worst).as("the bound is met").isGreaterThan(0.5);
    }

    private static double cubic(double t) {
        return 7 - t * (3 - t * (0.5 - 0.25 * t));
    }
}
