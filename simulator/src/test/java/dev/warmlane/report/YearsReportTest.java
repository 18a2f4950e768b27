package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Comfort;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.YearNumber;
import dev.warmlane.study.YearSeason;
import dev.warmlane.study.YearsStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.RealYears;
import dev.warmlane.weather.TypicalYear;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.WeatherYears;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The report of real years says what the study holds. */
class YearsReportTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    private static final Subject DESCRIBED = SampleReports.MUNICIPAL;
    private static final WeatherYear WEATHER = DESCRIBED.forecast().weather();
    private static final Numbers NUMBERS = new Numbers(UnitSystem.METRIC);

    /** Ten years, a third of a kelvin warmer each; 2005 is not there. */
    private static final WeatherYears YEARS = WeatherYears.of(IntStream.rangeClosed(2000, 2010)
            .filter(year -> year != 2005)
            .mapToObj(year -> RealYears.like(WEATHER, year, (year - 2004) / 3.0, 1))
            .toList());

    private static final YearsStudy STUDY = YearsStudy.of(DESCRIBED.forecast().installation(), YEARS);

    private static final TypicalYear OWN = TypicalYear.of(YEARS);

    private static final Report REPORT = YearsReport.of(STUDY, YEARS, Optional.of(OWN), DESCRIBED);

    private static String text() {
        return TextWriter.full(REPORT).replaceAll("\\s+", " ");
    }

    @Test
    void theAnswerHoldsMiddleNineOfTenAndWorst() {
        var gas = STUDY.spread(YearNumber.GAS_BURNED).orElseThrow();
        assertThat(gas.worst().label()).isEqualTo("2000");
        assertThat(text())
                .contains("Gas burned: " + NUMBERS.show(Measure.HEAT, gas.median()) + " in the middle year, less than "
                        + NUMBERS.show(Measure.HEAT, gas.nineOfTen().orElseThrow()) + " in nine of ten, "
                        + NUMBERS.show(Measure.HEAT, gas.worst().value()) + " in the worst (2000).");
    }

    @Test
    void everyYearHasItsRowAndGapsAndLeapYearsAreTold() {
        Table years = YearsTables.years(STUDY, UnitSystem.METRIC);
        assertThat(years.rows()).hasSize(10);
        for (int i = 0; i < 10; i++) {
            YearSeason season = STUDY.seasons().get(i);
            assertThat(years.shown(years.rows().get(i), PLAIN).subList(0, 2))
                    .containsExactly(
                            season.label(), PLAIN.show(season.season().water().meanC(), 1));
        }
        assertThat(text()).contains("Not there: 2005", "it is left out of 2000, 2004, 2008");
    }

    @Test
    void theTypicalYearFallsAmongTheReal() {
        // as warm as that of 2004, and five years are warmer or as warm
        double below = STUDY.yearsBelow(YearNumber.WATER_MEAN, YearSeason.of("typical", 2004, DESCRIBED.forecast()));
        assertThat(below).isBetween(3.5, 5.0);
        assertThat(text())
                .contains("in the middle of the real ones; " + PLAIN.show(below, below == Math.rint(below) ? 0 : 1)
                        + " of 10 have less");
        YearSeason own = STUDY.inWeather("own", OWN.weather());
        assertThat(text())
                .contains("chosen from these years")
                .contains("heat delivered by the collectors: "
                        + NUMBERS.show(
                                Measure.HEAT, YearNumber.DELIVERED.of(own).orElseThrow()) + " in the typical year");
        WeatherYears elsewhere = WeatherYears.of(
                List.of(RealYears.like(SampleReports.SOUTHERN.forecast().weather(), 2001, 0, 1)));
        YearsStudy there = YearsStudy.of(DESCRIBED.forecast().installation(), elsewhere);
        assertThat(TextWriter.full(YearsReport.of(there, elsewhere, Optional.empty(), DESCRIBED))
                        .replaceAll("\\s+", " "))
                .contains("is not of the same place as the years");
    }

    @Test
    void aSingleYearIsToldWithoutQuantilesAndCharts() {
        WeatherYears one = WeatherYears.of(List.of(RealYears.like(WEATHER, 2001, 0, 1)));
        Report report = YearsReport.of(
                YearsStudy.of(DESCRIBED.forecast().installation(), one), one, Optional.empty(), DESCRIBED);
        assertThat(TextWriter.full(report).replaceAll("\\s+", " "))
                .contains("in a real year, 2001.", "in the worst (2001)")
                .doesNotContain("in nine of ten,");
        assertThat(SampleReports.charts(report)).isEmpty();
        assertThat(SampleReports.charts(REPORT)).hasSize(2);
    }

    /** The season of the south begins in one year and ends in the next: three years hold two of them. */
    @Test
    void seasonsOverNewYearAreCalledSeasons() {
        Subject southern = SampleReports.SOUTHERN;
        WeatherYear weather = southern.forecast().weather();
        WeatherYears three = WeatherYears.of(IntStream.range(0, 3)
                .mapToObj(i -> RealYears.like(weather, 2001 + i, 0.1 * i, 1))
                .toList());
        YearsStudy study = YearsStudy.of(southern.forecast().installation(), three);

        assertThat(TextWriter.full(YearsReport.of(study, three, Optional.empty(), southern))
                        .replaceAll("[\\s\u00a0]+", " "))
                .contains("What this pool would have been in 2 real seasons, 2001/02 to 2002/03.")
                .containsPattern("days at comfort in the worst of 2 years [0-9.]+ days in the middle year; [0-9.]+ days"
                        + " without collectors|days at comfort in the worst of 2 years \\([^)]*; [0-9.]+ days without"
                        + " collectors\\)");
    }

    @Test
    void whatWasLeftOutIsTold() {
        Installation built = DESCRIBED.forecast().installation();
        WeatherYears years = WeatherYears.of(
                List.of(RealYears.like(WEATHER, 2001, 0, 1), RealYears.like(WEATHER, 2002, 0, 1), twoYears()));
        assertThat(years.leftOut()).hasSize(1);
        assertThat(TextWriter.full(YearsReport.of(YearsStudy.of(built, years), years, Optional.empty(), DESCRIBED))
                        .replaceAll("\\s+", " "))
                .contains("Left out: ", "it is a typical year");
    }

    private static WeatherYear twoYears() {
        return WeatherYears.of(List.of(RealYears.like(WEATHER, 2003, 0, 1), RealYears.like(WEATHER, 2004, 0, 1)))
                .startingAt(4000)
                .get(0)
                .weather();
    }

    @Test
    void spreadsForMachinesHaveTheirUnitInTheName() {
        String csv = CsvWriter.csv(YearsTables.allSpreads(STUDY, UnitSystem.US));
        assertThat(csv).contains("\nwater_mean_degf,10,", "\ngas_burned_therms,10,", "\nsaved_money,10,");
        double median = STUDY.spread(YearNumber.AIR_MEAN).orElseThrow().median();
        assertThat(CsvWriter.csv(YearsTables.allSpreads(STUDY, UnitSystem.METRIC)))
                .containsPattern("\nair_mean_degc,10," + PLAIN.show(median, 2).replace(".", "\\."));
    }

    @Test
    void aForecastTellsTheBandOfYearsBesideThatOfTheWind() {
        Report forecast = ForecastReport.of(DESCRIBED, Optional.of(STUDY));
        String brief = TextWriter.brief(forecast).replaceAll("\\s+", " ");
        var days = STUDY.spread(YearNumber.DAYS_AT_COMFORT).orElseThrow();
        assertThat(brief)
                .contains("Good years and bad", "The same pool in 10 real years, 2000 to 2010.")
                .contains(NUMBERS.show(Measure.DAYS, days.worst().value()) + " in the worst ("
                        + days.worst().label() + ")");
        assertThat(forecast.pictures()).extracting(Block.Picture::name).contains("years-comfort");
        assertThat(TextWriter.full(ForecastReport.of(DESCRIBED))).doesNotContain("Good years and bad");
    }

    /** A comfort of 22 degC is below the set point of 23 degC. */
    @Test
    void daysThatTheHeaterHoldsAreLeftToTheCsvFile() {
        Installation held = DESCRIBED.forecast().installation().toBuilder()
                .comfort(new Comfort(22, 28))
                .build();
        Subject described =
                Subject.of(SeasonForecast.of(held, WEATHER), new ReportSettings("Years", UnitSystem.METRIC));
        YearsStudy study = YearsStudy.of(held, YEARS);
        Report report = YearsReport.of(study, YEARS, Optional.empty(), described);
        String told =
                TextWriter.full(report).replaceAll("\\s+", " ").replace("days at comfort say nothing of them", "");

        assertThat(told).doesNotContainIgnoringCase("days at comfort").contains("Gas burned: ");
        assertThat(YearsTables.years(study, UnitSystem.METRIC).columns())
                .noneMatch(column -> column.csvName().contains("comfort"));
        assertThat(YearsTables.all(study, UnitSystem.METRIC).columns())
                .anyMatch(column -> column.csvName().contains("comfort"));
        assertThat(report.pictures()).extracting(Block.Picture::name).contains("years-gas");
        assertThat(HtmlWriter.page(report)).contains("How much gas is burned in every year?", "ten years have less");
        assertThat(TextWriter.brief(ForecastReport.of(described, Optional.of(study)))
                        .replaceAll("\\s+", " "))
                .contains("Good years and bad")
                .doesNotContain("Days at comfort: ");
    }

    /** However many years: the chart is for the owner, the rows for whoever checks them. */
    @Test
    void theFirstSheetHasTheChartAndNotARowForEachYear() {
        Section years = REPORT.sections().stream()
                .filter(section -> section.heading().equals("Year by year"))
                .findFirst()
                .orElseThrow();
        assertThat(years.at(Place.FIRST_SHEET)).noneMatch(block -> block instanceof Table);
        assertThat(years.at(Place.FIRST_SHEET)).anyMatch(block -> block instanceof Block.Picture);
        assertThat(years.at(Place.TECHNICAL)).anyMatch(block -> block instanceof Table);
        assertThat(years.at(Place.BRIEF)).anyMatch(block -> block instanceof Table);
    }

    /** A caution of what a typical year hides has no place where real ones are shown. */
    @Test
    void theCautionIsThatOfTheWeatherShown() {
        String hidden = "It does not show how much warmer or colder real years are";
        assertThat(oneLine(TextWriter.full(REPORT)))
                .doesNotContain(hidden)
                .contains("years to come may be warmer or colder than all of them")
                .contains("hours in the typical year, and more in a colder one.");
        assertThat(oneLine(TextWriter.full(ForecastReport.of(DESCRIBED)))).contains(hidden);
        assertThat(oneLine(TextWriter.full(ForecastReport.of(DESCRIBED, Optional.of(STUDY)))))
                .doesNotContain(hidden)
                .contains("How much warmer or colder real years were stands beside it");
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
