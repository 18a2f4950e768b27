package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.warmlane.SyntheticYear;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Every flow of a pool worked by hand: water 25 °C, air 20 °C, dew point 10 °C, 1.5 m/s at the water, mains 10 °C. Steam
 * tables: saturation 3.1698 kPa at 25 °C and 1.2282 kPa at 10 °C, latent heat 2441.7 kJ/kg, specific heat 4.181 kJ/kgK.
 */
class PoolForcingTest {

    /** Steam tables of five digits and the fits of the library agree to some 1e-4. */
    private static final double TABLES_PERCENT = 0.05;

    private static final double WATER_C = 25;
    private static final double AIR_C = 20;
    private static final int NOON = HourOfYear.of(6, 21, 12);
    private static final PoolSetting OPEN = new PoolSetting.Outdoor(0.3);
    private static final MakeUp FROM_MAINS = new MakeUp(0, MainsWater.Monthly.constant(10));

    /** Smith, Löf and Jones: 63.8 + 66.9·1.5 = 164.15 W/m²kPa over 1.9416 kPa. */
    private static final double EVAPORATION = -318.71;

    /** Bowen: 164.15·0.0613 = 10.0624 W/m²K over 5 K. */
    private static final double CONVECTION = -50.312;

    /** 4·0.95·σ·298.15³ and the convection above, in series with a cover of 0.05 m²K/W: 1/(1 + 0.05·15.7732). */
    private static final double UNDER_COVER = 0.55908;

    private final WeatherYear weather = year().build();

    @Test
    void anEmptyOpenPool() {
        PoolFlows flows = flows(OPEN, null, Bathers.NONE, FROM_MAINS, weather, 1);
        assertThat(flows.wm2(Flow.EVAPORATION)).isCloseTo(EVAPORATION, withinPercentage(TABLES_PERCENT));
        assertThat(flows.wm2(Flow.CONVECTION)).isCloseTo(CONVECTION, withinPercentage(TABLES_PERCENT));
        // light finish
        assertThat(flows.wm2(Flow.SUN))
                .isCloseTo(0.85 * weather.globalHorizontalWm2(NOON), withinPercentage(TABLES_PERCENT));
        // 0.95·σ·298.15⁴ = 425.67
        assertThat(flows.wm2(Flow.LONG_WAVE))
                .isCloseTo(0.95 * weather.skyLongWaveWm2(NOON) - 425.67, withinPercentage(TABLES_PERCENT));
        // 60 W/K on 100 m², ground at the air's mean
        assertThat(flows.wm2(Flow.GROUND)).isCloseTo(-3, withinPercentage(TABLES_PERCENT));
        assertThat(flows.wm2(Flow.BATHERS)).isZero();
    }

    @Test
    void whatEvaporatesIsReplacedFromTheMains() {
        PoolFlows closed = flows(OPEN, null, Bathers.NONE, new MakeUp(8640, FROM_MAINS.mains()), weather, 0);
        // 318.71/2441700 = 1.30528e-4 kg/s m², warmed by 15 K
        assertThat(closed.evaporatedKgSM2()).isCloseTo(1.30528e-4, withinPercentage(TABLES_PERCENT));
        assertThat(closed.wm2(Flow.MAKE_UP)).isCloseTo(-8.1861, withinPercentage(TABLES_PERCENT));
        // 8640 L a day are 0.1 kg/s, or 1e-3 kg/s m² on 100 m²: 62.715 W/m² more
        PoolFlows open = flows(OPEN, null, Bathers.NONE, new MakeUp(8640, FROM_MAINS.mains()), weather, 1);
        assertThat(open.wm2(Flow.MAKE_UP)).isCloseTo(-8.1861 - 62.715, withinPercentage(TABLES_PERCENT));
    }

    @Test
    void aCoverActsOnTheShareItIsDrawnOver() {
        Cover whole = new Cover("invented", 0.9, 0.05, 0.2, Schedule.ALWAYS);
        PoolFlows open = flows(OPEN, null, Bathers.NONE, FROM_MAINS, weather, 1);
        PoolFlows covered = flows(OPEN, whole, Bathers.NONE, FROM_MAINS, weather, 1);
        assertThat(covered.wm2(Flow.EVAPORATION)).isCloseTo(0.1 * EVAPORATION, withinPercentage(TABLES_PERCENT));
        assertThat(covered.wm2(Flow.CONVECTION)).isCloseTo(UNDER_COVER * CONVECTION, withinPercentage(TABLES_PERCENT));
        assertThat(covered.wm2(Flow.LONG_WAVE))
                .isCloseTo(UNDER_COVER * open.wm2(Flow.LONG_WAVE), withinPercentage(TABLES_PERCENT));
        assertThat(covered.wm2(Flow.SUN)).isCloseTo(0.8 * open.wm2(Flow.SUN), withinPercentage(TABLES_PERCENT));
        PoolFlows half = flows(OPEN, whole.withDrawn(Schedule.constant(0.5)), Bathers.NONE, FROM_MAINS, weather, 1);
        assertThat(half.wm2(Flow.EVAPORATION)).isCloseTo(0.55 * EVAPORATION, withinPercentage(TABLES_PERCENT));
        assertThat(half.wm2(Flow.CONVECTION))
                .isCloseTo((0.5 + 0.5 * UNDER_COVER) * CONVECTION, withinPercentage(TABLES_PERCENT));
        assertThat(half.wm2(Flow.LONG_WAVE))
                .isCloseTo((0.5 + 0.5 * UNDER_COVER) * open.wm2(Flow.LONG_WAVE), withinPercentage(TABLES_PERCENT));
        assertThat(half.wm2(Flow.SUN)).isCloseTo(0.9 * open.wm2(Flow.SUN), withinPercentage(TABLES_PERCENT));
    }

