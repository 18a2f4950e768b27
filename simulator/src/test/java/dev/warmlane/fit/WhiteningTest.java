package dev.warmlane.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

/** The filter against the whole covariance matrix, which it never makes. */
class WhiteningTest {

    private static final double[] HOURS = {0, 0.4, 1, 2.5, 2.75, 30, 31, 200};
    private static final double[] VALUES = {0.3, 0.1, -0.4, 0.2, 0.9, -0.1, 0.5, 0.05};
    private static final double ROUNDING = 1e-10;

    @Test
    void isTheLikelihoodOfTheWholeCovarianceMatrix() {
        Whitening whitening = new Whitening(HOURS, 0.6, 20, 0.15);
        double[] white = VALUES.clone();
        whitening.apply(white);
        RealMatrix covariance = MatrixUtils.createRealMatrix(HOURS.length, HOURS.length);
        for (int i = 0; i < HOURS.length; i++) {
            for (int j = 0; j < HOURS.length; j++) {
                double error = 0.36 * Math.exp(-Math.abs(HOURS[i] - HOURS[j]) / 20);
                covariance.setEntry(i, j, error + (i == j ? 0.15 * 0.15 : 0));
            }
        }
        RealVector values = new ArrayRealVector(VALUES);
        CholeskyDecomposition cholesky = new CholeskyDecomposition(covariance);
        assertThat(Arrays.stream(white).map(value -> value * value).sum())
                .isCloseTo(values.dotProduct(cholesky.getSolver().solve(values)), within(ROUNDING));
        assertThat(whitening.logDeterminant()).isCloseTo(Math.log(cholesky.getDeterminant()), within(ROUNDING));
    }

    @Test
    void isLinearAndLeavesWhatIsNoReadingAlone() {
        Whitening whitening = new Whitening(HOURS, 0.6, 20, 0.15);
        double[] longer = Arrays.copyOf(VALUES, VALUES.length + 1);
        longer[VALUES.length] = 7;
        double[] twice = Arrays.stream(longer).map(value -> 2 * value).toArray();
        whitening.apply(longer);
        whitening.apply(twice);
        assertThat(longer[VALUES.length]).isEqualTo(7);
        for (int i = 0; i < VALUES.length; i++) {
            assertThat(twice[i]).isCloseTo(2 * longer[i], within(ROUNDING));
        }
    }
}
