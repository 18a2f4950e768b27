package dev.warmlane.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.physics.Constants;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PipeTest {

    private static final double FOOT = 0.3048;

    /** Handbooks round to three digits and read the factor off a chart. */
    private static final double READ_OFF = 0.02;

    private static final Liquid WATER = Liquid.water(25);

    /** 200 ft of asphalted iron pipe of 6 in with 6 ft/s lose 4.5 ft: White, Fluid Mechanics, example 6.6, from memory. */
    @Test
    void losesTheHeadOfAHandbooksExample() {
        double inner = 0.5 * FOOT;
        Pipe pipe = new Pipe(inner, 200 * FOOT, 0.0008 * inner, 0);
        Liquid water = new Liquid(1000, 1000 * 6 * FOOT * inner / 270_000);
        double kgS = 1000 * 6 * FOOT * pipe.areaM2();
        assertThat(pipe.reynolds(kgS, water)).isCloseTo(270_000, within(1e-6));
        assertThat(pipe.dropPa(kgS, water) / (1000 * Constants.GRAVITY))
                .isCloseTo(4.5 * FOOT, within(READ_OFF * 4.5 * FOOT));
    }

    /**
     * 0.2 ft³/s through 400 ft of 2 in pipe of roughness 0.001 of it, with fittings of 12.2 together and 100 ft up: f is 0.0216,
     * 84 ft are lost, and the pump gives 184 ft, 4.2 hp: White, Fluid Mechanics, example 6.16, from memory.
     */
    @Test
    void losesTheHeadOfAHandbooksPumpedLineWithFittings() {
        double inner = 2.0 / 12 * FOOT;
        Pipe line = new Pipe(inner, 400 * FOOT, 0.001 * inner, 12.2);
        double m3s = 0.2 * Math.pow(FOOT, 3);
        Liquid water = new Liquid(1000, 1000 * 1.1e-5 * FOOT * FOOT);
        double lost = line.dropPa(1000 * m3s, water) / (1000 * Constants.GRAVITY);
        assertThat(lost / FOOT).isCloseTo(84, within(READ_OFF * 84));
        double horsepower = 1000 * Constants.GRAVITY * m3s * (lost + 100 * FOOT) / 745.7;
        assertThat(horsepower).isCloseTo(4.2, within(READ_OFF * 4.2));
    }

    /** Hagen and Poiseuille: 128 μ L V / (π d⁴). */
    @Test
    void losesTheExactPressureInASmallTube() {
        Pipe tube = new Pipe(0.005, 3, 0, 0);
        double kgS = 0.0015;
        double exact = 128 * WATER.viscosityPaS() * 3 * kgS / WATER.densityKgM3() / (Math.PI * Math.pow(0.005, 4));
        assertThat(tube.dropPa(kgS, WATER)).isCloseTo(exact, within(1e-12 * exact));
        assertThat(tube.dropPa(-kgS, WATER)).isEqualTo(-tube.dropPa(kgS, WATER));
    }

    /** Loss factors are dynamic pressures: 1 m/s carries 498.5 Pa of water of 25 °C, by hand. */
    @Test
    void bendsLoseDynamicPressures() {
        Pipe bends = new Pipe(0.05, 0, 0, 3);
        double kgS = WATER.densityKgM3() * bends.areaM2();
        assertThat(bends.speedMs(kgS, WATER)).isCloseTo(1, within(1e-12));
        assertThat(bends.dropPa(kgS, WATER)).isCloseTo(3 * 498.5, within(0.2));
    }

    /**
     * Three pipes side by side that each lose 20.3 m take 62.5, 25.9 and 11.4 m³/h, 99.8 together: White, Fluid Mechanics,
     * example 6.18, from memory.
     */
    @ParameterizedTest
    @CsvSource({"100, 0.08, 0.24e-3, 62.5", "150, 0.06, 0.12e-3, 25.9", "80, 0.04, 0.20e-3, 11.4"})
    void losesTheHeadOfThreeParallelPipes(double length, double inner, double roughness, double m3h) {
        Pipe pipe = new Pipe(inner, length, roughness, 0);
        double head = pipe.dropPa(1000 * m3h / 3600, new Liquid(1000, 1.02e-3)) / (1000 * Constants.GRAVITY);
        assertThat(head).isCloseTo(20.3, within(READ_OFF * 20.3));
    }
}
