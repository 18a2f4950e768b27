package dev.warmlane.collector;

import dev.warmlane.irradiance.IncidenceModifier;
import dev.warmlane.irradiance.MatteBlack;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A collector by a curve of one's own: its heat as it was measured, over light, temperatures and wind. The curve holds what
 * the mounting does to the collector: no film, back or board is put on top of it, but light, shade and wind are those of the
 * mounting.
 *
 * <p>It is asked while forcing is prepared, at ten inlet temperatures an hour, never in the hourly loop. In every hour its
 * heat must fall with the inlet temperature from 0 °C on, through nothing to a loss, and
 * not bend by more than fourfold within 5 K; what does not is refused. So write losses for the night too, and do not cut the
 * curve off at 0.
 *
 * <p>Must be immutable; make it a record or keep the object, since forcing is shared among arrays whose models are equal.
 */
@FunctionalInterface
public non-sealed interface MeasuredCurve extends CollectorModel {

    /**
     * Heat per m² of collector at the array's flow, W/m²; negative where it cools the water.
     *
     * @param hour what it meets
     * @param inletC temperature of the water that enters, °C
     */
    double heatWm2(CollectorHour hour, double inletC);

    /** Temperature of the dry plate, °C, where it was measured too; else it is where the curve gives no heat. */
    default OptionalDouble dryPlateC(CollectorHour hour) {
        return OptionalDouble.empty();
    }

    /** Where it comes from, in a few words for a report. */
    default String source() {
        return "no source named";
    }

    /** As matte black, for the light that comes aslant. */
    @Override
    default IncidenceModifier incidence() {
        return new MatteBlack();
    }

    @Override
    default <T> T match(
            Function<Absorber, T> absorber,
            Function<CertificateCurve, T> certificate,
            Function<MeasuredCurve, T> curve) {
        return curve.apply(this);
    }
}
