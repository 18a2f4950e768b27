package dev.warmlane.season;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.pool.Flow;
import dev.warmlane.units.Units;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the collectors gave. All heat is 0 where there are none.
 *
 * @param areaM2 collector area of all arrays, m²
 * @param usefulKwh heat that the water took up in the collectors, kWh
 * @param deliveredKwh heat that arrived in the pool, the pipes' loss taken off, kWh
 * @param irradiationKwh sun on the front of all collectors in their own planes, in every hour of the period, kWh
 * @param peakKw most heat delivered in one hour, as a mean power, kW
 * @param lowestOutletC lowest temperature of the water leaving an array, mean over an hour's running, °C
 * @param highestOutletC highest temperature of the water leaving an array, mean over an hour's running, °C
 * @param refusedKwh heat that the collectors could have given but the pool, at its limit, did not take, kWh: the sign of
 *     too much area
 */
public record CollectorHeat(
        double areaM2,
        double usefulKwh,
        double deliveredKwh,
        double irradiationKwh,
        double peakKw,
        OptionalDouble lowestOutletC,
        OptionalDouble highestOutletC,
        double refusedKwh) {

    /** Sums up a period of a ledger that was made with this forcing, and its heat. */
    static CollectorHeat of(SeasonLedger ledger, SeasonForcing forcing, Period period, HeatBalance balance) {
        List<CollectorArray> arrays = ledger.installation().arrays();
        double irradiation = 0;
        double peak = 0;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int index = period.heatFrom(); index < period.to(); index++) {
            int hour = ledger.hourOfYear(index);
            peak = Math.max(peak, ledger.deliveredKwh(index));
            for (int a = 0; a < arrays.size(); a++) {
                CollectorForcing collector = forcing.collectors().get(a);
                irradiation += Units.kwhOfWattHours(arrays.get(a).areaM2() * collector.irradianceWm2(hour));
                double outlet = ledger.outletC(a, index);
                if (!Double.isNaN(outlet)) {
                    lowest = Math.min(lowest, outlet);
                    highest = Math.max(highest, outlet);
                }
            }
        }
        boolean ran = lowest <= highest;
        return new CollectorHeat(
                ledger.installation().collectorAreaM2(),
                balance.kwh(Flow.COLLECTORS),
                balance.deliveredKwh(),
                irradiation,
                peak,
                ran ? OptionalDouble.of(lowest) : OptionalDouble.empty(),
                ran ? OptionalDouble.of(highest) : OptionalDouble.empty(),
                ledger.refusedKwh(period));
    }

    /** Heat delivered per collector area, kWh/m²; nothing where there are no collectors. */
    public OptionalDouble deliveredKwhPerM2() {
        return areaM2 > 0 ? OptionalDouble.of(deliveredKwh / areaM2) : OptionalDouble.empty();
    }

    /**
     * Collector efficiency: useful heat over all the sun on the collectors, pump running or not, 0 to 1; nothing where
     * there was no sun.
     */
    public OptionalDouble efficiency() {
        return irradiationKwh > 0 ? OptionalDouble.of(usefulKwh / irradiationKwh) : OptionalDouble.empty();
    }
}
