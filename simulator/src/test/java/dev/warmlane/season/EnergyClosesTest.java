package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.collector.UnglazedForm2013;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.CondensingBoiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.HeatPump;
import dev.warmlane.heater.HeatPumpRating;
import dev.warmlane.heater.Heater;
import dev.warmlane.heater.RatedPoint;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.physics.Water;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.MainsWater;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.StartWater;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.wind.PoolShelter;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every hour of every kind of installation: what warms the water is the sum of the flows, and the flows have their signs. */
class EnergyClosesTest {

    /** The promise of the ledger: rounding of the sum of all flows, and of a joule where hardly anything flows. */
    private static final double CLOSURE = 1e-9;

    private static final Map<String, List<CollectorArray>> ARRAYS = Map.of(
            "no collectors", List.of(),
            "flat", List.of(Demo.FLAT),
            "rack", List.of(array(new Mounting.OpenRack(30, 180, 2, 4, 6, 0.3))),
            "boarded rack facing north",
                    List.of(array(
                            new Mounting.OpenRack(10, 0, 1.5, 3, 1, 0, Mounting.Back.BOARDED, Mounting.WindRun.ROOF))),
            "pitched by certificate",
                    List.of(new CollectorArray(
                            "pitched", 150, new Mounting.FlushOnPitchedRoof(30, 200, 6, 0.005), certificate())),
            "three kinds",
                    List.of(
                            Demo.FLAT.withAreaM2(80),
                            array(new Mounting.OpenRack(30, 180, 2, 4, 6, 0.3)),
                            array(new Mounting.FlushOnPitchedRoof(30, 200, 6, 0.005))));

    @TestFactory
    List<DynamicTest> everyHourCloses() {
        List<DynamicTest> tests = new ArrayList<>();
        for (String sample : List.of("warm-inland", "southern-temperate")) {
            WeatherYear weather = Demo.weather(sample);
            OpeningSeason season = weather.site().southern()
                    ? new OpeningSeason(MonthDay.of(11, 1), MonthDay.of(3, 31), Schedule.daily(10, 20))
                    : new OpeningSeason(MonthDay.of(5, 1), MonthDay.of(9, 30), Schedule.daily(10, 20));
            ARRAYS.forEach((name, arrays) -> {
                Installation plain = Installation.builder(name, outdoor(1.5), Demo.ROOF)
                        .arrays(arrays)
                        .season(season)
                        .build();
                add(tests, sample + ", " + name, plain, weather);
                add(tests, sample + ", " + name + ", everything", everything(plain), weather);
            });
        }
        WeatherYear cool = Demo.weather("cool-coast");
        add(
                tests,
                "whole year",
                Demo.pool(1.2).season(OpeningSeason.wholeYear()).build(),
                cool);
        add(tests, "wading pool", Demo.pool(0.25).heater(Demo.HEATER).build(), cool);
        add(tests, "diving pool", Demo.pool(5).heater(Demo.HEATER).build(), cool);
        add(tests, "small heater", Demo.pool(1.5).heater(heater(5, 30)).build(), cool);
        add(
                tests,
                "heater above the limit",
                Demo.pool(1.5).heater(heater(900, 32)).build(),
                cool);
        Installation shaded = Demo.pool(1.5)
                .pool(Pool.of(312.5, 1.5, new PoolSetting.Outdoor(0.3, 0.8, 1)))
                .heater(heater(80, 27))
                .control(Control.withLimit(25))
                .build();
        add(tests, "shaded, small heater above the limit", shaded, Demo.weather("warm-inland"));
        Installation cooled = Demo.pool(1.2)
                .arrays(Demo.FLAT, array(new Mounting.OpenRack(30, 180, 2, 4, 6, 0.3)))
                .heater(heater(200, 24))
                .pipes(new Pipes(60, 750))
                .control(new Control(4, 0.3, 24, Schedule.ALWAYS).sheddingAboveC(25))
                .build();
        add(tests, "cooled by night", cooled, Demo.weather("hot-dry"));
        HeatPump pump = new HeatPump(
                Fuel.electricity(100),
                HeatPumpRating.of(new RatedPoint(27, 27, 6, 90), new RatedPoint(10, 27, 3.5, 50)),
                12,
                26,
                Schedule.ALWAYS);
        add(tests, "heat pump", Demo.pool(1.5).heater(pump).build(), cool);
        add(
                tests,
                "condensing boiler by night",
                Demo.pool(0.6)
                        .heater(new CondensingBoiler(Fuel.PROPANE, 0.96, 0.88, 300, 28, Schedule.daily(21, 6)))
                        .build(),
                cool);
        Pool hall = Pool.of(250, 1.6, new PoolSetting.Indoor(29, 0.6, 0.1));
        add(tests, "hall", Demo.pool(1.5).pool(hall).heater(heater(300, 28)).build(), cool);
        Installation storm = Demo.pool(1.5)
                .pool(Pool.of(250, 1.6, new PoolSetting.Outdoor(1.2, 0.5, 0.5)))
                .build();
        add(tests, "stormy and shaded", storm, cool);
        return tests;
    }

