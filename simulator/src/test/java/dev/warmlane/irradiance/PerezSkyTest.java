package dev.warmlane.irradiance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The sky's clearness, brightness and shares, by hand. */
class PerezSkyTest {

    /** Worked with six digits. */
    private static final double BY_HAND = 1e-5;

    /** 1.041·(π/3)³ = 1.195464; (600/100 + 1.195464)/2.195464. */
    @Test
    void clearnessAtSixtyDegrees() {
        assertThat(PerezSky.clearness(100, 500, Math.PI / 3)).isCloseTo(3.277423, within(BY_HAND));
        assertThat(PerezSky.clearness(100, 0, 0.4)).as("overcast").isCloseTo(1, within(BY_HAND));
    }

    /** Air mass 1/(0.5 + 0.50572·36.07995^-1.6364) = 1.994293; 100·1.994293/1400. */
    @Test
    void brightnessAtSixtyDegrees() {
        assertThat(PerezSky.brightness(100, 60, 1400)).isCloseTo(0.142449, within(BY_HAND));
    }

    /** A class begins where the one before ends. */
    @Test
    void classesOfClearness() {
        assertThat(PerezSky.classOf(1)).isZero();
        assertThat(PerezSky.classOf(1.065)).isEqualTo(1);
        assertThat(PerezSky.classOf(6.19)).isEqualTo(6);
        assertThat(PerezSky.classOf(6.2)).isEqualTo(7);
    }

    /** The third class at 0.5 rad: 0.330 + 0.487·0.2 - 0.221·0.5 and 0.055 - 0.064·0.2 - 0.026·0.5. */
    @Test
    void sharesFollowTheirCoefficients() {
        assertThat(PerezSky.circumsolarShare(2, 0.2, 0.5)).isCloseTo(0.3169, within(BY_HAND));
        assertThat(PerezSky.horizonShare(2, 0.2, 0.5)).isCloseTo(0.0292, within(BY_HAND));
        assertThat(PerezSky.circumsolarShare(0, 0, 0)).as("never below nothing").isZero();
    }
}
