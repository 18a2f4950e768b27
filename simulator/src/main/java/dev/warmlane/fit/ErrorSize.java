package dev.warmlane.fit;

import java.util.Arrays;

/**
 * What model and log disagree in, whatever the unknowns are.
 *
 * @param errorK standard deviation of the error that lasts, K
 * @param fadeHours time in which its correlation falls to 1/e, h
 * @param noiseK standard deviation of what is new in every hour: the reading's own noise, K
 */
public record ErrorSize(double errorK, double fadeHours, double noiseK) {

    /** The logarithms of all three. */
    double[] logs() {
        return new double[] {Math.log(errorK), Math.log(fadeHours), Math.log(noiseK)};
    }

    /** From the logarithms of all three. */
    static ErrorSize ofLogs(double[] logs) {
        double[] values = Arrays.stream(logs).map(Math::exp).toArray();
        return new ErrorSize(values[0], values[1], values[2]);
    }
}
