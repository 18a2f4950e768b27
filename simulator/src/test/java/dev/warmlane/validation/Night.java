package dev.warmlane.validation;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.physics.SkyLongWave;
import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.Pool;

/**
 * What an open pool loses in a night that stands still, by the equations of the model.
 *
 * @param waterC water, °C
 * @param airC air, °C
 * @param dewPointC dew point, °C
 * @param pressureKpa pressure of the air, kPa
 * @param cloud share of the sky that is cloudy
 */
record Night(double waterC, double airC, double dewPointC, double pressureKpa, double cloud) {

    /** Bowen 1926, from memory, 1/K times kPa at standard pressure. */
    static final double BOWEN_KPA_K = 0.0613;

    /** Midnight, for the sky. */
    private static final double HOUR = 0;

    /** The air in which convection is a given multiple of evaporation, whatever the wind: Bowen's ratio turned round. */
    static Night ofRatio(
            double waterC, double dewPointC, double pressureKpa, double cloud, double convectionOverEvaporation) {
        double kelvinPerKpa = convectionOverEvaporation / (BOWEN_KPA_K * pressureKpa / Constants.STANDARD_PRESSURE_KPA);
        double air = waterC - kelvinPerKpa * vapourLessKpa(waterC, dewPointC);
        return new Night(waterC, air, dewPointC, pressureKpa, cloud);
    }

    private static double vapourLessKpa(double waterC, double dewPointC) {
        return MoistAir.saturationPressureKpa(waterC) - MoistAir.saturationPressureKpa(dewPointC);
    }

    double evaporationWm2(double windMs) {
        return Evaporation.SMITH_LOF_JONES.heatWm2Kpa(windMs) * vapourLessKpa(waterC, dewPointC);
    }

    double convectionWm2(double windMs) {
        return Evaporation.SMITH_LOF_JONES.heatWm2Kpa(windMs)
                * BOWEN_KPA_K
                * pressureKpa
                / Constants.STANDARD_PRESSURE_KPA
                * (waterC - airC);
    }

    double radiationWm2() {
        double sky = SkyLongWave.allSkyIrradianceWm2(
                airC, SkyLongWave.clearSkyEmissivity(dewPointC, HOUR, pressureKpa), cloud);
        return Pool.WATER_EMITTANCE * (Constants.blackBody(waterC) - sky);
    }

    double allWm2(double windMs) {
        return evaporationWm2(windMs) + convectionWm2(windMs) + radiationWm2();
    }

    double radiationShare(double windMs) {
        return radiationWm2() / allWm2(windMs);
    }

    /** The wind at which radiation has a share of the loss, m/s; negative where it has less even in still air. */
    double windMs(double radiationShare) {
        // straight in the wind: all = radiation / share
        double still = allWm2(0);
        return (radiationWm2() / radiationShare - still) / (allWm2(1) - still);
    }
}
