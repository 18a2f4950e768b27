package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.circuit.Control;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.StartWater;
import dev.warmlane.report.page.ForecastPage;
import dev.warmlane.scenario.Assumption;
import dev.warmlane.scenario.Finding;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.scenario.ReportSettings.Units;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.season.WorkingRange;
import dev.warmlane.site.Schedule;
import dev.warmlane.site.Site;
import dev.warmlane.wind.PoolShelter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
                .contains(new Numbers(Units.METRIC)
                        .about(Measure.HEAT, summary.season().balance().deliveredKwh()))
                .contains(new Numbers(Units.METRIC)
                                .about(Measure.HEAT, summary.season().gas().replacedKwh())
                        + " displaced by the collectors")
                .contains(Numbers.aboutMoney(summary.money().orElseThrow().saved(), "EUR") + " saved a season")
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
    void warningsOfTheScenarioAreHandedOver() {
        ReportSettings settings = new ReportSettings("A pool", Units.METRIC);
        SeasonForecast forecast = SampleForecasts.MUNICIPAL;
        ForecastReport report = new ForecastReport(
                forecast,
                forecast.summary(),
                Optional.empty(),
                settings,
                ASSUMED,
                List.of(new Finding(
                        Path.of("job.toml"), 7, 0, "heater", "set_point", "is above control.limit, 20 degC")));

        for (String text :
                List.of(ForecastText.of(report).text(), ForecastText.of(report).briefText())) {
            assertThat(text.replaceAll("\\s+", " "))
                    .contains(
                            "To look at - Scenario, temperature that the heater keeps: is above control.limit, 20 degC")
                    .doesNotContain("job.toml");
        }
        assertThat(ForecastPage.of(report, List.of(), Optional.empty()))
                .contains("Scenario, temperature that the heater keeps: is above control.limit, 20 degC");
        assertThat(of(forecast, Units.METRIC).text()).doesNotContain("To look at");
    }

    @Test
    void collectorsThatFaceAwayFromTheNoonSunAreAskedAbout() {
        Site north = new Site("north", 45, 8, 200, 1);
        Site south = new Site("south", -37, 145, 200, 10);
        Site equator = new Site("equator", 4, 8, 200, 1);

        assertThat(LookAtText.awayFromTheSun(pitched(20, 0), north).orElseThrow())
                .contains("face 0°", "stands in the south, 180°");
        assertThat(LookAtText.awayFromTheSun(pitched(20, 271), north)).isPresent();
        assertThat(LookAtText.awayFromTheSun(pitched(20, 89), north)).isPresent();
        assertThat(LookAtText.awayFromTheSun(pitched(20, 180), south).orElseThrow())
                .contains("stands in the north, 0°");
        assertThat(LookAtText.awayFromTheSun(pitched(20, 270), north)).isEmpty();
        assertThat(LookAtText.awayFromTheSun(pitched(9, 0), north)).isEmpty();
        assertThat(LookAtText.awayFromTheSun(pitched(20, 300), south)).isEmpty();
        assertThat(LookAtText.awayFromTheSun(pitched(20, 0), equator)).isEmpty();
    }

    private static CollectorArray pitched(double tiltDeg, double azimuthDeg) {
        return new CollectorArray(
                "mats", 100, new Mounting.FlushOnPitchedRoof(tiltDeg, azimuthDeg, 8, 0.005), Absorber.USUAL_MAT);
    }

    @Test
    void lossesAreSaidInWordsAndNotAsNegativeSavings() {
        Installation built = SampleForecasts.MUNICIPAL.installation();
        Installation losing = built.toBuilder()
                .control(new Control(4, 0.3, 10, Schedule.ALWAYS).sheddingAboveC(10.5))
                .build();
        String text = of(SampleForecasts.municipal(losing), Units.METRIC).text().replaceAll("\\s+", " ");

        assertThat(text)
                .contains("Heat from the collectors: none; the circuit ran more to cool the water than to warm it")
                .contains("more than without collectors, which adds")
                .contains("EUR more a season, after paying for the pump's electricity")
                .contains("Gas burned beyond what the pool without collectors burns")
                .doesNotContain("displaced by", "saved");
    }

    @Test
    void firstMorningIsExplained() {
        assertThat(of(SampleForecasts.MUNICIPAL, Units.METRIC).briefText().replaceAll("\\s+", " "))
                .contains("it starts at "
                        + Numbers.show(SampleForecasts.MUNICIPAL.with().waterC(0), 1)
                        + " °C on 5 May, unheated until then");
        Installation given = SampleForecasts.MUNICIPAL.installation().toBuilder()
                .startWater(new StartWater.Given(18))
                .build();
        assertThat(of(SampleForecasts.municipal(given), Units.METRIC).briefText())
                .contains("starts at the given 18.0 °C");
    }

    @Test
    void shelteredPoolHasNoRowForMoreShelter() {
        Installation built = SampleForecasts.MUNICIPAL.installation();
        Installation sheltered = built.toBuilder()
                .pool(built.pool().withSetting(new PoolSetting.Outdoor(PoolShelter.SHELTERED)))
                .build();
        String text = of(SampleForecasts.municipal(sheltered), Units.METRIC).text();

        assertThat(text).containsPattern("  as described \\(likely\\) +0.15").containsPattern("  exposed +0.40");
        assertThat(text).doesNotContainPattern("  sheltered +0.15").contains("described as sheltered as any");
    }

    @Test
    void nothingAssumedIsSaid() {
        ForecastText text =
                ForecastText.of(SampleForecasts.MUNICIPAL, new ReportSettings("A pool", Units.METRIC), List.of());

        assertThat(text.text()).contains("Nothing: everything was given.");
    }
}
