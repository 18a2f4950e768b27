package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Controller;
import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.pool.PoolFlows;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A loop of one's own over the public forcing. */
class OwnLoopTest {

    /** Steps of a minute by Euler's method against the library's midpoint rule by the hour; 0.01 K is not aimed at. */
    private static final double TOLERANCE_K = 0.02;

    /** A pool whose collectors always run, also where they cool it; the temperature after each hour. */
    static double[] minuteByMinute(SeasonForcing forcing, double areaRatio, double startC, int firstHour, int hours) {
        PoolForcing pool = forcing.pool();
        CollectorForcing collectors = forcing.collectors().get(0);
        PoolFlows flows = new PoolFlows();
        double[] ends = new double[hours];
        double water = startC;
        for (int index = 0; index < hours; index++) {
            int hour = firstHour + index;
            for (int minute = 0; minute < 60; minute++) {
                pool.evaluate(hour, water, 1, flows);
                double solar = areaRatio * collectors.curves().heatWm2(hour, water);
                water += 60 * (flows.net() + solar) / pool.heatCapacityJm2K();
            }
            ends[index] = water;
        }
        return ends;
    }

    @Test
    void agreesWithTheSimulator() {
        Installation built = Lido.built()
                .control(Control.withLimit(40).decidedBy(new Controller() {
                    @Override
                    public Optional<PumpRule> pumps() {
                        return Optional.of((hour, poolC, dryPlateC, riseK) -> 1);
                    }
                }))
                .build();
        SeasonForcing forcing = SeasonForcing.of(built, Lido.WEATHER);
        SeasonLedger ledger = SeasonSimulator.simulate(built, forcing);
        double ratio = built.collectorAreaM2() / built.pool().areaM2();
        double[] own = minuteByMinute(forcing, ratio, 20, built.season().firstHour(), ledger.hours());
        double farthest = 0;
        for (int index = 0; index < own.length; index++) {
            assertThat(own[index]).isCloseTo(ledger.waterEndC(index), within(TOLERANCE_K));
            farthest = Math.max(farthest, Math.abs(own[index] - 20));
        }
        assertThat(farthest).isGreaterThan(1);
    }
}
