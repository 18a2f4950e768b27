package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Quantiles of few values against published ones. */
class SampleQuantileTest {

    private static final double ROUNDING = 1e-12;

    /**
     * The worked example of percentiles in the NIST/SEMATECH e-Handbook of Statistical Methods, section 7.2.6.2: twelve
     * measurements of a wafer, the 90th percentile at place 0.9 x 13 = 11.7 is 95.1981. The result is from memory and stands
     * in tests of open libraries too; ten of the twelve were read in the handbook's section 2.6.1.1, wafer 138.
     */
    private static final SampleQuantile WAFERS = new SampleQuantile(
            95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065, 95.0925, 95.1990, 95.1682);

    private static SampleQuantile ofOneTo(int n) {
        return new SampleQuantile(
                IntStream.rangeClosed(1, n).mapToDouble(i -> i).toArray());
    }

    @Test
    void theWorkedExampleComesOut() {
        assertThat(WAFERS.at(0.9).orElseThrow()).isCloseTo(95.1981, within(0.00005));
    }

    @Test
    void aQuantileIsThePlaceOfNPlusOne() {
        for (int n = 9; n <= 40; n++) {
            assertThat(ofOneTo(n).at(0.1).orElseThrow()).isCloseTo(0.1 * (n + 1), within(ROUNDING));
            assertThat(ofOneTo(n).at(0.5).orElseThrow()).isCloseTo(ofOneTo(n).median(), within(ROUNDING));
        }
    }

    @Test
    void tooFewYearsSayNothing() {
        assertThat(ofOneTo(8).at(0.1)).isEmpty();
        assertThat(ofOneTo(8).at(0.9)).isEmpty();
        assertThat(ofOneTo(9).at(0.1)).hasValue(1);
        assertThat(ofOneTo(9).at(0.9)).hasValue(9);
        assertThatThrownBy(SampleQuantile::new).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SampleQuantile(1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ofOneTo(9).at(1.5)).isInstanceOf(IllegalArgumentException.class);
    }

    /** By hand: of fourteen fair coins at most 3 heads have 470 of 16384 chances, at most 4 have 1471. */
    @Test
    void theMedianOfFourteenLiesBetweenTheFourthAndTheEleventh() {
        SampleQuantile.Interval interval = ofOneTo(14).interval(0.5);
        assertThat(interval.low()).hasValue(4);
        assertThat(interval.high()).hasValue(11);
    }

    /**
     * By hand: 0.9 to the 14th is 0.229, so that no year bounds the tenth from below; to the 28th 0.052 and to the 29th
     * 0.047, so that 29 years are the fewest that do. Four of fourteen or more below have 0.044.
     */
    @Test
    void theTenthOfFourteenHasNoLowerEnd() {
        SampleQuantile.Interval tenth = ofOneTo(14).interval(0.1);
        assertThat(tenth.low()).isEmpty();
        assertThat(tenth.high()).hasValue(4);
        assertThat(ofOneTo(28).interval(0.1).low()).isEmpty();
        assertThat(ofOneTo(29).interval(0.1).low()).hasValue(1);
        SampleQuantile.Interval ninth = ofOneTo(14).interval(0.9);
        assertThat(ninth.low()).hasValue(11);
        assertThat(ninth.high()).isEmpty();
    }

    /** What the definition is taken for: the next year falls below it once in ten, whatever the distribution. */
    @Test
    void theNextYearFallsBelowOnceInTen() {
        Random random = new Random(9);
        int below = 0;
        int tries = 40_000;
        for (int i = 0; i < tries; i++) {
            double[] years = random.doubles(9).map(x -> -Math.log(x)).toArray();
            below += -Math.log(random.nextDouble())
                            < new SampleQuantile(years).at(0.1).orElseThrow()
                    ? 1
                    : 0;
        }
        // four times the standard deviation of a share of 0.1 in 40000
        assertThat((double) below / tries).isCloseTo(0.1, within(0.006));
    }

    /** The interval holds the true value as often as it says, and not much oftener than discreteness forces it to. */
    @Test
    void theIntervalHoldsTheTruthAsOftenAsItSays() {
        Random random = new Random(10);
        int held = 0;
        int tries = 20_000;
        for (int i = 0; i < tries; i++) {
            SampleQuantile.Interval interval =
                    new SampleQuantile(random.doubles(14).toArray()).interval(0.5);
            held += interval.low().orElseThrow() <= 0.5
                            && 0.5 <= interval.high().orElseThrow()
                    ? 1
                    : 0;
        }
        // 1 - 2 x 470 / 16384
        assertThat((double) held / tries).isCloseTo(0.9426, within(0.007));
    }
}