    private static Installation everything(Installation plain) {
        return plain.toBuilder()
                .pool(plain.pool().withCirculationW(3000))
                .heater(heater(200, 27))
                .cover(Cover.bubble(Schedule.daily(20, 8)))
                .bathers(new Bathers(60, Bathers.USUAL_HEAT_W, Bathers.USUAL_RISE, Schedule.daily(10, 20)))
                .makeUp(new MakeUp(5000, MainsWater.Monthly.constant(14)))
                .pipes(new Pipes(60, 750))
                .control(new Control(4, 0.3, 28, Schedule.daily(7, 21)))
                .startWater(new StartWater.Given(15))
                .build();
    }

    private static void add(List<DynamicTest> tests, String name, Installation installation, WeatherYear weather) {
        tests.add(DynamicTest.dynamicTest(name, () -> check(installation, weather)));
    }

    private static void check(Installation installation, WeatherYear weather) {
        SeasonLedger ledger = SeasonSimulator.simulate(installation, SeasonForcing.of(installation, weather));
        double capacity = installation.pool().depthM() * Water.densityKgM3(25) * Water.specificHeatJKgK(25);
        double setPoint = installation.heater().map(Heater::setPointC).orElse(0.0);
        for (int index = 0; index < ledger.hours(); index++) {
            double sum = 0;
            double size = 1;
            for (Flow flow : Flow.values()) {
                sum += ledger.heatJm2(flow, index);
                size += Math.abs(ledger.heatJm2(flow, index));
            }
            double stored = capacity * (ledger.waterEndC(index) - ledger.waterStartC(index));
            assertThat(Math.abs(stored - sum)).as("hour %d", index).isLessThanOrEqualTo(CLOSURE * size);
            if (index > 0) {
                assertThat(ledger.waterStartC(index)).isEqualTo(ledger.waterEndC(index - 1));
            }
            double pump = installation.pool().circulationW()
                    * 3600
                    / installation.pool().areaM2();
            assertThat(ledger.heatJm2(Flow.CIRCULATION, index)).isCloseTo(pump, within(1e-6));
            assertThat(ledger.heatJm2(Flow.SUN, index)).isNotNegative();
            assertThat(ledger.heatJm2(Flow.HEATER, index)).isNotNegative();
            if (Double.isInfinite(installation.control().shedAboveC())) {
                assertThat(ledger.heatJm2(Flow.COLLECTORS, index)).isNotNegative();
            }
            heldByTheLimits(installation, ledger, index, setPoint);
        }
    }

    /** Collectors give nothing above the limit and take nothing but above their threshold, the heater stops at its set point. */
    private static void heldByTheLimits(Installation installation, SeasonLedger ledger, int index, double setPoint) {
        double lowest = Math.min(ledger.waterStartC(index), ledger.waterEndC(index));
        if (lowest > installation.control().limitC()) {
            assertThat(ledger.heatJm2(Flow.COLLECTORS, index)).isNotPositive();
        }
        if (ledger.heatJm2(Flow.COLLECTORS, index) < 0) {
            assertThat(ledger.waterStartC(index))
                    .isGreaterThan(installation.control().shedAboveC());
        }
        if (lowest > setPoint) {
            assertThat(ledger.heatJm2(Flow.HEATER, index)).isZero();
        }
        double arrays = 0;
        for (int a = 0; a < installation.arrays().size(); a++) {
            assertThat(ledger.runShare(a, index)).isBetween(0.0, 1 + 1e-12);
            arrays += ledger.arrayHeatKwh(a, index);
        }
        assertThat(Math.abs(arrays - ledger.heatKwh(Flow.COLLECTORS, index))).isLessThanOrEqualTo(CLOSURE);
    }

    private static Pool outdoor(double depthM) {
        return Pool.of(312.5, depthM, new PoolSetting.Outdoor(PoolShelter.SUBURBAN));
    }

    private static Heater heater(double capacityKw, double setPointC) {
        return new Boiler(Fuel.NATURAL_GAS, 0.82, capacityKw, setPointC);
    }

    private static CollectorArray array(Mounting mounting) {
        return new CollectorArray("array", 120, mounting, Absorber.USUAL_MAT);
    }

    private static CertificateCurve certificate() {
        return new UnglazedForm2013(0.87, 0.015, 9, 3.5, 0.98)
                .curve(new MatteBlack(), new CertificateCurve.TestStand(false, 2, 0.5, 4));
    }
}
