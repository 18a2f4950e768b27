package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.collector.CollectorPhysics;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.SkyModel;
import dev.warmlane.physics.FilmCorrelation;
import dev.warmlane.pool.Flow;
import dev.warmlane.weather.WeatherYear;
import org.junit.jupiter.api.Test;

/** The models that can be chosen for cross-checks reach the season. */
class CrossCheckModelsTest {

    private final WeatherYear weather = Demo.weather("warm-inland");

    @Test
    void anIsotropicSkyGivesARackLessThanPerezAndHayDaviesLiesBetween() {
        double perez = rackHeat(new CollectorPhysics(SkyModel.PEREZ, FilmCorrelation.PHYSICAL));
        double hayDavies = rackHeat(new CollectorPhysics(SkyModel.HAY_DAVIES, FilmCorrelation.PHYSICAL));
        double isotropic = rackHeat(new CollectorPhysics(SkyModel.ISOTROPIC, FilmCorrelation.PHYSICAL));
        assertThat(isotropic).isLessThan(hayDavies);
        assertThat(hayDavies).isLessThan(perez);
    }

    @Test
    void aFitThatLosesMoreAtEveryWindGivesLessHeat() {
        double watmuff = rackHeat(new CollectorPhysics(SkyModel.PEREZ, FilmCorrelation.Linear.WATMUFF));
        double mcAdams = rackHeat(new CollectorPhysics(SkyModel.PEREZ, FilmCorrelation.Linear.MCADAMS));
        assertThat(mcAdams).isLessThan(watmuff);
    }

    /** Heat in a pool that is always warmer than the air, so that films only lose. */
    private double rackHeat(CollectorPhysics physics) {
        Installation installation = Demo.pool(1.8)
                .arrays(Demo.FLAT.withMounting(new Mounting.OpenRack(35, 180, 2, 5, 4, 0.3)))
                .collectorPhysics(physics)
                .heater(Demo.HEATER)
                .build();
        SeasonLedger ledger = SeasonSimulator.simulate(installation, SeasonForcing.of(installation, weather));
        return ledger.heatKwh(Flow.COLLECTORS, Periods.season(ledger));
    }
}
