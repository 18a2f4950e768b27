package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.season.Demo;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Forcing whose wind and sun were changed is, to the last bit, that which was prepared anew. */
class PoolForcingWithTest {

    private static final WeatherYear WEATHER = Demo.weather("cool-coast");
    private static final Optional<Cover> COVER = Optional.of(Cover.bubble(Schedule.daily(20, 8)));
    private static final Pool POOL =
            Pool.of(80, 1.4, new PoolSetting.Outdoor(0.3)).withWalls(new Walls(50, 6, 0.6));
    private static final int FROM = 3000;
    private static final int TO = 5000;
    private static final MakeUp MAKE_UP = new MakeUp(100, new MainsWater.FromAir());

    @Test
    void isWhatPreparingAnewGives() {
        Pool other = POOL.withSolarAbsorptance(0.9).withSetting(new PoolSetting.Outdoor(0.15, 0.2, 1));
        MakeUp more = new MakeUp(900, new MainsWater.FromAir());
        PoolForcing anew = PoolForcing.of(other, COVER, Bathers.NONE, more, WEATHER);
        PoolForcing changed =
                PoolForcing.of(POOL, COVER, Bathers.NONE, MAKE_UP, WEATHER).with(other, more, Departure.NONE, FROM, TO);
        assertThat(changed.differsFrom(other, COVER, Bathers.NONE, more)).isEmpty();
        PoolFlows one = new PoolFlows();
        PoolFlows two = new PoolFlows();
        for (int hour = FROM; hour < TO; hour++) {
            anew.evaluate(hour, 23, 1, one);
            changed.evaluate(hour, 23, 1, two);
            for (Flow flow : Flow.values()) {
                assertThat(two.wm2(flow)).isEqualTo(one.wm2(flow));
            }
        }
        for (int beyond : new int[] {FROM - 1, TO}) {
            changed.evaluate(beyond, 23, 1, two);
            for (Flow flow : List.of(Flow.SUN, Flow.EVAPORATION, Flow.CONVECTION, Flow.WALLS)) {
                assertThat(two.wm2(flow)).isNaN();
            }
        }
    }

    @Test
    void refusesWhatWouldChangeMore() {
        PoolForcing forcing = PoolForcing.of(POOL, COVER, Bathers.NONE, MAKE_UP, WEATHER);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> forcing.with(POOL.withGroundConductanceWK(1), MAKE_UP, Departure.NONE, FROM, TO))
                .withMessageContaining("PoolForcing.of");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> forcing.with(Pool.of(80, 1.5, POOL.setting()), MAKE_UP, Departure.NONE, FROM, TO));
    }

    @Test
    void departuresMoveWhatTheyNameInTheirHourAlone() {
        PoolForcing forcing = PoolForcing.of(POOL, Optional.empty(), Bathers.NONE, MAKE_UP, WEATHER);
        Departure departure = new Departure() {
            @Override
            public double windRatio(int hour) {
                return hour == FROM + 12 ? 2 : 1;
            }

            @Override
            public double sunRatio(int hour) {
                return hour == FROM + 12 ? 0.5 : 1;
            }

            @Override
            public double longWaveWm2(int hour) {
                return hour == FROM + 12 ? 20 : 0;
            }
        };
        PoolForcing without = forcing.with(POOL, MAKE_UP, Departure.NONE, FROM, TO);
        PoolForcing with = forcing.with(POOL, MAKE_UP, departure, FROM, TO);
        PoolForcing windy =
                forcing.with(POOL.withSetting(new PoolSetting.Outdoor(0.6)), MAKE_UP, Departure.NONE, FROM, TO);
        PoolFlows one = new PoolFlows();
        PoolFlows two = new PoolFlows();
        without.evaluate(FROM + 13, 23, 1, one);
        with.evaluate(FROM + 13, 23, 1, two);
        assertThat(two.wm2(Flow.SUN)).isEqualTo(one.wm2(Flow.SUN));
        assertThat(two.wm2(Flow.LONG_WAVE)).isEqualTo(one.wm2(Flow.LONG_WAVE));
        without.evaluate(FROM + 12, 23, 1, one);
        with.evaluate(FROM + 12, 23, 1, two);
        assertThat(one.wm2(Flow.SUN)).isPositive();
        assertThat(two.wm2(Flow.SUN)).isCloseTo(0.5 * one.wm2(Flow.SUN), within(1e-9));
        assertThat(two.wm2(Flow.LONG_WAVE))
                .isCloseTo(one.wm2(Flow.LONG_WAVE) + 20 * POOL.waterEmittance(), within(1e-9));
        windy.evaluate(FROM + 12, 23, 1, one);
        assertThat(two.wm2(Flow.EVAPORATION)).isCloseTo(one.wm2(Flow.EVAPORATION), within(1e-9));
    }
}
