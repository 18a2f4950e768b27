package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What must hold for every pool whatever the numbers are. */
class PoolInvariantsTest {

    private static final MakeUp MAKE_UP = new MakeUp(2000, new MainsWater.FromAir());
    private static final PoolSetting OUTDOORS = new PoolSetting.Outdoor(0.3);
    private static final double[] WATER_C = {5, 15, 24, 32};

    private final WeatherYear weather = Demo.weather("warm-inland");

    @Test
    void aCoverNeverRaisesEvaporationConvectionOrSun() {
        PoolForcing bare = forcing(Pool.of(300, 1.5, OUTDOORS), null, Bathers.NONE);
        for (Cover cover : new Cover[] {
            Cover.bubble(Schedule.ALWAYS),
            Cover.foam(Schedule.ALWAYS),
            Cover.solidTrack(Schedule.daily(20, 8)),
            Cover.liquidFilm(Schedule.constant(0.5))
        }) {
            PoolForcing covered = forcing(Pool.of(300, 1.5, OUTDOORS), cover, Bathers.NONE);
            for (int hour = 0; hour < HourOfYear.HOURS; hour += 7) {
                for (double waterC : WATER_C) {
                    PoolFlows without = at(bare, hour, waterC, 1);
                    PoolFlows with = at(covered, hour, waterC, 1);
                    assertThat(Math.abs(with.wm2(Flow.EVAPORATION)))
                            .isLessThanOrEqualTo(Math.abs(without.wm2(Flow.EVAPORATION)));
                    assertThat(with.evaporatedKgSM2()).isLessThanOrEqualTo(without.evaporatedKgSM2());
                    assertThat(Math.abs(with.wm2(Flow.CONVECTION)))
                            .isLessThanOrEqualTo(Math.abs(without.wm2(Flow.CONVECTION)));
                    assertThat(Math.abs(with.wm2(Flow.LONG_WAVE)))
                            .isLessThanOrEqualTo(Math.abs(without.wm2(Flow.LONG_WAVE)));
                    assertThat(with.wm2(Flow.SUN)).isLessThanOrEqualTo(without.wm2(Flow.SUN));
                }
            }
        }
    }

    @Test
    void aHallHasNeitherSunNorSky() {
        PoolForcing hall = forcing(Pool.of(300, 1.5, new PoolSetting.Indoor(28, 0.6, 0.1)), null, Bathers.NONE);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            PoolFlows flows = at(hall, hour, 28, 1);
            assertThat(flows.wm2(Flow.SUN)).isZero();
            assertThat(flows.wm2(Flow.LONG_WAVE)).isCloseTo(0, within(1e-9));
            assertThat(flows.wm2(Flow.CONVECTION)).isZero();
            assertThat(flows.wm2(Flow.EVAPORATION)).isNegative();
        }
    }

    @Test
    void nobodyStirsAPoolThatOnlyStandsFilled() {
        Bathers full = new Bathers(80, Bathers.USUAL_HEAT_W, 0.7, Schedule.ALWAYS);
        PoolForcing busy = forcing(Pool.of(300, 1.5, OUTDOORS), null, full);
        PoolForcing quiet = forcing(Pool.of(300, 1.5, OUTDOORS), null, Bathers.NONE);
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 97) {
            assertThat(at(busy, hour, 24, 0).net())
                    .isEqualTo(at(quiet, hour, 24, 0).net());
            assertThat(at(busy, hour, 24, 1).wm2(Flow.EVAPORATION))
                    .isCloseTo(1.7 * at(quiet, hour, 24, 1).wm2(Flow.EVAPORATION), within(1e-9));
            assertThat(at(busy, hour, 24, 1).wm2(Flow.BATHERS)).isCloseTo(160, within(1e-12));
        }
    }

    /** The pool itself never runs away: warmer water always loses more. */
    @ParameterizedTest
    @EnumSource(Evaporation.class)
    void warmerWaterLosesMore(Evaporation evaporation) {
        Pool pool = new Pool(300, 1.5, OUTDOORS, 0.85, 0.95, evaporation, 100, 0);
        PoolForcing forcing = forcing(pool, Cover.bubble(Schedule.daily(20, 8)), Bathers.NONE);
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 13) {
            for (double waterC = 0; waterC < 40; waterC += 2) {
                PoolFlows cooler = at(forcing, hour, waterC, 1);
                assertThat(at(forcing, hour, waterC + 2, 1).net()).isLessThan(cooler.net());
                assertThat(cooler.slope()).isNegative();
            }
        }
    }

    @Test
    void waterAtTheDewPointNeitherEvaporatesNorCondenses() {
        PoolForcing forcing = forcing(Pool.of(300, 1.5, OUTDOORS), null, Bathers.NONE);
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 50) {
            double dewPoint = weather.dewPointC(hour);
            assertThat(at(forcing, hour, dewPoint, 1).wm2(Flow.EVAPORATION)).isCloseTo(0, within(1e-9));
            assertThat(at(forcing, hour, dewPoint - 1, 1).wm2(Flow.EVAPORATION)).isPositive();
            assertThat(at(forcing, hour, dewPoint + 1, 1).wm2(Flow.EVAPORATION)).isNegative();
        }
    }

    private PoolForcing forcing(Pool pool, @Nullable Cover cover, Bathers bathers) {
        return PoolForcing.of(pool, Optional.ofNullable(cover), bathers, MAKE_UP, weather);
    }

    private static PoolFlows at(PoolForcing forcing, int hour, double waterC, double inUse) {
        PoolFlows flows = new PoolFlows();
        forcing.evaluate(hour, waterC, inUse, flows);
        return flows;
    }
}
