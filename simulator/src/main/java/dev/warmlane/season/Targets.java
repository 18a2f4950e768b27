package dev.warmlane.season;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Controller;
import dev.warmlane.heater.GasHeater;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Range;
import java.util.Optional;

/** Limit and heater of each hour of the year, made before a season, so that its loop makes nothing. Immutable. */
final class Targets {

    // one for all hours, or one for each
    private final SolarLimit[] limits;
    private final Thermostat[] heaters;

    Targets(Control control, Optional<GasHeater> heater, double poolAreaM2) {
        Controller own = control.controller();
        int different = own == Controller.USUAL ? 1 : HourOfYear.HOURS;
        SolarLimit usualLimit = new SolarLimit(control.limitC());
        Thermostat usualHeater = Thermostat.of(heater, poolAreaM2);
        Range most = Control.LIMIT.upTo(Math.min(Control.LIMIT.highest(), control.shedAboveC()));
        this.limits = new SolarLimit[different];
        this.heaters = new Thermostat[different];
        for (int hour = 0; hour < different; hour++) {
            double limitC = own.limitC(hour, usualLimit.limitC());
            limits[hour] = limitC == usualLimit.limitC() ? usualLimit : new SolarLimit(checked(most, hour, limitC));
            heaters[hour] = usualHeater;
            if (heater.isPresent()) {
                double setPointC = own.setPointC(hour, usualHeater.setPointC());
                heaters[hour] = setPointC == usualHeater.setPointC()
                        ? usualHeater
                        : new Thermostat(checked(GasHeater.SET_POINT, hour, setPointC), usualHeater.capacityWm2());
            }
        }
    }

    /** The limit in an hour of the year. */
    SolarLimit limit(int hour) {
        return limits[limits.length == 1 ? 0 : hour];
    }

    /** The heater in an hour of the year. */
    Thermostat heater(int hour) {
        return heaters[heaters.length == 1 ? 0 : hour];
    }

    private static double checked(Range range, int hour, double valueC) {
        return range.holds(valueC)
                ? valueC
                : range.named(range.what() + " of the controller at " + HourOfYear.label(hour) + " (month-day hour)")
                        .check(valueC);
    }
}
