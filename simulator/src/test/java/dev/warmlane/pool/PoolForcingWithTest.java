package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.warmlane.season.Demo;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Forcing whose wind and sun were changed is, to the last bit, that which was prepared anew. */
class PoolForcingWithTest {

    private static final WeatherYear WEATHER = Demo.weather("cool-coast");
    private static final Optional<Cover> COVER = Optional.of(Cover.bubble(Schedule.daily(20, 8)));
    private static final Pool POOL = Pool.of(80, 1.4, new PoolSetting.Outdoor(0.3));
    private static final MakeUp MAKE_UP = new MakeUp(100, new MainsWater.FromAir());

    @Test
    void isWhatPreparingAnewGives() {
        Pool other = POOL.withSolarAbsorptance(0.9).withSetting(new PoolSetting.Outdoor(0.15, 0.2, 1));
        MakeUp more = new MakeUp(900, new MainsWater.FromAir());
        PoolForcing anew = PoolForcing.of(other, COVER, Bathers.NONE, more, WEATHER);
        PoolForcing changed =
                PoolForcing.of(POOL, COVER, Bathers.NONE, MAKE_UP, WEATHER).with(other, more);
        assertThat(changed.differsFrom(other, COVER, Bathers.NONE, more)).isEmpty();
        PoolFlows one = new PoolFlows();
        PoolFlows two = new PoolFlows();
        for (int hour = 0; hour < WEATHER.hours(); hour += 7) {
            anew.evaluate(hour, 23, 1, one);
            changed.evaluate(hour, 23, 1, two);
            for (Flow flow : Flow.values()) {
                assertThat(two.wm2(flow)).isEqualTo(one.wm2(flow));
            }
        }
    }

    @Test
    void refusesWhatWouldChangeMore() {
        PoolForcing forcing = PoolForcing.of(POOL, COVER, Bathers.NONE, MAKE_UP, WEATHER);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> forcing.with(POOL.withGroundConductanceWK(1), MAKE_UP))
                .withMessageContaining("PoolForcing.of");
        assertThatIllegalArgumentException().isThrownBy(() -> forcing.with(Pool.of(80, 1.5, POOL.setting()), MAKE_UP));
    }
}
