package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SyntheticYear;
import dev.warmlane.circuit.Control;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.MainsWater;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.pool.StartWater;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for every season whatever the numbers are. */
class SeasonInvariantsTest {

    private static final CollectorArray RACK =
            new CollectorArray("rack", 150, new Mounting.OpenRack(30, 180, 2, 4, 5, 0.3), Absorber.USUAL_MAT);

    /** A pool forgets its start over some weeks; this is what is left after two months. */
    private static final double FORGOTTEN_K = 0.05;

    /** One in 312.5 m² raises evaporation by 0.7·5.3/312.5 = 1.2 % and gives 2 W/m²: less than a tenth of a kelvin. */
    private static final double ONE_SWIMMER_K = 0.1;

    private final WeatherYear inland = Demo.weather("warm-inland");
    private final WeatherYear coast = Demo.weather("cool-coast");

    @ParameterizedTest
    @ValueSource(doubles = {14, 20, 26})
    void withoutSunCollectorsHelpOnlyWhereTheAirIsWarmer(double airC) {
        WeatherYear dark = SyntheticYear.at(40)
                .sunless()
                .airC(hour -> airC + 6 * daily(hour))
                .build();
        for (CollectorArray array : List.of(Demo.FLAT, RACK)) {
            SeasonLedger ledger = run(Demo.pool(1.2).arrays(array), dark);
            for (int index = 0; index < ledger.hours(); index++) {
                if (ledger.heatJm2(Flow.COLLECTORS, index) > 0) {
                    assertThat(dark.airTemperatureC(ledger.hourOfYear(index)))
                            .isGreaterThan(Math.min(ledger.waterStartC(index), ledger.waterEndC(index)));
                }
                assertThat(ledger.heatJm2(Flow.SUN, index)).isZero();
            }
        }
    }

    @Test
    void aWindierRoofGivesAWarmPoolLessHeat() {
        for (CollectorArray array : List.of(Demo.FLAT, RACK)) {
            double before = Double.MAX_VALUE;
            for (double ratio : new double[] {0.2, 0.5, 1, 1.5, 2}) {
                SeasonLedger ledger = run(
                        Demo.pool(1.5)
                                .arrays(array)
                                .roof(Demo.ROOF.toBuilder()
                                        .windSpeedRatio(ratio)
                                        .build())
                                .heater(Demo.HEATER),
                        coast);
                double heat = total(ledger, Flow.COLLECTORS);
                assertThat(heat).isLessThan(before);
                before = heat;
            }
        }
    }

    @Test
    void aDeeperPoolSwingsLess() {
        double before = Double.MAX_VALUE;
        for (double depth : new double[] {0.4, 0.8, 1.2, 1.8, 3}) {
            SeasonLedger ledger = run(Demo.pool(depth), inland);
            double swing = 0;
            for (int day = 0; day < ledger.hours() / 24; day++) {
                double low = Double.MAX_VALUE;
                double high = -Double.MAX_VALUE;
                for (int index = 24 * day; index < 24 * day + 24; index++) {
                    low = Math.min(low, ledger.waterEndC(index));
                    high = Math.max(high, ledger.waterEndC(index));
                }
                swing += high - low;
            }
            assertThat(swing).isLessThan(before);
            before = swing;
        }
    }

    @Test
    void moreCollectorsWarmTheSeasonAndGiveLessPerSquareMetre() {
        for (WeatherYear weather : List.of(inland, coast)) {
            double cooler = mean(run(Demo.pool(1.5).arrays().control(Control.withLimit(40)), weather));
            double perM2 = Double.MAX_VALUE;
            for (double area : new double[] {25, 50, 100, 200, 400}) {
                SeasonLedger ledger =
                        run(Demo.pool(1.5).arrays(Demo.FLAT.withAreaM2(area)).control(Control.withLimit(40)), weather);
                assertThat(mean(ledger)).isGreaterThan(cooler);
                assertThat(total(ledger, Flow.COLLECTORS) / area).isLessThan(perM2);
                assertThat(ledger.refusedKwh(Periods.season(ledger))).isZero();
                cooler = mean(ledger);
                perM2 = total(ledger, Flow.COLLECTORS) / area;
            }
        }
    }

