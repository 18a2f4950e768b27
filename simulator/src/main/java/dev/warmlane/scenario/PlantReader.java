package dev.warmlane.scenario;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.GasHeater;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.StartWater;
import dev.warmlane.scenario.PlantKeys.FuelName;
import dev.warmlane.scenario.PlantKeys.What;
import dev.warmlane.season.Comfort;
import dev.warmlane.season.Prices;
import dev.warmlane.site.Schedule;
import java.time.MonthDay;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Reads pipes, heater, prices, control and season. */
final class PlantReader {

    private PlantReader() {}

    static @Nullable Pipes pipes(Section s) {
        double loss = s.get(PlantKeys.HEAT_LOSS);
        double power = s.get(PlantKeys.PUMP_POWER);
        return s.build(() -> new Pipes(loss, power));
    }

    static @Nullable GasHeater heater(Section s) {
        if (!s.present()) {
            return null;
        }
        Fuel fuel = fuel(s);
        double efficiency = s.get(PlantKeys.EFFICIENCY);
        double capacity = s.get(PlantKeys.CAPACITY);
        double setPoint = s.get(PlantKeys.SET_POINT);
        return s.build(() -> new GasHeater(Objects.requireNonNull(fuel), efficiency, capacity, setPoint));
    }

    private static @Nullable Fuel fuel(Section s) {
        FuelName name = s.get(PlantKeys.FUEL);
        if (!s.has(PlantKeys.FUEL) || !s.sound(PlantKeys.FUEL)) {
            return null;
        }
        if (name == FuelName.OWN) {
            String called = s.get(PlantKeys.FUEL_NAME);
            FuelHeatKind.FuelHeat heat = s.get(PlantKeys.FUEL_HEAT);
            double co2 = s.get(PlantKeys.FUEL_CO2);
            return s.build(() -> new Fuel(called, heat.unit(), heat.mjPerUnit(), co2));
        }
        s.refuse("allowed with fuel = \"own\" only", PlantKeys.FUEL_NAME, PlantKeys.FUEL_HEAT, PlantKeys.FUEL_CO2);
        return name == FuelName.PROPANE ? Fuel.PROPANE : Fuel.NATURAL_GAS;
    }

    static @Nullable Prices prices(Section s) {
        if (!s.present()) {
            return null;
        }
        String currency = s.get(PlantKeys.CURRENCY);
        double gas = s.get(PlantKeys.GAS_PRICE);
        double electricity = s.get(PlantKeys.ELECTRICITY_PRICE);
        double collectors = s.get(PlantKeys.COLLECTOR_PRICE);
        return s.build(() -> new Prices(currency, gas, electricity, collectors));
    }

    static @Nullable Control control(Section s, Schedules schedules) {
        double on = s.get(PlantKeys.ON_DIFFERENCE);
        double off = s.get(PlantKeys.OFF_DIFFERENCE);
        double limit = s.get(PlantKeys.LIMIT);
        double shed = s.has(PlantKeys.COOL_ABOVE) ? s.get(PlantKeys.COOL_ABOVE) : Double.POSITIVE_INFINITY;
        if (s.has(PlantKeys.COOL_ABOVE) && s.sound(PlantKeys.COOL_ABOVE) && s.sound(PlantKeys.LIMIT) && shed < limit) {
            s.error(
                    PlantKeys.COOL_ABOVE,
                    "found " + PlantKeys.COOL_ABOVE.kind().show(shed) + "; allowed: at least limit, "
                            + PlantKeys.LIMIT.kind().show(limit));
        }
        Schedule pumping = schedules.of(What.PUMPING, s, PlantKeys.PUMPING);
        return s.build(() -> new Control(on, off, limit, shed, pumping));
    }

    static @Nullable OpeningSeason season(Section s, Schedules schedules) {
        if (s.has(PlantKeys.FIRST_DAY) != s.has(PlantKeys.LAST_DAY)) {
            Key<MonthDay> alone = s.has(PlantKeys.FIRST_DAY) ? PlantKeys.FIRST_DAY : PlantKeys.LAST_DAY;
            s.error(alone, "stands alone; give both first_day and last_day, or neither for a pool open all year");
        }
        MonthDay first = s.get(PlantKeys.FIRST_DAY);
        MonthDay last = s.get(PlantKeys.LAST_DAY);
        Schedule open = schedules.of(What.OPEN, s, PlantKeys.OPEN);
        return s.build(() -> new OpeningSeason(first, last, open));
    }

    static @Nullable StartWater startWater(Section s) {
        if (s.has(PlantKeys.START_TEMPERATURE)) {
            s.refuse("not allowed with start_temperature; give one of them", PlantKeys.DAYS_STANDING);
            double temperature = s.get(PlantKeys.START_TEMPERATURE);
            return s.build(() -> new StartWater.Given(temperature));
        }
        int days = s.get(PlantKeys.DAYS_STANDING);
        return s.build(() -> new StartWater.StandingFilled(days));
    }

    static @Nullable Comfort comfort(Section s) {
        double comfort = s.get(PlantKeys.COMFORT);
        double maximum = s.get(PlantKeys.COMFORT_MAXIMUM);
        if (s.sound(PlantKeys.COMFORT) && s.sound(PlantKeys.COMFORT_MAXIMUM) && maximum < comfort) {
            String is = PlantKeys.COMFORT.kind().show(comfort);
            Key<Double> given = s.has(PlantKeys.COMFORT_MAXIMUM) ? PlantKeys.COMFORT_MAXIMUM : PlantKeys.COMFORT;
            s.error(
                    given,
                    "comfort " + is + " is above comfort_maximum "
                            + PlantKeys.COMFORT_MAXIMUM.kind().show(maximum)
                            + "; allowed: comfort up to comfort_maximum");
        }
        return s.build(() -> new Comfort(comfort, maximum));
    }
}
