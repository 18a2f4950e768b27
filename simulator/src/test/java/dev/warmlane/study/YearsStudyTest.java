package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.StartWater;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Prices;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.RealYears;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.WeatherYears;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class YearsStudyTest {

    private static final Runs ALONE = new Runs(1, Progress.SILENT);
    private static final WeatherYear SAMPLE = Demo.weather("cool-coast");

    /** Warmer year by year, but the third is the dullest. */
    private static final double[] WARMER_K = {0, 1, 2, 3, 4};

    private static final double[] LIGHT = {1, 0.98, 0.7, 0.96, 0.94};

    private static final List<WeatherYear> GIVEN = IntStream.range(0, WARMER_K.length)
            .mapToObj(i -> RealYears.like(SAMPLE, 2001 + i, WARMER_K[i], LIGHT[i]))
            .toList();

    private static final WeatherYears YEARS = WeatherYears.of(GIVEN);

    private static final Installation UNHEATED = Demo.pool(1.8).build();

    private static final Installation HEATED = Demo.pool(1.8)
            .heater(Demo.HEATER)
            .prices(new Prices("EUR", 0.09, 0.28, 140))
            .build();

    private static final YearsStudy STUDY = YearsStudy.of(HEATED, YEARS, ALONE);

    @Test
    void everyYearIsTheForecastInItsOwnWeather() {
        assertThat(STUDY.seasons())
                .extracting(YearSeason::label)
                .containsExactly("2001", "2002", "2003", "2004", "2005");
        for (int i = 0; i < GIVEN.size(); i++) {
            SeasonForecast forecast = SeasonForecast.of(HEATED, GIVEN.get(i));
            SeasonSummary summary = forecast.summary();
            YearSeason season = STUDY.seasons().get(i);
            assertThat(season.season()).isEqualTo(summary.season());
            assertThat(season.money()).isEqualTo(summary.money());
            assertThat(season.openingC())
                    .isEqualTo(forecast.days().get(0).water().meanC());
            assertThat(season.openingWithoutC())
                    .isEqualTo(forecast.days().get(0).waterWithout().meanC());
        }
    }

    /** Collectors run from twenty days before opening on, the heater from two. */
    @Test
    void theFirstDayIsThatOfOpening() {
        Installation early = HEATED.toBuilder()
                .season(HEATED.season().after(new BeforeOpening(20, 2)))
                .build();
        SeasonForecast forecast = SeasonForecast.of(early, GIVEN.get(0));
        YearSeason season = YearsStudy.of(early, YEARS, ALONE).seasons().get(0);

        assertThat(season.openingC()).isEqualTo(forecast.days().get(20).water().meanC());
        assertThat(season.openingWithoutC())
                .isEqualTo(forecast.days().get(20).waterWithout().meanC());
    }

    @Test
    void theOrderOfYearsAndTheNumberOfThreadsDoNotMatter() {
        List<WeatherYear> shuffled = new ArrayList<>(GIVEN);
        Collections.shuffle(shuffled, new Random(3));

        assertThat(YearsStudy.of(HEATED, WeatherYears.of(shuffled), new Runs(3, Progress.SILENT)))
                .usingRecursiveComparison()
                .ignoringFields("installation")
                .isEqualTo(STUDY);
    }

    @Test
    void worstIsColdWaterAndMuchGas() {
        YearsSpread water = YearsStudy.of(UNHEATED, YEARS, ALONE)
                .spread(YearNumber.WATER_MEAN_WITHOUT)
                .orElseThrow();
        YearsSpread gas = STUDY.spread(YearNumber.GAS_BURNED).orElseThrow();

        assertThat(water.worst().value()).isLessThan(water.median());
        assertThat(water.best().value()).isGreaterThan(water.median());
        assertThat(gas.worst().value()).isGreaterThan(gas.median());
        assertThat(gas.best().value()).isLessThan(gas.median());
        assertThat(gas.best().label()).isEqualTo("2005");
        assertThat(STUDY.worstFirst(YearNumber.GAS_BURNED).get(4).label()).isEqualTo("2005");
        assertThat(STUDY.worstFirst(YearNumber.WATER_MEAN)
                        .get(0)
                        .season()
                        .water()
                        .meanC())
                .isEqualTo(STUDY.spread(YearNumber.WATER_MEAN)
                        .orElseThrow()
                        .worst()
                        .value());
    }

    @Test
    void irradiationAloneRanksYearsOtherwiseThanWarmth() {
        YearsStudy study = YearsStudy.of(UNHEATED, YEARS, ALONE);
        assertThat(study.worstFirst(YearNumber.IRRADIATION).get(0).label()).isEqualTo("2003");
        assertThat(study.worstFirst(YearNumber.IRRADIATION).get(4).label()).isEqualTo("2001");
        assertThat(study.worstFirst(YearNumber.AIR_MEAN).get(0).label()).isEqualTo("2001");
    }

    @Test
    void aSpreadIsThatOfTheValues() {
        YearsSpread air = STUDY.spread(YearNumber.AIR_MEAN).orElseThrow();
        double coldest = STUDY.seasons().get(0).season().airMeanC();

        assertThat(air.years()).isEqualTo(5);
        assertThat(air.median()).isCloseTo(coldest + 2, within(1e-9));
        assertThat(air.worst()).isEqualTo(new YearsSpread.Extreme("2001", coldest));
        assertThat(air.nineOfTen()).isEmpty();
        // of 0, 1, 2, 3, 4
        assertThat(air.standardDeviation().orElseThrow()).isCloseTo(Math.sqrt(2.5), within(1e-9));
        assertThat(air.meanChange().orElseThrow()).isCloseTo(1, within(1e-9));
    }

    @Test
    void nineOfTenIsLowForWarmthAndHighForGas() {
        List<YearSeason> ten = new ArrayList<>(STUDY.seasons());
        ten.addAll(STUDY.seasons());
        YearsSpread water = YearsSpread.of(YearNumber.AIR_MEAN, ten).orElseThrow();
        YearsSpread gas = YearsSpread.of(YearNumber.GAS_BURNED, ten).orElseThrow();

        assertThat(water.nineOfTen().orElseThrow()).isLessThan(water.median());
        assertThat(gas.nineOfTen().orElseThrow()).isGreaterThan(gas.median());
    }

    @Test
    void aChangeIsCountedBetweenYearsThatFollowEachOther() {
        List<YearSeason> gap = List.of(
                STUDY.seasons().get(0), STUDY.seasons().get(2), STUDY.seasons().get(3));
        assertThat(YearsSpread.of(YearNumber.AIR_MEAN, gap)
                        .orElseThrow()
                        .meanChange()
                        .orElseThrow())
                .isCloseTo(1, within(1e-9));
        assertThat(YearsSpread.of(YearNumber.AIR_MEAN, gap.subList(0, 2))
                        .orElseThrow()
                        .meanChange())
                .isEmpty();
    }

    @Test
    void withoutAHeaterThereIsNoGasToDiffer() {
        YearsStudy study = YearsStudy.of(UNHEATED, YEARS, ALONE);
        assertThat(study.spread(YearNumber.GAS_BURNED)).isEmpty();
        assertThat(study.spread(YearNumber.SAVED)).isEmpty();
        assertThat(study.spread(YearNumber.DELIVERED)).isPresent();
    }

    @Test
    void anotherSeasonFallsAmongTheReal() {
        YearSeason like = STUDY.inWeather("typical", RealYears.like(SAMPLE, 2020, 2.5, 0.95));
        assertThat(STUDY.yearsBelow(YearNumber.AIR_MEAN, like)).isEqualTo(3);
        YearSeason same = STUDY.inWeather("same", GIVEN.get(1));
        assertThat(STUDY.yearsBelow(YearNumber.AIR_MEAN, same)).isEqualTo(1.5);
    }

    @Test
    void aSeasonOverNewYearBeginsWithTheFillingOfThePool() {
        Installation summer = UNHEATED.toBuilder()
                .season(new OpeningSeason(MonthDay.of(11, 1), MonthDay.of(3, 31), Schedule.ALWAYS))
                .startWater(new StartWater.StandingFilled(30))
                .build();

        assertThat(YearsStudy.beginHour(summer)).isEqualTo(HourOfYear.of(10, 2, 0));
        assertThat(YearsStudy.of(summer, YEARS, ALONE).seasons())
                .extracting(YearSeason::label)
                .containsExactly("2001/02", "2002/03", "2003/04", "2004/05");
        // filled in December for a season of the new year
        Installation early = summer.toBuilder()
                .season(new OpeningSeason(MonthDay.of(1, 10), MonthDay.of(3, 31), Schedule.ALWAYS))
                .build();
        assertThat(YearsStudy.beginHour(early)).isEqualTo(HourOfYear.of(12, 11, 0));
        assertThat(YearsStudy.beginHour(UNHEATED)).isZero();
        assertThat(YearsStudy.beginHour(UNHEATED.toBuilder()
                        .season(OpeningSeason.wholeYear())
                        .startWater(new StartWater.StandingFilled(30))
                        .build()))
                .isZero();
        WeatherYears alone = WeatherYears.of(List.of(GIVEN.get(0), GIVEN.get(2)));
        assertThatThrownBy(() -> YearsStudy.of(summer, alone, ALONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("New Year");
    }

    /** In the old year nothing but the weather before New Year counts, in the new one nothing but that after. */
    @Test
    void aSeasonOverNewYearFeelsBothYears() {
        Installation summer = UNHEATED.toBuilder()
                .season(new OpeningSeason(MonthDay.of(12, 1), MonthDay.of(1, 31), Schedule.ALWAYS))
                .build();
        double air =
                YearsStudy.of(summer, YEARS, ALONE).seasons().get(0).season().airMeanC();
        double first =
                SeasonForecast.of(summer, GIVEN.get(0)).summary().season().airMeanC();
        // 31 of 62 days are a kelvin warmer
        assertThat(air).isCloseTo(first + 0.5, within(1e-9));
    }
}
