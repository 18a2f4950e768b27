package dev.warmlane.heater;

import dev.warmlane.site.Schedule;
import java.util.function.Function;

/**
 * A station of a heat network. It is metered where it hands the heat over: what is bought is what the water takes up, the
 * loss of the exchanger's casing not counted.
 *
 * @param fuel heat of the network
 * @param capacityKw heat to the water at full load, kW
 * @param setPointC the pool temperature it keeps, °C
 * @param hours hours in which it may run
 */
public record DistrictHeat(Fuel fuel, double capacityKw, double setPointC, Schedule hours) implements Heater {

    /** Checks every range. */
    public DistrictHeat {
        CAPACITY.check(capacityKw);
        SET_POINT.check(setPointC);
        if (fuel.carrier() != Carrier.HEAT) {
            throw new IllegalArgumentException("a heat network gives heat, was fed with " + fuel.name());
        }
    }

    @Override
    public double heatPerBought(double airC, double waterC) {
        return 1;
    }

    @Override
    public DistrictHeat withSetPointC(double value) {
        return new DistrictHeat(fuel, capacityKw, value, hours);
    }

    @Override
    public <T> T match(
            Function<Boiler, T> boiler,
            Function<CondensingBoiler, T> condensing,
            Function<ElectricHeater, T> electric,
            Function<HeatPump, T> heatPump,
            Function<DistrictHeat, T> districtHeat) {
        return districtHeat.apply(this);
    }
}
