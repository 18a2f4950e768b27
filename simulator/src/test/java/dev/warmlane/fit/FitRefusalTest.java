package dev.warmlane.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.warmlane.fit.FitRefusal.Reason;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.ElectricHeater;
import dev.warmlane.heater.Fuel;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.RecordLedger;
import dev.warmlane.site.Schedule;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Each log that says nothing, or what cannot be, is refused with its reason and what to do. */
class FitRefusalTest {

    private static final ErrorSize SMALL = new ErrorSize(0.1, 24, 0.05);

    private static final RecordLedger TRUTH =
            InventedLog.run(InventedLog.truth(InventedLog.POOL), InventedLog.JUNE, 20);
    private static final WaterLog LOG = InventedLog.log(TRUTH, SMALL, 1);

    private static String refused(Reason reason, Installation built, WaterLog log) {
        FitRefusal refusal = catchThrowableOfType(FitRefusal.class, () -> new PoolFit(built, InventedLog.WEATHER, log)
                .with(FitOptions.USUAL.withDraws(400))
                .fit());
        assertThat(refusal).isNotNull();
        assertThat(refusal.reason()).isEqualTo(reason);
        return String.valueOf(refusal.getMessage());
    }

    private static WaterLog shown(WaterLog log, ToDoubleFunction<WaterLog.Reading> shown) {
        return new WaterLog(
                log.source(),
                log.utcOffsetHours(),
                log.readings().stream()
                        .map(reading -> new WaterLog.Reading(reading.clock(), shown.applyAsDouble(reading)))
                        .toList());
    }

    @Test
    void weatherOfATypicalYear() {
        FitRefusal refusal = catchThrowableOfType(FitRefusal.class, () -> PoolFit.recordOf(Demo.weather("cool-coast")));
        assertThat(refusal.reason()).isEqualTo(Reason.TYPICAL_YEAR);
        assertThat(refusal).hasMessageContaining("not that of the hours of the log");
        assertThat(PoolFit.recordOf(InventedLog.WEATHER)).isSameAs(InventedLog.WEATHER);
    }

    @Test
    void aLogOfOtherHours() {
        WaterLog later = new WaterLog(
                "later",
                LOG.utcOffsetHours(),
                LOG.readings().stream()
                        .map(reading -> new WaterLog.Reading(reading.clock().plusYears(1), reading.waterC()))
                        .toList());
        assertThat(refused(Reason.NO_OVERLAP, InventedLog.POOL, later))
                .contains("from 2020-06-01", "from 2019-05-30", "no hour in common");
    }

    @Test
    void billsOfAnotherHeaterThanABoiler() {
        List<Metered> bills = List.of(new Metered(LocalDate.of(2019, 6, 2), LocalDate.of(2019, 6, 12), 4000));
        Installation electric = InventedLog.POOL.toBuilder()
                .heater(new ElectricHeater(Fuel.electricity(100), 30, 24, Schedule.ALWAYS))
                .build();
        for (Installation built : List.of(InventedLog.POOL, electric)) {
            FitRefusal refusal =
                    catchThrowableOfType(FitRefusal.class, () -> new PoolFit(built, InventedLog.WEATHER, LOG)
                            .withBills(bills)
                            .fit());
            assertThat(refusal.reason()).isEqualTo(Reason.BILLS);
            assertThat(refusal).hasMessageContaining("Leave the bills out");
        }
    }

    /** A log that the simulation itself wrote, to every digit. */
    @Test
    void aLogWithoutAnyError() {
        WaterLog exact = shown(LOG, reading -> TRUTH.waterC(reading.clock().minusHours(1)));
        assertThat(refused(Reason.NOT_SETTLED, InventedLog.POOL, exact)).contains("computed, not measured");
    }

    @Test
    void tooFewHours() {
        assertThat(refused(
                        Reason.TOO_FEW, InventedLog.POOL, LOG.between(InventedLog.JUNE, InventedLog.JUNE.plusDays(5))))
                .contains("over 7 days");
    }

    @Test
    void aFlatLogAndOneThatStoodStill() {
        assertThat(refused(Reason.FLAT, InventedLog.POOL, shown(LOG, reading -> 20 + 0.001 * reading.waterC())))
                .contains("stays between 20.0", "sensor");
        LocalDateTime from = InventedLog.JUNE.plusDays(5);
        LocalDateTime to = from.plusDays(9);
        assertThat(refused(
                        Reason.FLAT,
                        InventedLog.POOL,
                        shown(
                                LOG,
                                reading -> reading.clock().isBefore(from)
                                                || reading.clock().isAfter(to)
                                        ? reading.waterC()
                                        : 19.5)))
                .contains("stands at 19.5", "2019-06-0");
    }

    @Test
    void aSensorOutOfTheWater() {
        assertThat(refused(
                        Reason.OUT_OF_WATER,
                        InventedLog.POOL,
                        shown(
                                LOG,
                                reading -> 16
                                        + 7
                                                * Math.sin(Math.PI
                                                        / 12
                                                        * (reading.clock().getHour() - 9)))))
                .contains("water 1.80 m deep", "out of the water");
    }

    @Test
    void aPoolInAHall() {
        Installation hall = Installation.builder("hall", Pool.of(300, 2, new PoolSetting.Indoor(29, 0.6, 0.075)))
                .build();
        assertThat(refused(Reason.INDOORS, hall, LOG)).contains("in a hall");
    }

    @Test
    void aPoolThatItsHeaterHolds() {
        Installation held = InventedLog.POOL.toBuilder()
                .heater(new Boiler(Fuel.NATURAL_GAS, 0.82, 1200, 38))
                .build();
        RecordLedger run = InventedLog.run(InventedLog.truth(held), InventedLog.JUNE, 20);
        WaterLog log = InventedLog.log(run, SMALL, 1);
        WaterLog held30 = log.between(InventedLog.JUNE.plusDays(3), InventedLog.JUNE.plusDays(20));
        assertThat(refused(Reason.NO_INFORMATION, held, held30)).contains("the heater held the pool", "bills");
    }

    @Test
    void aFitAtTheEdgeOfWhatIsPossible() {
        // a log of a pool a third as deep as it is described, in full sun, swings more than all of the sun makes
        assertThat(refused(
                        Reason.AT_THE_EDGE, InventedLog.POOL, shown(LOG, reading -> 20 + 3 * (reading.waterC() - 18))))
                .contains("at the end of what is possible");
        WaterLog otherZone = new WaterLog("other zone", LOG.utcOffsetHours() + 5, LOG.readings());
        assertThat(refused(Reason.AT_THE_EDGE, InventedLog.POOL, otherZone)).contains("time zone");
    }
}
