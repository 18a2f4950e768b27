package dev.warmlane.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NaturalFaceTest {

    /** The same formula in another order: rounding alone. */
    private static final double ROUNDING = 1e-12;

    private static final double FILM_C = 22;
    private static final double CONDUCTIVITY = Air.conductivityWmK(FILM_C);
    private static final double VISCOSITY = Air.kinematicViscosityM2S(FILM_C, 98);
    private static final double PRANDTL = Air.prandtl(FILM_C);
    private static final double BUOYANCY =
            NaturalFace.buoyancy(CONDUCTIVITY, Film.rayleighPerKelvin(Air.expansionPerK(FILM_C), VISCOSITY, PRANDTL));

    @ParameterizedTest
    @CsvSource({"0, 17, 4.8", "5, 1.2, 0.5", "30, 1.2, 0.5", "60, 3, 1", "90, 2, 0.6"})
    void equalsTheUndividedFormula(double tiltDeg, double lengthM, double areaToPerimeterM) {
        for (boolean facesUp : new boolean[] {true, false}) {
            var face = new NaturalFace(new PlateFace(tiltDeg, facesUp, lengthM, areaToPerimeterM), PRANDTL);
            for (double differenceK = -30; differenceK <= 30; differenceK += 0.75) {
                double half = differenceK / 2;
                double whole = Film.natural(
                        new PlateFace(tiltDeg, facesUp, lengthM, areaToPerimeterM),
                        FILM_C + half,
                        FILM_C - half,
                        new FilmAir(CONDUCTIVITY, VISCOSITY, PRANDTL));
                assertThat(face.coefficient(differenceK, BUOYANCY, CONDUCTIVITY))
                        .isCloseTo(whole, within(ROUNDING * (1 + whole)));
            }
        }
    }

    @Test
    void frozenPrandtlNumberCostsLessThanHalfAPercent() {
        double cold = new NaturalFace(new PlateFace(90, true, 1.2, 0.5), Air.prandtl(-20))
                .coefficient(10, BUOYANCY, CONDUCTIVITY);
        double hot = new NaturalFace(new PlateFace(90, true, 1.2, 0.5), Air.prandtl(60))
                .coefficient(10, BUOYANCY, CONDUCTIVITY);
        assertThat(cold).isCloseTo(hot, Percentage.withPercentage(0.5));
    }

    @Test
    void refusesATiltBeyondTheVertical() {
        assertThatThrownBy(() -> new NaturalFace(new PlateFace(95, true, 1, 1), PRANDTL))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tilt must be 0 to 90 degrees, was 95");
    }

    /** Air at 300 K by the same table as {@link FilmTest}: g/300·0.707/(1.589e-5)² is 9.153e7, its cube root 450.7. */
    @Test
    void airOfAnHourIsWorkedByHand() {
        assertThat(NaturalFace.buoyancy(0.0263, 9.153e7)).isCloseTo(11.85, within(0.01));
    }
}
