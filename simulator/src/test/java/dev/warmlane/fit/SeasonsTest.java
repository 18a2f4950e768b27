package dev.warmlane.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.season.OtherSeasons;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

/** What is made of other seasons has the covariance that is stated. */
class SeasonsTest {

    private static final int QUARTER = (int) (24 * OtherSeasons.FADE_DAYS);
    private static final int FIRST = QUARTER;
    private static final int LAST = QUARTER + 720;
    private static final Seasons SEASONS = new Seasons(LAST + QUARTER + 1, FIRST, LAST);
    private static final Prior PRIOR = new Prior(Unknown.SKY, 3, 20, -1000, 1000, "invented");

    @Test
    void mostLikelyIsWhatWasFoundInTheLogAndTurnsBackToWhatWasDescribed() {
        double[] path = SEASONS.path(PRIOR, 33, () -> 0);
        assertThat(Arrays.copyOfRange(path, FIRST, LAST + 1)).containsOnly(33);
        // a half stays, of the other half 1/e is left after the time in which it fades
        double left = 3 + 30 * (0.5 + 0.5 / Math.E);
        assertThat(path[LAST + QUARTER]).isCloseTo(left, within(1e-9));
        assertThat(path[0]).isCloseTo(left, within(1e-9));
    }

    @Test
    void staysWithinTheEndsOfItsPrior() {
        Prior narrow = new Prior(Unknown.SUN, 0.9, 0.5, 0.1, 1, "invented");
        RandomGenerator random = new Well19937c(4);
        DoubleSummaryStatistics path =
                Arrays.stream(SEASONS.path(narrow, 0.9, random::nextGaussian)).summaryStatistics();
        assertThat(path.getMin()).isBetween(0.1, 0.9);
        assertThat(path.getMax()).isEqualTo(1);
    }

    /** Of 4000 draws a variance is known to 2.2 %, a covariance to about as much. */
    @Test
    void drawsHaveTheWidthOfThePriorInEverySeasonAndTheStatedCovariance() {
        RandomGenerator random = new Well19937c(11);
        double[][] draws = IntStream.range(0, 4000)
                .mapToObj(k -> {
                    double found = 3 + 20 * random.nextGaussian();
                    double[] path = SEASONS.path(PRIOR, found, random::nextGaussian);
                    return new double[] {found - 3, path[0] - 3, path[LAST + QUARTER] - 3};
                })
                .toArray(double[][]::new);
        double stated = 0.5 + 0.5 / Math.E;
        for (int where : new int[] {1, 2}) {
            assertThat(mean(draws.length, k -> draws[k][where] * draws[k][where]) / 400)
                    .isCloseTo(1, within(0.08));
            assertThat(mean(draws.length, k -> draws[k][0] * draws[k][where]) / 400)
                    .isCloseTo(stated, within(0.06));
        }
    }

    /** What forecasts take for the width of other seasons is that of the draws. */
    @Test
    void drawsOfOneValueFoundAreAsWideAsIsStated() {
        RandomGenerator random = new Well19937c(12);
        double likely = OtherSeasons.likely(33, 3, 1 / Math.E);
        double[] apart = IntStream.range(0, 4000)
                .mapToDouble(k -> SEASONS.path(PRIOR, 33, random::nextGaussian)[0] - likely)
                .toArray();
        assertThat(mean(apart.length, k -> apart[k])).isCloseTo(0, within(0.8));
        double width = Math.sqrt(mean(apart.length, k -> apart[k] * apart[k]));
        assertThat(width / OtherSeasons.width(20, 1 / Math.E)).isCloseTo(1, within(0.04));
    }

    private static double mean(int count, IntToDoubleFunction value) {
        return IntStream.range(0, count).mapToDouble(value).average().orElseThrow();
    }
}
