package dev.warmlane.scenario;

import dev.warmlane.heater.Bill;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.HeatPumpRating;
import dev.warmlane.heater.Heater;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.scenario.HeaterKeys.FuelName;
import dev.warmlane.scenario.HeaterKeys.HeaterKind;
import java.util.Optional;

/** Writes whatever heats the pool, and its last bill. */
final class HeaterWriter {

    private HeaterWriter() {}

    static void write(TomlText out, Heater heater, Optional<Bill> bill) {
        out.section("[heater]").key(HeaterKeys.KIND, kind(heater));
        fuel(out, heater.fuel());
        heater.match(
                boiler -> out.key(HeaterKeys.EFFICIENCY, boiler.efficiency()),
                condensing -> out.key(HeaterKeys.EFFICIENCY, condensing.efficiency())
                        .key(HeaterKeys.DRY_EFFICIENCY, condensing.dryEfficiency()),
                electric -> out,
                pump -> rating(out, pump.rating()).key(HeaterKeys.FROST_LIMIT, pump.frostLimitC()),
                network -> out);
        out.key(HeaterKeys.CAPACITY, heater.capacityKw()).key(HeaterKeys.SET_POINT, heater.setPointC());
        bill.ifPresent(b -> {
            out.key(HeaterKeys.LAST_BILL, b);
            b.cost().ifPresent(cost -> out.key(HeaterKeys.LAST_BILL_COST, cost));
        });
    }

    private static HeaterKind kind(Heater heater) {
        return heater.match(
                boiler -> HeaterKind.BOILER,
                condensing -> HeaterKind.CONDENSING,
                electric -> HeaterKind.ELECTRIC,
                pump -> HeaterKind.HEAT_PUMP,
                network -> HeaterKind.DISTRICT_HEAT);
    }

    private static void fuel(TomlText out, Fuel fuel) {
        SaleUnit usual;
        if (!fuel.carrier().burned()) {
            out.key(HeaterKeys.FUEL_CO2, fuel.co2KgPerGj());
            usual = SaleUnit.KWH;
        } else if (is(fuel, Fuel.NATURAL_GAS)) {
            out.key(HeaterKeys.FUEL, FuelName.NATURAL_GAS);
            usual = SaleUnit.M3;
        } else if (is(fuel, Fuel.PROPANE)) {
            out.key(HeaterKeys.FUEL, FuelName.PROPANE);
            usual = SaleUnit.LITRE;
        } else if (is(fuel, Fuel.HEATING_OIL)) {
            out.key(HeaterKeys.FUEL, FuelName.HEATING_OIL);
            usual = SaleUnit.LITRE;
        } else {
            out.key(HeaterKeys.FUEL, FuelName.OWN)
                    .key(HeaterKeys.FUEL_NAME, fuel.name())
                    .key(
                            HeaterKeys.FUEL_HEAT,
                            new FuelHeatKind.FuelHeat(
                                    fuel.heatMjPerUnit(), fuel.unit().symbol()))
                    .key(HeaterKeys.FUEL_CO2, fuel.co2KgPerGj());
            usual = fuel.unit();
        }
        if (fuel.unit() != usual) {
            out.key(HeaterKeys.SOLD_IN, fuel.unit());
        }
    }

    /** Whether a fuel is one of those with a name, in whatever unit it is sold. */
    private static boolean is(Fuel fuel, Fuel named) {
        boolean alike = fuel.carrier() == named.carrier()
                && fuel.name().equals(named.name())
                && fuel.co2KgPerGj() == named.co2KgPerGj();
        return alike && (!fuel.unit().isVolume() || named.soldIn(fuel.unit()).equals(fuel));
    }

    private static TomlText rating(TomlText out, HeatPumpRating rating) {
        out.key(HeaterKeys.COP, rating.warm().cop())
                .key(HeaterKeys.RATED_AIR, rating.warm().airC())
                .key(HeaterKeys.RATED_WATER, rating.warm().waterC());
        rating.cold().ifPresent(cold -> out.key(HeaterKeys.COLD_COP, cold.cop())
                .key(HeaterKeys.COLD_AIR, cold.airC())
                .key(HeaterKeys.COLD_CAPACITY, cold.capacityKw()));
        return out;
    }
}
