package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SampleForecasts;
import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.report.DatesReport;
import dev.warmlane.report.Report;
import dev.warmlane.report.Subject;
import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Comfort;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.DatesStudy.Dates;
import dev.warmlane.study.DatesStudy.Way;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.UnitSystem;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DatesStudyTest {

    private static final Installation BUILT = SampleForecasts.MUNICIPAL.installation();
    private static final SharedForcing FORCING = new SharedForcing(SampleForecasts.MUNICIPAL.weather());
    private static final DatesStudy STUDY = DatesStudy.of(BUILT, 3, FORCING, Runs.onAllCores());

    @Test
    void endsMoveByWholeWeeks() {
        assertThat(BUILT.season().first()).isEqualTo(MonthDay.of(5, 5));
        assertThat(STUDY.of(Way.EARLIER).stream().map(d -> d.dates().first()))
                .containsExactly(MonthDay.of(5, 5), MonthDay.of(4, 28), MonthDay.of(4, 21), MonthDay.of(4, 14));
        assertThat(STUDY.of(Way.LATER).stream().map(d -> d.dates().last()))
                .containsExactly(MonthDay.of(9, 15), MonthDay.of(9, 22), MonthDay.of(9, 29), MonthDay.of(10, 6));
        assertThat(STUDY.of(Way.BOTH).get(2).dates().days()).isEqualTo(134 + 28);
    }

    @Test
    void eachRowIsTheForecastOfThatSeason() {
        Dates row = STUDY.of(Way.BOTH).get(2);
        Installation moved = BUILT.toBuilder().season(row.dates()).build();
        SeasonForecast forecast = SeasonForecast.of(moved, SampleForecasts.MUNICIPAL.weather());
        GasSummary.Displaced gas = forecast.summary().season().gas().displaced().orElseThrow();

        assertThat(row.boughtKwh()).hasValue(gas.burnedKwh());
        assertThat(row.boughtWithoutKwh()).hasValue(gas.burnedWithoutKwh());
        assertThat(row.opening().waterC())
                .isEqualTo(forecast.with().waterStartC(forecast.with().opening()));
        assertThat(STUDY.today().season().water().meanC())
                .isEqualTo(SampleForecasts.MUNICIPAL.summary().season().water().meanC());
    }

    /** Found again by interpolating the table by hand. */
    @Test
    void weeksGainedLieWhereTheFuelOfTodayIsReached() {
        double may = STUDY.today().boughtWithoutKwh().orElseThrow();
        for (Way way : Way.values()) {
            List<Dates> seasons = STUDY.of(way);
            int under = (int) IntStream.range(0, seasons.size())
                    .takeWhile(i -> seasons.get(i).boughtKwh().orElseThrow() <= may)
                    .count();
            double expected = under - 1;
            if (under < seasons.size()) {
                double low = seasons.get(under - 1).boughtKwh().orElseThrow();
                double high = seasons.get(under).boughtKwh().orElseThrow();
                expected += (may - low) / (high - low);
            }
            assertThat(STUDY.weeksGained(way).orElseThrow())
                    .isCloseTo(way == Way.BOTH ? 2 * expected : expected, within(1e-9))
                    .isPositive();
            assertThat(STUDY.endsOpen(way)).isEqualTo(under == seasons.size());
        }
        assertThat(STUDY.endsOpen(Way.BOTH)).as("six weeks in all are too many").isFalse();
    }

    /** Again by hand: the weeks at either end of each input alone, in today's season and the longer ones alike. */
    @Test
    void weeksGainedAreAsDoubtfulAsEachInputMakesThem() {
        SeasonBands bands = new SeasonBands(FORCING, Runs.onAllCores());
        Estimate gained = new DatesBand(STUDY, bands).weeksGained(Way.BOTH).orElseThrow();
        List<SeasonBand> seasons = STUDY.of(Way.BOTH).stream()
                .map(d -> bands.of(BUILT.toBuilder().season(d.dates()).build()))
                .toList();
        double likely = STUDY.weeksGained(Way.BOTH).orElseThrow();
        double down = 0;
        double up = 0;
        for (int i = 0; i < seasons.get(0).doubts().size(); i++) {
            int doubt = i;
            double one = byHand(seasons.stream()
                    .map(band -> band.doubts().get(doubt).low().season())
                    .toList());
            double other = byHand(seasons.stream()
                    .map(band -> band.doubts().get(doubt).high().season())
                    .toList());
            down = Math.hypot(down, Math.max(0, likely - Math.min(one, other)));
            up = Math.hypot(up, Math.max(0, Math.max(one, other) - likely));
        }

        assertThat(gained.likely()).isEqualTo(likely);
        assertThat(gained.low()).isCloseTo(Math.max(0, likely - down), within(1e-9));
        assertThat(gained.high()).isCloseTo(Math.min(6, likely + up), within(1e-9));
        assertThat(gained.high() - gained.low()).as("something is uncertain").isGreaterThan(0.1);
    }

    /** Both ends of the season move. */
    private static double byHand(List<PeriodSummary> seasons) {
        List<GasSummary.Displaced> gas = seasons.stream()
                .map(season -> season.gas().displaced().orElseThrow())
                .toList();
        double may = gas.get(0).burnedWithoutKwh();
        for (int i = 1; i < gas.size(); i++) {
            double before = gas.get(i - 1).burnedKwh();
            double bought = gas.get(i).burnedKwh();
            if (bought > may) {
                return 2 * Math.max(0, i - 1 + (may - before) / (bought - before));
            }
        }
        return 2 * (gas.size() - 1);
    }

    /** A pool that opens cold: how warm, wind and cover say. What it closes on does not, so three ways are two openings. */
    @Test
    void theWaterAtOpeningIsAsDoubtfulAsThatOfTheSeasonByItself() {
        Installation cold = SampleForecasts.municipalCold().installation();
        DatesStudy study = DatesStudy.of(cold, 1, FORCING, Runs.onAllCores());
        SeasonBands bands = new SeasonBands(FORCING, Runs.onAllCores());
        DatesBand band = new DatesBand(study, bands);

        for (Dates dates : study.dates()) {
            Estimate opening = band.openingC(dates);
            Installation moved = cold.toBuilder().season(dates.dates()).build();
            assertThat(opening.likely()).isEqualTo(dates.opening().waterC());
            assertThat(opening.high() - opening.low())
                    .as("something is uncertain")
                    .isGreaterThan(0.1);
            assertThat(opening).isEqualTo(bands.of(moved).openingC(dates.opening()));
            double low = opening.likely();
            for (Sensitivity doubt : bands.of(moved).doubts()) {
                double colder = Math.min(
                        doubt.low().opening().waterC(), doubt.high().opening().waterC());
                // nothing alone goes farther than all together
                assertThat(colder).isGreaterThanOrEqualTo(opening.low() - 1e-9);
                low = Math.min(low, colder);
            }
            assertThat(low).as("what moves it most").isLessThan(opening.likely() - 0.05);
        }
        assertThat(band.openingC(study.of(Way.EARLIER).get(1))).isNotEqualTo(band.openingC(study.today()));
    }

    @Test
    void pageTextAndCsvTellTheSameRangeOfTheWaterAtOpening() {
        Installation cold = SampleForecasts.municipalCold().installation();
        DatesStudy study = DatesStudy.of(cold, 1, FORCING, Runs.onAllCores());
        DatesBand band = new DatesBand(study, new SeasonBands(FORCING, Runs.onAllCores()));
        Report report = report(study);
        String text = TextWriter.full(report);
        String page = HtmlWriter.page(report).replace('\u00a0', ' ');
        List<String> csv =
                CsvWriter.csv(report.data().get(0).table().get()).lines().toList();
        List<String> names = List.of(csv.get(0).split(",", -1));
        for (int row = 0; row < study.of(Way.EARLIER).size(); row++) {
            Estimate opening = band.openingC(study.of(Way.EARLIER).get(row));
            String range = String.format(Locale.ROOT, "%.1f to %.1f", opening.low(), opening.high());
            String[] cells = csv.get(1 + row).split(",", -1);
            assertThat(text).contains(" " + range + " ");
            assertThat(page).contains(">" + range + "<");
            assertThat(Double.parseDouble(cells[names.indexOf("water_at_opening_low_degc")]))
                    .isCloseTo(opening.low(), within(1e-3));
            assertThat(Double.parseDouble(cells[names.indexOf("water_at_opening_high_degc")]))
                    .isCloseTo(opening.high(), within(1e-3));
        }
    }

    @Test
    void collectorsThatRunBeforeOpeningMoveWithIt() {
        Installation early = BUILT.toBuilder()
                .season(BUILT.season().after(new BeforeOpening(14, 0)))
                .build();
        Dates week = DatesStudy.of(early, 1, FORCING, Runs.onAllCores())
                .of(Way.EARLIER)
                .get(1);
        assertThat(week.opening().days()).isEqualTo(14);
        assertThat(week.opening().date()).isEqualTo(MonthDay.of(4, 28));
        assertThat(week.opening().waterC()).isGreaterThan(week.opening().waterWithoutC() + 1);
    }

    @Test
    void aPoolThatHardlyClosesHasNoMoreWeeks() {
        OpeningSeason cold = SampleForecasts.municipalCold().installation().season();
        // 358 days are open, and a week more is all of the year
        assertThat(earlier(DatesStudy.moved(cold, Way.BOTH, 16))).hasSize(1);
        // 330 days are open; three weeks before opening leave room for one week more, without them for all three
        OpeningSeason open330 = DatesStudy.moved(cold, Way.BOTH, 14);
        assertThat(earlier(open330.after(new BeforeOpening(21, 3)))).hasSize(1 + 1);
        assertThat(earlier(open330)).hasSize(1 + 3);
        assertThatThrownBy(() -> DatesStudy.of(BUILT, 0, FORCING, Runs.onAllCores()))
                .hasMessageContaining("weeks");
    }

    private static List<Dates> earlier(OpeningSeason today) {
        Installation built = BUILT.toBuilder().season(today).build();
        return DatesStudy.of(built, 3, FORCING, Runs.onAllCores()).of(Way.EARLIER);
    }

    @Test
    void textAndCsvHoldTheSameRows() {
        Subject described = Subject.of(SampleForecasts.MUNICIPAL, new ReportSettings("Dates", UnitSystem.METRIC));
        Report report = DatesReport.of(STUDY, described);
        String text = TextWriter.full(report);
        String csv = CsvWriter.csv(report.data().get(0).table().get());

        assertThat(csv.lines()).hasSize(1 + 1 + 3 * 3);
        assertThat(csv.lines().findFirst().orElseThrow())
                .contains("water_at_opening_degc", "gas_burned_kwh", "gas_burned_without_kwh");
        assertThat(text)
                .contains("open earlier      1  28 April")
                .containsPattern("about \\d+(\\.5)? weeks\\s+in\\s+all");
    }

    @Test
    void oneTemperatureAtOpeningIsSaidOnce() {
        Installation unheated = BUILT.toBuilder().heater(null).build();

        assertThat(text(STUDY)).contains("and opens at 23.0 °C, with collectors and without.");
        // three weeks of sun are between them
        assertThat(text(DatesStudy.of(unheated, 1, FORCING, Runs.onAllCores())))
                .contains(", without collectors at 1")
                .doesNotContain("with collectors and without");
    }

    /** Where the heater begins with the season its first hour is warmer than its beginning. */
    @Test
    void theFirstHourIsExplainedWhereTheHeaterStartsInIt() {
        Installation cold = SampleForecasts.municipalCold().installation();

        assertThat(text(DatesStudy.of(cold, 1, FORCING, Runs.onAllCores()))).contains("some tenths higher");
        assertThat(text(STUDY)).doesNotContain("some tenths higher");
    }

    @Test
    void withoutAHeaterTheMeanOfThePoolIsDrawnAndTold() {
        Installation unheated = BUILT.toBuilder().heater(null).build();
        DatesStudy study = DatesStudy.of(unheated, 2, FORCING, Runs.onAllCores());

        for (Way way : Way.values()) {
            assertThat(study.of(way).stream().map(DatesReport::drawn)).doesNotHaveDuplicates();
        }
        assertThat(DatesReport.drawn(study.today()))
                .isEqualTo(study.today().season().water().meanC());
        assertThat(text(study))
                .contains("It has no heater: opened 2 weeks earlier")
                .contains(" and averages ");
    }

    /** Days at comfort are for the csv file alone where the heater makes them by itself. */
    @Test
    void daysThatTheHeaterHoldsAreNotTold() {
        DatesStudy study =
                DatesStudy.of(BUILT.toBuilder().comfort(new Comfort(22, 28)).build(), 1, FORCING, Runs.onAllCores());
        String csv = CsvWriter.csv(report(study).data().get(0).table().get());

        assertThat(table(study)).contains("mean").doesNotContain("comfort");
        assertThat(table(STUDY)).contains("comfort").doesNotContain("mean");
        assertThat(csv.lines().findFirst().orElseThrow())
                .contains("days_at_comfort_without", "water_mean_degc", "water_without_mean_degc");
    }

    private static Report report(DatesStudy study) {
        return DatesReport.of(
                study, Subject.of(SampleForecasts.MUNICIPAL, new ReportSettings("Dates", UnitSystem.METRIC)));
    }

    private static String text(DatesStudy study) {
        return TextWriter.full(report(study)).replaceAll("\\s+", " ");
    }

    /** What stands above the first row. */
    private static String table(DatesStudy study) {
        String text = TextWriter.full(report(study));
        return text.substring(text.indexOf("Week by week"), text.indexOf("  today "));
    }
}
