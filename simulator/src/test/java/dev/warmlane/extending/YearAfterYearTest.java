package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.heater.Heater;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.StartWater;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.season.SeasonState;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Years that follow each other, and a season in which something is changed. */
class YearAfterYearTest {

    /** A pool forgets where it began within some weeks. */
    private static final double FORGOTTEN_K = 0.001;

    private static final Installation OPEN_ALL_YEAR = Lido.built()
            .season(OpeningSeason.wholeYear())
            .startWater(new StartWater.Given(15))
            .build();

    /** One ledger for each year of weather; each year begins where the one before ended. */
    static List<SeasonLedger> yearAfterYear(Installation built, List<WeatherYear> years) {
        List<SeasonLedger> ledgers = new ArrayList<>();
        Optional<SeasonState> state = Optional.empty();
        for (WeatherYear weather : years) {
            SeasonForcing forcing = SeasonForcing.of(built, weather);
            SeasonLedger ledger = state.map(start -> SeasonSimulator.resume(built, forcing, start))
                    .orElseGet(() -> SeasonSimulator.simulate(built, forcing));
            ledgers.add(ledger);
            state = Optional.of(ledger.endState());
        }
        return ledgers;
    }

    @Test
    void eachBeginsWhereTheOneBeforeEnded() {
        WeatherYear cool = OwnWeatherTest.Archive.year(0);
        WeatherYear warm = OwnWeatherTest.Archive.year(6);
        List<SeasonLedger> ledgers = yearAfterYear(OPEN_ALL_YEAR, List.of(warm, cool, cool));
        int last = HourOfYear.HOURS - 1;
        for (int year = 1; year < 3; year++) {
            assertThat(ledgers.get(year).waterStartC(0))
                    .isEqualTo(ledgers.get(year - 1).waterEndC(last));
        }
        // the warm year is felt in January, and forgotten by summer
        assertThat(ledgers.get(1).waterStartC(0)).isGreaterThan(ledgers.get(2).waterStartC(0) + 1);
        int june = HourOfYear.of(6, 1, 0);
        assertThat(ledgers.get(1).waterEndC(june)).isCloseTo(ledgers.get(2).waterEndC(june), within(FORGOTTEN_K));
    }

    /** June without a heater; from the first of July on it is there. */
    static SeasonLedger heaterFromJuly(Installation built, Heater heater, WeatherYear weather) {
        Installation june = built.toBuilder()
                .season(new OpeningSeason(MonthDay.of(6, 1), MonthDay.of(6, 30), Schedule.ALWAYS))
                .build();
        Installation july = built.toBuilder()
                .season(new OpeningSeason(MonthDay.of(7, 1), MonthDay.of(7, 31), Schedule.ALWAYS))
                .heater(heater)
                .build();
        SeasonState lastOfJune =
                SeasonSimulator.simulate(june, SeasonForcing.of(june, weather)).endState();
        return SeasonSimulator.resume(july, SeasonForcing.of(july, weather), lastOfJune);
    }

    @Test
    void somethingMayChangeOnADay() {
        Installation built = Lido.built().build();
        SeasonLedger unchanged = Lido.season(built);
        SeasonLedger july = heaterFromJuly(built, Lido.HEATER, Lido.WEATHER);
        int first = 30 * 24;
        assertThat(july.waterStartC(0)).isEqualTo(unchanged.waterStartC(first));
        assertThat(july.waterEndC(10)).isGreaterThan(unchanged.waterEndC(first + 10));
    }

    /** A pool that closes does not come back to its opening day by itself. */
    @Test
    void aSeasonBeginsWhereTheStateStands() {
        Installation built = Lido.built().build();
        assertThatThrownBy(() -> yearAfterYear(built, List.of(Lido.WEATHER, Lido.WEATHER)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the state stands at 08-01 00:00")
                .hasMessageContaining("begins at 06-01 00:00");
    }
}
