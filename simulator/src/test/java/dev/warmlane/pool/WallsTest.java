package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SyntheticYear;
import dev.warmlane.physics.Constants;
import dev.warmlane.physics.Water;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherYear;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Walls above the ground, water that flows through, the heat store of the shell: each by hand. */
class WallsTest {

    private static final MakeUp MAKE_UP = new MakeUp(0, MainsWater.Monthly.constant(11));
    private static final double WATER_J_M3K = Water.densityKgM3(25) * Water.specificHeatJKgK(25);

    private final WeatherYear weather = Demo.weather("warm-inland");
    private final Pool pool = Pool.of(20, 0.5, new PoolSetting.Outdoor(0.3, 0.25, 0.8));

    /** U·A·(T_sa − T_w) of ISO 13790, 11.3.4 (from memory), the vertical's light written out by azimuth. */
    @Test
    void wallsLoseToTheAirOfTheHourWithItsSunAndSky() {
        Walls walls = new Walls(9, 2.5, 0.55);
        PoolForcing forcing = prepared(pool.withWalls(walls));
        PoolFlows flows = new PoolFlows();
        int sunny = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double zenith = Math.toRadians(weather.sun().zenithDeg(hour));
            double beam = weather.sun().isUp(hour) ? weather.directNormalWm2(hour) : 0;
            // the mean over all directions that a wall may face
            double every = IntStream.range(0, 720)
                    .mapToDouble(half -> Math.max(0, Math.sin(zenith) * Math.cos(Math.toRadians(half / 2.0))))
                    .average()
                    .orElseThrow();
            double light = beam * every
                    + 0.5 * weather.diffuseHorizontalWm2(hour)
                    + 0.5 * 0.2 * weather.globalHorizontalWm2(hour);
            double sky =
                    0.5 * 0.8 * (weather.skyLongWaveWm2(hour) - Constants.blackBody(weather.airTemperatureC(hour)));
            double air = weather.airTemperatureC(hour) + 0.04 * (0.55 * 0.75 * light + 0.9 * sky);
            forcing.evaluate(hour, 23, 1, flows);
            assertThat(flows.wm2(Flow.WALLS)).isCloseTo(9 * 2.5 / 20 * (air - 23), within(0.01));
            sunny += beam > 500 ? 1 : 0;
        }
        assertThat(sunny).isGreaterThan(500);
    }

    @Test
    void wallsInAHallMeetTheHall() {
        Pool inside = pool.withSetting(new PoolSetting.Indoor(29, 0.6, 0.075)).withWalls(new Walls(9, 2.5, 0.55));
        PoolFlows flows = new PoolFlows();
        prepared(inside).evaluate(5000, 23, 1, flows);
        assertThat(flows.wm2(Flow.WALLS)).isCloseTo(9 * 2.5 / 20 * 6, within(1e-9));
    }

    @Test
    void throughFlowExchangesTheWaterInItsRetentionTime() {
        PoolFlows flows = new PoolFlows();
        prepared(pool.withThroughFlow(new ThroughFlow(5 * 86_400, new InflowTemperature.Given(14))))
                .evaluate(5000, 23, 0, flows);
        assertThat(flows.wm2(Flow.THROUGH_FLOW)).isCloseTo(0.5 * WATER_J_M3K / (5 * 86_400) * (14 - 23), within(1e-9));
        // it replaces what evaporates
        assertThat(flows.evaporatedKgSM2()).isPositive();
        assertThat(flows.wm2(Flow.MAKE_UP)).isZero();
        prepared(pool).evaluate(5000, 23, 0, flows);
        assertThat(flows.wm2(Flow.THROUGH_FLOW)).isZero();
        assertThat(flows.wm2(Flow.MAKE_UP)).isNegative();
    }

    @Test
    void throughFlowFollowsTheAirOfTheDaysBefore() {
        double[] inflow = new InflowTemperature.MeanAir(2).hourlyC(weather);
        for (int hour : new int[] {0, 30, 5000}) {
            double mean = IntStream.range(hour - 47, hour + 1)
                    .map(h -> Math.floorMod(h, HourOfYear.HOURS))
                    .mapToDouble(weather::airTemperatureC)
                    .average()
                    .orElseThrow();
            assertThat(inflow[hour]).isCloseTo(Math.max(0, mean), within(1e-9));
        }
        assertThat(new InflowTemperature.MeanAir(0.05).hourlyC(weather)[4000])
                .isCloseTo(Math.max(0, weather.airTemperatureC(4000)), within(1e-9));
        WeatherYear frost =
                SyntheticYear.at(50).airC(hour -> -5).dewPointC(hour -> -9).build();
        assertThat(new InflowTemperature.MeanAir(1).hourlyC(frost)).containsOnly(0);
    }

    /** Half as much water again in the shell is the pool of half as much depth again, where nothing else goes by depth. */
    @Test
    void theShellStoresAsWaterDoes() {
        Pool steady = pool.withGroundConductanceWK(0);
        SeasonLedger store = season(steady.withShellStoreM(0.25));
        SeasonLedger deep = season(new Pool(
                20,
                0.75,
                steady.setting(),
                steady.solarAbsorptance(),
                steady.waterEmittance(),
                steady.evaporation(),
                0,
                0));
        for (int index = 0; index < store.hours(); index++) {
            assertThat(store.waterEndC(index)).isEqualTo(deep.waterEndC(index));
        }
        assertThat(season(steady).waterEndC(15)).isNotEqualTo(store.waterEndC(15));
    }

    @Test
    void thePoolNamesTheKindsItHas() {
        assertThat(pool.flows()).doesNotContain(Flow.WALLS, Flow.THROUGH_FLOW).hasSize(Flow.COUNT - 2);
        assertThat(pool.withWalls(new Walls(1, 1, 0)).flows())
                .contains(Flow.WALLS)
                .hasSize(Flow.COUNT - 1);
        assertThat(pool.withThroughFlow(new ThroughFlow(86_400, new InflowTemperature.Given(10)))
                        .flows())
                .contains(Flow.THROUGH_FLOW)
                .hasSize(Flow.COUNT - 1);
    }

    private SeasonLedger season(Pool of) {
        Installation built = Demo.pool(1).pool(of).arrays().build();
        return SeasonSimulator.simulate(built, SeasonForcing.of(built, weather));
    }

    private PoolForcing prepared(Pool of) {
        return PoolForcing.of(of, Optional.empty(), Bathers.NONE, MAKE_UP, weather);
    }
}
