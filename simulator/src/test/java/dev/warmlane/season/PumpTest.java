package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.circuit.Control;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import org.junit.jupiter.api.Test;

/** The pump of flat mats on a summer noon and in a summer night, alone. */
class PumpTest {

    private static final double ON_K = 4;
    private static final double OFF_K = 0.3;
    private static final double NEVER_C = Double.POSITIVE_INFINITY;
    private static final int NOON = HourOfYear.of(6, 21, 12);
    private static final int NIGHT = HourOfYear.of(6, 21, 2);

    /** A switching temperature is found to 1e-10 K, at some 300 W/m²K of what flows through the collectors. */
    private static final double FOUND_WM2 = 1e-6;

    private static final double EPSILON_K = 1e-6;

    private final Installation installation = Demo.pool(1.5)
            .control(new Control(ON_K, OFF_K, 30, Schedule.ALWAYS))
            .build();
    private final SeasonForcing forcing = SeasonForcing.of(installation, Demo.weather("hot-dry"));
    private final double noonC = forcing.collectors().get(0).curves().stagnationC(NOON);
    private final double nightC = forcing.collectors().get(0).curves().stagnationC(NIGHT);
    private final Circuit circuit =
            new Circuit(Demo.FLAT, forcing.collectors().get(0), 0, installation.control(), 312.5);
    private final Pump pump = new Pump(circuit, null);

    @Test
    void startsWhereTheDryPlateIsWarmerByTheStartDifference() {
        pump.startHour(NOON, noonC - ON_K + EPSILON_K, true, NEVER_C);
        assertThat(pump.running()).isFalse();
        pump.startHour(NOON, noonC - ON_K - EPSILON_K, true, NEVER_C);
        assertThat(pump.running()).isTrue();
    }

    @Test
    void onceRunningItGoesOnWhereItWouldNotStart() {
        double between = noonC - ON_K + 1;
        pump.setRunning(true);
        pump.startHour(NOON, between, true, NEVER_C);
        assertThat(pump.running()).isTrue();
        pump.startHour(NOON, noonC, true, NEVER_C);
        assertThat(pump.running()).isFalse();
        pump.startHour(NOON, between, true, NEVER_C);
        assertThat(pump.running()).isFalse();
    }

    @Test
    void standsInHoursThatAreNotItsOwn() {
        pump.setRunning(true);
        pump.startHour(NOON, 20, false, NEVER_C);
        assertThat(pump.running()).isFalse();
        assertThat(pump.switchC(NOON, 60, 10)).as("no start").isNaN();
    }

    @Test
    void stopsWhereTheWaterWarmsByLessThanTheStopDifference() {
        pump.startHour(NOON, 20, true, NEVER_C);
        double stopC = pump.switchC(NOON, 20, noonC);
        pump.look(NOON, stopC);
        assertThat(pump.heat).isCloseTo(OFF_K * circuit.capacityFlow, within(FOUND_WM2));
        assertThat(pump.switchC(NOON, stopC + 1, 20)).as("cooling").isNaN();
        pump.switchC(NOON, 20, noonC);
        pump.reached(stopC - EPSILON_K, NEVER_C);
        assertThat(pump.running()).as("not its own temperature").isTrue();
        pump.reached(stopC, NEVER_C);
        assertThat(pump.running()).isFalse();
    }

    @Test
    void startsOnTheWayDown() {
        pump.startHour(NOON, noonC, true, NEVER_C);
        assertThat(pump.switchC(NOON, noonC, noonC - ON_K - 1)).isEqualTo(noonC - ON_K);
        pump.reached(noonC - ON_K, NEVER_C);
        assertThat(pump.running()).isTrue();
    }

    @Test
    void staysWhereNothingWasLookedFor() {
        pump.startHour(NOON, noonC, true, NEVER_C);
        pump.switchC(NOON, noonC, noonC - ON_K - 1);
        pump.stay();
        pump.reached(noonC - ON_K, NEVER_C);
        assertThat(pump.running()).isFalse();
    }

    @Test
    void coolsAPoolThatIsTooWarmAndNoOther() {
        double warm = nightC + 2 * ON_K;
        pump.startHour(NIGHT, warm, true, warm);
        assertThat(pump.shedding()).as("at the threshold").isFalse();
        pump.startHour(NIGHT, nightC + ON_K - EPSILON_K, true, 10);
        assertThat(pump.shedding()).as("plate too near").isFalse();
        pump.startHour(NIGHT, warm, true, warm - 1);
        assertThat(pump.shedding()).isTrue();
        assertThat(pump.running()).isFalse();
        pump.reached(warm - 0.5, warm - 1);
        assertThat(pump.shedding()).isTrue();
        pump.reached(warm - 1, warm - 1);
        assertThat(pump.shedding()).isFalse();
    }

    @Test
    void looksAgainOnlyWhereSomethingChanged() {
        pump.look(NOON, 20);
        double noon = pump.heat;
        assertThat(noon).isEqualTo(circuit.heatWm2(NOON, 20));
        assertThat(pump.heatSlope).isEqualTo(circuit.heatSlopeWm2K(NOON, 20));
        assertThat(pump.toAir).isEqualTo(circuit.toAirWm2(NOON, 20, noon));
        pump.look(NIGHT, 20);
        assertThat(pump.heat).isEqualTo(circuit.heatWm2(NIGHT, 20));
        pump.look(NIGHT, 21);
        assertThat(pump.heat).isEqualTo(circuit.heatWm2(NIGHT, 21));
    }

    /** With a stop difference so small that half the start difference would already be worth pumping for. */
    @Test
    void coolsNothingBeforeThePlateIsColderByTheStartDifference() {
        Control fine = new Control(ON_K, OFF_K / 10, 30, Schedule.ALWAYS);
        Circuit willing = new Circuit(Demo.FLAT, forcing.collectors().get(0), 0, fine, 312.5);
        double near = nightC + ON_K / 2;
        assertThat(willing.heatWm2(NIGHT, near)).isLessThan(-OFF_K / 10 * willing.capacityFlow);
        assertThat(willing.coolsEnough(NIGHT, near)).isFalse();
        assertThat(willing.coolsEnough(NIGHT, nightC + ON_K + EPSILON_K)).isTrue();
    }

    /** What is heat without pipes may arrive as none: the rise that a rule is told is that of the water that comes back. */
    @Test
    void tellsARuleTheRiseThatArrives() {
        Circuit piped = new Circuit(Demo.FLAT, forcing.collectors().get(0), 2, installation.control(), 312.5);
        double[] told = new double[2];
        Pump ruled = new Pump(piped, (hour, poolC, dryPlateC, riseK) -> {
            told[0] = dryPlateC;
            told[1] = riseK;
            return 0.25;
        });
        ruled.startHour(NOON, 30, true, NEVER_C);
        double poolToAirK = 30 - forcing.collectors().get(0).airC(NOON);
        assertThat(poolToAirK).as("pipes lose").isNotZero();
        assertThat(told[0]).isEqualTo(noonC);
        assertThat(told[1])
                .isCloseTo(piped.givenWm2(NOON, 30) / piped.capacityFlow, within(1e-12))
                .isNotCloseTo(piped.heatWm2(NOON, 30) / piped.capacityFlow, within(1e-3));
        assertThat(ruled.running()).isTrue();
        assertThat(ruled.part()).isEqualTo(0.25);
        assertThat(ruled.switchC(NOON, 30, 40)).as("a rule decides by the hour").isNaN();
    }
}
