package dev.warmlane.heater;

import dev.warmlane.site.Schedule;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import java.util.function.Function;

/**
 * A heat pump that takes its heat from the outdoor air.
 *
 * @param fuel electricity
 * @param rating what it does at which air and water
 * @param frostLimitC outdoor air temperature below which it stands, °C
 * @param setPointC the pool temperature it keeps, °C
 * @param hours hours in which it may run
 */
public record HeatPump(Fuel fuel, HeatPumpRating rating, double frostLimitC, double setPointC, Schedule hours)
        implements Heater {

    /** Range of {@link #frostLimitC}. */
    public static final Range FROST_LIMIT = Range.of("frost limit of the heat pump", Dimension.TEMPERATURE, -25, 15);

    /** Frost limit of a pool heat pump that does not defrost by itself, °C; common practice, no source. */
    public static final double USUAL_FROST_LIMIT_C = 5;

    /** Checks every range. */
    public HeatPump {
        FROST_LIMIT.check(frostLimitC);
        SET_POINT.check(setPointC);
        if (fuel.carrier() != Carrier.ELECTRICITY) {
            throw new IllegalArgumentException("a heat pump takes electricity, was fed with " + fuel.name());
        }
    }

    @Override
    public double capacityKw() {
        return rating.warm().capacityKw();
    }

    @Override
    public double capacityKw(double airC) {
        return airC < frostLimitC ? 0 : rating.capacityKw(airC);
    }

    @Override
    public boolean followsAir() {
        return true;
    }

    @Override
    public double heatPerBought(double airC, double waterC) {
        return rating.cop(airC, waterC);
    }

    @Override
    public HeatPump withSetPointC(double value) {
        return new HeatPump(fuel, rating, frostLimitC, value, hours);
    }

    @Override
    public <T> T match(
            Function<Boiler, T> boiler,
            Function<CondensingBoiler, T> condensing,
            Function<ElectricHeater, T> electric,
            Function<HeatPump, T> heatPump,
            Function<DistrictHeat, T> districtHeat) {
        return heatPump.apply(this);
    }
}
