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
 * @param longWaveBack net long-wave from an open back; negative where the warm roof gives more than the back loses
 * @param throughBack conduction through a closed back, to the room or through a board
 * @param useful useful heat
 * @param warmedHours hours of {@code runHours} in which the air warmed the plate instead of cooling it
 * @param warmedByAir what it gave in those hours, all faces together; already taken off both convections
 * @param filmFrontWm2K mean film coefficient of the front while running, W/m²K
 * @param filmBackWm2K mean film coefficient of an open back while running, W/m²K; 0 where the back is closed
 * @param waterC mean temperature of the water that entered, °C
 * @param airC mean temperature of the air while running, °C
 * @param plateC mean temperature of the plate while running, °C
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
        double throughBack,
        double useful,
        double warmedHours,
        double warmedByAir,
        double filmFrontWm2K,
        double filmBackWm2K,
        double waterC,
        double airC,
        double plateC) {

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

    /** Short-wave absorbed by both faces, kWh/m². */
    public double absorbed() {
        return absorbedFront + absorbedBack;
    }

    /** All losses, kWh/m²; {@link #absorbed} less these is {@link #useful}. */
    public double losses() {
        return convectionFront + convectionBack + longWaveFront + longWaveBack + throughBack;
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
        Sums sums = new Sums();
        for (int index = from; index < to; index++) {
            int hour = ledger.hourOfYear(index);
            sums.irradianceAllHours += forcing.collectors().get(array).irradianceWm2(hour);
            double share = ledger.runShare(array, index);
            if (share > 0) {
                account.at(hour, ledger.waterC(index), flows);
                sums.add(share, flows, ledger.waterC(index), weather.airTemperatureC(hour));
            }
        }
        return sums.budget();
    }

    /** Sums over hours, Wh/m² and weighted by hours. */
    private static final class Sums {
        private double hours;
        private double irradianceAllHours;
        private double irradiance;
        private double absorbedFront;
        private double absorbedBack;
        private double convectionFront;
        private double convectionBack;
        private double longWaveFront;
        private double longWaveBack;
        private double throughBack;
        private double useful;
        private double warmedHours;
        private double warmedByAir;
        private double filmFront;
        private double filmBack;
        private double water;
        private double air;
        private double plate;

        void add(double share, PlateFlows flows, double waterC, double airC) {
            hours += share;
            irradiance += share * flows.irradiance;
            absorbedFront += share * flows.absorbedFront;
            absorbedBack += share * flows.absorbedBack;
            convectionFront += share * flows.convectionFront;
            convectionBack += share * flows.convectionBack;
            longWaveFront += share * flows.longWaveFront;
            longWaveBack += share * flows.longWaveBack;
            throughBack += share * flows.throughBack;
            useful += share * flows.useful;
            double toAir = flows.convectionFront + flows.convectionBack;
            if (toAir < 0) {
                warmedHours += share;
                warmedByAir -= share * toAir;
            }
            filmFront += share * flows.filmFront;
            filmBack += share * flows.filmBack;
            water += share * waterC;
            air += share * airC;
            plate += share * flows.plateC;
        }

        LightBudget budget() {
            double perHour = hours > 0 ? 1 / hours : 0;
            return new LightBudget(
                    hours,
                    irradianceAllHours / 1000,
                    irradiance / 1000,
                    absorbedFront / 1000,
                    absorbedBack / 1000,
                    convectionFront / 1000,
                    convectionBack / 1000,
                    longWaveFront / 1000,
                    longWaveBack / 1000,
                    throughBack / 1000,
                    useful / 1000,
                    warmedHours,
                    warmedByAir / 1000,
                    filmFront * perHour,
                    filmBack * perHour,
                    water * perHour,
                    air * perHour,
                    plate * perHour);
        }
    }
}
