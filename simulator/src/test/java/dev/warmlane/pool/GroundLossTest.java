package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The basement form of ISO 13370, worked by hand. The shell has d_t = 2.0·0.2/2.3 = 0.173913 m. */
class GroundLossTest {

    /** The hand calculation carries five digits. */
    private static final double HAND_WK = 0.01;

    /**
     * 20 m by 10 m, 1.5 m deep: B' = 200/30 = 6.66667, d_t + z/2 = 0.923913, less than B'. Floor 4/(20.94395 +
     * 0.923913)·ln(23.66881) = 0.578777 over 200 m². Walls 4/(1.5π)·(1 + 0.0869565/1.673913)·ln(9.625) = 2.021899 over
     * 60 m · 1.5 m.
     */
    @Test
    void ofAnOrdinaryBasin() {
        assertThat(GroundLoss.conductanceWK(200, 1.5)).isCloseTo(115.755 + 181.971, within(HAND_WK));
    }

    /**
     * 4 m by 2 m, 4 m deep: B' = 8/6 = 1.33333, d_t + z/2 = 2.173913, more than B'. Floor 2/(0.457·1.33333 + 2.173913) =
     * 0.718585 over 8 m². Walls 4/(4π)·(1 + 0.0869565/4.173913)·ln(24) = 1.032681 over 12 m · 4 m.
     */
    @Test
    void ofAShaft() {
        assertThat(GroundLoss.conductanceWK(8, 4)).isCloseTo(5.7487 + 49.5687, within(HAND_WK));
    }
}
