package dev.warmlane.scenario;

import static java.util.Objects.requireNonNull;

import dev.warmlane.heater.Bill;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.CondensingBoiler;
import dev.warmlane.heater.DistrictHeat;
import dev.warmlane.heater.ElectricHeater;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.HeatPump;
import dev.warmlane.heater.HeatPumpRating;
import dev.warmlane.heater.Heater;
import dev.warmlane.heater.RatedPoint;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.scenario.HeaterKeys.FuelName;
import dev.warmlane.scenario.HeaterKeys.HeaterKind;
import dev.warmlane.scenario.PlantKeys.What;
import dev.warmlane.site.Schedule;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads whatever heats the pool, and its last bill. */
final class HeaterReader {

    private final Section s;
    private final HeaterKind kind;

    private HeaterReader(Section s) {
        this.s = s;
        this.kind = s.get(HeaterKeys.KIND);
    }

    /** Nothing where the file has no heater, or one with anything wrong. */
    static @Nullable Heater heater(Section s, Schedules schedules) {
        if (!s.present()) {
            schedules.refuse(What.HEATING, "there is nothing that heats; give a section [heater]");
            return null;
        }
        return s.sound(HeaterKeys.KIND) ? new HeaterReader(s).heater(schedules) : null;
    }

    private @Nullable Heater heater(Schedules schedules) {
        refuseOthers();
        Fuel fuel = fuel();
        double capacity = s.get(HeaterKeys.CAPACITY);
        double setPoint = s.get(HeaterKeys.SET_POINT);
        Schedule hours = schedules.of(What.HEATING, s, HeaterKeys.HOURS);
        return switch (kind) {
            case BOILER -> {
                double efficiency = s.get(HeaterKeys.EFFICIENCY);
                yield s.build(() -> new Boiler(requireNonNull(fuel), efficiency, capacity, setPoint, hours));
            }
            case CONDENSING -> condensing(fuel, capacity, setPoint, hours);
            case ELECTRIC -> s.build(() -> new ElectricHeater(requireNonNull(fuel), capacity, setPoint, hours));
            case HEAT_PUMP -> heatPump(fuel, capacity, setPoint, hours);
            case DISTRICT_HEAT -> s.build(() -> new DistrictHeat(requireNonNull(fuel), capacity, setPoint, hours));
        };
    }

    private void refuseOthers() {
        if (kind != HeaterKind.HEAT_PUMP) {
            s.refuse(
                    "allowed with kind = \"heat-pump\" only",
                    HeaterKeys.COP,
                    HeaterKeys.RATED_AIR,
                    HeaterKeys.RATED_WATER,
                    HeaterKeys.COLD_COP,
                    HeaterKeys.COLD_CAPACITY,
                    HeaterKeys.COLD_AIR,
                    HeaterKeys.FROST_LIMIT);
        }
        if (kind != HeaterKind.CONDENSING) {
            s.refuse("allowed with kind = \"condensing\" only", HeaterKeys.DRY_EFFICIENCY);
        }
        if (!kind.burns()) {
            s.refuse("allowed with kind = \"boiler\" and \"condensing\" only", HeaterKeys.FUEL, HeaterKeys.EFFICIENCY);
            s.refuse("allowed with fuel = \"own\" only", HeaterKeys.FUEL_NAME, HeaterKeys.FUEL_HEAT);
        }
    }

    private @Nullable Fuel fuel() {
        Fuel fuel = kind.burns() ? burned() : bought();
        if (fuel == null || !s.has(HeaterKeys.SOLD_IN) || !s.sound(HeaterKeys.SOLD_IN)) {
            return fuel;
        }
        SaleUnit unit = s.get(HeaterKeys.SOLD_IN);
        return keyed(HeaterKeys.SOLD_IN, () -> fuel.soldIn(unit));
    }

    private @Nullable Fuel bought() {
        double co2 = s.get(HeaterKeys.FUEL_CO2);
        return s.build(() -> kind == HeaterKind.DISTRICT_HEAT ? Fuel.districtHeat(co2) : Fuel.electricity(co2));
    }

    private @Nullable Fuel burned() {
        FuelName name = s.get(HeaterKeys.FUEL);
        if (!s.has(HeaterKeys.FUEL) || !s.sound(HeaterKeys.FUEL)) {
            return null;
        }
        if (name == FuelName.OWN) {
            String called = s.get(HeaterKeys.FUEL_NAME);
            FuelHeatKind.FuelHeat heat = s.get(HeaterKeys.FUEL_HEAT);
            double co2 = s.get(HeaterKeys.FUEL_CO2);
            if (co2 > Fuel.CO2.highest()) {
                s.error(
                        HeaterKeys.FUEL_CO2,
                        "found " + HeaterKeys.FUEL_CO2.kind().show(co2) + "; allowed for what is burned: "
                                + Fuel.CO2.ends());
            }
            return s.build(() -> new Fuel(called, heat.unit(), heat.mjPerUnit(), co2));
        }
        s.refuse("allowed with fuel = \"own\" only", HeaterKeys.FUEL_NAME, HeaterKeys.FUEL_HEAT, HeaterKeys.FUEL_CO2);
        return switch (name) {
            case PROPANE -> Fuel.PROPANE;
            case HEATING_OIL -> Fuel.HEATING_OIL;
            default -> Fuel.NATURAL_GAS;
        };
    }

