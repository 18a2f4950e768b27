package dev.warmlane.irradiance;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * The roof below racks cut into strips that run along the rows, with what each sees and what sees it: geometry only, in
 * two dimensions. Immutable; made once for a mounting.
 *
 * <p>An interior row has one pitch of roof, repeated endlessly. A row alone has six chords of roof before it and behind
 * it, and one strip more, the last, for all the roof beyond: unshaded, under the whole sky.
 *
 * <p>View factors come from the shadows of the plates: light of slant t (cotangent of the profile angle) darkens a share
 * of a strip that is piecewise straight in t, and the view factor to what throws the shadow is
 * {@code ½∫ dark(t)·(1 + t²)^(-3/2) dt}, integrated in closed form from kink to kink. This is what crossed strings give
 * with every obstruction in place, for endlessly many rows. The plates see the strips by reciprocity. Only below racks
 * that lie almost flat, and there for light within 0.3 degrees of the horizon, which no shadow limits, darkness is
 * spread evenly over the pitch: an error below 1.3e-5, the weight of that light.
 */
public final class RoofStrips implements RoofPieces {

    /** How far the roof around a row alone is cut into strips, in chords before it and behind it. */
    public static final double REACH_CHORDS = 6;

    /** Cotangent of the profile angle from which repeating shadows are spread evenly. */
    private static final double SPREAD_SLANT = 200;

    /** Stands for the horizon: (1 + t²)^(-1/2) is 1e-12 there. */
    private static final double HORIZON_SLANT = 1e12;

    private final StripShadow shadow;
    private final double[] skyView;
    private final double[] viewOfFront;
    private final double[] viewOfBack;
    private final double[] frontView;
    private final double[] backView;

    private RoofStrips(RackRows rows, RowPlace place, double fineness) {
        boolean interior = place == RowPlace.INTERIOR;
        double reach = REACH_CHORDS * rows.chordM();
        double start = interior ? -rows.pitchM() : -rows.runM() - reach;
        double end = interior ? 0 : reach;
        this.shadow = new StripShadow(rows, new StripCut(rows, interior, fineness).bounds(start, end), interior);

        int count = interior ? shadow.strips() : shadow.strips() + 1;
        this.skyView = new double[count];
        this.viewOfFront = new double[count];
        this.viewOfBack = new double[count];
        integrate();
        this.frontView = reciprocal(viewOfFront, rows.chordM(), rows.frontRoofView(place));
        this.backView = reciprocal(viewOfBack, rows.chordM(), rows.backRoofView(place));
    }

    /**
     * The strips below a row of racks.
     *
     * @throws IllegalArgumentException if an interior row is asked for where there is one row alone
     */
    public static RoofStrips below(RackRows rows, RowPlace place) {
        return below(rows, place, 1);
    }

    /**
     * The same with narrower strips, to see what they change.
     *
     * @param fineness by how much strips are narrower than usual
     */
    static RoofStrips below(RackRows rows, RowPlace place, double fineness) {
        if (place == RowPlace.INTERIOR && Double.isInfinite(rows.pitchM())) {
            throw new IllegalArgumentException("a row alone has no interior: give a pitch");
        }
        return new RoofStrips(rows, place, fineness);
    }

    @Override
    public int count() {
        return skyView.length;
    }

    /** Where a strip begins, m forward from below the lower edge; the roof beyond begins nowhere. */
    double fromM(int strip) {
        return strip < shadow.strips() ? shadow.fromM(strip) : Double.NaN;
    }

    /** Width of a strip, m; infinite for the roof beyond. */
    public double widthM(int strip) {
        return strip < shadow.strips() ? shadow.stripM(strip) : Double.POSITIVE_INFINITY;
    }

    @Override
    public double skyView(int strip) {
        return skyView[strip];
    }

    @Override
    public double viewOfFront(int strip) {
        return viewOfFront[strip];
    }

    @Override
    public double viewOfBack(int strip) {
        return viewOfBack[strip];
    }

    @Override
    public double frontView(int strip) {
        return frontView[strip];
    }

    @Override
    public double backView(int strip) {
        return backView[strip];
    }

    @Override
    public void litShares(double profileDeg, double[] lit) {
        double profile = Math.toRadians(profileDeg);
        double height = Math.max(1 / HORIZON_SLANT, Math.sin(profile));
        shadow.dark(Math.cos(profile) / height, lit);
        for (int i = 0; i < shadow.strips(); i++) {
            lit[i] = 1 - lit[i];
        }
        for (int i = shadow.strips(); i < count(); i++) {
            lit[i] = 1;
        }
    }

    private void integrate() {
        double[] slants = DoubleStream.concat(
                        DoubleStream.of(-HORIZON_SLANT, HORIZON_SLANT),
                        shadow.kinks(shadow.repeating() ? SPREAD_SLANT : HORIZON_SLANT))
                .filter(slant -> Math.abs(slant) <= HORIZON_SLANT)
                .sorted()
                .toArray();
        double[] before = new double[shadow.strips()];
        double[] after = new double[shadow.strips()];
        for (int k = 1; k < slants.length; k++) {
            double from = slants[k - 1];
            double to = slants[k];
            if (to > from) {
                darkness(from, from, to, before);
                darkness(to, from, to, after);
                // what looks up along the light sees backs while the light falls on fronts
                double[] seen = from + (to - from) / 2 > shadow.slantAlongPlate() ? viewOfBack : viewOfFront;
                addStraight(from, to, before, after, seen);
            }
        }
        for (int i = 0; i < skyView.length; i++) {
            skyView[i] = 1 - viewOfFront[i] - viewOfBack[i];
        }
    }

    private void darkness(double slant, double from, double to, double[] share) {
        boolean nearHorizon = from >= SPREAD_SLANT || to <= -SPREAD_SLANT;
        if (shadow.repeating() && nearHorizon) {
            Arrays.fill(share, shadow.meanDark(slant));
        } else {
            shadow.dark(slant, share);
        }
    }

    /** Adds ½∫ dark(t)·(1 + t²)^(-3/2) dt with dark straight between two slants. */
    private static void addStraight(double from, double to, double[] before, double[] after, double[] sum) {
        double even = to / Math.hypot(1, to) - from / Math.hypot(1, from);
        double rising = 1 / Math.hypot(1, from) - 1 / Math.hypot(1, to);
        for (int i = 0; i < before.length; i++) {
            double slope = (after[i] - before[i]) / (to - from);
            sum[i] += ((before[i] - slope * from) * even + slope * rising) / 2;
        }
    }

    /** From a face to each strip; the roof beyond, if there is one, takes the rest of the roof that the face sees. */
    private double[] reciprocal(double[] fromStrip, double chordM, double wholeRoof) {
        double[] toStrip = new double[fromStrip.length];
        double seen = 0;
        for (int i = 0; i < shadow.strips(); i++) {
            toStrip[i] = fromStrip[i] * shadow.stripM(i) / chordM;
            seen += toStrip[i];
        }
        for (int i = shadow.strips(); i < toStrip.length; i++) {
            toStrip[i] = Math.max(0, wholeRoof - seen);
        }
        return toStrip;
    }
}
