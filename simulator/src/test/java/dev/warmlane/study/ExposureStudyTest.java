package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.Terrain;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ExposureStudyTest {

    private static final SharedForcing FORCING = new SharedForcing(Demo.weather("cool-coast"));
    private static final Installation OUTDOOR =
            Demo.pool(1.8).heater(Demo.HEATER).build();

    @Test
    void hasEveryPoolWithEveryRoof() {
        ExposureStudy study = ExposureStudy.of(OUTDOOR, FORCING, Runs.onAllCores());
        assertThat(study.cases()).hasSize(9);
        for (WindExposure pool : WindExposure.values()) {
            assertThat(Arrays.stream(WindExposure.values())
                            .map(roof -> study.at(pool, roof).terrain()))
                    .containsExactly(Terrain.CITY, Terrain.SUBURBAN, Terrain.OPEN);
            assertThat(study.at(pool, WindExposure.LIKELY).poolWindFactor())
                    .isEqualTo(OptionalDouble.of(
                            switch (pool) {
                                case SHELTERED -> 0.15;
                                case LIKELY -> 0.30;
                                case EXPOSED -> 0.40;
                            }));
        }
    }

    @Test
    void theMiddleIsTheForecastAndTheMiddleColumnTheBandOfTheForecast() {
        ExposureStudy study = ExposureStudy.of(OUTDOOR, FORCING, Runs.onAllCores());
        SeasonForecast forecast = SeasonForecast.of(OUTDOOR, FORCING.weather());
        assertThat(study.at(WindExposure.LIKELY, WindExposure.LIKELY).season())
                .isEqualTo(PeriodSummary.of(forecast, Periods.season(forecast.with())));
        Sensitivity wind = SensitivityStudy.vary(OUTDOOR, List.of(PoolParameters.WIND), FORCING, Runs.onAllCores())
                .effects()
                .get(0);
        assertThat(study.at(WindExposure.SHELTERED, WindExposure.LIKELY).season())
                .isEqualTo(wind.low().season());
        assertThat(study.at(WindExposure.EXPOSED, WindExposure.LIKELY).season())
                .isEqualTo(wind.high().season());
    }

    @Test
    void aWindyPoolIsColderAndAWindyRoofGivesLess() {
        ExposureStudy study = ExposureStudy.of(Demo.pool(1.8).build(), FORCING, Runs.onAllCores());
        for (WindExposure other : WindExposure.values()) {
            double[] water = Arrays.stream(WindExposure.values())
                    .mapToDouble(pool -> study.at(pool, other).season().water().meanC())
                    .toArray();
            assertThat(water[0]).isGreaterThan(water[1]);
            assertThat(water[1]).isGreaterThan(water[2]);
            // the water of this pool is warmer than the air, so that wind over the roof costs heat
            double[] heat = Arrays.stream(WindExposure.values())
                    .mapToDouble(
                            roof -> study.at(other, roof).season().balance().deliveredKwh())
                    .toArray();
            assertThat(heat[0]).isGreaterThan(heat[1]);
            assertThat(heat[1]).isGreaterThan(heat[2]);
        }
    }

    @Test
    void whatHasNoWindStaysAsItIs() {
        Installation hall = OUTDOOR.toBuilder()
                .pool(Pool.of(100, 1.2, new PoolSetting.Indoor(28, 0.6, 0.07)))
                .build();
        ExposureStudy indoor = ExposureStudy.of(hall, FORCING, Runs.onAllCores());
        assertThat(indoor.cases().stream().map(ExposureStudy.Case::roof)).containsExactly(WindExposure.values());
        assertThat(indoor.cases())
                .allMatch(c ->
                        c.pool() == WindExposure.LIKELY && c.poolWindFactor().isEmpty());

        ExposureStudy bare = ExposureStudy.of(OUTDOOR.withoutCollectors(), FORCING, Runs.onAllCores());
        assertThat(bare.cases().stream().map(ExposureStudy.Case::pool)).containsExactly(WindExposure.values());
        assertThat(bare.cases()).allMatch(c -> c.roof() == WindExposure.LIKELY);
    }

    @Test
    void shelteredIsNeverWindierThanDescribed() {
        assertThat(WindExposure.SHELTERED.poolWindFactor(0.1)).isEqualTo(0.1);
        assertThat(WindExposure.EXPOSED.poolWindFactor(0.5)).isEqualTo(0.5);
        assertThat(WindExposure.EXPOSED.terrain(Terrain.WATER)).isEqualTo(Terrain.WATER);
    }
}
