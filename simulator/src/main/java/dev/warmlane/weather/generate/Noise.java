package dev.warmlane.weather.generate;

import dev.warmlane.site.HourOfYear;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Persistent random series with mean 0 and variance 1. Every quantity draws from a stream of its own, so that changing
 * one normal leaves the weather of the others as it was. The generator (WELL19937c) and its normal deviates are pure
 * Java: a seed gives the same bits on every machine and version of Java.
 */
final class Noise {

    /** What a stream is for. The number is part of a seed's meaning: it never changes. */
    enum Stream {
        DAILY_CLEARNESS(0),
        HOURLY_CLEARNESS(1),
        TEMPERATURE(2),
        DEW_POINT(3),
        SLOW_WIND(4),
        FAST_WIND(5);

        private final int number;

        Stream(int number) {
            this.number = number;
        }
    }

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    /** Probabilities are kept this far from 0 and 1, where the inverse is infinite: 7 standard deviations. */
    private static final double OUTERMOST = 1e-12;

    /** Steps thrown away so that the start is forgotten: 0.97^500 is below 1e-6 for the slowest series used here. */
    private static final int RUN_IN = 500;

    private Noise() {}

    /** White Gaussian noise of one stream. */
    static RandomGenerator stream(long seed, Stream stream) {
        return new Well19937c(new int[] {(int) (seed >>> 32), (int) seed, stream.number});
    }

    /** First-order autoregressive series x(t) = φ x(t-1) + e(t), e with variance 1 - φ². */
    static double[] firstOrder(long seed, Stream stream, int length, double phi) {
        return secondOrder(seed, stream, length, phi, 0);
    }

    /**
     * Second-order autoregressive series x(t) = φ1 x(t-1) + φ2 x(t-2) + e(t). For unit variance e has the variance (1 +
     * φ2)((1 - φ2)² - φ1²)/(1 - φ2) (Box and Jenkins, Time Series Analysis, section on second-order processes; from
     * memory).
     */
    static double[] secondOrder(long seed, Stream stream, int length, double phi1, double phi2) {
        RandomGenerator random = stream(seed, stream);
        double spread = Math.sqrt((1 + phi2) * ((1 - phi2) * (1 - phi2) - phi1 * phi1) / (1 - phi2));
        double[] x = new double[length];
        double last = 0;
        double beforeLast = 0;
        for (int step = -RUN_IN; step < length; step++) {
            double next = phi1 * last + phi2 * beforeLast + spread * random.nextGaussian();
            beforeLast = last;
            last = next;
            if (step >= 0) {
                x[step] = next;
            }
        }
        return x;
    }

    /** Probability that a standard normal deviate is below x. */
    static double probability(double x) {
        return Math.min(1 - OUTERMOST, Math.max(OUTERMOST, NORMAL.cumulativeProbability(x)));
    }

    /** The standard normal deviate with this probability below it. */
    static double deviate(double probability) {
        return NORMAL.inverseCumulativeProbability(Math.min(1 - OUTERMOST, Math.max(OUTERMOST, probability)));
    }

    /** Mean of an hourly column over a month, 1 to 12. */
    static double monthMean(double[] hourly, int month) {
        double sum = 0;
        for (int hour = HourOfYear.firstHourOf(month); hour < HourOfYear.firstHourOf(month + 1); hour++) {
            sum += hourly[hour];
        }
        return sum / (24 * HourOfYear.daysIn(month));
    }
}
