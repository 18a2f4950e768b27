package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Steps of an hour against steps of a minute with the same equations, from the second day on (the first one forgets the
 * state the pumps started in). The southern season runs over New Year. The tolerances are the accuracy the library promises in docs/model.md.
 */
class ConvergenceTest {

    private static final double DEEP_RMS_K = 0.02;
    private static final double SHALLOW_RMS_K = 0.03;
    private static final double HEAT_SHARE = 0.005;

    @TestFactory
    List<DynamicTest> anHourStepIsAsGoodAsSixtyMinuteSteps() {
        List<DynamicTest> tests = new ArrayList<>();
        CollectorArray rack =
                new CollectorArray("rack", 150, new Mounting.OpenRack(30, 180, 2, 4, 5, 0.3), Absorber.USUAL_MAT);
        for (String sample : List.of("cool-coast", "warm-inland", "hot-dry", "southern-temperate")) {
            WeatherYear weather = Demo.weather(sample);
            for (double depth : new double[] {0.6, 1.2, 1.8}) {
                add(tests, sample + " plain", depth, weather, Demo.pool(depth));
                add(
                        tests,
                        sample + " low limit",
                        depth,
                        weather,
                        Demo.pool(depth).control(Control.withLimit(25)));
                add(tests, sample + " heater", depth, weather, Demo.pool(depth).heater(Demo.HEATER));
                add(
                        tests,
                        sample + " heater at the limit, two arrays, cover, pipes",
                        depth,
                        weather,
                        Demo.pool(depth)
                                .arrays(Demo.FLAT, rack)
                                .heater(new Boiler(Fuel.PROPANE, 0.9, 60, 27))
                                .control(Control.withLimit(27))
                                .cover(Cover.bubble(Schedule.daily(20, 8)))
                                .pipes(new Pipes(40, 500)));
                add(
                        tests,
                        sample + " shaded, heater above the limit",
                        depth,
                        weather,
                        Demo.pool(depth)
                                // by day it loses heat at the limit while the collectors have some to give
                                .pool(Pool.of(312.5, depth, new PoolSetting.Outdoor(0.3, 0.8, 1)))
                                .heater(new Boiler(Fuel.PROPANE, 0.9, 80, 27))
                                .control(Control.withLimit(25)));
                add(
                        tests,
                        sample + " cooled by night",
                        depth,
                        weather,
                        Demo.pool(depth)
                                .control(new Control(8, 0.3, 24, Schedule.ALWAYS).sheddingAboveC(24))
                                .pipes(new Pipes(40, 500)));
            }
        }
        return tests;
    }

    private static void add(
            List<DynamicTest> tests, String name, double depth, WeatherYear weather, Installation.Builder builder) {
        if (weather.site().southern()) {
            builder.season(new OpeningSeason(MonthDay.of(11, 1), MonthDay.of(3, 31), Schedule.ALWAYS));
        }
        tests.add(DynamicTest.dynamicTest(
                String.format(Locale.ROOT, "%s, %.1f m", name, depth), () -> compare(builder.build(), depth, weather)));
    }

    private static void compare(Installation installation, double depth, WeatherYear weather) {
        SeasonForcing forcing = SeasonForcing.of(installation, weather);
        SeasonLedger ledger = SeasonSimulator.simulate(installation, forcing);
        MinuteSteps minutes = new MinuteSteps(installation, forcing, ledger.waterStartC(0));
        double square = 0;
        for (int index = 24; index < ledger.hours(); index++) {
            double error = ledger.waterEndC(index) - minutes.waterC[index];
            square += error * error;
        }
        double rms = Math.sqrt(square / (ledger.hours() - 24));
        assertThat(rms).as("water temperature, K rms").isLessThan(depth < 1.2 ? SHALLOW_RMS_K : DEEP_RMS_K);
        double heat = ledger.heatKwh(Flow.COLLECTORS, Periods.season(ledger))
                + ledger.heatKwh(Flow.PIPES, Periods.season(ledger))
                + ledger.heatKwh(Flow.HEATER, Periods.season(ledger));
        double reference = (minutes.collectorsJm2 + minutes.heaterJm2)
                / 3.6e6
                * installation.pool().areaM2();
        assertThat(heat / reference - 1).as("season heat, share").isBetween(-HEAT_SHARE, HEAT_SHARE);
    }
}
