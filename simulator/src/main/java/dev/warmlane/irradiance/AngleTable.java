package dev.warmlane.irradiance;

import dev.warmlane.units.Checks;
import java.util.List;
import java.util.function.Function;

/**
 * Modifiers from a test certificate: K for beam at every tenth degree from 0 to 90, straight lines between, and one K
 * for all diffuse light. ISO 9806 gives them in this form.
 *
 * @param beamAtTens K at 0, 10, 20 ... 90 degrees: ten values, the first 1 and the last 0
 * @param diffuse K for diffuse light
 */
public record AngleTable(List<Double> beamAtTens, double diffuse) implements IncidenceModifier {

    private static final int STEPS = 9;

    /** Checks the table. */
    public AngleTable {
        beamAtTens = List.copyOf(beamAtTens);
        if (beamAtTens.size() != STEPS + 1) {
            throw new IllegalArgumentException(
                    "incidence modifiers need ten values, for 0, 10 ... 90 degrees, got " + beamAtTens.size());
        }
        for (int i = 0; i <= STEPS; i++) {
            BEAM.named("incidence modifier at " + 10 * i + " degrees").check(beamAtTens.get(i));
        }
        Checks.within("incidence modifier at 0 degrees", beamAtTens.get(0), 1, 1, "");
        Checks.within("incidence modifier at 90 degrees", beamAtTens.get(STEPS), 0, 0, "");
        DIFFUSE.check(diffuse);
    }

    @Override
    public double beam(double incidenceDeg) {
        if (incidenceDeg >= 90) {
            return 0;
        }
        int i = (int) (incidenceDeg / 10);
        double within = incidenceDeg / 10 - i;
        return beamAtTens.get(i) * (1 - within) + beamAtTens.get(i + 1) * within;
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
        return table.apply(this);
    }
}
