package dev.warmlane.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.special.Gamma;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoofRunTest {

    /** Points and directions of the plain count leave this much. */
    private static final Percentage COUNT = Percentage.withPercentage(0.5);

    @ParameterizedTest
    @CsvSource({"30, 14", "10, 10", "40, 5"})
    void meetsAPlainCountOfPointsAndDirections(double lengthM, double widthM) {
        assertThat(RoofRun.effectiveRunM(lengthM, widthM)).isCloseTo(counted(lengthM, widthM), COUNT);
    }

    @Test
    void municipalRoofHasAboutSeventeenMetres() {
        assertThat(RoofRun.effectiveRunM(30, 14)).isCloseTo(17, within(0.5)); // stated as "about 17 m"
    }

    @Test
    void sidesAreInterchangeableAndTheRunScalesWithTheRoof() {
        assertThat(RoofRun.effectiveRunM(14, 30)).isCloseTo(RoofRun.effectiveRunM(30, 14), within(1e-9));
        assertThat(RoofRun.effectiveRunM(60, 28)).isCloseTo(2 * RoofRun.effectiveRunM(30, 14), within(1e-7));
        assertThat(RoofRun.effectiveRunM(10, 10)).isCloseTo(8.8, within(0.01));
    }

    /** On an endless roof c = width / sin θ, so the mean of c^-0.2 is the mean of sin^0.2, a ratio of gamma functions. */
    @Test
    void longNarrowRoofTendsToItsLimit() {
        double meanSine = Gamma.gamma(0.6) / (Math.sqrt(Math.PI) * Gamma.gamma(1.1));
        double limit = Math.pow(meanSine, -5);
        assertThat(limit).isCloseTo(1.86, within(0.01));
        assertThat(RoofRun.effectiveRunM(1000, 1)).isCloseTo(limit, Percentage.withPercentage(0.5));
        assertThat(RoofRun.effectiveRunM(1000, 0.1)).isCloseTo(0.1 * limit, Percentage.withPercentage(0.05));
    }

    @Test
    void refusesARoofWithoutWidth() {
        assertThatThrownBy(() -> RoofRun.effectiveRunM(30, 0)).hasMessageContaining("roof width must be");
    }

    /** Draws the line of the wind through each of many points, measures it, and averages the coefficient. */
    private static double counted(double lengthM, double widthM) {
        int points = 60;
        int directions = 180;
        double sum = 0;
        for (int i = 0; i < points; i++) {
            for (int j = 0; j < points; j++) {
                for (int k = 0; k < directions; k++) {
                    double x = (i + 0.5) / points * lengthM;
                    double y = (j + 0.5) / points * widthM;
                    double angle = (k + 0.5) / directions * Math.PI;
                    double run = ray(x, y, angle, lengthM, widthM) + ray(x, y, angle + Math.PI, lengthM, widthM);
                    sum += Math.pow(run, -0.2);
                }
            }
        }
        return Math.pow(sum / ((double) points * points * directions), -5);
    }

    private static double ray(double x, double y, double angle, double lengthM, double widthM) {
        double cosine = Math.cos(angle);
        double sine = Math.sin(angle);
        double alongX = (cosine > 0 ? lengthM - x : -x) / cosine;
        double alongY = (sine > 0 ? widthM - y : -y) / sine;
        return Math.min(alongX, alongY);
    }
}
