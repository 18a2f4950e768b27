package dev.warmlane.study;

import dev.warmlane.collector.PlateAccount;
import dev.warmlane.collector.PlateFlows;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.weather.WeatherYear;
import java.util.Optional;

/**
 * Where the light that fell on a collector array went while its pump ran, over some hours of a season, kWh per m² of
 * collector; losses positive, gains negative. It says why one mounting gives more than another.
 *
 * @param runHours hours in which the pump ran
 * @param irradianceAllHours irradiance on the front in all hours
 * @param irradiance irradiance on the front while running
 * @param absorbedFront short-wave absorbed by the front
 * @param absorbedBack short-wave absorbed by an open back
 * @param convectionFront convection from the front
 * @param convectionBack convection from an open back
 * @param longWaveFront net long-wave from the front
 * @param longWaveBack net long-wave from an open back
 * @param throughRoof conduction through a closed back and the roof
 * @param useful useful heat
 * @param filmFrontWm2K mean film coefficient of the front while running, W/m²K
 * @param filmBackWm2K mean film coefficient of an open back while running, W/m²K; 0 where the back is closed
 * @param waterC mean temperature of the water that entered, °C
 * @param airC mean temperature of the air while running, °C
 */
public record LightBudget(
        double runHours,
        double irradianceAllHours,
        double irradiance,
        double absorbedFront,
        double absorbedBack,
        double convectionFront,
        double convectionBack,
        double longWaveFront,
        double longWaveBack,
        double throughRoof,
        double useful,
        double filmFrontWm2K,
        double filmBackWm2K,
        double waterC,
        double airC) {

    /**
     * The budget of one array from one index of a ledger to before another.
     *
     * @return empty where the array is described by a certificate, which does not tell one loss from another
     */
    public static Optional<LightBudget> of(
            SeasonLedger ledger, SeasonForcing forcing, WeatherYear weather, int array, int from, int to) {
        return forcing.collectors()
                .get(array)
                .account()
                .map(account -> sum(ledger, forcing, weather, array, account, from, to));
    }

    private static LightBudget sum(
            SeasonLedger ledger,
            SeasonForcing forcing,
            WeatherYear weather,
            int array,
            PlateAccount account,
            int from,
            int to) {
        PlateFlows flows = new PlateFlows();
        double hours = 0;
        double allIrradiance = 0;
        double[] sums = new double[13];
        for (int index = from; index < to; index++) {
            int hour = ledger.hourOfYear(index);
            allIrradiance += forcing.collectors().get(array).irradianceWm2(hour);
            double share = ledger.runShare(array, index);
            if (share > 0) {
                account.at(hour, ledger.waterC(index), flows);
                hours += share;
                double[] hourly = {
                    flows.irradiance,
                    flows.absorbedFront,
                    flows.absorbedBack,
                    flows.convectionFront,
                    flows.convectionBack,
                    flows.longWaveFront,
                    flows.longWaveBack,
                    flows.throughRoof,
                    flows.useful,
                    flows.filmFront,
                    flows.filmBack,
                    ledger.waterC(index),
                    weather.airTemperatureC(hour)
                };
                for (int i = 0; i < sums.length; i++) {
                    sums[i] += share * hourly[i];
                }
            }
        }
        return of(hours, allIrradiance, sums);
    }

    private static LightBudget of(double hours, double allIrradiance, double[] sums) {
        double perHour = hours > 0 ? 1 / hours : 0;
        return new LightBudget(
                hours,
                allIrradiance / 1000,
                sums[0] / 1000,
                sums[1] / 1000,
                sums[2] / 1000,
                sums[3] / 1000,
                sums[4] / 1000,
                sums[5] / 1000,
                sums[6] / 1000,
                sums[7] / 1000,
                sums[8] / 1000,
                sums[9] * perHour,
                sums[10] * perHour,
                sums[11] * perHour,
                sums[12] * perHour);
    }
}