    @Test
    void aCoverWarmsThePoolAndSavesHeaterHeat() {
        Cover cover = Cover.bubble(Schedule.daily(20, 8));
        assertThat(mean(run(Demo.pool(1.5).cover(cover), coast))).isGreaterThan(mean(run(Demo.pool(1.5), coast)));
        SeasonLedger covered = run(Demo.pool(1.5).heater(Demo.HEATER).cover(cover), coast);
        SeasonLedger bare = run(Demo.pool(1.5).heater(Demo.HEATER), coast);
        assertThat(total(covered, Flow.HEATER)).isLessThan(total(bare, Flow.HEATER));
        assertThat(covered.evaporatedKg(Periods.season(covered))).isLessThan(bare.evaporatedKg(Periods.season(bare)));
    }

    @Test
    void aPoolForgetsHowItStarted() {
        SeasonLedger cold = run(Demo.pool(1.5).startWater(new StartWater.Given(10)), inland);
        SeasonLedger warm = run(Demo.pool(1.5).startWater(new StartWater.Given(28)), inland);
        assertThat(cold.waterStartC(0)).isEqualTo(10);
        assertThat(warm.waterStartC(0)).isEqualTo(28);
        assertThat(cold.waterEndC(60 * 24)).isCloseTo(warm.waterEndC(60 * 24), within(FORGOTTEN_K));
    }

    /** Standing filled is the same pool without collectors, opened that many days earlier. */
    @Test
    void standingFilledIsThePoolItselfLeftAlone() {
        SeasonLedger opened = run(Demo.pool(1.5).startWater(new StartWater.StandingFilled(30)), inland);
        double filled = PoolForcing.of(
                        opened.installation().pool(),
                        opened.installation().cover(),
                        opened.installation().bathers(),
                        opened.installation().makeUp(),
                        inland)
                .mainsC(HourOfYear.of(4, 1, 0));
        SeasonLedger alone = run(
                Demo.pool(1.5)
                        .arrays()
                        .startWater(new StartWater.Given(filled))
                        .season(new OpeningSeason(MonthDay.of(4, 1), MonthDay.of(4, 30), Schedule.ALWAYS)),
                inland);
        assertThat(opened.waterStartC(0)).isEqualTo(alone.waterEndC(alone.hours() - 1));
    }

    /** Before it opens nobody swims and nothing is splashed out, whatever the schedule of the open pool says. */
    @Test
    void nobodyUsesAPoolThatStandsFilled() {
        MainsWater mains = MainsWater.Monthly.constant(10);
        Installation.Builder standing = Demo.pool(1.5).startWater(new StartWater.StandingFilled(30));
        SeasonLedger quiet = run(standing.makeUp(new MakeUp(0, mains)), inland);
        SeasonLedger busy = run(
                standing.makeUp(new MakeUp(20_000, mains)).bathers(new Bathers(80, 600, 0.7, Schedule.ALWAYS)), inland);
        assertThat(busy.waterStartC(0)).isEqualTo(quiet.waterStartC(0));
        assertThat(busy.waterEndC(0)).isNotEqualTo(quiet.waterEndC(0));
    }

    /** Evaporation follows the swimmers, not that the pool is open to them. */
    @Test
    void aPoolOpenToNobodyIsTheQuietPool() {
        SeasonLedger quiet = run(Demo.pool(1.5).arrays(), inland);
        SeasonLedger nobody = run(Demo.pool(1.5).arrays().bathers(swimmers(0)), inland);
        SeasonLedger one = run(Demo.pool(1.5).arrays().bathers(swimmers(1)), inland);
        assertThat(bits(nobody)).isEqualTo(bits(quiet));
        for (int index = 0; index < quiet.hours(); index++) {
            assertThat(one.waterC(index)).isCloseTo(quiet.waterC(index), within(ONE_SWIMMER_K));
        }
    }

