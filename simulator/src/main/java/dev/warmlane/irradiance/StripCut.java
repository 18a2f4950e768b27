package dev.warmlane.irradiance;

import java.util.stream.DoubleStream;

/**
 * Where the roof below racks is cut into strips: the nearer an edge of a plate, the finer. What a place on the roof sees
 * of plates, and they of it, changes over a distance as long as the way to the nearest edge, and so does the shadow there;
 * equal strips blur both where a plate hangs low.
 *
 * <p>Cuts lie below both edges of a plate, and where the plane of the plate meets the roof: from there on forward a place
 * sees the front and no more the back.
 */
final class StripCut {

    /**
     * Widest strip, in distances from the nearest edge of a plate. Own choice: with this and the two below, the lit roof
     * that a back sees is within 0.002 of the whole from what endlessly fine strips give, in every place of the sun.
     */
    private static final double OF_DISTANCE = 0.2;

    /** Widest strip, in chords, so that shadows stay sharp on open roof; own choice. */
    private static final double WIDEST_CHORDS = 0.25;

    /** Narrower than this, in chords, changes nothing that can be seen, even where a plate touches the roof; own choice. */
    private static final double NARROWEST_CHORDS = 0.01;

    /** Two places nearer than this, in chords, are one; it keeps mirrored plates mirrored where a width just fits. */
    private static final double ROUNDING = 1e-9;

    private final RackRows rows;
    private final boolean repeating;
    private final double fineness;

    /**
     * Prepares to cut.
     *
     * @param repeating whether the plate repeats endlessly before and behind
     * @param fineness by how much strips are narrower than usual, 1 as usual
     */
    StripCut(RackRows rows, boolean repeating, double fineness) {
        this.rows = rows;
        this.repeating = repeating;
        this.fineness = fineness;
    }

    /** The cuts from one place on the roof to another, rising, both ends among them, m from below the lower edge. */
    double[] bounds(double fromM, double toM) {
        double planeM = rows.riseM() > 0 ? rows.clearanceM() * rows.runM() / rows.riseM() : toM;
        double[] corners = DoubleStream.of(-rows.runM(), 0, planeM)
                .map(place -> repeating ? within(place, fromM, toM) : place)
                .sorted()
                .toArray();
        DoubleStream.Builder cuts = DoubleStream.builder();
        double before = fromM;
        double same = ROUNDING * rows.chordM();
        for (double corner : corners) {
            if (corner > before + same && corner < toM - same) {
                halve(before, corner, cuts);
                before = corner;
            }
        }
        halve(before, toM, cuts);
        return cuts.add(toM).build().toArray();
    }

    /** A place brought into the period that is cut. */
    private static double within(double placeM, double fromM, double toM) {
        double period = toM - fromM;
        return placeM - Math.floor((placeM - fromM) / period) * period;
    }

    /** Adds the beginnings of equal or ever more halved pieces. */
    private void halve(double fromM, double toM, DoubleStream.Builder cuts) {
        if (toM - fromM <= widest(fromM, toM) * (1 + ROUNDING)) {
            cuts.add(fromM);
        } else {
            double middle = fromM + (toM - fromM) / 2;
            halve(fromM, middle, cuts);
            halve(middle, toM, cuts);
        }
    }

    private double widest(double fromM, double toM) {
        double near = Math.min(
                distance(0, rows.clearanceM(), fromM, toM),
                distance(-rows.runM(), rows.clearanceM() + rows.riseM(), fromM, toM));
        double chord = rows.chordM();
        return Math.min(WIDEST_CHORDS * chord, Math.max(NARROWEST_CHORDS * chord, OF_DISTANCE * near)) / fineness;
    }

    /** From an edge, or the nearest of its repetitions, to a piece of roof. */
    private double distance(double placeM, double heightM, double fromM, double toM) {
        double beside = Math.max(0, Math.max(fromM - placeM, placeM - toM));
        if (repeating) {
            double period = rows.pitchM();
            double next = placeM + Math.ceil((fromM - placeM) / period) * period;
            double last = placeM + Math.floor((toM - placeM) / period) * period;
            beside = next <= toM ? 0 : Math.max(0, Math.min(fromM - last, next - toM));
        }
        return Math.hypot(beside, heightM);
    }
}
