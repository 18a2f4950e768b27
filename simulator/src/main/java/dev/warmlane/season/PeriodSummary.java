package dev.warmlane.season;

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
 * @param gas the gas that their heat stands for
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
        SeasonLedger with = forecast.with();
        SeasonLedger without = forecast.without();
        double air = 0;
        for (int index = period.from(); index < period.to(); index++) {
            air += forecast.weather().airTemperatureC(with.hourOfYear(index));
        }
        return new PeriodSummary(
                period,
                with.hourOfYear(period.from()),
                air / period.hours(),
                TemperatureSummary.of(with, period),
                TemperatureSummary.of(without, period),
                ComfortSummary.of(with, period),
                ComfortSummary.of(without, period),
                HeatBalance.of(with, period),
                HeatBalance.of(without, period),
                CollectorHeat.of(with, forecast.forcing(), period),
                GasSummary.of(with, without, period),
                PumpSummary.of(with, period));
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