    private static Bathers swimmers(double number) {
        return new Bathers(number, Bathers.USUAL_HEAT_W, Bathers.USUAL_RISE, Schedule.ALWAYS);
    }

    @Test
    void aSeasonRunsOverNewYear() {
        WeatherYear south = Demo.weather("southern-temperate");
        OpeningSeason summer = new OpeningSeason(MonthDay.of(11, 1), MonthDay.of(3, 31), Schedule.ALWAYS);
        SeasonLedger ledger = run(Demo.pool(1.5).season(summer), south);
        assertThat(ledger.hours()).isEqualTo((30 + 31 + 31 + 28 + 31) * 24);
        assertThat(ledger.hourOfYear(0)).isEqualTo(HourOfYear.of(11, 1, 0));
        assertThat(ledger.hourOfYear(61 * 24)).isZero();
        assertThat(ledger.hourOfYear(ledger.hours() - 1)).isEqualTo(HourOfYear.of(3, 31, 23));
        // cut in two at New Year, with the water handed on, it is the same season but for the state of the pump
        SeasonLedger before = run(
                Demo.pool(1.5).season(new OpeningSeason(MonthDay.of(11, 1), MonthDay.of(12, 31), Schedule.ALWAYS)),
                south);
        SeasonLedger after = run(
                Demo.pool(1.5)
                        .season(new OpeningSeason(MonthDay.of(1, 1), MonthDay.of(3, 31), Schedule.ALWAYS))
                        .startWater(new StartWater.Given(before.waterEndC(before.hours() - 1))),
                south);
        assertThat(after.waterEndC(after.hours() - 1)).isEqualTo(ledger.waterEndC(ledger.hours() - 1));
    }

    @Test
    void theSameInputGivesTheSameBitsOnAnyThread() {
        Installation installation =
                Demo.pool(1.5).arrays(Demo.FLAT, RACK).heater(Demo.HEATER).build();
        long[] here = bits(SeasonSimulator.simulate(installation, SeasonForcing.of(installation, inland)));
        SeasonForcing shared = SeasonForcing.of(installation, inland);
        List<CompletableFuture<long[]>> others = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            others.add(CompletableFuture.supplyAsync(() -> bits(SeasonSimulator.simulate(installation, shared))));
            others.add(CompletableFuture.supplyAsync(
                    () -> bits(SeasonSimulator.simulate(installation, SeasonForcing.of(installation, inland)))));
        }
        others.forEach(other -> assertThat(other.join()).isEqualTo(here));
    }

    private static long[] bits(SeasonLedger ledger) {
        long[] bits = new long[ledger.hours() * (Flow.values().length + 1)];
        int at = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            bits[at++] = Double.doubleToRawLongBits(ledger.waterEndC(index));
            for (Flow flow : Flow.values()) {
                bits[at++] = Double.doubleToRawLongBits(ledger.heatJm2(flow, index));
            }
        }
        return bits;
    }

    private static SeasonLedger run(Installation.Builder builder, WeatherYear weather) {
        Installation installation = builder.build();
        return SeasonSimulator.simulate(installation, SeasonForcing.of(installation, weather));
    }

    private static double total(SeasonLedger ledger, Flow flow) {
        return ledger.heatKwh(flow, Periods.season(ledger));
    }

    private static double mean(SeasonLedger ledger) {
        double sum = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            sum += ledger.waterC(index);
        }
        return sum / ledger.hours();
    }

    /** The rhythm of a day, coldest at three, warmest at fifteen o'clock, -1 to 1. */
    private static double daily(int hour) {
        return -Math.cos(2 * Math.PI * (HourOfYear.hourOfDay(hour) - 3) / 24);
    }
}
