package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.scenario.Assumption;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.scenario.ReportSettings.Units;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.season.WorkingRange;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ForecastTextTest {

    private static final List<Assumption> ASSUMED =
            List.of(new Assumption("roof", "albedo", "0.2", "aged dark roofing"));

    private static List<SeasonForecast> forecasts() {
        return SampleForecasts.all();
    }

    private static ForecastText of(SeasonForecast forecast, Units units) {
        return ForecastText.of(forecast, new ReportSettings("A pool", units), ASSUMED);
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void holdsWhatIsAskedInBothUnits(SeasonForecast forecast) {
        for (Units units : Units.values()) {
            String text = of(forecast, units).text();

            assertThat(text)
                    .startsWith("A pool\n======\n")
                    .contains("In short", "Month by month", "How sure this is", "Cautions")
                    .contains("roof albedo 0.2 (aged dark roofing)")
                    .contains("does not show how much warmer or colder real years are")
                    .contains("the local code and a licensed professional")
                    .doesNotContain("NaN", "Infinity", "Optional", "null", "-0 ");
            assertThat(text.lines()).allMatch(line -> line.length() <= TextSection.WIDTH + 6);
            assertThat(text.lines()).noneMatch(line -> line.endsWith(" "));
        }
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void usTextHasNoMetricUnits(SeasonForecast forecast) {
        String text = of(forecast, Units.US).text();

        assertThat(text).contains("°F").doesNotContain("°C", "m²", "m³", " kg", " kW ", " mm ");
    }

    @Test
    void headlineSaysTheNumbersOfTheSummary() {
        SeasonForecast forecast = SampleForecasts.MUNICIPAL;
        SeasonSummary summary = forecast.summary();
        String brief = of(forecast, Units.METRIC).briefText().replaceAll("\\s+", " ");

        assertThat(brief)
                .contains("Pool temperature: "
                        + Numbers.show(summary.season().water().meanC(), 1) + " °C on average")
                .contains("Days at 24.0 °C or above: "
                        + summary.season().comfort().daysAtComfort() + " of 134; without collectors "
                        + summary.season().comfortWithout().daysAtComfort())
                .contains(Numbers.show(summary.season().balance().deliveredKwh(), 0) + " kWh")
                .contains(Numbers.show(summary.season().gas().replacedKwh(), 0) + " kWh displaced by the collectors")
                .contains(Numbers.show(summary.money().orElseThrow().saved(), 0) + " EUR saved a season")
                .contains("sheltered 0.15", "as described (likely) 0.30", "exposed 0.40");
    }

    @Test
    void poolWithoutHeaterClaimsNoGasDisplaced() {
        String text = of(SampleForecasts.SOUTHERN, Units.METRIC).text().replaceAll("\\s+", " ");

        assertThat(text)
                .contains("This pool has no heater, so no gas was displaced")
                .contains("efficiency 0.82 would have burned, to give the same solar heat")
                .doesNotContain("Gas displaced", "displaced by the collectors");
    }

    @Test
    void poolInAHallHasNoWindBand() {
        assertThat(of(SampleForecasts.INDOOR, Units.METRIC).text()).doesNotContain("sheltered", "exposed");
    }

    @Test
    void poolThatNeverClosesIsToldAboutTheFrostItMustStand() {
        assertThat(of(SampleForecasts.INDOOR, Units.METRIC).text())
                .contains("The pool never closes: the circuit must stand that frost");
    }

    @Test
    void frostInTheOpenSeasonIsNotAnsweredByDrainingAfterIt() {
        WorkingRange range = SampleForecasts.CLUB.summary().workingRange().orElseThrow();
        String text = of(SampleForecasts.CLUB, Units.US).text().replaceAll("\\s+", " ");

        assertThat(text)
                .contains("It freezes in the open season too, first on "
                        + Numbers.show(range.firstFrostInSeason().orElseThrow()) + " and last on "
                        + Numbers.show(range.lastFrostInSeason().orElseThrow())
                        + ": the circuit must stand that, or drain itself")
                .contains("Drain rigid pipe before "
                        + Numbers.show(range.drainDown().orElseThrow()))
                .contains("The count by the collector is an upper bound");
    }

    @Test
    void waterTooHotToBatheInIsSaidPlainly() {
        Numbers metric = new Numbers(Units.METRIC);

        assertThat(SafetyText.bathing(metric, 43.2))
                .contains("EXCEEDS the upper limit for bathing water, 40.0 °C, by 3.2 K");
        assertThat(SafetyText.bathing(new Numbers(Units.US), 43.2))
                .contains("EXCEEDS the upper limit for bathing water, 104.0 °F, by 5.8 °F");
        assertThat(SafetyText.bathing(metric, 40)).doesNotContain("EXCEEDS");
    }

    @Test
    void withoutCollectorsThereIsNothingToDrainOrToScald() {
        assertThat(of(SampleForecasts.BARE, Units.METRIC).text())
                .contains("There are no collectors.")
                .doesNotContain("Scalding", "Drain", "uplift of");
    }

    @Test
    void nothingAssumedIsSaid() {
        ForecastText text =
                ForecastText.of(SampleForecasts.MUNICIPAL, new ReportSettings("A pool", Units.METRIC), List.of());

        assertThat(text.text()).contains("Nothing: everything was given.");
    }
}
