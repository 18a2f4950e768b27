package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SyntheticYear;
import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;

/** Thirty days with 8 m/s at the station in six hours of each, 7.3 in six others and 1 in the rest. */
class WaterWindTest {

    private final WeatherYear weather = SyntheticYear.at(40)
            .windMs(hour -> hour % 24 < 6 ? 8 : hour % 24 < 12 ? 7.3 : 1)
            .build();

    @Test
    void countsTheHoursBeyondWhatWasMeasured() {
        // 0.3 of them is 2.4 and 2.19 m/s, and 2.2 m/s were measured
        WaterWind wind = of(Pool.of(300, 1.5, new PoolSetting.Outdoor(0.3)));
        assertThat(wind.hours()).isEqualTo(720);
        assertThat(wind.hoursBeyond()).isEqualTo(180);
        assertThat(wind.highestMs()).isCloseTo(2.4, within(1e-12));
        assertThat(wind.strongestMeasuredMs()).isEqualTo(2.2);
    }

    @Test
    void countsNoneWhereNoRangeIsKnownOrNoWindBlows() {
        Pool open = Pool.of(300, 1.5, new PoolSetting.Outdoor(0.3));
        assertThat(of(open.withEvaporation(Evaporation.ISO_TR_12596)).hoursBeyond())
                .isZero();
        assertThat(of(open.withSetting(new PoolSetting.Indoor(28, 0.6, 0.1))).hoursBeyond())
                .isZero();
    }

    private WaterWind of(Pool pool) {
        return WaterWind.of(SeasonForecast.of(
                Demo.pool(1.5)
                        .arrays()
                        .pool(pool)
                        .season(new OpeningSeason(MonthDay.of(6, 1), MonthDay.of(6, 30), Schedule.ALWAYS))
                        .build(),
                weather));
    }
}
