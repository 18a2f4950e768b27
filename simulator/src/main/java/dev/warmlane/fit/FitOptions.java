package dev.warmlane.fit;

import dev.warmlane.units.Checks;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a fit is made.
 *
 * @param clockHours the log's clock may be ahead or behind by at most so many hours, 0.25 to 13
 * @param noiseK standard deviation of the noise of an hour's reading, K; empty to find it from the log
 * @param fadeHours time in which what model and log disagree in fades to 1/e, h; empty to find it from the log
 * @param priors what replaces the usual priors of their unknowns
 * @param draws steps of the chain, 400 to 1000000
 * @param seed where the chain's random numbers begin
 */
public record FitOptions(
        double clockHours, OptionalDouble noiseK, OptionalDouble fadeHours, List<Prior> priors, int draws, long seed) {

    /** A clock within an hour and a half, everything else found; 4000 steps on a fixed seed. */
    public static final FitOptions USUAL =
            new FitOptions(1.5, OptionalDouble.empty(), OptionalDouble.empty(), List.of(), 4000, 20_240_229L);

    /** Checks every range, and keeps its own copy of the list. */
    public FitOptions {
        priors = List.copyOf(priors);
        Checks.within("hours that the log's clock may be off", clockHours, 0.25, 13, "h");
        noiseK.ifPresent(value -> Checks.within("noise of a reading", value, 0.001, 5, "K"));
        fadeHours.ifPresent(value -> Checks.within("time in which the error fades", value, 1, 2000, "h"));
        Checks.within("steps of the chain", draws, 400, 1_000_000, "");
    }

    /** The same with another range of the clock, h. */
    public FitOptions withClockHours(double value) {
        return new FitOptions(value, noiseK, fadeHours, priors, draws, seed);
    }

    /** The same with a stated noise of the readings, K. */
    public FitOptions withNoiseK(double value) {
        return new FitOptions(clockHours, OptionalDouble.of(value), fadeHours, priors, draws, seed);
    }

    /** The same with a stated time in which errors fade, h. */
    public FitOptions withFadeHours(double value) {
        return new FitOptions(clockHours, noiseK, OptionalDouble.of(value), priors, draws, seed);
    }

    /** The same with a prior of one's own in place of the usual one of its unknown. */
    public FitOptions withPrior(Prior value) {
        List<Prior> all = new ArrayList<>(priors);
        all.removeIf(prior -> prior.of() == value.of());
        all.add(value);
        return new FitOptions(clockHours, noiseK, fadeHours, all, draws, seed);
    }

    /** The same with so many steps of the chain. */
    public FitOptions withDraws(int value) {
        return new FitOptions(clockHours, noiseK, fadeHours, priors, value, seed);
    }

    /** The same with another seed. */
    public FitOptions withSeed(long value) {
        return new FitOptions(clockHours, noiseK, fadeHours, priors, draws, value);
    }
}
