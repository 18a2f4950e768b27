package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SyntheticYear;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.HourlyWeather;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The curve that is drawn through a collector's heats, with collectors whose heats are known polynomials. */
class CurveThroughNodesTest {

    /** The curve of a polynomial of second order is that polynomial: only rounding lies between them. */
    private static final double ROUNDING = 1e-9;

    private static final int HOUR = 7;

    private static final HourlyWeather WEATHER = SyntheticYear.at(45).build();

    private final HeatCurves curves = new HeatCurves(HourOfYear.HOURS);

    /** A collector with a heat over inlet temperature and a dry plate, that counts how often it is solved. */
    private void add(int hour, double share, HourlyHeat collector) {
        HeatCurves one = new HeatCurves(HourOfYear.HOURS);
        one.solve(hour, collector);
        curves.add(share, one);
    }

    private static final class Known implements HourlyHeat {
        private final DoubleUnaryOperator heat;
        private final double dryC;
        private int solved;

        Known(double dryC, DoubleUnaryOperator heat) {
            this.heat = heat;
            this.dryC = dryC;
        }

        @Override
        public double stagnationC(int hour) {
            return dryC;
        }

        @Override
        public double heatWm2(int hour, double inletC) {
            solved++;
            return heat.applyAsDouble(inletC);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-20, 0, 2.5, 5, 17.3, 40, 42.5, 45, 70})
    void aStraightCollectorStaysStraightWhereverItIsAsked(double inletC) {
        curves.solve(HOUR, new Known(50, t -> 600 - 12 * t));
        assertThat(curves.heatWm2(HOUR, inletC)).isCloseTo(600 - 12 * inletC, within(ROUNDING));
        assertThat(curves.slopeWm2K(HOUR, inletC)).isCloseTo(-12, within(ROUNDING));
        assertThat(curves.inletC(HOUR, 600 - 12 * inletC, 20)).isCloseTo(inletC, within(ROUNDING));
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 7.1, 22.3, 33, 39.9})
    void aBentCollectorIsFollowedWithItsSlope(double inletC) {
        curves.solve(HOUR, new Known(50, CurveThroughNodesTest::bent));
        assertThat(curves.heatWm2(HOUR, inletC)).isCloseTo(bent(inletC), within(ROUNDING));
        assertThat(curves.slopeWm2K(HOUR, inletC)).isCloseTo(-8 - 0.1 * inletC, within(ROUNDING));
        assertThat(curves.inletC(HOUR, bent(inletC), 40)).isCloseTo(inletC, within(1e-8));
        assertThat(curves.inletC(HOUR, bent(inletC), 5)).isCloseTo(inletC, within(1e-8));
    }

    /** Of a heat that bends this way and that, the slope is that of the curve, whatever the curve is. */
    @ParameterizedTest
    @ValueSource(doubles = {3, 12.5, 23, 31.7, 41})
    void slopeIsThatOfTheCurve(double inletC) {
        curves.solve(HOUR, new Known(50, t -> 600 - 9 * t - 30 * Math.sin(t / 4)));
        double fall = curves.heatWm2(HOUR, inletC + 1e-4) - curves.heatWm2(HOUR, inletC - 1e-4);
        assertThat(curves.slopeWm2K(HOUR, inletC)).isCloseTo(fall / 2e-4, within(1e-4));
    }

    /** Below 0 and above 45 degC with the slope of the end. */
    @Test
    void goesOnStraightOutside() {
        curves.solve(HOUR, new Known(50, CurveThroughNodesTest::bent));
        double cold = curves.slopeWm2K(HOUR, 0);
        double warm = curves.slopeWm2K(HOUR, 45);
        assertThat(curves.heatWm2(HOUR, -3)).isCloseTo(bent(0) - 3 * cold, within(ROUNDING));
        assertThat(curves.heatWm2(HOUR, 50)).isCloseTo(bent(45) + 5 * warm, within(ROUNDING));
        assertThat(curves.slopeWm2K(HOUR, -3)).isEqualTo(cold);
        assertThat(curves.slopeWm2K(HOUR, 50)).isEqualTo(warm);
    }

    /** A quarter of a row in front and three of rows behind. */
    @Test
    void sharesAddUpAndTheHottestAndColdestRowAreKept() {
        add(HOUR, 0.25, new Known(40, t -> 600 - 12 * t));
        add(HOUR, 0.75, new Known(60, t -> 500 - 10 * t));
        assertThat(curves.heatWm2(HOUR, 21)).isCloseTo(0.25 * 348 + 0.75 * 290, within(ROUNDING));
        assertThat(curves.stagnationC(HOUR)).isEqualTo(55);
        assertThat(curves.highestPlateC(HOUR)).isEqualTo(60);
        assertThat(curves.lowestPlateC(HOUR)).isEqualTo(40);
        assertThat(curves.heatWm2(HOUR + 1, 21)).isZero();
        // a frosty hour: nothing that an hour begins with may be warmer or colder than its rows
        add(HOUR + 1, 0.5, new Known(-5, t -> -10 * t));
        add(HOUR + 1, 0.5, new Known(-9, t -> -10 * t));
        assertThat(curves.highestPlateC(HOUR + 1)).isEqualTo(-5);
        assertThat(curves.lowestPlateC(HOUR + 1)).isEqualTo(-9);
        assertThat(curves.stagnationC(HOUR + 1)).isEqualTo(-7);
    }

    /** Two temperatures that would only cool the water are solved, the rest goes on straight. */
    @Test
    void whatOnlyCoolsIsNotSolvedFurther() {
        assertThat(solved(t -> 200 - 12 * t)).as("0, 5 ... 25").isEqualTo(6);
        assertThat(solved(t -> 100 - 5 * t)).as("none at 20").isEqualTo(7);
        assertThat(solved(t -> -10 - 5 * t)).as("two for a slope").isEqualTo(2);
        assertThat(solved(t -> 600 - 12 * t)).as("all").isEqualTo(10);
        curves.solve(HOUR, new Known(50, t -> 200 - 0.5 * t * t));
        // solved to 25 and 30 degC, where 112.5 and 250 are lost: 137.5 more every 5 K
        assertThat(curves.heatWm2(HOUR, 40)).isCloseTo(-250 - 2 * 137.5, within(ROUNDING));
    }

    private static int solved(DoubleUnaryOperator heat) {
        Known collector = new Known(30, heat);
        HeatCurves curves = new HeatCurves(HourOfYear.HOURS);
        curves.solve(HOUR, collector);
        assertThat(curves.heatWm2(HOUR, 43)).isCloseTo(heat.applyAsDouble(43), within(ROUNDING));
        return collector.solved;
    }

    @Test
    void aCurveThatDoesNotFallIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> check(t -> 300 - 10 * Math.min(t, 10) - 10 * Math.max(0, t - 15)))
                .withMessageContaining(
                        "gives 200.00 W/m2 with water of 10 degC and 200.00 W/m2 with water of 15 degC at 01-01 07")
                .withMessageContaining("it must fall");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> check(t -> 300 + t))
                .withMessageContaining("gives 300.00 W/m2 with water of 0 degC and 305.00 W/m2 with water of 5 degC");
        assertThatCode(() -> check(t -> 300 - 1e-6 * t)).doesNotThrowAnyException();
    }

    /** A fall of 10 W/m² is followed by one of four times as much, and no more. */
    @ParameterizedTest
    @ValueSource(doubles = {4.01, 1 / 4.01})
    void aSharpBendIsRefused(double steeper) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> check(kinked(steeper)))
                .withMessageContaining("with water of 20 degC")
                .withMessageContaining("it bends too sharply");
    }

    @ParameterizedTest
    @ValueSource(doubles = {4, 0.25, 3.99, 1 / 3.99})
    void aBendOfFourTimesIsNot(double steeper) {
        assertThatCode(() -> check(kinked(steeper))).doesNotThrowAnyException();
    }

    private static DoubleUnaryOperator kinked(double steeper) {
        return t -> 1024 - 2 * Math.min(t, 20) - 2 * steeper * Math.max(0, t - 20);
    }

    private static void check(DoubleUnaryOperator heat) {
        HeatCurves curves = new HeatCurves(HourOfYear.HOURS);
        curves.solve(HOUR, new Known(50, heat));
        curves.checkFalls(HOUR, WEATHER);
    }

    private static double bent(double inletC) {
        return 600 - 8 * inletC - 0.05 * inletC * inletC;
    }
}
