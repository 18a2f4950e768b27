package dev.warmlane.irradiance;

import dev.warmlane.units.Checks;

/**
 * Modifiers from a test certificate that gives one coefficient: {@code K = 1 - b0·(1/cosθ - 1)} (Souka and Safwat 1966,
 * Solar Energy 10:170; from memory) up to 60 degrees, beyond it straight down to 0 at 90, and one K for all diffuse
 * light.
 *
 * @param b0 coefficient, 0 to 1
 * @param diffuse K for diffuse light, 0 to 1.5
 */
public record AngleCoefficient(double b0, double diffuse) implements IncidenceModifier {

    private static final double EQUATION_END_DEG = 60;

    /** Checks both ranges. */
    public AngleCoefficient {
        Checks.within("incidence coefficient b0", b0, 0, 1, "");
        Checks.within("diffuse incidence modifier", diffuse, 0, 1.5, "");
    }

    @Override
    public double beam(double incidenceDeg) {
        if (incidenceDeg >= 90) {
            return 0;
        }
        return incidenceDeg <= EQUATION_END_DEG
                ? 1 - b0 * (1 / Math.cos(Math.toRadians(incidenceDeg)) - 1)
                // 1/cos 60° - 1 is 1
                : (1 - b0) * (90 - incidenceDeg) / (90 - EQUATION_END_DEG);
    }

    @Override
    public double skyDiffuse(double tiltDeg) {
        return diffuse;
    }

    @Override
    public double groundReflected(double tiltDeg) {
        return diffuse;
    }
}
