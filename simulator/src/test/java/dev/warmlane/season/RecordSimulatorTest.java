package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.pool.Flow;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.StartWater;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.site.Site;
import dev.warmlane.weather.RecordOptions;
import dev.warmlane.weather.WeatherRecord;
import dev.warmlane.weather.WeatherYear;
import java.time.LocalDateTime;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Runs over real hours: what a season gives on its own calendar, and what no calendar of 365 days has. Weather invented. */
class RecordSimulatorTest {

    /** Rounding of a step's sum, J/m², against flows of some MJ/m². */
    private static final double ROUNDING_JM2 = 1e-3;

    private static final Site SITE = new Site("invented", 40, 0, 0, 0);
    private static final LocalDateTime OVER_A_LEAP_DAY = LocalDateTime.of(2019, 12, 20, 5, 0);

    private static final Pool POOL = Pool.of(50, 1, new PoolSetting.Outdoor(0.3));

    @Test
    void overACalendarYearIsTheSeasonBitForBit() {
        WeatherYear year = Demo.weather("cool-coast");
        int[] hours = IntStream.range(0, HourOfYear.HOURS).toArray();
        WeatherRecord record = WeatherRecord.builder(
                        year.site(), "the same", LocalDateTime.of(year.sun().calendarYear(0), 1, 1, 0, 0))
                .globalWm2(Arrays.stream(hours)
                        .mapToDouble(year::globalHorizontalWm2)
                        .toArray())
                .directNormalWm2(
                        Arrays.stream(hours).mapToDouble(year::directNormalWm2).toArray())
                .diffuseWm2(Arrays.stream(hours)
                        .mapToDouble(year::diffuseHorizontalWm2)
                        .toArray())
                .airC(Arrays.stream(hours).mapToDouble(year::airTemperatureC).toArray())
                .dewPointC(Arrays.stream(hours).mapToDouble(year::dewPointC).toArray())
                .windSpeedMs(Arrays.stream(hours).mapToDouble(year::windSpeedMs).toArray())
                .pressureKpa(Arrays.stream(hours).mapToDouble(year::pressureKpa).toArray())
                .skyLongWaveWm2(
                        Arrays.stream(hours).mapToDouble(year::skyLongWaveWm2).toArray())
                .options(RecordOptions.USUAL.withYearlyAir(year.yearlyAir()))
                .build();
        Installation built = Demo.pool(1.8)
                .heater(Demo.HEATER)
                .season(new OpeningSeason(MonthDay.of(5, 1), MonthDay.of(9, 30), Schedule.ALWAYS))
                .startWater(new StartWater.Given(18))
                .build();
        SeasonLedger season = SeasonSimulator.simulate(built, SeasonForcing.of(built, year));
        int first = built.season().firstHour();
        RecordLedger run = RecordSimulator.simulate(
                built,
                SeasonForcing.of(built, record),
                RecordState.water(record.time(first), 18),
                record.time(first + season.hours()));
        assertThat(run.hours()).isEqualTo(season.hours());
        for (int index = 0; index < run.hours(); index++) {
            assertThat(run.waterEndC(index)).isEqualTo(season.waterEndC(index));
            assertThat(run.boughtKwh(index)).isEqualTo(season.boughtKwh(index));
            for (Flow flow : Flow.values()) {
                assertThat(run.heatJm2(flow, index)).isEqualTo(season.heatJm2(flow, index));
            }
        }
    }

    @Test
    void goesOnFromAnyHourAcrossNewYearAndTheLeapDay() {
        WeatherRecord record = winter(24 * 90).build();
        Installation built = Installation.builder("pool alone", POOL).build();
        SeasonForcing forcing = SeasonForcing.of(built, record);
        RecordLedger whole =
                RecordSimulator.simulate(built, forcing, RecordState.water(record.start(), 8), record.end());
        assertThat(whole.hours()).isEqualTo(24 * 90);
        List<Double> pieces = new ArrayList<>();
        RecordState state = RecordState.water(record.start(), 8);
        for (int hours : new int[] {1, 283, 24, 1200, 17, 635}) {
            RecordLedger piece =
                    RecordSimulator.simulate(built, forcing, state, state.time().plusHours(hours));
            for (int index = 0; index < piece.hours(); index++) {
                pieces.add(piece.waterEndC(index));
            }
            state = piece.endState();
        }
        assertThat(state.time()).isEqualTo(record.end());
        assertThat(pieces)
                .isEqualTo(IntStream.range(0, whole.hours())
                        .mapToObj(whole::waterEndC)
                        .toList());
        assertThat(IntStream.range(0, whole.hours())
                        .filter(index ->
                                whole.time(index).toLocalDate().toString().equals("2020-02-29"))
                        .count())
                .isEqualTo(24);
    }

    @Test
    void theLedgerClosesInEveryHour() {
        WeatherRecord record = winter(24 * 90).build();
        Installation built = Installation.builder("pool alone", POOL).build();
        RecordLedger run = RecordSimulator.simulate(
                built, SeasonForcing.of(built, record), RecordState.water(record.start(), 8), record.end());
        for (int index = 0; index < run.hours(); index++) {
            double sum = 0;
            for (Flow flow : Flow.values()) {
                sum += run.heatJm2(flow, index);
            }
            assertThat(sum).isCloseTo(run.storedJm2(index), within(ROUNDING_JM2));
        }
    }

