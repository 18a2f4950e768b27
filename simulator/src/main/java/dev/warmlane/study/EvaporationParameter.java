package dev.warmlane.study;

import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.EvaporationCorrelation;
import dev.warmlane.pool.Pool;
import dev.warmlane.season.Installation;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The correlation for evaporation: the published ones that the installation does not use, the one that evaporates less from a quiet
 * pool first.
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
        return "the other published ones for pools; of ASHRAE's, quiet water has 0.74 outdoors and 0.5 in a hall";
    }

    @Override
    public Variation in(Installation installation) {
        EvaporationCorrelation described = installation.pool().evaporation();
        List<Variation.End> others = Stream.of(Evaporation.values())
                .filter(correlation -> correlation != described)
                .sorted(Comparator.comparingDouble(correlation -> quiet(correlation, installation.pool())))
                .map(correlation -> with(installation, correlation))
                .toList();
        return new Variation.Range(
                described instanceof Evaporation published ? words(published) : new Setting.Words("own"),
                others.get(0),
                others.get(others.size() - 1));
    }

    private static double quiet(Evaporation correlation, Pool pool) {
        return correlation.quietFactor(pool.setting()) * correlation.heatWm2Kpa(BREEZE_MS);
    }

    private static Variation.End with(Installation installation, Evaporation correlation) {
        return new Variation.End(
                words(correlation),
                installation.toBuilder()
                        .pool(installation.pool().withEvaporation(correlation))
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
