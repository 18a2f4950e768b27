package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SyntheticYear;
import dev.warmlane.site.HourOfYear;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The rule of Burch and Christensen worked by hand. January 5 °C, July 25 °C, all other months 15 °C: the mean is A = 15
 * °C = 59 °F and the span D = 20 K = 36 °F, so that r = 0.4 + 0.01·15 = 0.55, the lag 35 - 15 = 20 days and T = 65 +
 * 9.9·sin(0.986·(day - 35) - 90) °F.
 */
class MainsWaterTemperatureTest {

    /** The rows state two decimals. */
    private static final double ROW_K = 0.006;

    /** The sine in the rows: -1, -0.0048 (-0.274 degrees), 1 (90.438 degrees), -0.0029 (180.164 degrees). */
    @ParameterizedTest
    @CsvSource({"35, 12.83", "126, 18.31", "218, 23.83", "309, 18.32"})
    void followsTheRule(int day, double mainsC) {
        assertThat(mainsC(40, 5, 25, day)).isCloseTo(mainsC, within(ROW_K));
    }

    /** South of the equator the day is turned by 182.5: -1 becomes 1 (89.945 degrees), 1 becomes -1 (270.383 degrees). */
    @ParameterizedTest
    @CsvSource({"35, 23.83", "126, 18.36", "218, 12.83", "309, 18.34"})
    void isTurnedByHalfAYearInTheSouth(int day, double mainsC) {
        assertThat(mainsC(-40, 25, 5, day)).isCloseTo(mainsC, within(ROW_K));
    }

    private static double mainsC(double latitudeDeg, double januaryC, double julyC, int day) {
        return MainsWaterTemperature.hourly(
                new MainsWater.FromAir(),
                SyntheticYear.at(latitudeDeg)
                        .airC(hour -> switch (HourOfYear.monthOf(hour)) {
                            case 1 -> januaryC;
                            case 7 -> julyC;
                            default -> 15;
                        })
                        .build())[24 * (day - 1) + 12];
    }
}
