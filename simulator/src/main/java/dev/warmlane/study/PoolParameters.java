package dev.warmlane.study;

import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.PoolSetting.Outdoor;
import dev.warmlane.season.Installation;
import dev.warmlane.study.Parameter.Ends;
import dev.warmlane.study.Parameter.Lens;
import dev.warmlane.units.Dimension;
import dev.warmlane.wind.PoolShelter;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Parameters of the pool. */
final class PoolParameters {

    /**
     * The steady loss in clay of 1.5 W/mK and in rock of 3.5 W/mK over that in sand of 2.0 W/mK, by the form of ISO 13370:
     * 0.81 and 1.47 for 50 m² of 1.5 m, 0.80 and 1.51 for 312 m² of 1.8 m (derived; conductivities from memory).
     */
    private static final double IN_CLAY = 0.8;

    private static final double IN_ROCK = 1.5;

    static final Parameter WIND = new UnlessFitted(new NumberParameter(
            "wind at pool over the station's",
            Dimension.FRACTION,
            new Lens(PoolParameters::windFactor, PoolParameters::withWindFactor),
            new Ends(
                    PoolShelter::moreSheltered,
                    described -> Math.min(PoolShelter.moreOpen(described), Outdoor.WIND_FACTOR.highest())),
            "one step more sheltered to one more open: well sheltered 0.15, suburban 0.30 (ISO/TR 12596:1995, from"
                    + " memory), open ground 0.40 (logarithmic profile over short grass)",
            "the pool is in a hall"));

    static final Parameter EVAPORATION = new UnlessFitted(new EvaporationParameter());

    static final Parameter BASIN = new UnlessFitted(new NumberParameter(
            "absorptance of the basin",
            Dimension.FRACTION,
            new Lens(
                    i -> i.pool().setting().outdoor().isPresent()
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
            "no sun reaches a pool in a hall"));

    static final List<Parameter> ALL = List.of(
            WIND,
            EVAPORATION,
            new NumberParameter(
                    "rise of evaporation by bathers",
                    Dimension.FRACTION,
                    new Lens(PoolParameters::greatestRise, PoolParameters::withGreatestRise),
                    Ends.at(Bathers.LEAST_RISE, Bathers.USUAL_RISE),
                    "40 to 70 % above quiet water in use (Smith, Löf and Jones, ASHRAE Transactions, paper 4146)",
                    "nobody is counted in the water"),
            BASIN,
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
                    Ends.times(IN_CLAY, IN_ROCK),
                    "ground of clay, 0.8 of the loss in sand, and of rock, 1.5 of it (form of ISO 13370, from memory)",
                    "the pool loses nothing to the ground"),
            new NumberParameter(
                    "heat of the circulation pump",
                    Dimension.POWER,
                    new Lens(
                            i -> i.pool().circulationW() > 0 ? List.of(i.pool().circulationW()) : List.of(),
                            (i, to) -> i.toBuilder()
                                    .pool(i.pool()
                                            .withCirculationW(
                                                    to.applyAsDouble(i.pool().circulationW())))
                                    .build()),
                    Ends.times(0.5, 1.5),
                    "head of 6 to 18 m instead of 12 m; common practice, no source",
                    "no heat of it is counted"),
            new CoverHoursParameter());

    private PoolParameters() {}

    private static List<Double> windFactor(Installation installation) {
        return installation.pool().setting().match(outdoor -> List.of(outdoor.windFactor()), indoor -> List.of());
    }

    private static Installation withWindFactor(Installation installation, DoubleUnaryOperator to) {
        return WindExposure.withPoolWind(
                installation, to.applyAsDouble(windFactor(installation).get(0)));
    }

    private static List<Double> greatestRise(Installation installation) {
        Bathers bathers = installation.bathers();
        boolean present = bathers.whenFull() > 0 && bathers.presence().hoursPerYear() > 0;
        return present ? List.of(bathers.greatestRise()) : List.of();
    }

    private static Installation withGreatestRise(Installation installation, DoubleUnaryOperator to) {
        Bathers bathers = installation.bathers();
        return installation.toBuilder()
                .bathers(bathers.withGreatestRise(to.applyAsDouble(bathers.greatestRise())))
                .build();
    }
}
