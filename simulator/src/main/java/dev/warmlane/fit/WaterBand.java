package dev.warmlane.fit;

import dev.warmlane.season.RecordLedger;
import dev.warmlane.season.RecordState;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Between which temperatures a fit expects the readings of other hours: the pool is run with draws of the posterior, which
 * depart from what was found the more the farther the season is from that of the log, and
 * each run gets the error that belongs to its draw. Nine readings of ten should lie within.
 */
public final class WaterBand {

    private static final int RUNS = 400;

    /** One in twenty lies below, one in twenty above. */
    private static final double TAIL = 0.05;

    private final LocalDateTime start;
    private final double[] low;
    private final double[] likely;
    private final double[] high;
    private final double[] held;

    private WaterBand(LocalDateTime start, double[] low, double[] likely, double[] high, double[] held) {
        this.start = start;
        this.low = low;
        this.likely = likely;
        this.high = high;
        this.held = held;
    }

    /**
     * Runs the fitted pool from a state of the water to a time.
     *
     * @param fit what was found
     * @param start when and from which water it begins, at a full hour within the weather of the fit
     * @param end when it ends, at a full hour
     * @throws IllegalArgumentException if the period is not within the weather
     */
    public static WaterBand of(FittedPool fit, RecordState start, LocalDateTime end) {
        List<Chain.Draw> draws = fit.chain().draws();
        int runs = Math.min(RUNS, draws.size());
        Seasons.Gauss gauss = gauss();
        Seasons seasons = fit.seasons();
        RecordLedger likely = fit.model().run(fit.installation(), seasons.likely(fit, fit.likely()), start, end);
        int hours = likely.hours();
        float[][] water = new float[hours][runs];
        for (int k = 0; k < runs; k++) {
            Chain.Draw draw = draws.get((int) ((long) k * draws.size() / runs));
            RecordLedger run = fit.model().run(fit.drawn(draw), seasons.drawn(fit, draw.values(), gauss), start, end);
            ErrorSize error = draw.error();
            double phi = Math.exp(-1 / error.fadeHours());
            double fresh = error.errorK() * Math.sqrt(1 - phi * phi);
            double lasting = error.errorK() * gauss.next();
            for (int hour = 0; hour < hours; hour++) {
                water[hour][k] = (float) (run.waterC(hour) + lasting + error.noiseK() * gauss.next());
                lasting = phi * lasting + fresh * gauss.next();
            }
        }
        double[] low = new double[hours];
        double[] high = new double[hours];
        double[] held = new double[runs];
        for (int hour = 0; hour < hours; hour++) {
            float[] sorted = water[hour].clone();
            Arrays.sort(sorted);
            low[hour] = sorted[(int) Math.round(TAIL * (runs - 1))];
            high[hour] = sorted[(int) Math.round((1 - TAIL) * (runs - 1))];
            for (int k = 0; k < runs; k++) {
                held[k] += low[hour] <= water[hour][k] && water[hour][k] <= high[hour] ? 1.0 / hours : 0;
            }
        }
        Arrays.sort(held);
        double[] middle = new double[hours];
        Arrays.setAll(middle, likely::waterC);
        return new WaterBand(start.time(), low, middle, high, held);
    }

    /** A ziggurat: the generator's own normal numbers, of which every hour of every run takes five, take most of the time. */
    private static Seasons.Gauss gauss() {
        UniformRandomProvider bits = new Well19937c(1)::nextLong;
        return ZigguratSampler.NormalizedGaussian.of(bits)::sample;
    }

    /** How many hours it has; indices run from 0 to one less. */
    public int hours() {
        return likely.length;
    }

    /** When an hour begins, local standard time. */
    public LocalDateTime time(int index) {
        return start.plusHours(index);
    }

    /** Below it one reading in twenty is expected, in the middle of an hour, °C. */
    public double lowC(int index) {
        return low[index];
    }

    /** With the most likely values, in the middle of an hour, °C. */
    public double likelyC(int index) {
        return likely[index];
    }

    /** Above it one reading in twenty is expected, in the middle of an hour, °C. */
    public double highC(int index) {
        return high[index];
    }

    /**
     * How likely the share of its hours that lie within the band is below a share, if all that the fit states is right:
     * errors last, so that of one pool's hours seldom just nine of ten do.
     *
     * @param share of the hours, 0 to 1
     */
    public double chanceOfFewerThan(double share) {
        return Arrays.stream(held).filter(one -> one < share).count() / (double) held.length;
    }
}
