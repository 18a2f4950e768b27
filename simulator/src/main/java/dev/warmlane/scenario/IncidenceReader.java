package dev.warmlane.scenario;

import dev.warmlane.irradiance.AngleCoefficient;
import dev.warmlane.irradiance.AngleTable;
import dev.warmlane.irradiance.IncidenceModifier;
import dev.warmlane.irradiance.MatteBlack;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads one section {@code [collectors.incidence]}. */
final class IncidenceReader {

    private IncidenceReader() {}

    static @Nullable IncidenceModifier modifier(Section s) {
        boolean measured = s.has(IncidenceKeys.BEAM) || s.has(IncidenceKeys.B0);
        if (!measured) {
            s.refuse("allowed with beam or b0 only", IncidenceKeys.DIFFUSE);
            IncidenceKeys.Surface surface = s.get(IncidenceKeys.SURFACE);
            return s.build(() -> switch (surface) {
                case MATTE_BLACK -> new MatteBlack();
            });
        }
        s.refuse("not allowed with beam or b0; give one of them", IncidenceKeys.SURFACE);
        double diffuse = s.get(IncidenceKeys.DIFFUSE);
        if (s.has(IncidenceKeys.BEAM)) {
            s.refuse("not allowed with beam; give one of them", IncidenceKeys.B0);
            List<Double> beam = s.get(IncidenceKeys.BEAM);
            return s.build(() -> new AngleTable(beam, diffuse));
        }
        double b0 = s.get(IncidenceKeys.B0);
        return s.build(() -> new AngleCoefficient(b0, diffuse));
    }
}
