package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The basement form of ISO 13370, worked by hand. Walls: d_w = 2.0·(0.2/2.3 + 0.04) = 0.253913 m; floor: d_t = 0.2 +
 * 0.253913 = 0.453913 m. The year's swing comes to δ = √(2·3.1536e7/(π·2e6)) = 3.16832 m.
 */
class GroundLossTest {

    /** The hand calculation carries five digits. */
    private static final double HAND_WK = 0.01;

    /**
     * 20 m by 10 m, 1.5 m deep: B' = 200/30 = 6.66667, d_t + z/2 = 1.203913, less than B'. Floor 4/(20.94395 +
     * 1.203913)·ln(18.39659) = 0.525949 over 200 m². Walls 4/(1.5π)·(1 + 0.1269565/1.753913)·ln(6.907534) = 1.759196 over
     * 60 m · 1.5 m.
     */
    @Test
    void ofAnOrdinaryBasin() {
        assertThat(GroundLoss.conductanceWK(200, 1.5)).isCloseTo(105.190 + 158.328, within(HAND_WK));
    }

    /**
     * 10 m by 5 m, 1.5 m deep: B' = 50/15 = 3.33333. Floor 4/(10.47198 + 1.203913)·ln(9.698284) = 0.778339 over 50 m². The
     * walls as above, over 30 m · 1.5 m.
     */
    @Test
    void ofASmallBasin() {
        assertThat(GroundLoss.conductanceWK(50, 1.5)).isCloseTo(38.917 + 79.164, within(HAND_WK));
    }

    /**
     * 4 m by 2 m, 4 m deep: B' = 8/6 = 1.33333, d_t + z/2 = 2.453913, more than B'. Floor 2/(0.457·1.33333 + 2.453913) =
     * 0.652902 over 8 m². Walls 4/(4π)·(1 + 0.1269565/4.253913)·ln(16.75342) = 0.923965 over 12 m · 4 m.
     */
    @Test
    void ofAShaft() {
        assertThat(GroundLoss.conductanceWK(8, 4)).isCloseTo(5.2232 + 44.3503, within(HAND_WK));
    }

    /**
     * 10 m by 5 m, 1.5 m deep: e^(-1.5/3.16832) = 0.622857, ln(3.16832/0.453913 + 1) = 2.076312, ln(3.16832/0.253913 + 1)
     * = 2.600945; 0.37·30·2.0·(0.622857·2.076312 + 2·0.377143·2.600945) = 22.2·3.255574.
     */
    @Test
    void swingsWithTheYear() {
        assertThat(GroundLoss.periodicConductanceWK(50, 1.5)).isCloseTo(72.274, within(HAND_WK));
    }

    /** 4 m by 2 m, 4 m deep: e^(-4/3.16832) = 0.282946; 0.37·12·2.0·(0.282946·2.076312 + 2·0.717054·2.600945). */
    @Test
    void swingsMoreForAShaft() {
        assertThat(GroundLoss.periodicConductanceWK(8, 4)).isCloseTo(8.88 * 4.317857, within(HAND_WK));
    }
}
