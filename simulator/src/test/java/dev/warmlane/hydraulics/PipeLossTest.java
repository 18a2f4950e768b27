package dev.warmlane.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.hydraulics.PipeLoss.Insulation;
import dev.warmlane.hydraulics.PipeLoss.Layer;
import org.junit.jupiter.api.Test;

class PipeLossTest {

    private static final Layer PLASTIC = new Layer(0.05, 0.06, 0.19);
    private static final Insulation NONE = new Insulation(0, 0.035);

    /**
     * By hand: wall ln(1.2)/(2π·0.19) = 0.15272, film 1/(25·π·0.06) = 0.21221, together 0.36493 mK/W, 2.7403 W/mK; with 20 mm
     * of foam ln(10/6)/(2π·0.035) = 2.32289 and film 1/(25·π·0.1) = 0.12732, together 2.60293, 0.38418 W/mK.
     */
    @Test
    void losesInAirWhatTheHandFinds() {
        assertThat(PipeLoss.inAirWmK(PLASTIC, NONE, 25)).isCloseTo(2.7403, within(2e-4));
        assertThat(PipeLoss.inAirWmK(PLASTIC, new Insulation(0.02, 0.035), 25)).isCloseTo(0.38418, within(2e-5));
    }

    /** By hand: 2z/D = 20, ln(20 + √399) = 3.68825, over 2π·2 0.29350; with the wall 0.44622 mK/W, 2.2410 W/mK. */
    @Test
    void losesInTheGroundWhatTheHandFinds() {
        assertThat(PipeLoss.inGroundWmK(PLASTIC, NONE, 0.6, 2)).isCloseTo(2.2410, within(2e-4));
    }

    /** A thin layer of large radius is a flat one: λ/t over the circumference. */
    @Test
    void isAFlatWallWhereTheRadiusIsLarge() {
        Layer wide = new Layer(10, 10.002, 0.19);
        double flat = Math.PI * 10.001 / (0.001 / 0.19 + 1.0 / 25);
        assertThat(PipeLoss.inAirWmK(wide, NONE, 25)).isCloseTo(flat, within(2e-4 * flat));
    }

    @Test
    void moreInsulationLosesLess() {
        double before = Double.POSITIVE_INFINITY;
        for (double thickness = 0; thickness < 0.1; thickness += 0.01) {
            double now = PipeLoss.inAirWmK(PLASTIC, new Insulation(thickness, 0.035), 25);
            assertThat(now).isLessThan(before);
            before = now;
        }
    }

    @Test
    void refusesAWallInsideOut() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Layer(0.06, 0.05, 0.19));
        assertThatIllegalArgumentException().isThrownBy(() -> PipeLoss.inGroundWmK(PLASTIC, NONE, 0.02, 2));
    }
}
