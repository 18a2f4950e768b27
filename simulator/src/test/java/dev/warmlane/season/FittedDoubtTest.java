package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.season.FittedDoubt.Correlations;
import dev.warmlane.season.FittedDoubt.Spread;
import dev.warmlane.site.HourOfYear;
import java.time.MonthDay;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a fit leaves of wind, sun and sky, through the year. Numbers invented. */
class FittedDoubtTest {

    private static final Spread SKY = new Spread(5, 0, 20);

    private static FittedDoubt doubt(MonthDay from, MonthDay to, Spread sky) {
        return new FittedDoubt(
                "invented",
                from,
                to,
                new Spread(0.02, 0.3, 0.15),
                new Spread(0.02, 0.85, 0.1),
                12,
                sky,
                new Correlations(0.4, -0.6, 0.2),
                0.4,
                60);
    }

    private static FittedDoubt overNewYear() {
        return doubt(MonthDay.of(12, 20), MonthDay.of(1, 10), SKY);
    }

    @Test
    void theLogsSeasonIsLeftInItsDaysAndFadesRoundTheYear() {
        FittedDoubt doubt = overNewYear();
        assertThat(doubt.seasonLeft(HourOfYear.of(12, 20, 0))).isEqualTo(1);
        assertThat(doubt.seasonLeft(HourOfYear.of(12, 31, 23))).isEqualTo(1);
        assertThat(doubt.seasonLeft(HourOfYear.of(1, 10, 23))).isEqualTo(1);
        double anHour = Math.exp(-1 / (24.0 * 91));
        assertThat(doubt.seasonLeft(HourOfYear.of(12, 19, 23))).isCloseTo(anHour, within(1e-12));
        assertThat(doubt.seasonLeft(HourOfYear.of(1, 11, 0))).isCloseTo(anHour, within(1e-12));
        // 91 days after 10 January
        assertThat(doubt.seasonLeft(HourOfYear.of(4, 11, 23))).isCloseTo(1 / Math.E, within(1e-12));
        // 22 days of log leave 343, whose middle is the farthest
        double least = IntStream.range(0, HourOfYear.HOURS)
                .mapToDouble(doubt::seasonLeft)
                .min()
                .orElseThrow();
        assertThat(least).isCloseTo(Math.exp(-343.0 / 2 / 91), within(1e-9));
    }

    @Test
    void aLogOfAYearHasNoOtherSeason() {
        FittedDoubt doubt = doubt(MonthDay.of(5, 4), MonthDay.of(5, 3), SKY);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            assertThat(doubt.seasonLeft(hour)).isEqualTo(1);
        }
    }

    @Test
    void returnsHalfWayToWhatWasDescribedAndNeverBeyondItsEnds() {
        FittedDoubt doubt = overNewYear();
        assertThat(doubt.windFactor(0.2, 1)).isEqualTo(0.2);
        assertThat(doubt.windFactor(0.2, 0)).isCloseTo(0.25, within(1e-12));
        assertThat(doubt.sunShare(0.75, 0)).isCloseTo(0.8, within(1e-12));
        assertThat(doubt.skyWm2(1)).isEqualTo(12);
        assertThat(doubt.skyWm2(0)).isCloseTo(6, within(1e-12));
        // far away 0.75 of the variance before the log is open: the steady half's half and all of what fades
        assertThat(doubt(MonthDay.of(6, 1), MonthDay.of(6, 30), SKY.apart(2)).skyWm2(0))
                .isCloseTo(6 + 2 * 20 * Math.sqrt(0.75), within(1e-9));
        assertThat(doubt(MonthDay.of(6, 1), MonthDay.of(6, 30), SKY.apart(9)).skyWm2(0))
                .isEqualTo(100);
    }

    /** Three independent directions, put together, have the correlations that were stated. */
    @Test
    void directionsMakeTheStatedCorrelations() {
        Correlations stated = new Correlations(0.4, -0.6, 0.2);
        double[] wind = {1, 0, 0};
        double[] sun = {stated.windSun(), stated.sunAlone(), 0};
        double[] sky = {stated.windSky(), stated.skyWithSun(), stated.skyAlone()};
        assertThat(product(sun, sun)).isCloseTo(1, within(1e-12));
        assertThat(product(sky, sky)).isCloseTo(1, within(1e-12));
        assertThat(product(wind, sky)).isCloseTo(-0.6, within(1e-12));
        assertThat(product(sun, sky)).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void correlationsThatNothingCanHaveAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Correlations(0.9, -0.9, 0.9))
                .withMessageContaining("no three numbers have the correlations 0.9, -0.9 and 0.9");
        assertThat(new Correlations(1, 0.5, 0.5).skyAlone()).isCloseTo(Math.sqrt(0.75), within(1e-12));
    }

    private static double product(double[] one, double[] other) {
        return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
    }
}
