package dev.warmlane.scenario;

import dev.warmlane.circuit.Control;
import dev.warmlane.heater.Carrier;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.Heater;
import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.StartWater;
import dev.warmlane.scenario.PlantKeys.What;
import dev.warmlane.season.Comfort;
import dev.warmlane.season.Prices;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import java.time.MonthDay;
import org.jspecify.annotations.Nullable;

/** Reads prices, control and season. */
final class PlantReader {

    private PlantReader() {}

    /** Prices, of which that of the heater's energy may be told by the volume. */
    static @Nullable Prices prices(Section s, Section heaterSection, @Nullable Heater heater) {
        if (!s.present()) {
            return null;
        }
        String currency = s.get(PlantKeys.CURRENCY);
        if (heaterSection.present() && heater == null) {
            // what is wrong with the heater is told there: of its price only that it is missing can be
            boolean burns = heaterSection.get(HeaterKeys.KIND).burns();
            if (burns && !s.has(PlantKeys.GAS_PRICE) && !s.has(PlantKeys.FUEL_PRICE)) {
                s.get(PlantKeys.GAS_PRICE);
            }
            s.get(PlantKeys.ELECTRICITY_PRICE);
            return null;
        }
        boolean unheated = heater == null && !s.has(PlantKeys.GAS_PRICE) && !s.has(PlantKeys.FUEL_PRICE);
        double fuel = unheated ? 0 : fuelPrice(s, heater == null ? Fuel.NATURAL_GAS : heater.fuel());
        double electricity = s.get(PlantKeys.ELECTRICITY_PRICE);
        double collectors = s.get(PlantKeys.COLLECTOR_PRICE);
        return s.build(() -> new Prices(currency, fuel, electricity, collectors));
    }

    private static double fuelPrice(Section s, Fuel fuel) {
        boolean electric = fuel.carrier() == Carrier.ELECTRICITY;
        if (fuel.carrier() != Carrier.GAS && fuel.carrier() != Carrier.OTHER) {
            s.refuse(
                    "the heater is fed with " + fuel.word() + "; its price is "
                            + (electric ? "electricity, or fuel where it has a tariff of its own" : "fuel"),
                    PlantKeys.GAS_PRICE);
        } else if (s.has(PlantKeys.FUEL_PRICE)) {
            s.refuse("not allowed with fuel; give one of them", PlantKeys.GAS_PRICE);
        }
        boolean asFuel = s.has(PlantKeys.FUEL_PRICE) || fuel.carrier() == Carrier.OIL || fuel.carrier() == Carrier.HEAT;
        if (electric && !s.has(PlantKeys.FUEL_PRICE)) {
            return s.has(PlantKeys.ELECTRICITY_PRICE) ? s.get(PlantKeys.ELECTRICITY_PRICE) : 0;
        }
        Key<EnergyPriceKind.EnergyPrice> key = asFuel ? PlantKeys.FUEL_PRICE : PlantKeys.GAS_PRICE;
        EnergyPriceKind.EnergyPrice price = s.get(key);
        try {
            return price.perKwh(fuel);
        } catch (IllegalArgumentException e) {
            s.error(key, String.valueOf(e.getMessage()));
            return 0;
        }
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
        BeforeOpening before = before(s, first);
        return s.build(() -> new OpeningSeason(first, last, open, before));
    }

    private static BeforeOpening before(Section s, MonthDay opening) {
        int heater = s.get(PlantKeys.HEATER_BEFORE);
        if (!s.has(PlantKeys.COLLECTORS_FROM)) {
            return new BeforeOpening(s.get(PlantKeys.COLLECTORS_BEFORE), heater);
        }
        s.refuse("not allowed with collectors_from; give one of them", PlantKeys.COLLECTORS_BEFORE);
        MonthDay from = s.get(PlantKeys.COLLECTORS_FROM);
        int hours = Math.floorMod(HourOfYear.startOf(opening) - HourOfYear.startOf(from), HourOfYear.HOURS);
        int days = hours / 24;
        if (!s.sound(PlantKeys.COLLECTORS_FROM) || !s.sound(PlantKeys.FIRST_DAY)) {
            return new BeforeOpening(0, heater);
        }
        if (!BeforeOpening.DAYS.holds(days)) {
            s.error(
                    PlantKeys.COLLECTORS_FROM,
                    "is " + days + " days before first_day; allowed: at most " + (int) BeforeOpening.DAYS.highest());
            return new BeforeOpening(0, heater);
        }
        return new BeforeOpening(days, heater);
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
