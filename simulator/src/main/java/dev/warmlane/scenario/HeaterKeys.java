package dev.warmlane.scenario;

import dev.warmlane.heater.Bill;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.CondensingBoiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.HeatPump;
import dev.warmlane.heater.Heater;
import dev.warmlane.heater.RatedPoint;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.units.Range;

/** Keys of the section heater. */
final class HeaterKeys {

    private static final String OWN_FUEL = "required for fuel = \"own\", not allowed otherwise";
    private static final String HEAT_PUMP = "for kind = \"heat-pump\" only";
    private static final Range COST = Range.number("cost of the last bill", 0.01, Bill.MOST);

    static final Key<HeaterKind> KIND = Key.convention(
            "kind",
            WordKinds.choice(HeaterKind.class),
            "what heats the pool today: a boiler or pool heater of constant efficiency, a condensing boiler, electric"
                    + " resistance, a heat pump on outdoor air, a station of a heat network",
            HeaterKind.BOILER);
    static final Key<FuelName> FUEL = Key.optional(
            "fuel",
            WordKinds.choice(FuelName.class),
            "what the boiler burns",
            "required for kind = \"boiler\" and \"condensing\", not allowed otherwise");
    static final Key<String> FUEL_NAME =
            Key.optional("fuel_name", WordKinds.text(), "what your own fuel is called", OWN_FUEL);
    static final Key<FuelHeatKind.FuelHeat> FUEL_HEAT =
            Key.optional("fuel_heat", new FuelHeatKind(), "higher heating value of your own fuel", OWN_FUEL);
    static final Key<Double> FUEL_CO2 = Key.optional(
            "fuel_co2",
            Fuel.CO2_BOUGHT.named("CO2").writtenIn("kg/kWh"),
            "carbon dioxide of your own fuel on the higher heating value, of electricity or of district heat; who sells it"
                    + " knows it",
            "required for fuel = \"own\" and for kind = \"electric\", \"heat-pump\" and \"district-heat\", not allowed"
                    + " otherwise");
    static final Key<SaleUnit> SOLD_IN = Key.optional(
            "sold_in",
            new SaleUnitKind(),
            "unit in which amounts of it are told",
            "m3 of natural gas, L of propane and oil, kWh of electricity and heat");
    static final Key<Double> EFFICIENCY = Key.assumed(
            "efficiency",
            Boiler.USUAL,
            "heat of a boiler to the water over the higher heating value burned; of a condensing boiler with the pool at"
                    + " 30 degC, and then 0.96 is assumed");
    static final Key<Double> DRY_EFFICIENCY = Key.optional(
            "dry_efficiency",
            CondensingBoiler.DRY_EFFICIENCY,
            "efficiency of a condensing boiler from 55 degC on, where nothing condenses",
            "0.88 assumed for kind = \"condensing\", not allowed otherwise");
    static final Key<Double> CAPACITY = Key.required(
            "capacity", Heater.CAPACITY, "heat to the water at full load; of a heat pump in air of rated_air");
    static final Key<Double> COP = Key.optional(
            "cop",
            RatedPoint.COP,
            "heat of a heat pump over its electricity in air of rated_air and water of rated_water, by its certificate",
            "required for kind = \"heat-pump\", not allowed otherwise");
    static final Key<Double> RATED_AIR = Key.optional(
            "rated_air", RatedPoint.AIR, "air temperature of cop and capacity", "27 degC assumed, " + HEAT_PUMP);
    static final Key<Double> RATED_WATER = Key.optional(
            "rated_water",
            RatedPoint.WATER,
            "water temperature of cop, and of cold_cop",
            "27 degC assumed, " + HEAT_PUMP);
    static final Key<Double> COLD_COP = Key.optional(
            "cold_cop",
            RatedPoint.COP,
            "the same in colder air, by a second line of its certificate; with cold_capacity",
            "from cop alone, " + HEAT_PUMP);
    static final Key<Double> COLD_CAPACITY = Key.optional(
            "cold_capacity",
            Heater.CAPACITY,
            "heat to the water in that colder air; with cold_cop",
            "capacity in any air, " + HEAT_PUMP);
    static final Key<Double> COLD_AIR =
            Key.optional("cold_air", RatedPoint.AIR, "that colder air", "10 degC assumed, with cold_cop only");
    static final Key<Double> FROST_LIMIT = Key.optional(
            "frost_limit",
            HeatPump.FROST_LIMIT,
            "air temperature below which a heat pump stands",
            "5 degC assumed, " + HEAT_PUMP);
    static final Key<Double> SET_POINT =
            Key.required("set_point", Heater.SET_POINT, "pool temperature that the heater keeps in the open season");
    static final Key<WordKinds.Span> HOURS = Key.convention(
            "hours",
            WordKinds.hours(),
            "hours in which the heater may run every day; it may at any hour only where no [[schedule]] is for"
                    + " \"heating\"",
            new WordKinds.Span(0, 24));
    static final Key<Bill> LAST_BILL = Key.optional(
            "last_bill",
            new BillKind(),
            "what was bought for the heater in a season before there were collectors, to stand beside the simulated amount",
            "nothing is compared");
    static final Key<Double> LAST_BILL_COST = Key.optional(
            "last_bill_cost", COST, "what that cost, in the currency of the prices", "not told; with last_bill only");
    static final SectionSchema HEATER = SectionSchema.optional(
            "heater",
            "whatever heats the pool today; a pool without this section has nothing",
            KIND,
            FUEL,
            FUEL_NAME,
            FUEL_HEAT,
            FUEL_CO2,
            SOLD_IN,
            EFFICIENCY,
            DRY_EFFICIENCY,
            CAPACITY,
            COP,
            RATED_AIR,
            RATED_WATER,
            COLD_COP,
            COLD_CAPACITY,
            COLD_AIR,
            FROST_LIMIT,
            SET_POINT,
            HOURS,
            LAST_BILL,
            LAST_BILL_COST);

    private HeaterKeys() {}

    /** What heats the pool. */
    enum HeaterKind {
        BOILER,
        CONDENSING,
        ELECTRIC,
        HEAT_PUMP,
        DISTRICT_HEAT;

        /** Whether it burns a fuel. */
        boolean burns() {
            return this == BOILER || this == CONDENSING;
        }
    }

    /** Fuels with values of their own, or one that the file describes. */
    enum FuelName {
        NATURAL_GAS,
        PROPANE,
        HEATING_OIL,
        OWN
    }
}