    @Test
    void waterBetweenTwoHoursLiesOnALine() {
        WeatherRecord record = winter(48).build();
        Installation built = Installation.builder("pool alone", POOL).build();
        RecordLedger run = RecordSimulator.simulate(
                built, SeasonForcing.of(built, record), RecordState.water(record.start(), 20), record.end());
        double quarter = 0.75 * run.waterStartC(7) + 0.25 * run.waterEndC(7);
        assertThat(run.waterC(record.time(7).plusMinutes(15))).isCloseTo(quarter, within(1e-12));
        assertThat(run.waterC(record.end())).isEqualTo(run.waterEndC(47));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> run.waterC(record.end().plusSeconds(1)));
    }

    @Test
    void outOfItsSeasonThePoolStandsFilled() {
        WeatherRecord record = winter(24 * 90).build();
        Installation built = Demo.pool(1.8)
                .heater(Demo.HEATER)
                .season(new OpeningSeason(MonthDay.of(1, 10), MonthDay.of(2, 29), Schedule.ALWAYS))
                .build();
        RecordLedger run = RecordSimulator.simulate(
                built, SeasonForcing.of(built, record), RecordState.water(record.start(), 8), record.end());
        for (int index = 0; index < run.hours(); index++) {
            MonthDay day = MonthDay.from(run.time(index));
            boolean open = day.getMonthValue() == 2 || (day.getMonthValue() == 1 && day.getDayOfMonth() >= 10);
            if (!open) {
                assertThat(run.boughtKwh(index)).as("%s", run.time(index)).isZero();
            }
        }
        // 29 February is open as 28 February is
        int leapNoon = (int) ChronoUnit.HOURS.between(record.start(), LocalDateTime.of(2020, 2, 29, 3, 0));
        assertThat(run.boughtKwh(leapNoon)).isPositive();
    }

    @Test
    void refusesWhatDoesNotFit() {
        WeatherRecord record = winter(48).build();
        Installation built = Installation.builder("pool alone", POOL).build();
        SeasonForcing forcing = SeasonForcing.of(built, record);
        RecordState start = RecordState.water(record.start(), 8);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RecordSimulator.simulate(
                        built, forcing, start, record.end().plusHours(1)))
                .withMessageContaining("by the end of the weather record, 2019-12-22T05:00");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RecordSimulator.simulate(
                        built, forcing, RecordState.water(record.start().minusHours(1), 8), record.end()))
                .withMessageContaining("the weather record runs from 2019-12-20 05:00 to 2019-12-22 05:00");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RecordSimulator.simulate(
                        built, forcing, start, record.start().plusMinutes(90)))
                .withMessageContaining("full hour");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SeasonSimulator.simulate(built, forcing))
                .withMessageContaining("run it with RecordSimulator");
        WeatherYear year = Demo.weather("cool-coast");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RecordSimulator.simulate(built, SeasonForcing.of(built, year), start, record.end()))
                .withMessageContaining("prepare it in a weather record");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RecordSimulator.simulate(
                        built, forcing, new RecordState(record.start(), 8, 0, List.of(true)), record.end()))
                .withMessageContaining("1 circuits");
    }

    @Test
    void anHourBeyondTheFirstYearIsNamedByItsDate() {
        int hours = HourOfYear.HOURS + 24 * 60;
        WeatherRecord record =
                record(hours, hour -> hour < HourOfYear.HOURS ? 12 : -30).build();
        Installation built = Installation.builder("pool alone", Pool.of(50, 0.2, new PoolSetting.Outdoor(1)))
                .build();
        assertThatExceptionOfType(ImpossibleSeasonException.class)
                .isThrownBy(() -> RecordSimulator.simulate(
                        built, SeasonForcing.of(built, record), RecordState.water(record.start(), 12), record.end()))
                .withMessageContaining("all the water is ice by 2020-12-");
    }

    @Test
    void aPoolAloneHasNoRoof() {
        Installation alone = Installation.builder("pool alone", POOL).build();
        assertThatIllegalStateException()
                .isThrownBy(alone::roof)
                .withMessageContaining("is a pool alone, without a roof");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> alone.toBuilder().arrays(Demo.FLAT).build())
                .withMessageContaining("start it with Installation.builder(name, pool, roof)");
    }

    private static WeatherRecord.Builder winter(int hours) {
        return record(hours, hour -> 4 + 3 * Math.cos(2 * Math.PI * (hour - 10) / 24.0));
    }

    private static WeatherRecord.Builder record(int hours, IntToDoubleFunction airC) {
        double[] air = IntStream.range(0, hours).mapToDouble(airC).toArray();
        return WeatherRecord.builder(SITE, "invented", OVER_A_LEAP_DAY)
                .globalWm2(IntStream.range(0, hours)
                        .mapToDouble(hour -> Math.max(0, 400 * Math.cos(2 * Math.PI * (hour - 7.5) / 24.0)))
                        .toArray())
                .airC(air)
                .dewPointC(Arrays.stream(air).map(t -> t - 3).toArray())
                .windSpeedMs(IntStream.range(0, hours)
                        .mapToDouble(hour -> 2 + hour % 5)
                        .toArray());
    }
}
