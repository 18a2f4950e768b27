package dev.warmlane.heater;

import dev.warmlane.site.Schedule;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import java.util.function.Function;

/**
 * Whatever heats the pool beside the collectors. It keeps the pool at a set point as far as its capacity reaches, in the
 * hours that it is given. Immutable; the season's loop asks it, and it allocates nothing.
 */
public sealed interface Heater permits Boiler, CondensingBoiler, ElectricHeater, HeatPump, DistrictHeat {

    /** Range of {@link #capacityKw}. */
    Range CAPACITY = Range.of("heater capacity", Dimension.HEAT_POWER, "kW", 1, 20_000);

    /** Range of {@link #setPointC}; the upper end is that for bathing water, 40 °C (US CPSC; WHO 2006). */
    Range SET_POINT = Range.of("heater set point", Dimension.TEMPERATURE, 10, 40);

    /** What it is fed with. */
    Fuel fuel();

    /** Heat to the water at full load, kW; of a heat pump at the warmest point that it is certified at. */
    double capacityKw();

    /** The pool temperature that it keeps, °C. */
    double setPointC();

    /** Hours in which it may run: above 0 it may, 0 it may not. */
    Schedule hours();

    /**
     * Heat to the water at full load, kW.
     *
     * @param airC outdoor air temperature, °C
     */
    default double capacityKw(double airC) {
        return capacityKw();
    }

    /** Whether {@link #capacityKw(double)} depends on the air. */
    default boolean followsAir() {
        return false;
    }

    /**
     * Heat to the water over the energy that is bought for it: an efficiency on the higher heating value, or a coefficient
     * of performance. Above 0.
     *
     * @param airC outdoor air temperature, °C
     * @param waterC temperature of the pool, which comes to the heater as its return, °C
     */
    double heatPerBought(double airC, double waterC);

    /** The same heater with another set point, °C. */
    Heater withSetPointC(double value);

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(
            Function<Boiler, T> boiler,
            Function<CondensingBoiler, T> condensing,
            Function<ElectricHeater, T> electric,
            Function<HeatPump, T> heatPump,
            Function<DistrictHeat, T> districtHeat);
}
