package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.site.HourOfYear;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CloudEstimateTest {

    private static final InventedYear YEAR = InventedYear.sound();

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.5, 0.8, 1.0})
    void isTheInverseOfThePublishedFormula(double cover) {
        double[] global = new double[HourOfYear.HOURS];
        for (int hour = 0; hour < global.length; hour++) {
            double clear = Math.max(0, 910 * YEAR.sun.cosZenith(hour) - 30);
            global[hour] = clear * (1 - 0.75 * Math.pow(cover, 3.4));
        }
        for (double estimated : CloudEstimate.cover(global, YEAR.sun, 0)) {
            assertThat(estimated).isCloseTo(cover, within(1e-9));
        }
    }

    @Test
    void isNeverOutsideNoneAndAll() {
        double[] dark = new double[HourOfYear.HOURS];
        assertThat(CloudEstimate.cover(dark, YEAR.sun, 0)).containsOnly(1.0);
        double[] bright = new double[HourOfYear.HOURS];
        java.util.Arrays.fill(bright, 1400);
        assertThat(CloudEstimate.cover(bright, YEAR.sun, 0)).containsOnly(0.0);
    }
}
