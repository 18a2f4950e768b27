package dev.warmlane.study;

import dev.warmlane.circuit.Pipes;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.season.Installation;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;

/**
 * The collector areas that a study goes through: so many designs, evenly spaced, both ends among them.
 *
 * @param fromM2 smallest area of all arrays together, m², above 0
 * @param toM2 largest area, m², at least {@code fromM2} and at most {@link #LARGEST_M2}
 * @param designs how many, 1 to 10000; 1 only where both ends are the same
 */
public record AreaRange(double fromM2, double toM2, int designs) {

    /** Half of what one array may have, so that there is room for the design beyond the last, m². */
    public static final double LARGEST_M2 = CollectorArray.AREA.highest() / 2;

    /** How many designs a study has unless somebody asks for another number. */
    public static final int USUAL_DESIGNS = 8;

    /** Which design an oversized installation is, counted from 0. */
    private static final int DESCRIBED = 5;

    /** Checks every range. */
    public AreaRange {
        if (!(fromM2 > 0) || !(toM2 <= LARGEST_M2)) {
            throw new IllegalArgumentException("collector areas must be above 0 and at most " + plain(LARGEST_M2)
                    + " m2, were from " + plain(fromM2) + " to " + plain(toM2) + " m2");
        }
        if (fromM2 > toM2) {
            throw new IllegalArgumentException("collector areas must run upwards, were from " + plain(fromM2)
                    + " m2 down to " + plain(toM2) + " m2");
        }
        if (designs < 1 || designs > 10_000) {
            throw new IllegalArgumentException("an area study has 1 to 10000 designs, was asked for " + designs);
        }
        if (designs == 1 && fromM2 < toM2) {
            throw new IllegalArgumentException("one design cannot cover the areas from " + plain(fromM2) + " to "
                    + plain(toM2) + " m2; ask for at least 2, or for one area");
        }
    }

    /**
     * From a quarter to twice the area that an installation has, in steps of a quarter, so that the installation itself
     * is one of the designs.
     */
    public static AreaRange around(double areaM2) {
        return new AreaRange(areaM2 / 4, areaM2 * 2, USUAL_DESIGNS);
    }

    /**
     * The usual range for an installation: {@link #around} its own area where the smallest of those fits its flat roof.
     * Where it is oversized so far that none of them would, eight designs from what the roof holds to beyond the
     * installation's own area, which is the sixth.
     */
    public static AreaRange around(Installation installation) {
        double areaM2 = installation.collectorAreaM2();
        AreaRange usual = around(areaM2);
        OptionalDouble limit = AreaStudy.roofLimitM2(installation);
        if (limit.isEmpty() || usual.fromM2() <= limit.getAsDouble()) {
            return usual;
        }
        // the nearest whole panel may be half a panel more
        double halves = installation.arrays().stream()
                .mapToDouble(array -> array.panelAreaM2() / 2)
                .sum();
        double fromM2 = limit.getAsDouble() - halves;
        if (fromM2 <= 0) {
            return usual;
        }
        double stepM2 = (areaM2 - fromM2) / DESCRIBED;
        return new AreaRange(fromM2, fromM2 + (USUAL_DESIGNS - 1) * stepM2, USUAL_DESIGNS);
    }

    /** Distance from one design to the next, m²; 0 where there is only one area. */
    public double stepM2() {
        return designs == 1 ? 0 : (toM2 - fromM2) / (designs - 1);
    }

    /** The area that a design aims at, m². */
    double areaM2(int design) {
        return design == designs - 1 ? toM2 : fromM2 + design * stepM2();
    }

    /**
     * Checks that every array of an installation is large enough in the smallest design, and that its pump, whose power
     * follows the flow, is not too large in the largest.
     *
     * @throws IllegalArgumentException naming what is, or if there are no collectors
     */
    public void checkFor(Installation installation) {
        if (installation.arrays().isEmpty()) {
            throw new IllegalArgumentException(
                    "an area study needs collectors to scale, but " + installation.name() + " has none");
        }
        double factor = fromM2 / installation.collectorAreaM2();
        for (CollectorArray array : installation.arrays()) {
            double least = AreaSteps.wholePanels(array, factor * array.areaM2());
            if (least < CollectorArray.AREA.lowest()) {
                throw new IllegalArgumentException(
                        "from " + plain(fromM2) + " m2 is too small: " + array.name() + " would have " + plain(least)
                                + " m2 of it; the least is " + CollectorArray.AREA.lowest() + " m2");
            }
        }
        double beyondM2 = toM2 + Math.max(stepM2(), AreaSteps.GROWTH * toM2);
        double pumpW = installation.pipes().pumpPowerW() * beyondM2 / installation.collectorAreaM2();
        if (pumpW > Pipes.PUMP_POWER.highest()) {
            throw new IllegalArgumentException(
                    "to " + plain(toM2) + " m2 is too large: the pump, whose power follows the" + " flow, would take "
                            + plain(pumpW) + " W; the most is " + plain(Pipes.PUMP_POWER.highest()) + " W");
        }
    }

    /** Four digits are enough to know an area again. */
    private static String plain(double areaM2) {
        return Double.isFinite(areaM2)
                ? new BigDecimal(areaM2)
                        .round(new MathContext(4))
                        .stripTrailingZeros()
                        .toPlainString()
                : String.valueOf(areaM2);
    }
}
