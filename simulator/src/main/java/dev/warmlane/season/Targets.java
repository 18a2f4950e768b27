package dev.warmlane.season;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Controller;
import dev.warmlane.heater.Heater;
import dev.warmlane.site.Schedule;
import dev.warmlane.units.Range;
import dev.warmlane.weather.HourlyWeather;
import java.util.Optional;

/** Limit and heater of each hour, made before a season, so that its loop makes nothing. Immutable. */
final class Targets {

    // one for all hours, or one for each
    private final SolarLimit[] limits;
    private final Thermostat[] heaters;

    Targets(Control control, Optional<Heater> heater, double poolAreaM2, HourlyWeather weather) {
        Controller own = control.controller();
        int different = own == Controller.USUAL ? 1 : weather.hours();
        SolarLimit usualLimit = new SolarLimit(control.limitC());
        Range most = Control.LIMIT.upTo(Math.min(Control.LIMIT.highest(), control.shedAboveC()));
        this.limits = new SolarLimit[different];
        for (int hour = 0; hour < different; hour++) {
            double limitC = own.limitC(weather.hourOfYear(hour), usualLimit.limitC());
            limits[hour] =
                    limitC == usualLimit.limitC() ? usualLimit : new SolarLimit(checked(most, weather, hour, limitC));
        }
        this.heaters = heater.map(built -> heaters(built, own, poolAreaM2, weather))
                .orElseGet(() -> new Thermostat[] {Thermostat.OFF});
    }

    private static Thermostat[] heaters(Heater heater, Controller own, double poolAreaM2, HourlyWeather weather) {
        boolean same = own == Controller.USUAL
                && !heater.followsAir()
                && heater.hours().equals(Schedule.ALWAYS);
        Thermostat usual = Thermostat.of(heater.setPointC(), heater.capacityKw(), poolAreaM2);
        if (same) {
            return new Thermostat[] {usual};
        }
        Thermostat[] heaters = new Thermostat[weather.hours()];
        for (int hour = 0; hour < heaters.length; hour++) {
            double setPointC = own.setPointC(weather.hourOfYear(hour), heater.setPointC());
            double capacityKw = heater.capacityKw(weather.airTemperatureC(hour));
            if (heater.hours().at(weather.hourOfYear(hour)) == 0) {
                heaters[hour] = Thermostat.OFF;
            } else if (setPointC == heater.setPointC() && capacityKw == heater.capacityKw()) {
                heaters[hour] = usual;
            } else {
                heaters[hour] =
                        Thermostat.of(checked(Heater.SET_POINT, weather, hour, setPointC), capacityKw, poolAreaM2);
            }
        }
        return heaters;
    }

    /** The limit in an hour. */
    SolarLimit limit(int hour) {
        return limits[limits.length == 1 ? 0 : hour];
    }

    /** The heater in an hour. */
    Thermostat heater(int hour) {
        return heaters[heaters.length == 1 ? 0 : hour];
    }

    private static double checked(Range range, HourlyWeather weather, int hour, double valueC) {
        return range.holds(valueC)
                ? valueC
                : range.named(range.what() + " of the controller at " + weather.label(hour))
                        .check(valueC);
    }
}
