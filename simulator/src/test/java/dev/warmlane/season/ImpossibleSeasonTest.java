package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.warmlane.SyntheticYear;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.StartWater;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;

/** What cannot be meant ends in a sentence, not in numbers. */
class ImpossibleSeasonTest {

    private final WeatherYear desert = Demo.weather("hot-dry");

    @Test
    void aCoverThatKeepsEverythingInIsRefusedInTheDesert() {
        Cover perfect = new Cover("perfect", 1, 2, 0, Schedule.ALWAYS);
        Installation installation = Demo.pool(1.5).cover(perfect).build();
        assertThatThrownBy(() -> SeasonForecast.of(installation, desert))
                .isInstanceOf(ImpossibleSeasonException.class)
                .hasMessageStartingWith("the water becomes hotter than 70 degC at 0")
                .hasMessageContaining("check bathers and their heat, the cover and its hours, the depth");
    }

    /** A paddling pool under a foam cover by day and night: hot, and a pool that can be built. */
    @Test
    void aShallowPoolUnderItsCoverAllSummerIsNot() {
        Installation installation = shallow().cover(Cover.foam(Schedule.ALWAYS)).build();
        SeasonLedger ledger = SeasonSimulator.simulate(installation, SeasonForcing.of(installation, desert));
        double hottest = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            hottest = Math.max(hottest, ledger.waterC(index));
        }
        assertThat(hottest).isBetween(45.0, 62.0);
    }

    @Test
    void moreBathersThanCanStandAreRefused() {
        Installation.Builder small = Demo.pool(1.5)
                .pool(Pool.of(20, 1.5, new PoolSetting.Outdoor(0.3)))
                .arrays();
        assertThat(small.bathers(bathers(71)).build().bathers().whenFull()).isEqualTo(71);
        assertThatThrownBy(small.bathers(bathers(72))::build)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("72 bathers at once are more than can stand in 20.0 m2 of water, 71 at most; check both");
    }

    private static Bathers bathers(double number) {
        return new Bathers(number, Bathers.USUAL_HEAT_W, Bathers.USUAL_RISE, Schedule.ALWAYS);
    }

    private static Installation.Builder shallow() {
        return Demo.pool(0.2)
                .arrays()
                .pool(Pool.of(100, 0.2, new PoolSetting.Outdoor(0.15)))
                .season(OpeningSeason.wholeYear());
    }

    /** A shallow pool that stands filled through a hard winter has frozen through before it opens. */
    @Test
    void aPoolThatFreezesToTheGroundBeforeOpeningIsRefused() {
        WeatherYear winter = SyntheticYear.at(50)
                .sunless()
                .airC(hour -> -20)
                .dewPointC(hour -> -25)
                .build();
        Installation built = Demo.pool(0.2)
                .season(new OpeningSeason(MonthDay.of(3, 1), MonthDay.of(3, 31), Schedule.ALWAYS))
                .startWater(new StartWater.StandingFilled(40))
                .build()
                .withoutCollectors();
        assertThatThrownBy(() -> SeasonSimulator.simulate(built, SeasonForcing.of(built, winter)))
                .isInstanceOf(ImpossibleSeasonException.class)
                .hasMessageContaining("all the water is ice by 01-");
    }
}
