package dev.warmlane.season;

import dev.warmlane.pool.Flow;
import dev.warmlane.units.Units;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * Where the pool's heat came from and went, each kind net over the period.
 *
 * @param kwh heat of each kind, kWh, positive into the water
 * @param storedKwh heat that stayed in the water because it ended warmer, or with less ice, than it began, kWh; the sum of
 *     {@code kwh}
 * @param evaporatedKg water that evaporated, kg
 * @param makeUpM3 mains water that replaced what evaporated, splashed out and was drained, m³, 1000 kg to the m³
 */
public record HeatBalance(Map<Flow, Double> kwh, double storedKwh, double evaporatedKg, double makeUpM3) {

    /** Keeps its own copy of the map, in the order of the kinds. */
    public HeatBalance {
        kwh = Collections.unmodifiableMap(new EnumMap<>(kwh));
    }

    /** Sums up a period of a ledger. */
    public static HeatBalance of(SeasonLedger ledger, Period period) {
        double stored = 0;
        for (int index = period.heatFrom(); index < period.to(); index++) {
            stored += ledger.storedJm2(index);
        }
        Installation installation = ledger.installation();
        double evaporated = ledger.evaporatedKg(period);
        double drained = installation.makeUp().litresPerDay()
                * (period.to() - Math.min(period.to(), Math.max(ledger.opening(), period.from())))
                / 24;
        return new HeatBalance(
                ledger.heatKwh(period),
                stored * installation.pool().areaM2() / Units.KWH,
                evaporated,
                Units.cubicMetres(evaporated + drained));
    }

    /** Heat of a kind, kWh, positive into the water. */
    public double kwh(Flow flow) {
        return kwh.getOrDefault(flow, 0.0);
    }

    /** Sum of the kinds that warmed the water, kWh; collectors and their pipes count as one. */
    public double gainsKwh() {
        double sum = Math.max(0, deliveredKwh());
        for (Flow flow : Flow.values()) {
            if (flow != Flow.COLLECTORS && flow != Flow.PIPES) {
                sum += Math.max(0, kwh(flow));
            }
        }
        return sum;
    }

    /** Heat that arrived from the collectors: theirs less what the pipes lost, kWh. */
    public double deliveredKwh() {
        return kwh(Flow.COLLECTORS) + kwh(Flow.PIPES);
    }
}
