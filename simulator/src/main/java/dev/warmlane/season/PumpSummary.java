package dev.warmlane.season;

import dev.warmlane.units.Units;
import java.util.OptionalDouble;

/**
 * The collector circuits' pumps.
 *
 * @param hours hours of running, the mean over the arrays by their area, h
 * @param electricityKwh electricity on top of what the pool's filter needs, kWh
 * @param heatPerKwh heat delivered per kWh of that electricity; nothing where no pump power is given
 */
public record PumpSummary(double hours, double electricityKwh, OptionalDouble heatPerKwh) {

    /** Sums up a period of a ledger, and its heat. */
    static PumpSummary of(SeasonLedger ledger, Period period, HeatBalance balance) {
        Installation installation = ledger.installation();
        double hours = 0;
        for (int a = 0; a < installation.arrays().size(); a++) {
            double share = installation.arrays().get(a).areaM2() / installation.collectorAreaM2();
            for (int index = period.heatFrom(); index < period.to(); index++) {
                hours += share * ledger.runShare(a, index);
            }
        }
        double electricity = Units.kwhOfWattHours(hours * installation.pipes().pumpPowerW());
        return new PumpSummary(
                hours,
                electricity,
                electricity > 0 ? OptionalDouble.of(balance.deliveredKwh() / electricity) : OptionalDouble.empty());
    }
}
