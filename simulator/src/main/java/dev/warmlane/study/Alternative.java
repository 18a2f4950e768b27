package dev.warmlane.study;

import dev.warmlane.season.PoolSummary;
import java.util.Optional;

/**
 * One of the things that an owner's money could do.
 *
 * @param collectors whether there are the collectors
 * @param cover whether there is the cover
 * @param asDescribed whether it is what the installation describes
 * @param pool the pool's season
 * @param daysWithoutHeater days with open hours in which the heater gives nothing; all of them where there is none
 * @param boughtKwh what is bought for the heater in the season, kWh; 0 where there is none
 * @param co2Kg carbon dioxide of it, kg
 * @param pumpKwh electricity of the collectors' pumps, kWh
 * @param cost what it costs; nothing where a price is missing, or where no prices are given
 */
public record Alternative(
        boolean collectors,
        boolean cover,
        boolean asDescribed,
        PoolSummary pool,
        int daysWithoutHeater,
        double boughtKwh,
        double co2Kg,
        double pumpKwh,
        Optional<Cost> cost) {

    /**
     * What it costs, in the currency of the prices.
     *
     * @param paid what is paid at the beginning, less the grant
     * @param energyPerYear energy for pumps, and a heater if there is one, in the season, at the prices of today
     * @param overYears all that is paid over the years as money of today: bought, bought again, kept up, energy
     */
    public record Cost(double paid, double energyPerYear, double overYears) {}
}
