package dev.warmlane.irradiance;

import dev.warmlane.units.Range;
import java.util.function.Function;

/**
 * Modifiers from a test certificate that gives one coefficient: {@code K = 1 - b0·(1/cosθ - 1)} (Souka and Safwat 1966,
 * Solar Energy 10:170; from memory) up to 60 degrees, beyond it straight down to 0 at 90, and one K for all diffuse
 * light.
 *
 * @param b0 coefficient
 * @param diffuse K for diffuse light
 */
public record AngleCoefficient(double b0, double diffuse) implements IncidenceModifier {

    /** Range of {@link #b0}. */
    public static final Range B0 = Range.number("incidence coefficient b0", 0, 1);

    private static final double EQUATION_END_DEG = 60;

    /** Checks both ranges. */
    public AngleCoefficient {
        B0.check(b0);
        DIFFUSE.check(diffuse);
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

    @Override
    public <T> T match(
            Function<MatteBlack, T> black, Function<AngleTable, T> table, Function<AngleCoefficient, T> coefficient) {
        return coefficient.apply(this);
    }
}
