package dev.warmlane.irradiance;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * The shadow that plates throw on strips of roof, by the slant of the light: the cotangent t of its profile angle. The
 * roof is measured from the point below a plate's lower edge, forward (the way the plate faces) positive, so that the
 * shadow of an edge at place x and height z falls at x - z·t, and all that is dark grows and shrinks piecewise
 * straight with t. Strips are numbered from the back forward.
 */
final class StripShadow {

    private final double runM;
    private final double riseM;
    private final double clearanceM;
    private final double startM;
    private final double stripM;
    private final int strips;
    private final boolean repeating;

    /**
     * Equal strips of roof.
     *
     * @param repeating whether the strips and their plate repeat endlessly before and behind
     */
    StripShadow(RackRows rows, double startM, double stripM, int strips, boolean repeating) {
        this.runM = rows.runM();
        this.riseM = rows.riseM();
        this.clearanceM = rows.clearanceM();
        this.startM = startM;
        this.stripM = stripM;
        this.strips = strips;
        this.repeating = repeating;
    }

    double stripM() {
        return stripM;
    }

    int strips() {
        return strips;
    }

    boolean repeating() {
        return repeating;
    }

    /** The slant of light that runs along the plates: above it, it falls on their fronts, below it on their backs. */
    double slantAlongPlate() {
        return riseM > 0 ? -runM / riseM : Double.NEGATIVE_INFINITY;
    }

    /** Share of each strip that is dark, 0 to 1, for light of one slant. */
    void dark(double slant, double[] share) {
        double lower = lowerEdge(slant);
        double upper = upperEdge(slant);
        double from = Math.min(lower, upper);
        double to = Math.max(lower, upper);
        double periodM = stripM * strips;
        if (repeating && to - from >= periodM) {
            Arrays.fill(share, 0, strips, 1);
            return;
        }
        double fromPeriod = repeating ? Math.floor((from - startM) / periodM) : 0;
        double toPeriod = repeating ? Math.floor((to - startM) / periodM) : 0;
        double fromStrips = (from - startM - fromPeriod * periodM) / stripM;
        double toStrips = (to - startM - toPeriod * periodM) / stripM;
        double periods = toPeriod - fromPeriod;
        for (int i = 0; i < strips; i++) {
            share[i] = periods + clamp(toStrips - i) - clamp(fromStrips - i);
        }
    }

    /** Share of the whole repeating roof that is dark. */
    double meanDark(double slant) {
        return Math.min(1, Math.abs(upperEdge(slant) - lowerEdge(slant)) / (stripM * strips));
    }

    /**
     * Every slant at which the darkness of some strip, or of the whole roof, stops growing or shrinking straight; those
     * of strips only from -limit to limit.
     */
    DoubleStream kinks(double limit) {
        // beyond these the shadows of neighbours meet and all is dark
        boolean meet = repeating && riseM > 0;
        double allDarkBehind = meet ? (-stripM * strips - runM) / riseM : Double.NEGATIVE_INFINITY;
        double allDarkBefore = meet ? (stripM * strips - runM) / riseM : Double.POSITIVE_INFINITY;
        double first = Math.max(-limit, allDarkBehind);
        double last = Math.min(limit, allDarkBefore);
        DoubleStream whole = DoubleStream.of(-limit, limit, allDarkBehind, allDarkBefore, slantAlongPlate());
        DoubleStream ofLower = crossings(0, clearanceM, first, last);
        DoubleStream ofUpper = crossings(-runM, clearanceM + riseM, first, last);
        return DoubleStream.concat(whole, DoubleStream.concat(ofLower, ofUpper));
    }

    /** The slants at which the shadow of an edge at a place and height crosses from one strip to the next. */
    private DoubleStream crossings(double place, double height, double first, double last) {
        if (height <= 0) {
            return DoubleStream.empty();
        }
        double lowest = Math.ceil((place - height * last - startM) / stripM);
        double highest = Math.floor((place - height * first - startM) / stripM);
        if (!repeating) {
            lowest = Math.max(lowest, 0);
            highest = Math.min(highest, strips);
        }
        return DoubleStream.iterate(lowest, boundary -> boundary + 1)
                .limit((long) Math.max(0, highest - lowest + 1))
                .map(boundary -> (place - startM - boundary * stripM) / height);
    }

    private double lowerEdge(double slant) {
        return -clearanceM * slant;
    }

    private double upperEdge(double slant) {
        return -runM - (clearanceM + riseM) * slant;
    }

    private static double clamp(double x) {
        return Math.min(1, Math.max(0, x));
    }
}
