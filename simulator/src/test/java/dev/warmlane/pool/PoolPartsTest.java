package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The small parts of a pool, each by hand. */
class PoolPartsTest {

    private static final PoolSetting OUTDOORS = new PoolSetting.Outdoor(0.3);
    private static final MakeUp MAKE_UP = new MakeUp(2000, MainsWater.Monthly.constant(11));

    private final WeatherYear weather = Demo.weather("warm-inland");
    private final Pool pool = Pool.of(312, 1.5, OUTDOORS);
    private final PoolForcing forcing = PoolForcing.of(pool, Optional.empty(), Bathers.NONE, MAKE_UP, weather);

    /** Powers of two: each sum has one way to come about. */
    @Test
    void netAndSlopeAreTheSumsOfAllThatIsPutIn() {
        PoolFlows flows = new PoolFlows();
        for (int round = 0; round < 2; round++) {
            flows.begin();
            for (Flow flow : Flow.values()) {
                flows.put(flow, 1 << flow.ordinal(), -(1 << (2 * flow.ordinal())));
            }
        }
        assertThat(flows.net()).isEqualTo((1 << Flow.COUNT) - 1);
        assertThat(flows.slope()).isEqualTo(-((1 << (2 * Flow.COUNT)) - 1) / 3.0);
        double[] account = new double[Flow.COUNT + 2];
        flows.addTo(account, 1, 3600);
        flows.addTo(account, 1, 3600);
        assertThat(account[0]).isZero();
        assertThat(account[Flow.COUNT + 1]).isZero();
        for (Flow flow : Flow.values()) {
            assertThat(flows.wm2(flow)).isEqualTo(1 << flow.ordinal());
            assertThat(account[1 + flow.ordinal()]).isEqualTo(7200.0 * (1 << flow.ordinal()));
        }
    }

    /** A kind that nothing evaluates would be a column of zeros; what is built beside the pool is put in by the loop. */
    @Test
    void everyFlowOfThePoolIsEvaluated() {
        PoolForcing busy = PoolForcing.of(
                pool.withCirculationW(1000)
                        .withWalls(new Walls(40, 2, 0.6))
                        .withThroughFlow(new ThroughFlow(864_000, new InflowTemperature.Given(12))),
                Optional.empty(),
                new Bathers(20, Bathers.USUAL_HEAT_W, Bathers.USUAL_RISE, Schedule.ALWAYS),
                MAKE_UP,
                weather);
        PoolFlows flows = new PoolFlows();
        Set<Flow> evaluated = EnumSet.noneOf(Flow.class);
        for (int hour = HourOfYear.of(6, 21, 0); hour < HourOfYear.of(6, 22, 0); hour++) {
            busy.evaluate(hour, 24, 1, flows);
            double sum = 0;
            for (Flow flow : Flow.values()) {
                sum += flows.wm2(flow);
                if (flows.wm2(flow) != 0) {
                    evaluated.add(flow);
                }
            }
            assertThat(flows.net()).isCloseTo(sum, within(1e-9));
        }
        assertThat(evaluated).isEqualTo(EnumSet.complementOf(EnumSet.of(Flow.COLLECTORS, Flow.PIPES, Flow.HEATER)));
    }

    /**
     * The loop steps by the slope and never adds it to the account: Clausius and Clapeyron with an ideal vapour, and make-up
     * water that does not grow with evaporation, leave it 3 % from the flows.
     */
    @Test
    void slopeIsThatOfTheFlows() {
        // under a cover too, through which convection and long-wave are weaker
        Cover cover = new Cover("invented", 0.5, 0.05, 0.2, Schedule.constant(0.9));
        PoolForcing covered = PoolForcing.of(pool, Optional.of(cover), Bathers.NONE, MAKE_UP, weather);
        PoolFlows flows = new PoolFlows();
        for (PoolForcing either : List.of(forcing, covered)) {
            for (int hour = 0; hour < HourOfYear.HOURS; hour += 101) {
                for (double waterC = 8; waterC < 40; waterC += 8) {
                    either.evaluate(hour, waterC + 0.05, 1, flows);
                    double above = flows.net();
                    either.evaluate(hour, waterC - 0.05, 1, flows);
                    double slope = (above - flows.net()) / 0.1;
                    either.evaluate(hour, waterC, 1, flows);
                    assertThat(flows.slope())
                            .as("hour %d, %s degC", hour, waterC)
                            .isCloseTo(slope, withinPercentage(3));
                }
            }
        }
    }

