package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SampleForecasts;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.units.Estimate;
import org.junit.jupiter.api.Test;

class AlternativesBandTest {

    private static final SeasonForecast FORECAST = SampleForecasts.MUNICIPAL;
    private static final SeasonBands BANDS = SeasonBands.of(FORECAST);
    private static final SeasonBand DESCRIBED = BANDS.of(FORECAST.installation());
    private static final AlternativesStudy STUDY =
            AlternativesStudy.of(FORECAST).orElseThrow();
    private static final AlternativesBand BAND = AlternativesBand.of(FORECAST, BANDS);

    @Test
    void likelyIsWhatTheStudySimulated() {
        for (Alternative one : STUDY.all()) {
            assertThat(BAND.savedKwh(one).likely())
                    .isCloseTo(STUDY.neither().boughtKwh() - one.boughtKwh(), within(1e-6));
            assertThat(BAND.overYears(one).orElseThrow().likely())
                    .isCloseTo(one.cost().orElseThrow().overYears(), within(1e-6));
        }
        assertThat(BAND.savedKwh(STUDY.neither())).isEqualTo(Estimate.exactly(0));
    }

    /** A season paired with itself. */
    @Test
    void aPairOfTheSameSeasonsHasItsBand() {
        PairedBand alike = new PairedBand(DESCRIBED, DESCRIBED);

        assertThat(alike.of((one, other) -> burned(one) - burned(other))).isEqualTo(Estimate.exactly(0));
        Estimate alone = DESCRIBED.of(AlternativesBandTest::burned);
        Estimate paired = alike.of((one, other) -> burned(one));
        assertThat(paired.low()).isCloseTo(alone.low(), within(1e-6));
        assertThat(paired.high()).isCloseTo(alone.high(), within(1e-6));
    }

    /** What moves both seasons alike cancels: the difference is better known than if each had its doubt for itself. */
    @Test
    void aDifferenceIsBetterKnownThanItsParts() {
        Estimate saved = BAND.savedKwh(STUDY.collectors());
        Estimate bought = DESCRIBED.of(AlternativesBandTest::burned);

        assertThat(saved.low()).isLessThan(saved.likely());
        assertThat(saved.high()).isGreaterThan(saved.likely());
        assertThat(saved.doubt()).isLessThan(bought.doubt());
    }

    private static double burned(PeriodSummary season) {
        return season.gas().match(GasSummary.Displaced::burnedKwh, none -> 0.0);
    }
}
