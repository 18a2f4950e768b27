package dev.warmlane.pool;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;

/**
 * Walls of a basin that stand above the ground: the water loses heat through them to the air of the hour, not to the ground.
 *
 * <p>Heat through them is U·A·(T_sa − T_w). T_sa is the air that would give the same heat with neither sun nor sky, T_a +
 * R_se·(a·G_v + ε·(L − σT_a⁴)/2), with the outer surface's resistance R_se of 0.04 m²K/W (ISO 6946, from memory), which is
 * part of U: the way of ISO 13790:2008, 11.3.4 (from memory). G_v is the light on a vertical that looks every way alike:
 * the beam's mean DNI·sin z/π, half of the sky's light, and half of what the ground reflects, an albedo of 0.2; it sees half
 * of the sky, and ground at the air's temperature (derived). Walls of a basin in a hall meet the hall's air.
 *
 * @param areaM2 outer area of the walls as far as water stands behind them, m²
 * @param uValueWm2K conductance from the water to the outside, outer surface included, W/m²K
 * @param absorptance share of the sun on their outside that they absorb
 */
public record Walls(double areaM2, double uValueWm2K, double absorptance) {

    /** Range of {@link #areaM2}. */
    public static final Range AREA = Range.of("wall area of the pool", Dimension.AREA, 0, 5000);

    /** Range of {@link #uValueWm2K}: bare steel has 25 by its outer surface alone. */
    public static final Range U_VALUE = Range.of("U-value of the walls", Dimension.HEAT_TRANSFER_COEFFICIENT, 0, 25);

    /** Range of {@link #absorptance}. */
    public static final Range ABSORPTANCE = Range.share("solar absorptance of the walls", 0, 1);

    /** Usual {@link #absorptance}. */
    public static final Usual USUAL_ABSORPTANCE =
            ABSORPTANCE.usually(0.6, "concrete and paint of middle colour, handbook tables from memory");

    /** Long-wave emittance of the outside: paint, concrete and plastic, handbook tables from memory. */
    public static final double EMITTANCE = 0.9;

    /** Resistance of the outer surface, m²K/W; ISO 6946, from memory. */
    public static final double OUTER_RESISTANCE = 0.04;

    /** Checks every range. */
    public Walls {
        AREA.check(areaM2);
        U_VALUE.check(uValueWm2K);
        ABSORPTANCE.check(absorptance);
    }

    /** Conductance of all of them, W/K. */
    public double conductanceWK() {
        return areaM2 * uValueWm2K;
    }
}
