package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SyntheticYear;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.StartWater;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A season that goes on from where another ended. */
class SeasonStateTest {

    private static final MonthDay OPENS = MonthDay.of(5, 1);
    private static final MonthDay CLOSES = MonthDay.of(6, 30);

    /** A pool forgets its start over some weeks; this is what is left after a year. */
    private static final double FORGOTTEN_K = 1e-6;

    private static final CollectorArray RACK =
            new CollectorArray("rack", 150, new Mounting.OpenRack(30, 180, 2, 4, 5, 0.3), Absorber.USUAL_MAT);

    private final WeatherYear desert = Demo.weather("hot-dry");

    @Test
    void aSeasonCutInTwoIsTheWholeBitForBit() {
        // a deep cold pool that warms slowly past what the plates are at midnight
        WeatherYear warmNights = SyntheticYear.at(40)
                .sunless()
                .airC(hour -> 26 + 5 * Math.cos(2 * Math.PI * (hour - 15) / 24))
                .build();
        Installation whole =
                open(Demo.pool(4).arrays(Demo.FLAT, RACK).startWater(new StartWater.Given(10)), OPENS, CLOSES);
        SeasonForcing forcing = SeasonForcing.of(whole, warmNights);
        SeasonLedger uncut = SeasonSimulator.simulate(whole, forcing);
        int pumpsMattered = 0;
        for (int day = 2; day <= 31; day++) {
            SeasonState state = SeasonSimulator.simulate(until(whole, MonthDay.of(5, day)), forcing)
                    .endState();
            Installation rest = from(whole, MonthDay.of(5, day));
            int cut = (day - 1) * 24;
            SeasonLedger resumed = SeasonSimulator.resume(rest, forcing, state);
            assertThat(bits(resumed, 0)).as("from day %d", day).isEqualTo(bits(uncut, cut));
            SeasonState atRest = new SeasonState(state.hourOfYear(), state.waterC(), 0, List.of(false, false));
            if (!bits(SeasonSimulator.resume(rest, forcing, atRest), 0).equals(bits(uncut, cut))) {
                pumpsMattered++;
            }
        }
        assertThat(pumpsMattered).as("nights in which a pump ran past midnight").isPositive();
    }

    @Test
    void iceGoesOnToo() {
        WeatherYear frost = SyntheticYear.at(50)
                .sunless()
                .airC(hour -> -6)
                .dewPointC(hour -> -9)
                .build();
        Installation whole = open(
                Demo.pool(1.2).arrays().startWater(new StartWater.Given(3)), MonthDay.of(1, 1), MonthDay.of(1, 31));
        SeasonForcing forcing = SeasonForcing.of(whole, frost);
        SeasonLedger uncut = SeasonSimulator.simulate(whole, forcing);
        SeasonState state = SeasonSimulator.simulate(until(whole, MonthDay.of(1, 21)), forcing)
                .endState();
        assertThat(state.iceJm2()).isPositive();
        SeasonLedger resumed = SeasonSimulator.resume(from(whole, MonthDay.of(1, 21)), forcing, state);
        assertThat(bits(resumed, 0)).isEqualTo(bits(uncut, 20 * 24));
        assertThat(resumed.storedJm2(0)).isEqualTo(uncut.storedJm2(20 * 24));
    }

    @Test
    void yearFollowsYear() {
        Installation year = Demo.pool(1.5)
                .season(OpeningSeason.wholeYear())
                .startWater(new StartWater.Given(25))
                .build();
        SeasonForcing forcing = SeasonForcing.of(year, desert);
        SeasonLedger first = SeasonSimulator.simulate(year, forcing);
        SeasonLedger second = SeasonSimulator.resume(year, forcing, first.endState());
        SeasonLedger third = SeasonSimulator.resume(year, forcing, second.endState());
        assertThat(second.waterStartC(0)).isEqualTo(first.waterEndC(first.hours() - 1));
        assertThat(second.waterStartC(0)).isNotCloseTo(25, within(1.0));
        assertThat(third.waterEndC(0)).isCloseTo(second.waterEndC(0), within(FORGOTTEN_K));
    }

    @Test
    void refusesASeasonThatBeginsElsewhereOrHasOtherCircuits() {
        Installation built = open(Demo.pool(1.5), OPENS, CLOSES);
        SeasonForcing forcing = SeasonForcing.of(built, desert);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SeasonSimulator.resume(built, forcing, new SeasonState(0, 20, 0, List.of(false))))
                .withMessage("the state stands at 01-01 00:00 (month-day hour), the season of \"invented pool\" begins"
                        + " at 05-01 00:00: let it open on that day");
        int first = built.season().firstHour();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SeasonSimulator.resume(built, forcing, new SeasonState(first, 20, 0, List.of())))
                .withMessage("the state has 0 circuits, \"invented pool\" has 1 arrays: say for each whether its pump"
                        + " runs");
    }

    /** Forcing of another pool would go on without a word. */
    @Test
    void refusesForcingOfSomethingElse() {
        Installation built = Demo.pool(1.5).build();
        WeatherYear weather = Demo.weather("warm-inland");
        SeasonState state = new SeasonState(built.season().firstHour(), 20, 0, List.of(false));
        SeasonForcing other = SeasonForcing.of(Demo.pool(1.2).build(), weather);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SeasonSimulator.resume(built, other, state))
                .withMessageContaining("pool");
    }

    @Test
    void refusesWhatNoPoolIs() {
        List<Boolean> none = List.of();
        assertThatIllegalArgumentException().isThrownBy(() -> new SeasonState(8760, 20, 0, none));
        assertThatIllegalArgumentException().isThrownBy(() -> new SeasonState(0, -0.1, 0, none));
        assertThatIllegalArgumentException().isThrownBy(() -> new SeasonState(0, Double.NaN, 0, none));
        assertThatIllegalArgumentException().isThrownBy(() -> new SeasonState(0, 0, -1, none));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SeasonState(0, 1, 5, none))
                .withMessage("heat of the ice must be 0 or above, and 0 in water above 0.0 degC, was 5.0 J/m2 in water"
                        + " of 1.0 degC");
        assertThat(new SeasonState(0, 0, 5, none).iceJm2()).isEqualTo(5);
    }

    private static Installation open(Installation.Builder builder, MonthDay first, MonthDay last) {
        return builder.season(new OpeningSeason(first, last, Schedule.ALWAYS)).build();
    }

    /** The season up to the evening before a day of the same month. */
    private static Installation until(Installation whole, MonthDay day) {
        return open(whole.toBuilder(), whole.season().first(), day.withDayOfMonth(day.getDayOfMonth() - 1));
    }

    private static Installation from(Installation whole, MonthDay day) {
        return open(whole.toBuilder(), day, whole.season().last());
    }

    private static List<Long> bits(SeasonLedger ledger, int from) {
        List<Long> bits = new ArrayList<>();
        for (int index = from; index < ledger.hours(); index++) {
            bits.add(Double.doubleToRawLongBits(ledger.waterEndC(index)));
            bits.add(Double.doubleToRawLongBits(ledger.iceJm2(index)));
            for (Flow flow : Flow.values()) {
                bits.add(Double.doubleToRawLongBits(ledger.heatJm2(flow, index)));
            }
        }
        return bits;
    }
}
