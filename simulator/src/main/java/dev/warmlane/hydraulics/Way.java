package dev.warmlane.hydraulics;

/** A way for water, that takes the more pressure the more flows through it. */
@FunctionalInterface
public interface Way {

    /**
     * The total pressure that is used up from one end to the other, Pa; as much below 0 for a flow the other way.
     *
     * @param kgS flow, kg/s
     */
    double dropPa(double kgS);

    /** This way and then another. */
    default Way then(Way next) {
        return kgS -> dropPa(kgS) + next.dropPa(kgS);
    }
}
