package dev.warmlane.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.PlateFlow;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Heater;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.physics.Water;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.StartWater;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.study.LightBudget;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * What holds for whatever sensible thing somebody builds. Not held: arrays described by a certificate have no light budget,
 * since a certificate does not tell one loss from another; their hours still close and keep the limits.
 */
class InstallationFuzzTest {

    /** Preparing a roof's weather takes a hundred times as long as reading a scenario. */
    private static final int PERMILLE = 100;

    private static final double LIQUID_C = 0;

    /** No season of sensible pools in this weather gets warmer: wet air and sun hold shallow water below it. */
    private static final double HOTTEST_C = 45;

    /**
     * A pump that runs goes on where one that stands does not start, so that the colder of two pools may overtake the
     * other by what collectors give within that difference: of so many hours, by no more than a bare plate in wind loses,
     * W/m²K; both own choice.
     */
    private static final double DEAD_BAND_H = 4;

    private static final double PLATE_WM2K = 30;

    /** Rounding of two runs with no pump that switches, K. */
    private static final double ROUNDING_K = 1e-6;

    /** The budget is of the plate's balance at mid-hour, heat is of curves through it every five kelvin. */
    private static final double BUDGET = 0.02;

    private static final double BUDGET_KWH_M2 = 1;

    @Test
    void sensibleInstallationsKeepToPhysics() throws IOException {
        List<WeatherYear> years = SampleYears.read();
        Fuzz.run(
                InstallationFuzzTest.class, PERMILLE, chance -> check(years.get(chance.nextInt(years.size())), chance));
    }

    private static void check(WeatherYear weather, Random chance) {
        Installation built = RandomInstallations.installation(weather.site().southern(), chance);
        SeasonForcing forcing = SeasonForcing.of(built, weather);
        SeasonLedger ledger = SeasonSimulator.simulate(built, forcing);
        LedgerLimits.hold(ledger, LIQUID_C, HOTTEST_C);
        for (int array = 0; array < built.arrays().size(); array++) {
            LightBudget.of(ledger, forcing, weather, array, Periods.season(ledger))
                    .ifPresent(InstallationFuzzTest::notMoreThanLightAndAir);
        }
        moreCollectors(built, forcing, ledger);
        betterHeater(built, forcing, ledger);
        warmerStart(built, forcing, ledger);
        windierPool(built, weather);
    }

    private static void notMoreThanLightAndAir(LightBudget budget) {
        double gains = budget.absorbed();
        for (PlateFlow flow : PlateFlow.values()) {
            gains += flow.side() == PlateFlow.Side.LOST ? Math.max(0, -budget.kwhM2(flow)) : 0;
        }
        assertThat(budget.kwhM2(PlateFlow.ABSORBED_FRONT)).as("light").isLessThanOrEqualTo(budget.irradiance());
        assertThat(budget.useful()).as("heat above gains").isLessThanOrEqualTo(gains * (1 + BUDGET) + BUDGET_KWH_M2);
    }

    /** Half as much again is not colder, as long as neither run has met its limit. */
    private static void moreCollectors(Installation built, SeasonForcing forcing, SeasonLedger ledger) {
        Installation more = built.toBuilder()
                .arrays(built.arrays().stream()
                        .map(a -> a.withAreaM2(a.areaM2() * 1.5))
                        .toArray(CollectorArray[]::new))
                .build();
        SeasonLedger warmer = SeasonSimulator.simulate(more, forcing);
        double limit = built.control().limitC();
        double overtaken = overtakenK(more);
        for (int index = 0; index < ledger.hours() && warmer.waterEndC(index) < limit - 0.5; index++) {
            assertThat(warmer.waterEndC(index))
                    .as("more collectors, hour %d", index)
                    .isGreaterThan(ledger.waterEndC(index) - overtaken);
        }
    }

    /** Who begins warmer is never colder: both lose the difference, and neither overtakes the other. */
    private static void warmerStart(Installation built, SeasonForcing forcing, SeasonLedger ledger) {
        double startC = ((StartWater.Given) built.startWater()).temperatureC();
        Installation later =
                built.toBuilder().startWater(new StartWater.Given(startC + 3)).build();
        SeasonLedger warmer = SeasonSimulator.simulate(later, forcing);
        double overtaken = overtakenK(built);
        for (int index = 0; index < ledger.hours(); index++) {
            assertThat(warmer.waterEndC(index))
                    .as("warmer start, hour %d", index)
                    .isGreaterThan(ledger.waterEndC(index) - overtaken);
        }
    }

    private static double overtakenK(Installation built) {
        double wm2 = built.control().onDifferenceK()
                * PLATE_WM2K
                * built.collectorAreaM2()
                / built.pool().areaM2();
        double capacity = built.pool().depthM() * Water.densityKgM3(25) * Water.specificHeatJKgK(25);
        return DEAD_BAND_H * 3600 * wm2 / capacity + ROUNDING_K;
    }

    private static void betterHeater(Installation built, SeasonForcing forcing, SeasonLedger ledger) {
        if (built.heater().isEmpty()) {
            return;
        }
        Heater heater = built.heater().get();
        double before = gasKwh(ledger);
        if (heater instanceof Boiler boiler) {
            Heater better = new Boiler(
                    boiler.fuel(),
                    Math.min(1, boiler.efficiency() * 1.05),
                    boiler.capacityKw(),
                    boiler.setPointC(),
                    boiler.hours());
            double after = gasKwh(
                    SeasonSimulator.simulate(built.toBuilder().heater(better).build(), forcing));
            assertThat(after).as("gas of a better heater").isLessThanOrEqualTo(before);
        }
        Heater warmer = heater.withSetPointC(heater.setPointC() + 1);
        SeasonLedger warm =
                SeasonSimulator.simulate(built.toBuilder().heater(warmer).build(), forcing);
        assertThat(gasKwh(warm)).as("gas of a warmer pool").isGreaterThanOrEqualTo(before * (1 - LedgerLimits.CLOSURE));
    }

    private static double gasKwh(SeasonLedger ledger) {
        return ledger.boughtKwh(Periods.season(ledger));
    }

    /**
     * From the start on, as long as both pools are warmer and wetter than the air: then wind can only cool. Open water
     * alone: a cover that radiates to the sky may be colder than the air, which then warms it.
     */
    private static void windierPool(Installation built, WeatherYear weather) {
        if (!(built.pool().setting() instanceof PoolSetting.Outdoor outdoor)) {
            return;
        }
        Installation calm = built.withoutCollectors().toBuilder().cover(null).build();
        Installation windy = calm.toBuilder()
                .pool(calm.pool().withSetting(outdoor.withWindFactor(outdoor.windFactor() * 1.2)))
                .build();
        SeasonLedger base = SeasonSimulator.simulate(calm, SeasonForcing.of(calm, weather));
        SeasonLedger cooled = SeasonSimulator.simulate(windy, SeasonForcing.of(windy, weather));
        for (int index = 0; index < base.hours(); index++) {
            int hour = base.hourOfYear(index);
            double start = Math.min(base.waterStartC(index), cooled.waterStartC(index));
            double water = Math.min(start, Math.min(base.waterEndC(index), cooled.waterEndC(index)));
            if (weather.airTemperatureC(hour) >= water
                    || weather.vapourPressureKpa(hour) >= MoistAir.saturationPressureKpa(water)) {
                return;
            }
            assertThat(cooled.waterEndC(index))
                    .as("windier pool, hour %d", index)
                    .isLessThan(base.waterEndC(index) + ROUNDING_K);
        }
    }
}
