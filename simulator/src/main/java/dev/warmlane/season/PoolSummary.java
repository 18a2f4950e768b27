package dev.warmlane.season;

/**
 * A period of one ledger, whatever is beside the pool.
 *
 * @param water water temperature
 * @param comfort comfort
 * @param balance the pool's heat
 * @param boughtKwh energy bought for the heater, kWh; 0 without one
 */
public record PoolSummary(TemperatureSummary water, ComfortSummary comfort, HeatBalance balance, double boughtKwh) {

    /** Sums up a period of a ledger. */
    public static PoolSummary of(SeasonLedger ledger, Period period) {
        return new PoolSummary(
                TemperatureSummary.of(ledger, period),
                ComfortSummary.of(ledger, period),
                HeatBalance.of(ledger, period),
                ledger.boughtKwh(period));
    }
}
