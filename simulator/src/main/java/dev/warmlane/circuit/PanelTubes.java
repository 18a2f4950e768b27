package dev.warmlane.circuit;

import dev.warmlane.hydraulics.Liquid;
import dev.warmlane.hydraulics.Manifold;
import dev.warmlane.hydraulics.Pipe;
import dev.warmlane.hydraulics.Way;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * How water goes through a panel: many small tubes side by side between two headers, which join those of the next panel of
 * the bank. Inner diameters throughout.
 *
 * @param tubes tubes of a panel
 * @param tubeInnerM bore of a tube, m
 * @param headerInnerM bore of a header, m
 * @param endLosses loss factors at both ends of a tube together, on the dynamic pressure in it
 * @param outlet at which end of a bank its water leaves, seen from where it comes in
 * @param shape of panels and banks where no roof is drawn that tells them
 */
public record PanelTubes(
        int tubes,
        double tubeInnerM,
        double headerInnerM,
        double endLosses,
        Manifold.Outlet outlet,
        Optional<Shape> shape) {

    /** Range of {@link #tubes}. */
    public static final Range TUBES = Range.number("tubes of a panel", 1, 2000);

    /** Range of {@link #tubeInnerM}. */
    public static final Range TUBE =
            Range.of("bore of a tube", Dimension.LENGTH, 1e-3, 0.05).writtenIn("mm");

    /** Range of {@link #headerInnerM}. */
    public static final Range HEADER =
            Range.of("bore of a header", Dimension.LENGTH, 5e-3, 0.3).writtenIn("mm");

    /** Range of {@link #endLosses}. */
    public static final Range END_LOSSES = Range.number("loss factors at the ends of a tube", 0, 1000);

    /** Usual {@link #endLosses}. */
    public static final Usual USUAL_END_LOSSES =
            END_LOSSES.usually(1.5, "in over a sharp edge 0.5, out into the header 1, handbook values, from memory");

    /** Tubes are plastic that was drawn, m: Moody's value for drawn tubing, from memory. */
    private static final double SMOOTH_M = 1.5e-6;

    /** A bank hangs on two tees, each with 1.8 towards its side (White, Fluid Mechanics, table 6.5, from memory). */
    private static final double TWO_TEES = 3.6;

    /** Checks every range. */
    public PanelTubes {
        TUBES.check(tubes);
        TUBE.check(tubeInnerM);
        HEADER.check(headerInnerM);
        END_LOSSES.check(endLosses);
    }

    /**
     * Panels and banks where no roof is drawn: banks end to end in one row, each as full as it may be.
     *
     * @param lengthM length of a panel along its tubes, m
     * @param widthM its width, m
     * @param perBank the most panels of a bank
     */
    public record Shape(double lengthM, double widthM, int perBank) {}

    /** The way through a panel of a length, m. */
    public Way panel(double lengthM, Liquid liquid) {
        Pipe tube = new Pipe(tubeInnerM, lengthM, SMOOTH_M, endLosses);
        return kgS -> tube.dropPa(kgS / tubes, liquid);
    }

    /** A header of a length, m. */
    public Pipe header(double lengthM) {
        return new Pipe(headerInnerM, lengthM, SMOOTH_M, 0);
    }

    /** What connects a bank to its pipes. */
    public Pipe connection() {
        return new Pipe(headerInnerM, 0, SMOOTH_M, TWO_TEES);
    }

    /** The panels of a bank between its headers, m. */
    public Manifold bank(int panels, double lengthM, double widthM, Liquid liquid) {
        List<Pipe> headers = Collections.nCopies(panels - 1, header(widthM));
        return new Manifold(
                Collections.nCopies(panels, panel(lengthM, liquid)), headers, headers, outlet, true, liquid);
    }
}
