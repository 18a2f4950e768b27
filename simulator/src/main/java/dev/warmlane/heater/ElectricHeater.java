package dev.warmlane.heater;

import dev.warmlane.site.Schedule;
import java.util.function.Function;

/**
 * Electric resistance in the water: all of its electricity becomes heat there.
 *
 * @param fuel electricity
 * @param capacityKw heat to the water at full load, kW
 * @param setPointC the pool temperature it keeps, °C
 * @param hours hours in which it may run
 */
public record ElectricHeater(Fuel fuel, double capacityKw, double setPointC, Schedule hours) implements Heater {

    /** Checks every range. */
    public ElectricHeater {
        CAPACITY.check(capacityKw);
        SET_POINT.check(setPointC);
        if (fuel.carrier() != Carrier.ELECTRICITY) {
            throw new IllegalArgumentException("an electric heater takes electricity, was fed with " + fuel.name());
        }
    }

    @Override
    public double heatPerBought(double airC, double waterC) {
        return 1;
    }

    @Override
    public ElectricHeater withSetPointC(double value) {
        return new ElectricHeater(fuel, capacityKw, value, hours);
    }

    @Override
    public <T> T match(
            Function<Boiler, T> boiler,
            Function<CondensingBoiler, T> condensing,
            Function<ElectricHeater, T> electric,
            Function<HeatPump, T> heatPump,
            Function<DistrictHeat, T> districtHeat) {
        return electric.apply(this);
    }
}
