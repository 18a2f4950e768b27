package dev.warmlane.heater;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * A gas heater that keeps the pool at a set point in the open season as far as its capacity reaches.
 *
 * @param fuel what it burns
 * @param efficiency heat to the water over higher heating value burned. United States minimum: 0.78 (1990),
 *     0.82 (2013)
 * @param capacityKw heat to the water at full load, kW
 * @param setPointC the pool temperature it keeps, °C
 */
public record GasHeater(Fuel fuel, double efficiency, double capacityKw, double setPointC) {

    /** Range of {@link #efficiency}. */
    public static final Range EFFICIENCY = Range.share("heater efficiency", 0.3, 1);

    /** Range of {@link #capacityKw}. */
    public static final Range CAPACITY = Range.of("heater capacity", Dimension.POWER, "kW", 1, 20_000);

    /** Range of {@link #setPointC}; the upper end is that for bathing water, 40 °C (US CPSC; WHO 2006). */
    public static final Range SET_POINT = Range.of("heater set point", Dimension.TEMPERATURE, 10, 40);

    /** Efficiency taken where none is known: the United States minimum of 2013 for pool heaters. */
    public static final double USUAL_EFFICIENCY = 0.82;

    /** Checks every range. */
    public GasHeater {
        EFFICIENCY.check(efficiency);
        CAPACITY.check(capacityKw);
        SET_POINT.check(setPointC);
    }
}
