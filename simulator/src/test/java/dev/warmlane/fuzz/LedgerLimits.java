package dev.warmlane.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.heater.Heater;
import dev.warmlane.pool.Flow;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonLedger;

/** What holds in every hour of every season, whatever was built. */
final class LedgerLimits {

    /** The ledger's promise: rounding of all flows, and of a joule where hardly anything flows. */
    static final double CLOSURE = 1e-9;

    private LedgerLimits() {}

    /**
     * Holds every hour of a season to them.
     *
     * @param coldestC no water of it is colder, °C
     * @param hottestC no water of it is warmer, °C
     */
    static void hold(SeasonLedger ledger, double coldestC, double hottestC) {
        for (int index = 0; index < ledger.hours(); index++) {
            flows(ledger, index);
            assertThat(ledger.waterEndC(index)).as("water, hour %d", index).isBetween(coldestC, hottestC);
            collectors(ledger, index);
            heater(ledger, index);
        }
    }

    private static void flows(SeasonLedger ledger, int index) {
        double sum = 0;
        double size = 1;
        for (Flow flow : Flow.values()) {
            sum += ledger.heatJm2(flow, index);
            size += Math.abs(ledger.heatJm2(flow, index));
        }
        assertThat(size).as("sum of flows, hour %d", index).isFinite();
        assertThat(Math.abs(ledger.storedJm2(index) - sum))
                .as("closure, hour %d", index)
                .isLessThanOrEqualTo(CLOSURE * size);
        assertThat(ledger.heatJm2(Flow.SUN, index)).as("sun, hour %d", index).isNotNegative();
    }

    /** They warm up to the limit, and cool above the temperature that they are told to cool from. */
    private static void collectors(SeasonLedger ledger, int index) {
        Installation built = ledger.installation();
        double heat = ledger.heatJm2(Flow.COLLECTORS, index);
        if (built.arrays().isEmpty()) {
            assertThat(heat).as("no collectors, hour %d", index).isZero();
        }
        if (highest(ledger, index) < built.control().shedAboveC()) {
            assertThat(heat).as("collectors, hour %d", index).isNotNegative();
        }
        if (lowest(ledger, index) > built.control().limitC()) {
            assertThat(heat).as("collectors above limit, hour %d", index).isNotPositive();
        }
    }

    private static void heater(SeasonLedger ledger, int index) {
        Installation built = ledger.installation();
        double heat = ledger.heatJm2(Flow.HEATER, index);
        assertThat(heat).as("heater, hour %d", index).isNotNegative();
        if (built.heater().isPresent()) {
            Heater heater = built.heater().get();
            double most = heater.capacityKw() * 3.6e6 / built.pool().areaM2();
            assertThat(heat).as("heater, hour %d", index).isLessThanOrEqualTo(most * (1 + CLOSURE));
            if (lowest(ledger, index) > heater.setPointC()) {
                assertThat(heat).as("heater above set point, hour %d", index).isZero();
            }
        } else {
            assertThat(heat).as("no heater, hour %d", index).isZero();
        }
    }

    private static double lowest(SeasonLedger ledger, int index) {
        return Math.min(ledger.waterStartC(index), ledger.waterEndC(index));
    }

    private static double highest(SeasonLedger ledger, int index) {
        return Math.max(ledger.waterStartC(index), ledger.waterEndC(index));
    }
}
