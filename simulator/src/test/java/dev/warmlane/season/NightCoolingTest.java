package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.circuit.Control;
import dev.warmlane.pool.Flow;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import org.junit.jupiter.api.Test;

/** Running the collectors to cool a pool that has become too warm. */
class NightCoolingTest {

    private static final double COOL_ABOVE_C = 24;

    private final WeatherYear weather = Demo.weather("hot-dry");

    @Test
    void coolsAWarmPoolTowardsItsThresholdAndNotBelow() {
        SeasonLedger plain = season(Control.withLimit(24));
        SeasonLedger cooled = season(Control.withLimit(24).sheddingAboveC(COOL_ABOVE_C));
        double shed = 0;
        for (int index = 0; index < cooled.hours(); index++) {
            double heat = cooled.heatJm2(Flow.COLLECTORS, index);
            if (heat < 0) {
                shed -= heat;
                assertThat(cooled.waterStartC(index)).isGreaterThan(COOL_ABOVE_C);
                // the pump stops at the threshold; what the pool loses by itself goes on for the rest of the hour
                assertThat(cooled.runShare(0, index)).isPositive();
                if (cooled.runShare(0, index) == 1) {
                    assertThat(cooled.waterEndC(index)).isGreaterThanOrEqualTo(COOL_ABOVE_C);
                }
            }
        }
        assertThat(shed).isPositive();
        // by day the sun on the water warms it all the same, so the hottest hours shrink and do not vanish
        assertThat(hoursAbove(cooled)).isLessThan(hoursAbove(plain));
        assertThat(cooled.heatKwh(Flow.COLLECTORS, Periods.season(cooled)))
                .isLessThan(plain.heatKwh(Flow.COLLECTORS, Periods.season(plain)));
    }

    /** The circuit starts to cool by the same difference as it starts to heat, the other way round. */
    @Test
    void waitsUntilThePlateIsColderByTheStartDifference() {
        double startK = 10;
        SeasonForcing forcing = SeasonForcing.of(Demo.pool(1.2).build(), weather);
        SeasonLedger cooled =
                season(new Control(startK, 0.3, COOL_ABOVE_C, Schedule.ALWAYS).sheddingAboveC(COOL_ABOVE_C));
        int cooling = 0;
        for (int index = 0; index < cooled.hours(); index++) {
            double dryC = forcing.collectors().get(0).curves().stagnationC(cooled.hourOfYear(index));
            if (cooled.heatJm2(Flow.COLLECTORS, index) < 0) {
                cooling++;
                assertThat(cooled.waterStartC(index) - dryC).isGreaterThanOrEqualTo(startK);
            }
        }
        assertThat(cooling).isGreaterThan(50);
    }

    private SeasonLedger season(Control control) {
        Installation installation = Demo.pool(1.2).control(control).build();
        return SeasonSimulator.simulate(installation, SeasonForcing.of(installation, weather));
    }

    private static int hoursAbove(SeasonLedger ledger) {
        int hours = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            hours += ledger.waterC(index) > COOL_ABOVE_C + 1 ? 1 : 0;
        }
        return hours;
    }
}
