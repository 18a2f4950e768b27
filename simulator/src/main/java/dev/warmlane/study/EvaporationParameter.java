package dev.warmlane.study;

import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.Pool;
import dev.warmlane.season.Installation;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The correlation for evaporation: the two that the installation does not use, the one that evaporates less from a quiet
 * pool first. The factor for bathers goes with the correlation it was made for: between ASHRAE's and the others it
 * changes to the usual one of the new correlation.
 */
record EvaporationParameter() implements Parameter {

    /** A wind at the water at which to compare them, m/s. */
    private static final double BREEZE_MS = 1;

    @Override
    public String name() {
        return "evaporation correlation";
    }

    @Override
    public String why() {
        return "the other published ones for pools, ASHRAE's with its activity factor of 0.5 at rest; the factor for"
                + " bathers goes with its correlation";
    }

    @Override
    public Variation in(Installation installation) {
        Evaporation described = installation.pool().evaporation();
        List<Variation.End> others = Stream.of(Evaporation.values())
                .filter(correlation -> correlation != described)
                .sorted(Comparator.comparingDouble(EvaporationParameter::quiet))
                .map(correlation -> with(installation, correlation))
                .toList();
        return new Variation.Range(words(described), others.get(0), others.get(others.size() - 1));
    }

    private static double quiet(Evaporation correlation) {
        return correlation.quietFactor() * correlation.heatWm2Kpa(BREEZE_MS);
    }

    private static Variation.End with(Installation installation, Evaporation correlation) {
        Pool pool = installation.pool();
        boolean otherFactors = correlation.quietFactor() != pool.evaporation().quietFactor();
        return new Variation.End(
                words(correlation),
                installation.toBuilder()
                        .pool(pool.withEvaporation(correlation))
                        .bathers(
                                otherFactors
                                        ? installation
                                                .bathers()
                                                .withEvaporationFactorWhenFull(correlation.usualFactorWhenFull())
                                        : installation.bathers())
                        .build());
    }

    private static Setting words(Evaporation correlation) {
        return new Setting.Words(
                switch (correlation) {
                    case SMITH_LOF_JONES -> "Smith";
                    case ISO_TR_12596 -> "ISO";
                    case ASHRAE_CARRIER -> "ASHRAE";
                });
    }
}
