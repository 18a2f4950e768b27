package dev.warmlane.study;

/**
 * The collector areas that a study goes through: so many designs, evenly spaced, both ends among them.
 *
 * @param fromM2 smallest area of all arrays together, m², above 0
 * @param toM2 largest area, m², at least {@code fromM2} and at most 100000
 * @param designs how many, 1 to 10000; 1 only where both ends are the same
 */
public record AreaRange(double fromM2, double toM2, int designs) {

    /** Checks every range. */
    public AreaRange {
        if (!(fromM2 > 0) || !(toM2 <= 100_000)) {
            throw new IllegalArgumentException(
                    "collector areas must be above 0 and at most 100000 m2, were from " + fromM2 + " to " + toM2);
        }
        if (fromM2 > toM2) {
            throw new IllegalArgumentException(
                    "collector areas must run upwards, were from " + fromM2 + " m2 down to " + toM2 + " m2");
        }
        if (designs < 1 || designs > 10_000) {
            throw new IllegalArgumentException("an area study has 1 to 10000 designs, was asked for " + designs);
        }
        if (designs == 1 && fromM2 < toM2) {
            throw new IllegalArgumentException("one design cannot cover the areas from " + fromM2 + " to " + toM2
                    + " m2; ask for at least 2, or for one area");
        }
    }

    /**
     * From a quarter to twice the area that an installation has, in steps of a quarter, so that the installation itself
     * is one of the designs.
     */
    public static AreaRange around(double areaM2) {
        return new AreaRange(areaM2 / 4, areaM2 * 2, 8);
    }

    /** Distance from one design to the next, m²; 0 where there is only one area. */
    public double stepM2() {
        return designs == 1 ? 0 : (toM2 - fromM2) / (designs - 1);
    }

    /** The area that a design aims at, m². */
    double areaM2(int design) {
        return design == designs - 1 ? toM2 : fromM2 + design * stepM2();
    }
}
