package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SyntheticYear;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherYear;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A pool of 50 m² and 1.5 m: 118.081 W/K steady and 72.274 W/K periodic, see {@link GroundLossTest}: 0.612070. */
class GroundTemperatureTest {

    /** The hand calculation carries five digits. */
    private static final double HAND_K = 1e-3;

    private static final double MEAN_C = 11;
    private static final double SWING_K = 9;
    private static final double DAMPED = 0.612070;
    private static final int A_MONTH = HourOfYear.HOURS / 12;

    /** Coldest air on a day in January in the north, in July in the south. */
    @ParameterizedTest
    @CsvSource({"45, 400", "-35, 4700"})
    void followsTheAirAMonthLater(double latitudeDeg, int coldestHour) {
        double[] ground = GroundTemperature.hourly(pool(), year(latitudeDeg, coldestHour));
        assertThat(ground[coldestHour + A_MONTH]).isCloseTo(MEAN_C - DAMPED * SWING_K, within(HAND_K));
        assertThat(ground[(coldestHour + A_MONTH + HourOfYear.HOURS / 2) % HourOfYear.HOURS])
                .isCloseTo(MEAN_C + DAMPED * SWING_K, within(HAND_K));
        // a quarter of the year on it stands in the middle
        assertThat(ground[(coldestHour + A_MONTH + HourOfYear.HOURS / 4) % HourOfYear.HOURS])
                .isCloseTo(MEAN_C, within(HAND_K));
        assertThat(IntStream.range(0, ground.length).mapToDouble(h -> ground[h]).average())
                .hasValueCloseTo(MEAN_C, within(1e-9));
    }

    /** Days and nights, however far apart, are no yearly swing. */
    @ParameterizedTest
    @CsvSource({"0", "20"})
    void knowsNothingOfTheDay(double dailyK) {
        WeatherYear weather = SyntheticYear.at(45)
                .airC(hour -> MEAN_C + dailyK * Math.cos(2 * Math.PI * hour / 24.0))
                .build();
        assertThat(GroundTemperature.hourly(pool(), weather))
                .usingComparatorWithPrecision(1e-9)
                .containsOnly(MEAN_C);
    }

    /** Water at 25 °C: 118.081·(25 - 11) = 1653.1 W in the mean, 72.274·9 = 650.5 W more and less. */
    @ParameterizedTest
    @CsvSource({"0, -2303.6", "6, -1002.7"})
    void theGroundGivesBackPartInLateSummer(int monthsAfterColdestGround, double groundW) {
        int coldest = 400;
        PoolFlows flows = new PoolFlows();
        PoolForcing.of(
                        pool(),
                        Optional.empty(),
                        Bathers.NONE,
                        new MakeUp(0, MainsWater.Monthly.constant(15)),
                        year(45, coldest))
                .evaluate(coldest + A_MONTH * (1 + monthsAfterColdestGround), 25, 1, flows);
        assertThat(flows.wm2(Flow.GROUND) * 50).isCloseTo(groundW, within(0.2));
    }

    private static Pool pool() {
        return Pool.of(50, 1.5, new PoolSetting.Outdoor(0.3));
    }

    private static WeatherYear year(double latitudeDeg, int coldestHour) {
        return SyntheticYear.at(latitudeDeg)
                .airC(hour ->
                        MEAN_C - SWING_K * Math.cos(2 * Math.PI * (hour - coldestHour) / (double) HourOfYear.HOURS))
                .build();
    }
}
