package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.HeatCurves;
import dev.warmlane.collector.Mounting;
import dev.warmlane.physics.Water;
import dev.warmlane.pool.Flow;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Both sides of a pitched roof as two arrays, each with its own flow, made again by hand in every hour that both ran through. */
class TwoFlowsTest {

    private static final CollectorArray EAST = side("east side", 120, 90, 0.02);
    private static final CollectorArray WEST = side("west side", 60, 270, 0.08);
    private static final List<CollectorArray> SIDES = List.of(EAST, WEST);

    private static final WeatherYear WEATHER = Demo.weather("warm-inland");

    private static final SeasonForecast FORECAST = SeasonForecast.of(built(EAST, WEST), WEATHER);
    private static final SeasonLedger LEDGER = FORECAST.with();

    /** The water warms by some tenths of a kelvin in an hour, not quite along a straight line. */
    private static final Percentage WITHIN_THE_HOUR = Percentage.withPercentage(0.1);

    private static final double KW = 1000;

    @Test
    void eachSideGivesWhatItWouldGiveAloneAtTheWaterThatEntersIt() {
        for (int side = 0; side < SIDES.size(); side++) {
            CollectorArray array = SIDES.get(side);
            HeatCurves alone = SeasonForcing.of(built(array), FORECAST.forcing().weather())
                    .collectors()
                    .get(0)
                    .curves();
            for (int index : hoursThrough()) {
                double wattsM2 = alone.heatWm2(LEDGER.hourOfYear(index), enteringC(index));
                assertThat(LEDGER.arrayHeatKwh(side, index))
                        .as(array.name() + " in hour " + index)
                        .isCloseTo(wattsM2 * array.areaM2() / KW, WITHIN_THE_HOUR);
            }
        }
    }

    /** The returns meet in proportion to their own flows: 2.4 kg/s from the east, 4.8 kg/s from the west. */
    @Test
    void theMixedReturnCarriesTheHeatOfBoth() {
        double eastKgS = 120 * 0.02;
        double westKgS = 60 * 0.08;
        for (int index : hoursThrough()) {
            double mixedC =
                    (eastKgS * LEDGER.outletC(0, index) + westKgS * LEDGER.outletC(1, index)) / (eastKgS + westKgS);
            double watts = (eastKgS + westKgS) * Water.specificHeatJKgK(enteringC(index)) * (mixedC - enteringC(index));
            assertThat(watts / KW)
                    .as("hour " + index)
                    .isCloseTo(LEDGER.heatKwh(Flow.COLLECTORS, index), Percentage.withPercentage(1));
        }
    }

    /** Of equal sides the one with more flow stays cooler, so it gives more of a square metre. */
    @Test
    void moreFlowGivesMoreHeatOnTheSameSide() {
        CollectorArray slow = EAST.withAreaM2(60);
        SeasonForecast both = SeasonForecast.of(built(slow, slow.withFlowKgSM2(0.08)), WEATHER);
        Period season = both.summary().season().period();
        assertThat(both.with().arrayHeatKwh(1, season))
                .isGreaterThan(both.with().arrayHeatKwh(0, season) * 1.01);
    }

    private static int[] hoursThrough() {
        int[] hours = IntStream.range(0, LEDGER.hours())
                .filter(index -> LEDGER.runShare(0, index) > 1 - 1e-12 && LEDGER.runShare(1, index) > 1 - 1e-12)
                .toArray();
        assertThat(hours).hasSizeGreaterThan(300);
        return hours;
    }

    private static double enteringC(int index) {
        return LEDGER.waterC(index);
    }

    private static CollectorArray side(String name, double areaM2, double azimuthDeg, double flowKgSM2) {
        return new CollectorArray(
                        name, areaM2, new Mounting.FlushOnPitchedRoof(25, azimuthDeg, 8, 0.005), Absorber.USUAL_MAT)
                .withFlowKgSM2(flowKgSM2);
    }

    private static Installation built(CollectorArray... arrays) {
        return Demo.pool(1.5).arrays(arrays).build();
    }
}
