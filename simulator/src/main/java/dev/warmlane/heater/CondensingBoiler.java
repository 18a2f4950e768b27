package dev.warmlane.heater;

import dev.warmlane.site.Schedule;
import dev.warmlane.units.Range;
import java.util.function.Function;

/**
 * A boiler that condenses the water vapour of its smoke, and so gives the more heat the colder the pool comes to it. Its
 * efficiency runs straight through two points, that at a return of 30 °C and that from the dew point of the smoke on, where
 * nothing condenses; below 30 °C it rises half as fast, up to {@value #HIGHEST_EFFICIENCY}.
 *
 * <p>Smoke of natural gas has its dew point at about 55 °C, and boilers give 0.95 to 0.98 of the higher heating value at
 * returns of 25 to 30 °C (both from memory). A balance of burning methane with a quarter more air than it needs, smoke
 * leaving 5 K above the return and 0.6 % lost by the casing, gives 0.981 at 15 °C, 0.967 at 25 °C, 0.957 at 30 °C, 0.929 at
 * 40 °C and 0.881 at 55 °C (derived): the usual values, and half the slope below 30 °C, are within 0.005 of it.
 *
 * @param fuel the gas it burns
 * @param efficiency heat to the water over higher heating value burned at a return of 30 °C
 * @param dryEfficiency the same at a return at or above the dew point, at most {@code efficiency}
 * @param capacityKw heat to the water at full load, kW
 * @param setPointC the pool temperature it keeps, °C
 * @param hours hours in which it may run
 */
public record CondensingBoiler(
        Fuel fuel, double efficiency, double dryEfficiency, double capacityKw, double setPointC, Schedule hours)
        implements Heater {

    /** Range of {@link #efficiency}. */
    public static final Range EFFICIENCY = Range.share("efficiency of the condensing boiler at 30 degC", 0.8, 0.99);

    /** Range of {@link #dryEfficiency}. */
    public static final Range DRY_EFFICIENCY = Range.share("efficiency of the boiler while it is dry", 0.7, 0.92);

    /** The return at which {@link #efficiency} is told, °C. */
    public static final double LOW_RETURN_C = 30;

    /** Dew point of the smoke, °C. */
    public static final double DEW_POINT_C = 55;

    /** Efficiency at 30 °C taken where none is known. */
    public static final double USUAL_EFFICIENCY = 0.96;

    /** Efficiency without condensing taken where none is known: 0.98 of the lower heating value of natural gas. */
    public static final double USUAL_DRY_EFFICIENCY = 0.88;

    /** No boiler is taken to give more: what is left is lost by the casing and with cold smoke, by the balance above. */
    public static final double HIGHEST_EFFICIENCY = 0.99;

    /** Checks every range. */
    public CondensingBoiler {
        EFFICIENCY.check(efficiency);
        DRY_EFFICIENCY.upTo(Math.min(DRY_EFFICIENCY.highest(), efficiency)).check(dryEfficiency);
        CAPACITY.check(capacityKw);
        SET_POINT.check(setPointC);
        if (fuel.carrier() != Carrier.GAS && fuel.carrier() != Carrier.OTHER) {
            throw new IllegalArgumentException(
                    "the condensing boiler is described for the smoke of a gas, was fed with " + fuel.name());
        }
    }

    @Override
    public double heatPerBought(double airC, double waterC) {
        double slope = (dryEfficiency - efficiency) / (DEW_POINT_C - LOW_RETURN_C);
        double aboveLow = Math.min(waterC, DEW_POINT_C) - LOW_RETURN_C;
        return Math.min(HIGHEST_EFFICIENCY, efficiency + slope * (aboveLow < 0 ? aboveLow / 2 : aboveLow));
    }

    @Override
    public CondensingBoiler withSetPointC(double value) {
        return new CondensingBoiler(fuel, efficiency, dryEfficiency, capacityKw, value, hours);
    }

    @Override
    public <T> T match(
            Function<Boiler, T> boiler,
            Function<CondensingBoiler, T> condensing,
            Function<ElectricHeater, T> electric,
            Function<HeatPump, T> heatPump,
            Function<DistrictHeat, T> districtHeat) {
        return condensing.apply(this);
    }
}
