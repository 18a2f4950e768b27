package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.pool.Flow;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole seasons in real weather: nothing impossible happens. What came out is in docs/validation/seasons.md. */
class RealSeasonsTest {

    private static final double CLOSURE = 1e-9;

    private static final double LIQUID_C = 0;

    /** The solar limit and some kelvin that sun and air may add to a pool of 1.5 m without collectors. */
    private static final double HOTTEST_C = 34;

    private static final double LIMIT_C = 30;

    /** The two pools are stepped by themselves; where the collectors have given nothing, rounding and step remain. */
    private static final double NEVER_COOLER_K = 0.01;

    static Stream<String> files() {
        return RealSeasons.FILES.stream();
    }

    @ParameterizedTest
    @MethodSource("files")
    void nothingImpossibleHappens(String file) {
        WeatherYear weather = RealSeasons.weather(file);
        for (CollectorArray array :
                List.of(RealSeasons.flat(), RealSeasons.racks(weather, 1), RealSeasons.racks(weather, 10))) {
            Installation installation = RealSeasons.pool(array).build();
            SeasonForcing forcing = SeasonForcing.of(installation, weather);
            SeasonLedger with = SeasonSimulator.simulate(installation, forcing);
            SeasonLedger without =
                    SeasonSimulator.simulate(installation.withoutCollectors(), forcing.withoutCollectors());
            assertThat(RealSeasons.mean(with)).isGreaterThan(RealSeasons.mean(without));
            for (int index = 0; index < with.hours(); index++) {
                closes(with, index);
                closes(without, index);
                assertThat(with.waterEndC(index)).isBetween(LIQUID_C, HOTTEST_C);
                if (with.waterStartC(index) > LIMIT_C && with.waterEndC(index) > LIMIT_C) {
                    assertThat(with.heatJm2(Flow.COLLECTORS, index)).isZero();
                }
                assertThat(with.waterEndC(index)).isGreaterThan(without.waterEndC(index) - NEVER_COOLER_K);
            }
        }
    }

    private static void closes(SeasonLedger ledger, int index) {
        double sum = 0;
        double size = 1;
        for (Flow flow : Flow.values()) {
            sum += ledger.heatJm2(flow, index);
            size += Math.abs(ledger.heatJm2(flow, index));
        }
        assertThat(Math.abs(ledger.storedJm2(index) - sum)).isLessThanOrEqualTo(CLOSURE * size);
    }
}
