package dev.warmlane.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class FilmTest {

    /** The rows state two decimals and air properties of three or four digits. */
    private static final double ROW = 0.01;

    // Air at 300 K and thermal expansion at 303.15 K, as the rows state it.
    private static final double CONDUCTIVITY = 0.0263;
    private static final double VISCOSITY = 1.589e-5;
    private static final double PRANDTL = 0.707;
    private static final double FILM_C = 30;
    private static final double EXPANSION = 1 / 303.15;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/physics/convection.csv", useHeadersInDisplayName = true)
    void meetsThePublishedEquations(String name, double windMs, Double differenceK, double lengthM, double value) {
        double found =
                switch (name) {
                    case "flat_roof_10x10_Rf1.00" -> roof(windMs, differenceK, lengthM, 1);
                    case "flat_roof_10x10_Rf1.13" -> roof(windMs, differenceK, lengthM, 1.13);
                    case "rack_face_tilt30" -> rack(windMs, differenceK, lengthM);
                    case "plate_turbulent" -> forced(windMs, lengthM, 1);
                    default -> throw new IllegalArgumentException("unknown case " + name);
                };
        assertThat(found).isCloseTo(value, within(ROW));
    }

    /**
     * The rack rows apply Churchill and Chu alone. That is the warm lower face; the warm upper face also has the lift of
     * a horizontal plate, which is larger at this tilt: 0.15 (Ra cos 30°)^(1/3) k/L = 2.89 W/m²K.
     */
    @Test
    void warmUpperFaceOfATiltedPlateLosesMoreThanTheLower() {
        assertThat(natural(5, 30, false, 1.2)).isCloseTo(2.02, within(ROW));
        assertThat(natural(5, 30, true, 1.2)).isCloseTo(2.89, within(ROW));
    }

    @Test
    void roofCoefficientRisesWithWindFromTheLowestWindUp() {
        for (double differenceK : new double[] {1, 5, 15, 40}) {
            double before = 0;
            for (double windMs = Film.LOWEST_WIND_MS; windMs < 10; windMs += 0.05) {
                double coefficient = roof(windMs, differenceK, 17, 1.13);
                assertThat(coefficient).isGreaterThan(before);
                before = coefficient;
            }
        }
    }

    @Test
    void lowestWindIsAFloor() {
        assertThat(Film.effectiveWindMs(0)).isEqualTo(0.05);
        assertThat(Film.effectiveWindMs(3)).isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.5, 2, 8})
    void richardsonIsGrashofOverReynoldsSquared(double windMs) {
        double reynolds = Film.reynolds(windMs, 10, VISCOSITY);
        double byNumbers = Film.flatRoof(3, 4, Film.grashof(EXPANSION, -5, 10, VISCOSITY), reynolds);
        double bySpeed = Film.flatRoof(3, 4, 5 * Film.richardsonPerKelvin(EXPANSION, windMs, 10));
        assertThat(bySpeed).isCloseTo(byNumbers, within(1e-12));
    }

    @Test
    void roofBlendLiesBetweenForcedAloneAndTheSum() {
        assertThat(Film.flatRoof(5, 3, 0)).isEqualTo(5);
        assertThat(Film.flatRoof(5, 3, 1)).isBetween(5.0, 8.0);
        assertThat(Film.flatRoof(0, 3, 1e9, 0)).isEqualTo(3);
    }

    @Test
    void openAirBlendLiesBetweenTheLargerAndTheSum() {
        assertThat(Film.rack(5, 3)).isBetween(5.0, 8.0).isEqualTo(Film.rack(3, 5));
        assertThat(Film.rack(5, 0)).isCloseTo(5, within(1e-12));
    }

    @Test
    void forcedCoefficientFallsWithTheRun() {
        assertThat(forced(3, 32, 1) / forced(3, 1, 1)).isCloseTo(0.5, within(1e-12));
        assertThat(forced(3, 10, SurfaceRoughness.MEDIUM_ROUGH.factor())).isEqualTo(forced(3, 10, 1.52));
        assertThat(forced(0, 10, 1)).isZero();
    }

    @Test
    void coolUpperFaceMirrorsWarmLowerFace() {
        for (double tiltDeg = 0; tiltDeg <= 90; tiltDeg += 15) {
            assertThat(natural(-7, tiltDeg, true, 1.2)).isEqualTo(natural(7, tiltDeg, false, 1.2));
            assertThat(natural(7, tiltDeg, true, 1.2)).isEqualTo(natural(-7, tiltDeg, false, 1.2));
        }
        assertThat(natural(7, 90, true, 1.2)).isCloseTo(natural(7, 90, false, 1.2), within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 10, 30, 60, 90})
    void naturalPartIsContinuousAtZeroAndRisesWithTheDifference(double tiltDeg) {
        assertThat(natural(0, tiltDeg, true, 1.2)).isPositive().isEqualTo(natural(0, tiltDeg, false, 1.2));
        for (boolean facesUp : new boolean[] {true, false}) {
            for (double sign : new double[] {1, -1}) {
                double before = natural(0, tiltDeg, facesUp, 1.2);
                assertThat(natural(sign * 1e-15, tiltDeg, facesUp, 1.2)).isCloseTo(before, within(0.02));
                for (double size = 0.01; size < 60; size *= 1.5) {
                    double coefficient = natural(sign * size, tiltDeg, facesUp, 1.2);
                    assertThat(coefficient).isGreaterThanOrEqualTo(before);
                    before = coefficient;
                }
            }
        }
    }

    @Test
    void naturalPartHasNoStepAnywhereOverTheTilt() {
        for (double tiltDeg = 0; tiltDeg < 90; tiltDeg += 0.5) {
            assertThat(natural(5, tiltDeg + 0.5, true, 1.2)).isCloseTo(natural(5, tiltDeg, true, 1.2), within(0.06));
        }
    }

    private static double forced(double windMs, double lengthM, double roughness) {
        return Film.forcedTurbulent(windMs, lengthM, roughness, new FilmAir(CONDUCTIVITY, VISCOSITY, PRANDTL));
    }

    private static double natural(double differenceK, double tiltDeg, boolean facesUp, double lengthM) {
        double half = differenceK / 2;
        return Film.natural(
                new PlateFace(tiltDeg, facesUp, lengthM, lengthM / 4),
                FILM_C + half,
                FILM_C - half,
                new FilmAir(CONDUCTIVITY, VISCOSITY, PRANDTL));
    }

    private static double roof(double windMs, double differenceK, double lengthM, double roughness) {
        return Film.flatRoof(
                forced(windMs, lengthM, roughness),
                natural(differenceK, 0, true, lengthM),
                Film.grashof(EXPANSION, differenceK, lengthM, VISCOSITY),
                Film.reynolds(windMs, lengthM, VISCOSITY));
    }

    private static double rack(double windMs, double differenceK, double lengthM) {
        return Film.rack(forced(windMs, lengthM, 1), natural(differenceK, 30, false, lengthM));
    }

    /** 0.27·(1e8)^(1/4) and 0.15·(1e9)^(1/3): the equations of McAdams and of Lloyd and Moran, worked by hand. */
    @Test
    void airThatStaysAndAirThatLeaves() {
        assertThat(Film.stableNusselt(1e8)).isCloseTo(27, within(1e-9));
        assertThat(Film.unstableNusselt(1e9)).isCloseTo(150, within(1e-9));
    }
}
