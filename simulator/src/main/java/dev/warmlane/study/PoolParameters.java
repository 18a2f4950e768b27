package dev.warmlane.study;

import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.season.Installation;
import dev.warmlane.study.Parameter.Ends;
import dev.warmlane.study.Parameter.Lens;
import dev.warmlane.units.Dimension;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Parameters of the pool. */
final class PoolParameters {

    /** Evaporation of outdoor pools in use over the quiet rate, Smith 1998. */
    private static final double LEAST_IN_USE = 1.26;

    private static final double MOST_IN_USE = 1.7;

    static final List<Parameter> ALL = List.of(
            new NumberParameter(
                    "wind at pool over the station's",
                    Dimension.FRACTION,
                    new Lens(PoolParameters::windFactor, PoolParameters::withWindFactor),
                    new Ends(WindExposure.SHELTERED::poolWindFactor, WindExposure.EXPOSED::poolWindFactor),
                    "well sheltered 0.15 (ISO/TR 12596:1995, from memory) to open ground 0.40 (logarithmic profile over"
                            + " short grass)",
                    "the pool is in a hall"),
            new EvaporationParameter(),
            new NumberParameter(
                    "evaporation, bathers over quiet",
                    Dimension.FRACTION,
                    new Lens(PoolParameters::factorInUse, PoolParameters::withFactorInUse),
                    Ends.at(LEAST_IN_USE, MOST_IN_USE),
                    "1.26 to 1.7 by use, measured on outdoor pools (Smith 1998)",
                    "nobody is counted in the water, or the correlation has activity factors of its own"),
            new NumberParameter(
                    "absorptance of the basin",
                    Dimension.FRACTION,
                    new Lens(
                            i -> i.pool().setting() instanceof PoolSetting.Outdoor
                                    ? List.of(i.pool().solarAbsorptance())
                                    : List.of(),
                            (i, to) -> i.toBuilder()
                                    .pool(i.pool()
                                            .withSolarAbsorptance(
                                                    to.applyAsDouble(i.pool().solarAbsorptance())))
                                    .build()),
                    Ends.around(0.05, 0.3, 1),
                    "0.05 is the step from a light to a dark finish, and from a basin at rest to one heavily used"
                            + " (ISO/TR 12596 as cited by Kalogirou)",
                    "no sun reaches a pool in a hall"),
            new NumberParameter(
                    "heat loss to the ground",
                    Dimension.CONDUCTANCE,
                    new Lens(
                            i -> i.pool().groundConductanceWK() > 0
                                    ? List.of(i.pool().groundConductanceWK())
                                    : List.of(),
                            (i, to) -> i.toBuilder()
                                    .pool(i.pool()
                                            .withGroundConductanceWK(
                                                    to.applyAsDouble(i.pool().groundConductanceWK())))
                                    .build()),
                    Ends.times(1.5 / 2.0, 3.5 / 2.0),
                    "conductivity of clay, 0.75 of that of sand, and of rock, 1.75 of it (ISO 13370, from memory)",
                    "the pool loses nothing to the ground"),
            new CoverHoursParameter());

    private PoolParameters() {}

    private static List<Double> windFactor(Installation installation) {
        return installation.pool().setting() instanceof PoolSetting.Outdoor outdoor
                ? List.of(outdoor.windFactor())
                : List.of();
    }

    private static Installation withWindFactor(Installation installation, DoubleUnaryOperator to) {
        return PoolWindBand.withPoolWind(
                installation, to.applyAsDouble(windFactor(installation).get(0)));
    }

    private static List<Double> factorInUse(Installation installation) {
        Bathers bathers = installation.bathers();
        boolean present = bathers.presence().hoursPerYear() > 0;
        return present && installation.pool().evaporation() != Evaporation.ASHRAE_CARRIER
                ? List.of(bathers.evaporationFactorWhenFull())
                : List.of();
    }

    private static Installation withFactorInUse(Installation installation, DoubleUnaryOperator to) {
        Bathers bathers = installation.bathers();
        return installation.toBuilder()
                .bathers(bathers.withEvaporationFactorWhenFull(to.applyAsDouble(bathers.evaporationFactorWhenFull())))
                .build();
    }
}