    /** Water that a correlation lets evaporate nothing is allowed; an infinite loss is not. */
    @Test
    void aCorrelationMayGiveNothingButNotEverything() {
        PoolForcing dry =
                PoolForcing.of(pool.withEvaporation(windMs -> 0), Optional.empty(), Bathers.NONE, MAKE_UP, weather);
        PoolFlows flows = new PoolFlows();
        dry.evaluate(HourOfYear.of(8, 3, 15), 26, 1, flows);
        assertThat(flows.wm2(Flow.EVAPORATION)).isZero();
        Pool boundless = pool.withEvaporation(windMs -> Double.POSITIVE_INFINITY);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PoolForcing.of(boundless, Optional.empty(), Bathers.NONE, MAKE_UP, weather))
                .withMessageContaining("Infinity");
    }

    /** What a correlation of one's own need not say: it is of quiet water, with no bound to its wind. */
    @Test
    void aBareCorrelationIsOfQuietWaterInAnyWind() {
        EvaporationCorrelation bare = windMs -> 60;
        assertThat(bare.quietFactor(OUTDOORS)).isEqualTo(1);
        assertThat(bare.strongestWindMs()).isInfinite();
        assertThat(bare.source()).isEqualTo("no source named");
        assertThat(Evaporation.values())
                .allSatisfy(published -> assertThat(published.source()).containsPattern("(19|20)\\d\\d"));
    }

    /** Tables and charts tell flows apart by their words alone. */
    @Test
    void flowsAndSettingsSayWhatTheyAre() {
        assertThat(Stream.of(Flow.values()).map(Flow::label))
                .doesNotHaveDuplicates()
                .doesNotContain("");
        assertThat(OUTDOORS.outdoor()).containsSame((PoolSetting.Outdoor) OUTDOORS);
        assertThat(new PoolSetting.Indoor(28, 0.6, 0).outdoor()).isEmpty();
    }

    @Test
    void holdsItsWeatherAndItsWater() {
        int hour = HourOfYear.of(8, 3, 15);
        assertThat(forcing.airC(hour)).isEqualTo(weather.airTemperatureC(hour));
        assertThat(forcing.mainsC(hour)).isEqualTo(11);
        assertThat(pool.volumeM3()).isCloseTo(468, within(1e-9));
        // 1.5 m of water of 997 kg/m³ and 4.181 kJ/kgK
        assertThat(forcing.heatCapacityJm2K()).isCloseTo(6.253e6, withinPercentage(0.2));
        assertThat(new PoolSetting.Indoor(28, 0.6, 0.12).windAtWaterMs(5)).isEqualTo(0.12);
    }

    /** 28.1 m² hold 100 people of 0.28 m² each. */
    @Test
    void bathersMustFit() {
        assertThatCode(() -> bathers(99.9).checkRoom(28.1)).doesNotThrowAnyException();
        assertThatCode(() -> bathers(100).checkRoom(28)).doesNotThrowAnyException();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bathers(101).checkRoom(28))
                .withMessageContaining("100 at most");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bathers(101).checkRoom(28.1))
                .withMessageContaining("101 bathers")
                .withMessageContaining("100 at most");
    }

    @Test
    void aChangeOfOneThingLeavesTheRest() {
        PoolSetting hall = new PoolSetting.Indoor(28, 0.6, 0.12);
        Pool changed = pool.withSetting(hall)
                .withSolarAbsorptance(0.7)
                .withEvaporation(Evaporation.ASHRAE_CARRIER)
                .withGroundConductanceWK(5)
                .withCirculationW(900);
        assertThat(changed)
                .isEqualTo(new Pool(312, 1.5, hall, 0.7, Pool.WATER_EMITTANCE, Evaporation.ASHRAE_CARRIER, 5, 900));
        assertThat(new PoolSetting.Outdoor(0.3, 0.2, 0.8).withWindFactor(0.1))
                .isEqualTo(new PoolSetting.Outdoor(0.1, 0.2, 0.8));
        assertThat(bathers(9).withGreatestRise(0.3))
                .isEqualTo(new Bathers(9, Bathers.USUAL_HEAT_W, 0.3, Schedule.ALWAYS));
    }

    @Test
    void saysWhatItWasNotPreparedFor() {
        Optional<Cover> cover = Optional.of(Cover.bubble(Schedule.ALWAYS));
        assertThat(forcing.weather()).isSameAs(weather);
        assertThat(forcing.differsFrom(pool, Optional.empty(), Bathers.NONE, MAKE_UP))
                .isEmpty();
        assertThat(forcing.differsFrom(pool.withCirculationW(1), cover, bathers(9), MAKE_UP))
                .contains("pool");
        assertThat(forcing.differsFrom(pool, cover, bathers(9), MAKE_UP)).contains("cover");
        assertThat(forcing.differsFrom(pool, Optional.empty(), bathers(9), MAKE_UP))
                .contains("bathers");
        assertThat(forcing.differsFrom(pool, Optional.empty(), Bathers.NONE, new MakeUp(1, MAKE_UP.mains())))
                .contains("make-up water");
    }

    /** The range of the default, and that the others name none. */
    @Test
    void correlationsKnowTheirWind() {
        assertThat(Evaporation.SMITH_LOF_JONES.strongestWindMs()).isEqualTo(2.2);
        assertThat(Evaporation.ISO_TR_12596.strongestWindMs()).isInfinite();
    }

    @Test
    void mainsWaterIsLiquid() {
        assertThatIllegalArgumentException().isThrownBy(() -> MainsWater.Monthly.constant(41));
    }

    private static Bathers bathers(double number) {
        return new Bathers(number, Bathers.USUAL_HEAT_W, Bathers.USUAL_RISE, Schedule.ALWAYS);
    }
}
