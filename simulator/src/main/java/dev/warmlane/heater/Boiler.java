package dev.warmlane.heater;

import dev.warmlane.site.Schedule;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.function.Function;

/**
 * A boiler or pool heater that burns gas, oil or another fuel with the same efficiency in every hour.
 *
 * @param fuel what it burns
 * @param efficiency heat to the water over higher heating value burned. United States minimum of gas-fired pool heaters:
 *     0.78 (1990), 0.82 (2013)
 * @param capacityKw heat to the water at full load, kW
 * @param setPointC the pool temperature it keeps, °C
 * @param hours hours in which it may run
 */
public record Boiler(Fuel fuel, double efficiency, double capacityKw, double setPointC, Schedule hours)
        implements Heater {

    /** Range of {@link #efficiency}. */
    public static final Range EFFICIENCY = Range.share("heater efficiency", 0.3, 1);

    /** Usual {@link #efficiency}. */
    public static final Usual USUAL = EFFICIENCY.usually(0.82, "United States minimum of 2013");

    /** {@link #USUAL}. */
    public static final double USUAL_EFFICIENCY = USUAL.value();

    /** Checks every range. */
    public Boiler {
        EFFICIENCY.check(efficiency);
        CAPACITY.check(capacityKw);
        SET_POINT.check(setPointC);
        if (!fuel.carrier().burned()) {
            throw new IllegalArgumentException("a boiler burns a fuel, was fed with " + fuel.name());
        }
    }

    /** A boiler that may run at any hour. */
    public Boiler(Fuel fuel, double efficiency, double capacityKw, double setPointC) {
        this(fuel, efficiency, capacityKw, setPointC, Schedule.ALWAYS);
    }

    @Override
    public double heatPerBought(double airC, double waterC) {
        return efficiency;
    }

    @Override
    public Boiler withSetPointC(double value) {
        return new Boiler(fuel, efficiency, capacityKw, value, hours);
    }

    @Override
    public <T> T match(
            Function<Boiler, T> boiler,
            Function<CondensingBoiler, T> condensing,
            Function<ElectricHeater, T> electric,
            Function<HeatPump, T> heatPump,
            Function<DistrictHeat, T> districtHeat) {
        return boiler.apply(this);
    }
}
