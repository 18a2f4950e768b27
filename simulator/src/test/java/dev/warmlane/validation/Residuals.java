package dev.warmlane.validation;

import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * What was computed beside what was measured, row by row.
 *
 * @param measured the measured values
 * @param computed the computed values, in the same order
 */
@SuppressWarnings("ArrayRecordComponent") // on their way into sums, never compared
public record Residuals(double[] measured, double[] computed) {

    /** As many of both, and some. */
    public Residuals {
        if (measured.length != computed.length || measured.length == 0) {
            throw new IllegalArgumentException(
                    "as many computed as measured values, and some: " + computed.length + " and " + measured.length);
        }
    }

    /** The rows that are wanted. */
    public Residuals where(IntPredicate wanted) {
        int[] rows = IntStream.range(0, measured.length).filter(wanted).toArray();
        return new Residuals(
                IntStream.of(rows).mapToDouble(row -> measured[row]).toArray(),
                IntStream.of(rows).mapToDouble(row -> computed[row]).toArray());
    }

    /** How many rows. */
    public int rows() {
        return measured.length;
    }

    /** Mean of what was measured. */
    public double meanMeasured() {
        return IntStream.range(0, rows())
                .mapToDouble(row -> measured[row])
                .average()
                .orElseThrow();
    }

    /** Mean of computed less measured. */
    public double bias() {
        return IntStream.range(0, rows())
                .mapToDouble(row -> computed[row] - measured[row])
                .average()
                .orElseThrow();
    }

    /** Root of the mean square of computed less measured. */
    public double rms() {
        return Math.sqrt(IntStream.range(0, rows())
                .mapToDouble(row -> computed[row] - measured[row])
                .map(difference -> difference * difference)
                .average()
                .orElseThrow());
    }

    /** Standard deviation of computed less measured about its mean. */
    public double scatter() {
        double bias = bias();
        double rms = rms();
        return Math.sqrt(Math.max(0, rms * rms - bias * bias));
    }

    /** Sum of what was computed over sum of what was measured, less 1, in per cent. */
    public double sumPercent() {
        return 100 * bias() / meanMeasured();
    }
}
