package dev.warmlane.irradiance;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

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
    private final double[] boundsM;
    private final double[] perM;
    private final double periodM;
    private final boolean repeating;

    /**
     * Strips of roof.
     *
     * @param boundsM where strips begin and end, rising; one more than there are strips
     * @param repeating whether the strips and their plate repeat endlessly before and behind
     */
    StripShadow(RackRows rows, double[] boundsM, boolean repeating) {
        this.runM = rows.runM();
        this.riseM = rows.riseM();
        this.clearanceM = rows.clearanceM();
        this.boundsM = boundsM.clone();
        this.perM = IntStream.range(0, boundsM.length - 1)
                .mapToDouble(i -> 1 / stripM(i))
                .toArray();
        this.periodM = boundsM[boundsM.length - 1] - boundsM[0];
        this.repeating = repeating;
    }

    double fromM(int strip) {
        return boundsM[strip];
    }

    double stripM(int strip) {
        return boundsM[strip + 1] - boundsM[strip];
    }

    int strips() {
        return boundsM.length - 1;
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
        if (repeating && to - from >= periodM) {
            Arrays.fill(share, 0, strips(), 1);
            return;
        }
        double fromPeriod = repeating ? Math.floor((from - boundsM[0]) / periodM) : 0;
        double toPeriod = repeating ? Math.floor((to - boundsM[0]) / periodM) : 0;
        double fromM = from - fromPeriod * periodM;
        double toM = to - toPeriod * periodM;
        double periods = toPeriod - fromPeriod;
        for (int i = 0; i < strips(); i++) {
            share[i] = periods + clamp((toM - boundsM[i]) * perM[i]) - clamp((fromM - boundsM[i]) * perM[i]);
        }
    }

    /** Share of the whole repeating roof that is dark. */
    double meanDark(double slant) {
        return Math.min(1, Math.abs(upperEdge(slant) - lowerEdge(slant)) / periodM);
    }

    /**
     * Every slant at which the darkness of some strip, or of the whole roof, stops growing or shrinking straight; those
     * of strips only from -limit to limit.
     */
    DoubleStream kinks(double limit) {
        // beyond these the shadows of neighbours meet and all is dark
        boolean meet = repeating && riseM > 0;
        double allDarkBehind = meet ? (-periodM - runM) / riseM : Double.NEGATIVE_INFINITY;
        double allDarkBefore = meet ? (periodM - runM) / riseM : Double.POSITIVE_INFINITY;
        double first = Math.max(-limit, allDarkBehind);
        double last = Math.min(limit, allDarkBefore);
        DoubleStream whole = DoubleStream.of(-limit, limit, allDarkBehind, allDarkBefore, slantAlongPlate());
        DoubleStream ofLower = crossings(0, clearanceM, first, last);
        DoubleStream ofUpper = crossings(-runM, clearanceM + riseM, first, last);
        return DoubleStream.concat(whole, DoubleStream.concat(ofLower, ofUpper));
    }

    /** The slants at which the shadow of an edge at a place and height crosses from one strip to the next. */
    private DoubleStream crossings(double placeM, double heightM, double first, double last) {
        if (heightM <= 0) {
            return DoubleStream.empty();
        }
        double nearestM = placeM - heightM * last;
        double farthestM = placeM - heightM * first;
        if (!repeating) {
            return Arrays.stream(boundsM)
                    .filter(bound -> bound >= nearestM && bound <= farthestM)
                    .map(bound -> (placeM - bound) / heightM);
        }
        return IntStream.range(0, strips()).boxed().flatMapToDouble(i -> {
            double lowest = Math.ceil((nearestM - boundsM[i]) / periodM);
            double highest = Math.floor((farthestM - boundsM[i]) / periodM);
            return DoubleStream.iterate(lowest, period -> period + 1)
                    .limit((long) Math.max(0, highest - lowest + 1))
                    .map(period -> (placeM - boundsM[i] - period * periodM) / heightM);
        });
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
