package dev.warmlane.circuit;

import dev.warmlane.hydraulics.Liquid;
import dev.warmlane.hydraulics.Manifold;
import dev.warmlane.hydraulics.Pipe;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * How water goes through banks: panels side by side between two headers, which join those of the next panel.
 *
 * @param inside what a panel takes between its headers
 * @param headerInnerM inner diameter of a header, m
 * @param outlet at which end of a bank its water leaves, seen from where it comes in
 * @param shape of panels and banks where no roof is drawn that tells them
 */
public record PanelTubes(PanelInside inside, double headerInnerM, Manifold.Outlet outlet, Optional<Shape> shape) {

    /** Range of {@link #headerInnerM}. */
    public static final Range HEADER =
            Range.of("bore of a header", Dimension.LENGTH, 5e-3, 0.3).writtenIn("mm");

    /** Tubes and headers are plastic that was drawn, m: Moody's value for drawn tubing, from memory. */
    static final double SMOOTH_M = 1.5e-6;

    /** A bank hangs on two tees, each with 1.8 towards its side (White, Fluid Mechanics, table 6.5, from memory). */
    private static final double TWO_TEES = 3.6;

    /** Checks the range. */
    public PanelTubes {
        HEADER.check(headerInnerM);
    }

    /**
     * Panels and banks where no roof is drawn: banks end to end in one row, each as full as it may be.
     *
     * @param lengthM length of a panel along its tubes, m
     * @param widthM its width, m
     * @param perBank the most panels of a bank
     */
    public record Shape(double lengthM, double widthM, int perBank) {}

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
                Collections.nCopies(panels, inside.panel(lengthM, liquid)), headers, headers, outlet, true, liquid);
    }
}
