package dev.warmlane.study;

import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.physics.Water;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Units;

/**
 * Season heat with the water held at one temperature, whatever the collectors give: it shows what the temperature of the
 * pool alone does to a mounting.
 */
public final class HeldPool {

    private HeldPool() {}

    /**
     * Heat of an installation's first array over the season's pumping hours, kWh per m² of collector, from every hour in
     * which the water would warm by more than the stop difference. No limit of temperature, no pipes.
     *
     * @param installation season and control
     * @param forcing prepared for it
     * @param waterC temperature of the water, °C, 0 to 45
     */
    public static double heatKwhM2(Installation installation, SeasonForcing forcing, double waterC) {
        CollectorForcing collector = forcing.collectors().get(0);
        double stop = installation.arrays().get(0).flowKgSM2()
                * Water.specificHeatJKgK(25)
                * installation.control().offDifferenceK();
        int first = installation.season().firstHour();
        double sum = 0;
        for (int index = 0; index < installation.season().hours(); index++) {
            int hour = (first + index) % HourOfYear.HOURS;
            double heat = collector.curves().heatWm2(hour, waterC);
            if (heat > stop && installation.control().pumping().at(hour) > 0) {
                sum += heat;
            }
        }
        return Units.kwhOfWattHours(sum);
    }
}
