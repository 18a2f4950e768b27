package dev.warmlane.study;

import dev.warmlane.collector.PlateAccount;
import dev.warmlane.collector.PlateFlow;
import dev.warmlane.collector.PlateFlows;
import dev.warmlane.season.Period;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.units.Units;
import dev.warmlane.weather.WeatherYear;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where the light that fell on a collector array went while its pump ran, over some hours of a season, kWh per m² of
 * collector; losses positive, gains negative. It says why one mounting gives more than another.
 *
 * @param runHours hours in which the pump ran
 * @param irradianceAllHours irradiance on the front in all hours
 * @param irradiance irradiance on the front while running
 * @param kwhM2 heat of each kind while running
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
        Map<PlateFlow, Double> kwhM2,
        double warmedHours,
        double warmedByAir,
        double filmFrontWm2K,
        double filmBackWm2K,
        double waterC,
        double airC,
        double plateC) {

    /** Keeps its own copy of the map, in the order of the kinds. */
    public LightBudget {
        kwhM2 = Collections.unmodifiableMap(new EnumMap<>(kwhM2));
    }

    /**
     * The budget of one array in a period of a ledger.
     *
     * @return empty where the array is described by a certificate, which does not tell one loss from another
     */
    public static Optional<LightBudget> of(
            SeasonLedger ledger, SeasonForcing forcing, WeatherYear weather, int array, Period period) {
        return forcing.collectors()
                .get(array)
                .account()
                .map(account -> sum(ledger, forcing, weather, array, account, period));
    }

    /** Heat of a kind, kWh/m². */
    public double kwhM2(PlateFlow flow) {
        return kwhM2.getOrDefault(flow, 0.0);
    }

    /** Short-wave absorbed by both faces, kWh/m². */
    public double absorbed() {
        return sum(PlateFlow.Side.TAKEN_IN);
    }

    /** All losses, kWh/m²; {@link #absorbed} less these is {@link #useful}. */
    public double losses() {
        return sum(PlateFlow.Side.LOST);
    }

    /** Useful heat, kWh/m². */
    public double useful() {
        return sum(PlateFlow.Side.USED);
    }

    private double sum(PlateFlow.Side side) {
        double sum = 0;
        for (PlateFlow flow : PlateFlow.values()) {
            sum += flow.side() == side ? kwhM2(flow) : 0;
        }
        return sum;
    }

    private static LightBudget sum(
            SeasonLedger ledger,
            SeasonForcing forcing,
            WeatherYear weather,
            int array,
            PlateAccount account,
            Period period) {
        PlateFlows flows = new PlateFlows();
        Sums sums = new Sums();
        for (int index = period.from(); index < period.to(); index++) {
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
        private final double[] heat = new double[PlateFlow.values().length];
        private double warmedHours;
        private double warmedByAir;
        private double filmFront;
        private double filmBack;
        private double water;
        private double air;
        private double plate;

        void add(double share, PlateFlows flows, double waterC, double airC) {
            hours += share;
            irradiance += share * flows.irradianceWm2();
            for (PlateFlow flow : PlateFlow.values()) {
                heat[flow.ordinal()] += share * flows.wm2(flow);
            }
            double toAir = flows.wm2(PlateFlow.CONVECTION_FRONT) + flows.wm2(PlateFlow.CONVECTION_BACK);
            if (toAir < 0) {
                warmedHours += share;
                warmedByAir -= share * toAir;
            }
            filmFront += share * flows.filmFrontWm2K();
            filmBack += share * flows.filmBackWm2K();
            water += share * waterC;
            air += share * airC;
            plate += share * flows.plateC();
        }

        LightBudget budget() {
            double perHour = hours > 0 ? 1 / hours : 0;
            Map<PlateFlow, Double> kwhM2 = new EnumMap<>(PlateFlow.class);
            for (PlateFlow flow : PlateFlow.values()) {
                kwhM2.put(flow, Units.kwhOfWattHours(heat[flow.ordinal()]));
            }
            return new LightBudget(
                    hours,
                    Units.kwhOfWattHours(irradianceAllHours),
                    Units.kwhOfWattHours(irradiance),
                    kwhM2,
                    warmedHours,
                    Units.kwhOfWattHours(warmedByAir),
                    filmFront * perHour,
                    filmBack * perHour,
                    water * perHour,
                    air * perHour,
                    plate * perHour);
        }
    }
}
