package dev.warmlane.heater;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * What a heat pump does at one air and one water temperature, as its certificate says. ASHRAE 146 and AHRI 1160 test heat
 * pumps for pools in air of 27 °C and of 10 °C, both with water of 26.7 °C entering (from a page about them).
 *
 * @param airC outdoor air, °C
 * @param waterC water that comes from the pool, °C
 * @param cop heat to the water over electricity, that of the fan included
 * @param capacityKw heat to the water, kW
 */
public record RatedPoint(double airC, double waterC, double cop, double capacityKw) {

    /** Range of {@link #airC}. */
    public static final Range AIR = Range.of("air of the rated point", Dimension.TEMPERATURE, -20, 40);

    /** Range of {@link #waterC}. */
    public static final Range WATER = Range.of("water of the rated point", Dimension.TEMPERATURE, 10, 60);

    /** Range of {@link #cop}: above what electric resistance gives, below what heat pumps of pools have reached. */
    public static final Range COP = Range.number("coefficient of performance", 1, 20);

    /** The air that the warmer of the two usual points is measured in, °C. */
    public static final double WARM_AIR_C = 27;

    /** The air that the colder of the two usual points is measured in, °C. */
    public static final double COLD_AIR_C = 10;

    /** The water of both usual points, °C; 80 °F to the degree. */
    public static final double USUAL_WATER_C = 27;

    /** Checks every range. */
    public RatedPoint {
        AIR.check(airC);
        WATER.check(waterC);
        COP.check(cop);
        Heater.CAPACITY.check(capacityKw);
    }
}
