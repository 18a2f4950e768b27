package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TurningPointsTest {

    /**
     * A crossing is found to a ten-thousandth of its range; over a range of 2 the wind changes the difference by less
     * than 400 kWh/m², and the pump starting an hour earlier or later moves a season's heat by a few hundredths.
     */
    private static final double EQUAL_KWH_M2 = 0.2;

    private static final Runs RUNS = new Runs(2, Progress.SILENT);

    private static Installation template(WeatherYear weather) {
        OpeningSeason season = weather.site().southern()
                ? new OpeningSeason(MonthDay.of(11, 1), MonthDay.of(3, 31), Schedule.ALWAYS)
                : new OpeningSeason(MonthDay.of(5, 1), MonthDay.of(9, 30), Schedule.ALWAYS);
        return Demo.pool(1.8).heater(Demo.HEATER).season(season).build();
    }

    private static MountingOption.Racks racks(WeatherYear weather, double tilt) {
        List<MountingOption> usual = UsualMountings.of(template(weather), weather.site());
        return ((MountingOption.Racks) usual.get(1)).withTiltDeg(tilt);
    }

    private static MountingOption.Flat flat() {
        return new MountingOption.Flat("flat", Mounting.FlatOnRoof.USUAL);
    }

    @Test
    void bothGiveTheSameHeatWhereTheRankingTurns() {
        WeatherYear weather = Demo.weather("cool-coast");
        MountingOption.Racks racks = racks(weather, 30);
        MountingDuel duel = new MountingDuel(template(weather), new SharedForcing(weather), flat(), racks);

        TurningPoints found = TurningPoints.of(template(weather), weather, flat(), racks, RUNS);

        assertThat(found.points())
                .extracting(TurningPoint::variable)
                .containsExactly(
                        TurningVariable.ROOF_WIND_RATIO,
                        TurningVariable.ROOF_ALBEDO,
                        TurningVariable.POOL_TEMPERATURE,
                        TurningVariable.RACK_TILT,
                        TurningVariable.INNER_WIND);
        int crossings = 0;
        for (TurningPoint point : found.points()) {
            if (point.outcome() instanceof TurningPoint.Crossings turned) {
                for (TurningPoint.Crossing crossing : turned.crossings()) {
                    crossings++;
                    MountingDuel.Heats there = duel.at(point.variable(), crossing.value());
                    assertThat(there.margin()).isCloseTo(0, within(EQUAL_KWH_M2));
                    assertThat(there.flat()).isEqualTo(crossing.heatKwhM2());
                    double step = 0.01 * (point.to() - point.from());
                    assertThat(duel.at(point.variable(), crossing.value() - step)
                                            .margin()
                                    > 0)
                            .isEqualTo(crossing.aheadBelow().equals("flat"));
                    assertThat(duel.at(point.variable(), crossing.value() + step)
                                            .margin()
                                    > 0)
                            .isEqualTo(crossing.aheadAbove().equals("flat"));
                }
            } else if (point.outcome() instanceof TurningPoint.NoneInRange none) {
                MountingDuel.Heats there = duel.at(point.variable(), none.at());
                assertThat(Math.abs(there.margin())).isEqualTo(none.smallestMarginKwhM2());
                assertThat(there.margin() > 0).isEqualTo(none.ahead().equals("flat"));
            }
        }
        assertThat(crossings).as("there is something to check").isPositive();
    }

    @Test
    void fixedPitchStartsAtTheTiltThatDoesNotOverlap() {
        WeatherYear weather = Demo.weather("hot-dry");
        MountingOption.Racks close = new MountingOption.Racks(
                "close",
                new Rack(45, 180, 2, 0.3),
                Mounting.Back.OPEN,
                Mounting.WindRun.CHORD,
                Mounting.OpenRack.USUAL_INNER_WIND,
                new RowSpacing.FixedPitch(1.6),
                MountingOption.RoofSide.LONG);
        MountingDuel duel = new MountingDuel(template(weather), new SharedForcing(weather), flat(), close);
        double lowest = duel.lowest(TurningVariable.RACK_TILT);

        assertThat(lowest).isCloseTo(Math.toDegrees(Math.acos(0.8)), within(1e-9));
        assertThat(duel.at(TurningVariable.RACK_TILT, lowest).racks()).isPositive();
    }

    /** The heated pool is warmer than most of the air, so that wind and a board that lets heat through both cost. */
    @Test
    void shelterOfInnerRowsAndABetterBoardHelpTheRacksAlone() {
        WeatherYear weather = Demo.weather("cool-coast");
        MountingDuel duel = new MountingDuel(
                template(weather),
                new SharedForcing(weather),
                flat(),
                racks(weather, 30).withBack(Mounting.Back.BOARDED));
        assertThat(duel.variables()).containsExactly(TurningVariable.values());
        for (TurningVariable variable : List.of(TurningVariable.INNER_WIND, TurningVariable.BOARD_U_VALUE)) {
            MountingDuel.Heats low = duel.at(variable, variable.from());
            MountingDuel.Heats now = duel.at(variable, duel.now(variable));
            MountingDuel.Heats high = duel.at(variable, variable.to());
            assertThat(List.of(high.racks(), now.racks(), low.racks()))
                    .isSorted()
                    .doesNotHaveDuplicates();
            assertThat(low.flat()).isEqualTo(high.flat());
        }
    }

    @Test
    void oneRowHasNoInnerRows() {
        WeatherYear weather = Demo.weather("cool-coast");
        MountingOption.Racks racks = racks(weather, 30);
        Installation few =
                template(weather).toBuilder().arrays(Demo.FLAT.withAreaM2(20)).build();
        assertThat(new MountingDuel(few, new SharedForcing(weather), flat(), racks).variables())
                .doesNotContain(TurningVariable.INNER_WIND);
    }

    @ParameterizedTest
    @ValueSource(strings = {"cool-coast", "warm-inland", "hot-dry", "southern-temperate"})
    void warmWaterIsBetterOffFlatAndColdWaterOnRacks(String site) {
        WeatherYear weather = Demo.weather(site);
        MountingDuel duel = new MountingDuel(template(weather), new SharedForcing(weather), flat(), racks(weather, 30));
        double before = Double.NEGATIVE_INFINITY;

        for (double water : new double[] {16, 20, 24, 28, 32}) {
            double ratio = duel.at(TurningVariable.POOL_TEMPERATURE, water).flat()
                    / duel.at(TurningVariable.POOL_TEMPERATURE, water).racks();
            assertThat(ratio).as("at %s °C", water).isGreaterThan(before);
            before = ratio;
        }
    }

    /** With the pool held warmer than most of the air by a heater; where wind warms the collector it is otherwise. */
    @ParameterizedTest
    @ValueSource(strings = {"cool-coast", "warm-inland", "hot-dry", "southern-temperate"})
    void windIsBorneBetterLyingFlat(String site) {
        WeatherYear weather = Demo.weather(site);
        MountingDuel duel = new MountingDuel(template(weather), new SharedForcing(weather), flat(), racks(weather, 30));
        double before = Double.NEGATIVE_INFINITY;

        for (double ratio : new double[] {0.25, 0.5, 1, 1.5}) {
            MountingDuel.Heats heats = duel.at(TurningVariable.ROOF_WIND_RATIO, ratio);
            assertThat(heats.flat() / heats.racks()).as("at %s", ratio).isGreaterThan(before);
            before = heats.flat() / heats.racks();
        }
    }
}
