package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Controller;
import dev.warmlane.collector.HeatCurves;
import dev.warmlane.physics.Water;
import dev.warmlane.pool.Flow;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.site.HourOfYear;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A controller of one's own: pumps, limit and set point. */
class OwnControllerTest {

    private static final double SAME_C = 1e-6;

    /** Lets the pool be cooler by night, and the collectors warm it more in the evening. */
    record ByDayAndNight(double nightC, double eveningLimitC) implements Controller {

        @Override
        public double setPointC(int hour, double usualC) {
            int hourOfDay = HourOfYear.hourOfDay(hour);
            return hourOfDay >= 21 || hourOfDay < 6 ? nightC : usualC;
        }

        @Override
        public double limitC(int hour, double usualC) {
            return HourOfYear.hourOfDay(hour) >= 15 ? eveningLimitC : usualC;
        }
    }

    /** Runs the pumps as hard as the water gets warmer: all of the hour from 4 K on. */
    record InProportion() implements Controller {

        @Override
        public Optional<PumpRule> pumps() {
            return Optional.of(
                    (hour, poolC, dryPlateC, riseK) -> dryPlateC < poolC ? 0 : Math.max(0, Math.min(1, riseK / 4)));
        }
    }

    /** Deciding each hour what the control says anyway moves no bit. */
    @Test
    void decidesNothingUnlessItIsSaid() {
        Installation usual = Lido.built().heater(Lido.HEATER).build();
        assertThat(Lido.waterC(decided(usual, new Controller() {}))).isEqualTo(Lido.waterC(usual));
    }

    @Test
    void setsTheHeaterByTheHour() {
        Installation usual = Lido.built().heater(Lido.HEATER).build().withoutCollectors();
        SeasonLedger kept = Lido.season(usual);
        SeasonLedger setBack = Lido.season(decided(usual, new ByDayAndNight(22, 28)));
        double saved = 0;
        boolean byDay = false;
        for (int index = 24; index < setBack.hours(); index++) {
            int hourOfDay = HourOfYear.hourOfDay(setBack.hourOfYear(index));
            boolean night = hourOfDay >= 21 || hourOfDay < 6;
            double heat = setBack.heatJm2(Flow.HEATER, index);
            if (night && setBack.waterEndC(index) > 22 + SAME_C) {
                assertThat(heat).isZero();
            }
            byDay |= !night && heat > 0;
            assertThat(setBack.waterC(index)).isLessThanOrEqualTo(kept.waterC(index) + SAME_C);
            saved += kept.heatJm2(Flow.HEATER, index) - heat;
        }
        assertThat(byDay).isTrue();
        assertThat(saved).isPositive();
    }

    @Test
    void limitsTheCollectorsByTheHour() {
        Installation usual = Lido.built().build();
        SeasonLedger ledger = Lido.season(
                decided(usual.toBuilder().control(Control.withLimit(22)).build(), new ByDayAndNight(22, 24)));
        boolean warmedInTheEvening = false;
        boolean heldInTheMorning = false;
        for (int index = 0; index < ledger.hours(); index++) {
            boolean evening = HourOfYear.hourOfDay(ledger.hourOfYear(index)) >= 15;
            double heat = ledger.heatJm2(Flow.COLLECTORS, index);
            if (!evening && ledger.waterStartC(index) > 22 + SAME_C && ledger.waterEndC(index) > 22 + SAME_C) {
                assertThat(heat).isZero();
                heldInTheMorning |= ledger.refusedKwh(index) > 0 || ledger.runShare(0, index) == 0;
            }
            warmedInTheEvening |= evening && ledger.waterStartC(index) > 22.1 && heat > 0;
        }
        assertThat(warmedInTheEvening).isTrue();
        assertThat(heldInTheMorning).isTrue();
    }

    @Test
    void runsThePumpsForAShareOfTheHour() {
        Installation built = decided(Lido.built().build(), new InProportion());
        SeasonForcing forcing = SeasonForcing.of(built, Lido.WEATHER);
        HeatCurves curves = forcing.collectors().get(0).curves();
        SeasonLedger ledger = SeasonSimulator.simulate(built, forcing);
        double capacityFlow = built.arrays().get(0).flowKgSM2() * Water.specificHeatJKgK(25);
        double ratio = built.collectorAreaM2() / built.pool().areaM2();
        int partly = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            int hour = ledger.hourOfYear(index);
            double pool = ledger.waterStartC(index);
            double rise = curves.heatWm2(hour, pool) / capacityFlow;
            double share = curves.stagnationC(hour) < pool ? 0 : Math.max(0, Math.min(1, rise / 4));
            if (ledger.waterEndC(index) < 28) {
                assertThat(ledger.runShare(0, index)).isCloseTo(share, within(1e-9));
                // the pool moves by under 1 K in an hour, which moves the heat by a few per cent of 600 W/m²
                assertThat(ledger.heatJm2(Flow.COLLECTORS, index) / 3600)
                        .isCloseTo(ratio * share * curves.heatWm2(hour, pool), within(ratio * share * 20));
                partly += share > 0.1 && share < 0.9 ? 1 : 0;
            }
        }
        assertThat(partly).isGreaterThan(100);
    }

    @Test
    void mustStayWithinWhatMayBe() {
        assertRefused(new ByDayAndNight(45, 28), "heater set point of the controller at 01-01 00");
        assertRefused(new ByDayAndNight(22, Double.NaN), "solar limit temperature of the controller at 01-01 15");
        assertRefused(
                new Controller() {
                    @Override
                    public Optional<PumpRule> pumps() {
                        return Optional.of((hour, poolC, dryPlateC, riseK) -> riseK);
                    }
                },
                "the pump rule gives a share of");
    }

    private static void assertRefused(Controller own, String why) {
        Installation built = decided(Lido.built().heater(Lido.HEATER).build(), own);
        assertThatThrownBy(() -> Lido.season(built))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(why);
    }

    @Test
    void hasNoWordsInAFile() {
        assertThatThrownBy(() -> Lido.written(decided(Lido.built().build(), new InProportion())))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cannot hold a controller of one's own");
    }

    private static Installation decided(Installation built, Controller controller) {
        return built.toBuilder().control(built.control().decidedBy(controller)).build();
    }
}