    @Test
    void thinAirConvectsLessAndEvaporatesAsMuch() {
        // four fifths of an atmosphere, about 1800 m above the sea
        WeatherYear high = year().pressureKpa(0.8 * 101.325).build();
        PoolFlows flows = flows(OPEN, null, Bathers.NONE, FROM_MAINS, high, 1);
        assertThat(flows.wm2(Flow.CONVECTION)).isCloseTo(0.8 * CONVECTION, withinPercentage(TABLES_PERCENT));
        assertThat(flows.wm2(Flow.EVAPORATION)).isCloseTo(EVAPORATION, withinPercentage(TABLES_PERCENT));
    }

    @Test
    void bathersCountByTheirPresence() {
        Bathers halfFull = new Bathers(20, 600, 0.7, Schedule.constant(0.5));
        PoolFlows flows = flows(OPEN, null, halfFull, FROM_MAINS, weather, 1);
        // 10 people of 600 W on 100 m²; 1 + 0.7·5.3·10/100
        assertThat(flows.wm2(Flow.BATHERS)).isCloseTo(60, withinPercentage(TABLES_PERCENT));
        assertThat(flows.wm2(Flow.EVAPORATION)).isCloseTo(1.371 * EVAPORATION, withinPercentage(TABLES_PERCENT));
        assertThat(flows.wm2(Flow.CONVECTION)).isCloseTo(1.371 * CONVECTION, withinPercentage(TABLES_PERCENT));
    }

    /** 500 W over 100 m², in the season alone. */
    @Test
    void theCirculationPumpWarmsTheWaterWhileThePoolIsInUse() {
        assertThat(flows(OPEN, null, Bathers.NONE, FROM_MAINS, weather, 1).wm2(Flow.CIRCULATION))
                .isEqualTo(5);
        assertThat(flows(OPEN, null, Bathers.NONE, FROM_MAINS, weather, 0).wm2(Flow.CIRCULATION))
                .isZero();
    }

    /** 562.5 m³ in 6 h are 0.0260417 m³/s; times 997.05 kg/m³, 9.80665 m/s² and 12 m. */
    @Test
    void aPumpsHydraulicPowerIsFlowTimesHead() {
        assertThat(Pool.circulationPowerW(562.5, 6 * 3600, 12)).isCloseTo(3055.6, withinPercentage(TABLES_PERCENT));
    }

    @Test
    void treesKeepTheirShareOfSunAndSky() {
        PoolSetting below = new PoolSetting.Outdoor(0.3, 0.25, 0.6);
        PoolFlows flows = flows(below, null, Bathers.NONE, FROM_MAINS, weather, 1);
        assertThat(flows.wm2(Flow.SUN))
                .isCloseTo(0.75 * 0.85 * weather.globalHorizontalWm2(NOON), withinPercentage(TABLES_PERCENT));
        // σ·293.15⁴ = 418.77 from the trees
        assertThat(flows.wm2(Flow.LONG_WAVE))
                .isCloseTo(
                        0.95 * (0.6 * weather.skyLongWaveWm2(NOON) + 0.4 * 418.77) - 425.67,
                        // a difference of two numbers five times as large
                        withinPercentage(5 * TABLES_PERCENT));
    }

    private static SyntheticYear year() {
        return SyntheticYear.at(40).airC(hour -> AIR_C).dewPointC(hour -> 10).windMs(hour -> 5);
    }

    private static PoolFlows flows(
            PoolSetting setting,
            @Nullable Cover cover,
            Bathers bathers,
            MakeUp makeUp,
            WeatherYear weather,
            double inUse) {
        Pool pool = new Pool(
                100, 1.5, setting, Pool.LIGHT_FINISH, Pool.WATER_EMITTANCE, Evaporation.SMITH_LOF_JONES, 60, 500);
        PoolFlows flows = new PoolFlows();
        PoolForcing.of(pool, Optional.ofNullable(cover), bathers, makeUp, weather)
                .evaluate(NOON, WATER_C, inUse, flows);
        return flows;
    }
}
