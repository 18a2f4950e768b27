package dev.warmlane.irradiance;

import java.util.function.Function;

/**
 * A flat black coating: Duffie and Beckman, Solar Engineering of Thermal Processes, equation 4.11.1 (from memory), a
 * polynomial in the angle of incidence from 0 to 80 degrees, beyond it straight down to 0 at 90. Diffuse light is taken
 * as beam at the effective angles of Brandemuehl and Beckman 1980 (Solar Energy 24:511; from memory).
 */
public record MatteBlack() implements IncidenceModifier {

    private static final double POLYNOMIAL_END_DEG = 80;

    /** K at 80 degrees. */
    private static final double AT_POLYNOMIAL_END = polynomial(POLYNOMIAL_END_DEG);

    @Override
    public double beam(double incidenceDeg) {
        if (incidenceDeg >= 90) {
            return 0;
        }
        return incidenceDeg <= POLYNOMIAL_END_DEG
                ? polynomial(incidenceDeg)
                : AT_POLYNOMIAL_END * (90 - incidenceDeg) / (90 - POLYNOMIAL_END_DEG);
    }

    /** K at the effective angle {@code 59.68 - 0.1388β + 0.001497β²}. */
    @Override
    public double skyDiffuse(double tiltDeg) {
        double b = Plane.TILT.check(tiltDeg);
        return beam(59.68 - 0.1388 * b + 0.001497 * b * b);
    }

    /** K at the effective angle {@code 90 - 0.5788β + 0.002693β²}: 0 for a plane that lies and sees no ground. */
    @Override
    public double groundReflected(double tiltDeg) {
        double b = Plane.TILT.check(tiltDeg);
        return beam(90 - 0.5788 * b + 0.002693 * b * b);
    }

    private static double polynomial(double t) {
        double high = 9.0244e-7 + t * (-1.8e-8 + t * (1.7734e-10 - t * 6.9937e-13));
        return 1 + t * (-1.5879e-3 + t * (2.7314e-4 + t * (-2.3026e-5 + t * high)));
    }

    @Override
    public <T> T match(
            Function<MatteBlack, T> black, Function<AngleTable, T> table, Function<AngleCoefficient, T> coefficient) {
        return black.apply(this);
    }
}
