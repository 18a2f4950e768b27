package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.warmlane.circuit.Control;
import dev.warmlane.collector.HeatCurves;
import dev.warmlane.pool.Flow;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What the ledger tells of water that evaporates and of heat that a pool at its limit leaves. */
class LedgerNumbersTest {

    private static final double ROUNDING_PERCENT = 1e-9;

    /** Latent heat of water between 20 and 30 °C, kWh/kg (steam tables: 2453.5 and 2429.8 kJ/kg). */
    private static final double LATENT_KWH_KG = 2441.7 / 3600;

    private static final double LIMIT_C = 26;

    private final Installation built =
            Demo.pool(1.5).control(Control.withLimit(LIMIT_C)).build();
    private final SeasonForcing forcing = SeasonForcing.of(built, Demo.weather("warm-inland"));
    private final SeasonLedger ledger = SeasonSimulator.simulate(built, forcing);

    private final Period season = Periods.season(ledger);

    @Test
    void whatEvaporatesTookItsLatentHeat() {
        double heat = 0;
        for (int index = season.from(); index < season.to(); index++) {
            heat -= Math.min(0, ledger.heatKwh(Flow.EVAPORATION, index));
        }
        // the water is between 18 and 30 °C, where the latent heat differs by 0.7 % from that at 25
        assertThat(ledger.evaporatedKg(season)).isCloseTo(heat / LATENT_KWH_KG, withinPercentage(1));
        assertThat(ledger.evaporatedKg(season))
                .isCloseTo(sum(ledger::evaporatedKg), withinPercentage(ROUNDING_PERCENT));
    }

    /** A pool at or above its limit for a whole hour leaves what the collectors would give to its water. */
    @Test
    void whatThePoolLeavesIsWhatFullFlowWouldGive() {
        HeatCurves curves = forcing.collectors().get(0).curves();
        int left = 0;
        for (int index = season.from(); index < season.to(); index++) {
            if (ledger.refusedKwh(index) > 0
                    && ledger.waterStartC(index) > LIMIT_C
                    && ledger.waterEndC(index) > LIMIT_C) {
                double oneEnd = fullKwh(curves, index, ledger.waterStartC(index));
                double otherEnd = fullKwh(curves, index, ledger.waterEndC(index));
                assertThat(ledger.heatKwh(Flow.COLLECTORS, index)).isZero();
                assertThat(ledger.refusedKwh(index)).isBetween(Math.min(oneEnd, otherEnd), Math.max(oneEnd, otherEnd));
                left++;
            }
        }
        assertThat(left).isGreaterThan(100);
        assertThat(ledger.refusedKwh(season)).isCloseTo(sum(ledger::refusedKwh), withinPercentage(ROUNDING_PERCENT));
    }

    private double fullKwh(HeatCurves curves, int index, double waterC) {
        return curves.heatWm2(ledger.hourOfYear(index), waterC) * Demo.FLAT.areaM2() / 1000;
    }

    private double sum(IntToDoubleFunction ofHour) {
        return IntStream.range(season.from(), season.to()).mapToDouble(ofHour).sum();
    }
}
