package dev.warmlane.season;

import dev.warmlane.pool.Flow;
import java.util.OptionalDouble;

/**
 * A period of a season with and without the collectors.
 *
 * @param period the period
 * @param firstHour the hour of the year it begins with
 * @param airMeanC mean outdoor air temperature, °C
 * @param water water temperature with the collectors
 * @param waterWithout water temperature without
 * @param comfort comfort with the collectors
 * @param comfortWithout comfort without
 * @param balance the pool's heat with the collectors
 * @param balanceWithout the pool's heat without
 * @param collectors what the collectors gave
 * @param gas the gas, or whatever else the heater is fed with, that their heat stands for
 * @param pump their pumps
 */
public record PeriodSummary(
        Period period,
        int firstHour,
        double airMeanC,
        TemperatureSummary water,
        TemperatureSummary waterWithout,
        ComfortSummary comfort,
        ComfortSummary comfortWithout,
        HeatBalance balance,
        HeatBalance balanceWithout,
        CollectorHeat collectors,
        GasSummary gas,
        PumpSummary pump) {

    /** Sums up a period of a forecast. */
    public static PeriodSummary of(SeasonForecast forecast, Period period) {
        return of(forecast, period, PoolSummary.of(forecast.without(), period));
    }

    /**
     * Sums up a period of a forecast, of which the pool without collectors is summed up already: many areas share it.
     *
     * @param forecast the forecast
     * @param period the period
     * @param without the pool without collectors in the same period
     */
    public static PeriodSummary of(SeasonForecast forecast, Period period, PoolSummary without) {
        SeasonLedger ledger = forecast.with();
        PoolSummary with = PoolSummary.of(ledger, period);
        double air = 0;
        for (int index = period.from(); index < period.to(); index++) {
            air += forecast.weather().airTemperatureC(ledger.hourOfYear(index));
        }
        return new PeriodSummary(
                period,
                ledger.hourOfYear(period.from()),
                air / period.hours(),
                with.water(),
                without.water(),
                with.comfort(),
                without.comfort(),
                with.balance(),
                without.balance(),
                CollectorHeat.of(ledger, forecast.forcing(), period, with.balance()),
                GasSummary.of(ledger.installation(), with, without),
                PumpSummary.of(ledger, period, with.balance()));
    }

    /** Temperature gained: mean with the collectors less mean without, K. */
    public double gainedK() {
        return water.meanC() - waterWithout.meanC();
    }

    /** Days at comfort gained. */
    public int daysGained() {
        return comfort.daysAtComfort() - comfortWithout.daysAtComfort();
    }

    /** Share of the heat from collectors and heater that the collectors gave; nothing where neither gave any. */
    public OptionalDouble solarShareOfHeating() {
        return share(balance.deliveredKwh() + balance.kwh(Flow.HEATER));
    }

    /** Share of everything that warmed the pool, the sun on the water included, that the collectors gave. */
    public OptionalDouble solarShareOfGains() {
        return share(balance.gainsKwh());
    }

    private OptionalDouble share(double of) {
        return of > 0 ? OptionalDouble.of(balance.deliveredKwh() / of) : OptionalDouble.empty();
    }
}
