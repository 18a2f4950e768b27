package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SampleForecasts;
import dev.warmlane.season.Demo;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.WaterCourse;
import dev.warmlane.units.Estimate;
import dev.warmlane.wind.PoolShelter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class SeasonBandTest {

    private static final Map<String, ToDoubleFunction<PeriodSummary>> NUMBERS = Map.of(
            "mean",
            SeasonBandTest::mean,
            "days",
            p -> p.comfort().daysAtComfort(),
            "heat",
            SeasonBandTest::heat,
            "gas",
            p -> p.gas().replacedKwh());

    /** Of the doubt that all parameters make together, what those of every forecast make at least. */
    private static final double MOST_OF_IT = 0.89;

    private static double mean(PeriodSummary season) {
        return season.water().meanC();
    }

    private static double heat(PeriodSummary season) {
        return season.balance().deliveredKwh();
    }

    @Test
    void holdsTheForecastAndBothEndsOfEveryDoubt() {
        for (SeasonForecast forecast : SampleForecasts.all()) {
            SeasonBand band = SeasonBand.of(forecast);
            NUMBERS.forEach((name, number) -> {
                Estimate together = band.of(number);
                assertThat(together.likely())
                        .as(name)
                        .isEqualTo(number.applyAsDouble(forecast.summary().season()));
                for (Sensitivity doubt : band.doubts()) {
                    assertThat(number.applyAsDouble(doubt.low().season()))
                            .as("%s, low %s", name, doubt.name())
                            .isBetween(together.low() - 1e-9, together.high() + 1e-9);
                    assertThat(number.applyAsDouble(doubt.high().season()))
                            .as("%s, high %s", name, doubt.name())
                            .isBetween(together.low() - 1e-9, together.high() + 1e-9);
                }
            });
        }
    }

    @Test
    void isTheWindBandWhereTheWindAloneIsDoubtful() {
        SeasonForecast forecast = SampleForecasts.SOUTHERN;
        SeasonBand band = SeasonBand.of(
                forecast,
                List.of(PoolParameters.WIND),
                new SharedForcing(forecast.weather()),
                new Runs(1, Progress.SILENT));
        double factor =
                forecast.installation().pool().setting().outdoor().orElseThrow().windFactor();
        SeasonForecast exposed = atPoolWind(forecast, PoolShelter.moreOpen(factor));
        SeasonForecast sheltered = atPoolWind(forecast, PoolShelter.moreSheltered(factor));

        Estimate mean = band.of(p -> p.water().meanC());
        assertThat(mean.low()).isCloseTo(mean(exposed.summary().season()), within(1e-9));
        assertThat(mean.high()).isCloseTo(mean(sheltered.summary().season()), within(1e-9));

        int day = 24 * 40;
        Estimate noon = band.waterC(WaterCourse.of(forecast.with()), day, day + 24);
        assertThat(noon.low()).isCloseTo(WaterCourse.of(exposed.with()).meanC(day, day + 24), within(1e-9));
        assertThat(noon.likely()).isEqualTo(WaterCourse.of(forecast.with()).meanC(day, day + 24));
        assertThat(noon.high()).isCloseTo(WaterCourse.of(sheltered.with()).meanC(day, day + 24), within(1e-9));
    }

    private static SeasonForecast atPoolWind(SeasonForecast forecast, double factor) {
        return SeasonForecast.of(WindExposure.withPoolWind(forecast.installation(), factor), forecast.weather());
    }

    @Test
    void whateverTheDoubtsAreDaysAreWithinThem() {
        SeasonForecast forecast = SampleForecasts.MUNICIPAL;
        SeasonBand band = SeasonBand.of(forecast);
        WaterCourse described = WaterCourse.of(forecast.with());
        for (int from = 0; from + 24 <= described.hours(); from += 24) {
            Estimate day = band.waterC(described, from, from + 24);
            for (Sensitivity doubt : band.doubts()) {
                assertThat(doubt.low().water().meanC(from, from + 24)).isBetween(day.low() - 1e-9, day.high() + 1e-9);
                assertThat(doubt.high().water().meanC(from, from + 24)).isBetween(day.low() - 1e-9, day.high() + 1e-9);
            }
        }
        assertThat(described.meanC(forecast.with().opening(), described.hours()))
                .isCloseTo(mean(forecast.summary().season()), within(1e-9));
    }

    @Test
    void whatIsVariedForEveryForecastIsMostOfTheDoubt() {
        for (SeasonForecast forecast : List.of(
                SampleForecasts.MUNICIPAL, SampleForecasts.CLUB, SampleForecasts.SOUTHERN, SampleForecasts.INDOOR)) {
            SeasonBand usual = SeasonBand.of(forecast);
            SeasonBand all = SeasonBand.of(
                    SensitivityStudy.of(
                            forecast.installation(), new SharedForcing(forecast.weather()), Runs.onAllCores()),
                    Optional.empty());
            NUMBERS.forEach((name, number) -> {
                double doubt = usual.of(number).doubt();
                assertThat(doubt)
                        .as("%s of %s", name, forecast.installation().name())
                        .isBetween(
                                MOST_OF_IT * all.of(number).doubt(),
                                all.of(number).doubt() + 1e-9);
                assertThat(usual.leastCertain(number).map(Sensitivity::name))
                        .as(
                                "least certain for %s of %s",
                                name, forecast.installation().name())
                        .isEqualTo(all.leastCertain(number).map(Sensitivity::name));
            });
        }
    }

    @Test
    void whatIsLeastCertainIsNotAlwaysTheWind() {
        assertThat(SeasonBand.of(SampleForecasts.MUNICIPAL)
                        .leastCertain(SeasonBandTest::mean)
                        .map(Sensitivity::name))
                .hasValue("wind at pool over the station's");
        assertThat(SeasonBand.of(SampleForecasts.INDOOR)
                        .leastCertain(SeasonBandTest::heat)
                        .map(Sensitivity::name))
                .hasValue("back on the test stand");
    }

    @Test
    void nothingIsUncertainOfWhatNothingMoves() {
        assertThat(SeasonBand.of(SampleForecasts.BARE).leastCertain(SeasonBandTest::heat))
                .isEmpty();
        assertThat(SeasonBand.of(SampleForecasts.BARE).of(SeasonBandTest::heat)).isEqualTo(Estimate.exactly(0));
    }

    @Test
    void refusesForcingOfAnotherYear() {
        SharedForcing other = new SharedForcing(Demo.weather("cool-coast"));
        assertThatThrownBy(() -> SeasonBand.of(SampleForecasts.MUNICIPAL, SeasonBand.USUAL, other, Runs.onAllCores()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("another weather year");
    }
}
