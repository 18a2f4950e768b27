package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.circuit.Control;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.StartWater;
import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.Assumption;
import dev.warmlane.scenario.Finding;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.season.WorkingRange;
import dev.warmlane.site.Schedule;
import dev.warmlane.site.Site;
import dev.warmlane.study.SeasonBands;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.wind.PoolShelter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ForecastReportTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    private static final List<Assumption> ASSUMED =
            List.of(new Assumption("roof", "albedo", "0.2", "aged dark roofing"));

    private static List<SeasonForecast> forecasts() {
        return SampleForecasts.all();
    }

    private static Report of(SeasonForecast forecast, UnitSystem units) {
        return ForecastReport.of(
                Subject.of(forecast, new ReportSettings("A pool", units)).assuming(ASSUMED));
    }

    private static String full(SeasonForecast forecast, UnitSystem units) {
        return TextWriter.full(of(forecast, units));
    }

    private static String brief(SeasonForecast forecast, UnitSystem units) {
        return TextWriter.brief(of(forecast, units));
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void holdsWhatIsAskedInBothUnits(SeasonForecast forecast) {
        for (UnitSystem units : UnitSystem.values()) {
            String text = full(forecast, units);

            assertThat(text)
                    .startsWith("A pool\n======\n")
                    .contains("In short", "month by month", "Cautions")
                    .contains("0.2 (roof albedo; aged dark roofing)")
                    .contains("does not show how much warmer or colder real years are")
                    .contains("the local code and a licensed professional")
                    .doesNotContain("NaN", "Infinity", "Optional", "null", "-0 ");
            assertThat(text.lines()).allMatch(line -> line.length() <= 102);
            assertThat(text.lines()).noneMatch(line -> line.endsWith(" "));
        }
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void usTextHasNoMetricUnits(SeasonForecast forecast) {
        String text = full(forecast, UnitSystem.US);

        assertThat(text).contains("°F").doesNotContain("°C", "m²", "m³", " kg", " kW ", " mm ");
    }

    @Test
    void headlineSaysTheNumbersOfTheSummary() {
        SeasonForecast forecast = SampleForecasts.MUNICIPAL;
        SeasonSummary summary = forecast.summary();
        String brief = brief(forecast, UnitSystem.METRIC).replaceAll("\\s+", " ");

        Numbers numbers = new Numbers(UnitSystem.METRIC);
        String mean = numbers.show(Measure.TEMPERATURE, summary.season().water().meanC());
        assertThat(brief)
                .contains("the pool averages " + mean)
                .contains(mean + " mean pool temperature, 23.7 to 24.8 ("
                        + numbers.show(
                                Measure.TEMPERATURE,
                                summary.season().waterWithout().meanC())
                        + " without collectors)")
                .contains(summary.season().comfort().daysAtComfort() + " days at 24.0 °C or above, 39 to 85 ("
                        + summary.season().comfortWithout().daysAtComfort() + " without collectors)")
                .contains("on " + summary.season().comfort().daysAtComfort() + " (39 to 85) of 134 days")
                .contains(twoDigits(summary.season().balance().deliveredKwh()) + " kWh heat from the collectors, ")
                .contains(twoDigits(summary.season().gas().replacedKwh()) + " kWh gas displaced, ")
                .contains(twoDigits(summary.money().orElseThrow().saved()) + " EUR saved in the season, ")
                .contains("How sure this is")
                .contains("wind at pool over the station's 0.15 to 0.4");
    }

    /** As many as are worth anything where the doubt is tens of percent. */
    private static String twoDigits(double value) {
        return String.format(Locale.ROOT, "%,.0f", new BigDecimal(value).round(new MathContext(2)));
    }

    @Test
    void poolWithoutHeaterIsToldOfWarmthAndNotOfGas() {
        String text = full(SampleForecasts.SOUTHERN, UnitSystem.METRIC).replaceAll("\\s+", " ");

        assertThat(text)
                .contains("2.4 degrees warmer by the collectors, 2.2 to 2.7 (17 days more at 25.0 °C)")
                .contains("More area would add")
                .doesNotContain("heater would", "Gas", "gas displaced", "of gas", "would have burned");
    }

    @Test
    void whatTheHeaterHoldsAnywayIsNotCountedForTheCollectors() {
        String text = brief(SampleForecasts.CLUB, UnitSystem.US).replaceAll("\\s+", " ");

        assertThat(text)
                .contains(
                        "The heater is set to 82.0 °F, above the 80.0 °F that is wanted, with and without collectors; with them it gives nothing on 125 days of 184")
                .contains(
                        "On warm days the collectors could give about", "Warmer than 86.0 °F, which many find too warm")
                .contains("125 days in which the heater gives nothing (103 without collectors, of 184)")
                .doesNotContain("182 days at 80.0 °F");
    }

    @Test
    void whatIsNextToNothingIsNoShare() {
        Installation mild = SampleForecasts.MUNICIPAL.installation().toBuilder()
                .heater(new Boiler(Fuel.NATURAL_GAS, 0.85, 250, 12))
                .build();

        assertThat(brief(SampleForecasts.municipal(mild), UnitSystem.METRIC).replaceAll("\\s+", " "))
                .contains("this pool hardly needs them")
                .doesNotContain("% of the gas", "% (");
    }

    @Test
    void poolInAHallHasNoWindAtTheWaterToDoubt() {
        assertThat(full(SampleForecasts.INDOOR, UnitSystem.METRIC).replaceAll("\\s+", " "))
                .doesNotContain("sheltered", "on open ground", "exposed  ", "wind at pool", "wind at the water")
                .contains("Least certain is how the collectors were tested");
    }

    @Test
    void poolThatNeverClosesIsToldAboutTheFrostItMustStand() {
        assertThat(full(SampleForecasts.INDOOR, UnitSystem.METRIC))
                .contains("The pool never closes: the circuit must stand that frost");
    }

    @Test
    void frostInTheOpenSeasonIsNotAnsweredByDrainingAfterIt() {
        WorkingRange range = SampleForecasts.CLUB.summary().workingRange().orElseThrow();
        String text = full(SampleForecasts.CLUB, UnitSystem.US).replaceAll("\\s+", " ");

        assertThat(text)
                .contains("It freezes while the collectors are in use, first on "
                        + Notation.usual(UnitSystem.US)
                                .show(range.firstFrostInUse().orElseThrow()) + " and last on "
                        + Notation.usual(UnitSystem.US)
                                .show(range.lastFrostInUse().orElseThrow())
                        + ": the circuit must stand that, or drain itself")
                .contains("Drain rigid pipe before "
                        + Notation.usual(UnitSystem.US).show(range.drainDown().orElseThrow()))
                .contains("The count by the collector is an upper bound");
    }

    @Test
    void waterTooHotToBatheInIsSaidPlainly() {
        Numbers metric = new Numbers(UnitSystem.METRIC);

        assertThat(Cautions.bathing(metric, 43.2))
                .contains("EXCEEDS the upper limit for bathing water, 40.0 °C, by 3.2 degrees");
        assertThat(Cautions.bathing(new Numbers(UnitSystem.US), 43.2))
                .contains("EXCEEDS the upper limit for bathing water, 104.0 °F, by 5.8 degrees");
        assertThat(Cautions.bathing(metric, 40)).doesNotContain("EXCEEDS");
    }

    @Test
    void withoutCollectorsThereIsNothingToDrainOrToScald() {
        assertThat(full(SampleForecasts.BARE, UnitSystem.METRIC))
                .contains("There are no collectors.")
                .doesNotContain("Scalding", "Drain", "uplift of");
    }

    @Test
    void warningsOfTheScenarioAreHandedOver() {
        ReportSettings settings = new ReportSettings("A pool", UnitSystem.METRIC);
        SeasonForecast forecast = SampleForecasts.MUNICIPAL;
        Report report = ForecastReport.of(new Subject(
                forecast,
                forecast.summary(),
                settings,
                ASSUMED,
                List.of(new Finding(Path.of("job.toml"), 7, 0, "heater", "set_point", "is above control.limit, 20 °C")),
                SeasonBands.of(forecast)));

        for (String text : List.of(TextWriter.full(report), TextWriter.brief(report))) {
            assertThat(text.replaceAll("\\s+", " "))
                    .contains(
                            "To look at - Scenario, temperature that the heater keeps: is above the temperature up to which the collectors warm, 20 °C")
                    .doesNotContain("job.toml");
        }
        assertThat(SampleReports.loose(HtmlWriter.page(report, Optional.of("no charts"))))
                .contains(
                        "Scenario, temperature that the heater keeps: is above the temperature up to which the collectors warm, 20 °C");
        assertThat(full(forecast, UnitSystem.METRIC)).doesNotContain("To look at");
    }

    @Test
    void collectorsThatFaceAwayFromTheNoonSunAreAskedAbout() {
        Site north = new Site("north", 45, 8, 200, 1);
        Site south = new Site("south", -37, 145, 200, 10);
        Site equator = new Site("equator", 4, 8, 200, 1);

        assertThat(LookAt.awayFromTheSun(new Numbers(UnitSystem.METRIC), pitched(20, 0), north)
                        .orElseThrow())
                .contains("face 0°", "stands in the south, 180°");
        assertThat(LookAt.awayFromTheSun(new Numbers(UnitSystem.METRIC), pitched(20, 271), north))
                .isPresent();
        assertThat(LookAt.awayFromTheSun(new Numbers(UnitSystem.METRIC), pitched(20, 89), north))
                .isPresent();
        assertThat(LookAt.awayFromTheSun(new Numbers(UnitSystem.METRIC), pitched(20, 180), south)
                        .orElseThrow())
                .contains("stands in the north, 0°");
        assertThat(LookAt.awayFromTheSun(new Numbers(UnitSystem.METRIC), pitched(20, 270), north))
                .isEmpty();
        assertThat(LookAt.awayFromTheSun(new Numbers(UnitSystem.METRIC), pitched(9, 0), north))
                .isEmpty();
        assertThat(LookAt.awayFromTheSun(new Numbers(UnitSystem.METRIC), pitched(20, 300), south))
                .isEmpty();
        assertThat(LookAt.awayFromTheSun(new Numbers(UnitSystem.METRIC), pitched(20, 0), equator))
                .isEmpty();
    }

    private static CollectorArray pitched(double tiltDeg, double azimuthDeg) {
        return new CollectorArray(
                "mats", 100, new Mounting.FlushOnPitchedRoof(tiltDeg, azimuthDeg, 8, 0.005), Absorber.USUAL_MAT);
    }

    @Test
    void lossesAreSaidInWordsAndNotAsNegativeSavings() {
        Installation built = SampleForecasts.municipalCold().installation();
        Installation losing = built.toBuilder()
                .control(new Control(4, 0.3, 10, Schedule.ALWAYS).sheddingAboveC(10.5))
                .build();
        String text = full(SampleForecasts.municipal(losing), UnitSystem.METRIC).replaceAll("\\s+", " ");

        assertThat(text)
                .contains("taken from the pool: the circuit ran more to cool the water than to warm it")
                .contains("With the collectors more gas is burned, by ")
                .contains(
                        "EUR more spent in the season, 1,100 to 6,800 (paid back not within 40 years, after paying for the pump's electricity)")
                .contains("Gas burned beyond what the pool without collectors burns")
                .doesNotContain("gas displaced", "saved");
    }

    @Test
    void firstMorningIsExplained() {
        SeasonForecast cold = SampleForecasts.municipalCold();
        assertThat(brief(cold, UnitSystem.METRIC).replaceAll("\\s+", " "))
                .contains("It opens cold, at "
                        + PLAIN.show(cold.with().waterC(0), 1)
                        + " °C on 5 May, because its heater starts on that day; to open at 23.0 °C it would have to start some 2"
                        + " days before.");
        assertThat(brief(SampleForecasts.MUNICIPAL, UnitSystem.METRIC).replaceAll("\\s+", " "))
                .contains(
                        "It opens at 23.0 °C on 5 May, with collectors and without; until then the heater burns about ")
                .doesNotContain("opens cold");
        assertThat(brief(SampleForecasts.SOUTHERN, UnitSystem.METRIC).replaceAll("\\s+", " "))
                .contains(" °C on 20 October, unheated until then", "without collectors on none");
        Installation given = cold.installation().toBuilder()
                .startWater(new StartWater.Given(18))
                .build();
        assertThat(brief(SampleForecasts.municipal(given), UnitSystem.METRIC)).contains("starts at the given 18.0 °C");
    }

    @Test
    void whoseHeaterStartsOnTheFirstDayBecauseNobodySaidMoreIsAskedAboutIt() {
        Subject cold = Subject.of(SampleForecasts.municipalCold(), new ReportSettings("A pool", UnitSystem.METRIC));
        Assumption standing = new Assumption("season", "days_standing", "14 days", "common practice");

        assertThat(LookAt.toItsWriter(cold.assuming(List.of(standing)))).anySatisfy(told -> assertThat(told)
                .startsWith("The heater starts on the day the pool opens, in water of "
                        + PLAIN.show(cold.forecast().with().waterC(0), 1)));
        // who gave it meant it, and who heats before opening has done what is asked
        assertThat(LookAt.toItsWriter(cold)).isEmpty();
        assertThat(LookAt.toItsWriter(SampleReports.MUNICIPAL.assuming(List.of(standing))))
                .isEmpty();
    }

    @Test
    void poolDescribedAsShelteredMayBeColderAndWarmerForTheWindsSake() {
        Installation built = SampleForecasts.MUNICIPAL.installation();
        Installation sheltered = built.toBuilder()
                .pool(built.pool().withSetting(new PoolSetting.Outdoor(PoolShelter.SHELTERED)))
                .build();
        String text = full(SampleForecasts.municipal(sheltered), UnitSystem.METRIC);

        assertThat(text)
                .contains("the pool averages 25.0 °C")
                .containsPattern("wind at pool over the station's +0.075 to 0.3 +24.[0-8] to 25.[0-9] ");
    }

    @Test
    void nothingAssumedIsSaid() {
        Subject subject = Subject.of(SampleForecasts.MUNICIPAL, new ReportSettings("A pool", UnitSystem.METRIC));

        assertThat(TextWriter.full(ForecastReport.of(subject))).contains("Nothing: everything was given.");
    }
}