    private @Nullable Heater condensing(@Nullable Fuel fuel, double capacity, double setPoint, Schedule hours) {
        double efficiency = s.get(
                HeaterKeys.EFFICIENCY,
                CondensingBoiler.USUAL_EFFICIENCY,
                "a condensing boiler with the pool at 30 degC, from memory and by a balance of burning methane");
        double dry = s.get(
                HeaterKeys.DRY_EFFICIENCY,
                CondensingBoiler.USUAL_DRY_EFFICIENCY,
                "0.98 of the lower heating value of natural gas, by the same balance");
        if (s.sound(HeaterKeys.EFFICIENCY) && !CondensingBoiler.EFFICIENCY.holds(efficiency)) {
            s.error(
                    HeaterKeys.EFFICIENCY,
                    "found " + HeaterKeys.EFFICIENCY.kind().show(efficiency)
                            + "; allowed for a condensing boiler with the pool at 30 degC: "
                            + CondensingBoiler.EFFICIENCY.ends());
        } else if (dry > efficiency) {
            s.error(HeaterKeys.DRY_EFFICIENCY, "is above efficiency; allowed: up to efficiency");
        }
        if (s.has(HeaterKeys.FUEL) && s.get(HeaterKeys.FUEL) == FuelName.HEATING_OIL) {
            s.error(HeaterKeys.FUEL, "the condensing boiler is described for gas only; give kind = \"boiler\"");
        }
        return s.build(() -> new CondensingBoiler(requireNonNull(fuel), efficiency, dry, capacity, setPoint, hours));
    }

    private @Nullable Heater heatPump(@Nullable Fuel fuel, double capacity, double setPoint, Schedule hours) {
        double cop = s.get(HeaterKeys.COP);
        String why = "the warmer air of ASHRAE 146 and AHRI 1160, from a page about them";
        double air = s.get(HeaterKeys.RATED_AIR, RatedPoint.WARM_AIR_C, why);
        double water = s.get(HeaterKeys.RATED_WATER, RatedPoint.USUAL_WATER_C, why.replace("warmer air", "water"));
        double frost = s.get(
                HeaterKeys.FROST_LIMIT,
                HeatPump.USUAL_FROST_LIMIT_C,
                "a pool heat pump that does not defrost, common practice, no source");
        RatedPoint cold = null;
        if (s.has(HeaterKeys.COLD_COP)) {
            double coldCop = s.get(HeaterKeys.COLD_COP);
            double coldAir = s.get(HeaterKeys.COLD_AIR, RatedPoint.COLD_AIR_C, why.replace("warmer", "colder"));
            double coldCapacity = s.get(HeaterKeys.COLD_CAPACITY);
            cold = s.build(() -> new RatedPoint(coldAir, water, coldCop, coldCapacity));
        } else {
            s.refuse("allowed with cold_cop only", HeaterKeys.COLD_CAPACITY, HeaterKeys.COLD_AIR);
        }
        RatedPoint warm = s.build(() -> new RatedPoint(air, water, cop, capacity));
        @Nullable RatedPoint second = cold;
        HeatPumpRating rating = warm == null
                ? null
                : keyed(
                        HeaterKeys.COP,
                        () -> second == null ? HeatPumpRating.of(warm) : HeatPumpRating.of(warm, second));
        return s.build(() -> new HeatPump(requireNonNull(fuel), requireNonNull(rating), frost, setPoint, hours));
    }

    /** The last bill, checked against what the heater is fed with. */
    static @Nullable Bill bill(Section s, @Nullable Heater heater) {
        if (!s.has(HeaterKeys.LAST_BILL)) {
            s.refuse("allowed with last_bill only", HeaterKeys.LAST_BILL_COST);
            return null;
        }
        Bill amount = s.get(HeaterKeys.LAST_BILL);
        OptionalDouble cost = s.has(HeaterKeys.LAST_BILL_COST)
                ? OptionalDouble.of(s.get(HeaterKeys.LAST_BILL_COST))
                : OptionalDouble.empty();
        Bill bill = s.build(() -> new Bill(amount.amount(), amount.unit(), cost));
        if (bill != null && heater != null) {
            try {
                bill.kwh(heater.fuel());
            } catch (IllegalArgumentException e) {
                s.error(
                        HeaterKeys.LAST_BILL,
                        e.getMessage() + "; write both in the same unit, here and in sold_in or the price");
            }
        }
        return bill;
    }

    /** Makes a thing of which a fault is told at a key. */
    private <T> @Nullable T keyed(Key<?> key, Supplier<T> made) {
        if (s.hasFailed()) {
            return null;
        }
        try {
            return made.get();
        } catch (IllegalArgumentException e) {
            s.error(key, String.valueOf(e.getMessage()));
            return null;
        }
    }
}
