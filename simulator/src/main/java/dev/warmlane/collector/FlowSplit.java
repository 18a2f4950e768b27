package dev.warmlane.collector;

import java.util.Arrays;
import java.util.List;

/**
 * How unevenly the flow of an array divides among its parts, and what heat that costs.
 *
 * <p>A part of the area a with r times the mean flow for each m² takes up r (1 − e^(−x/r))/(1 − e^(−x)) of what it would at the
 * mean flow, x being the loss of the plate F′U over what the mean flow carries, m′c: the ratio of heat removal factors of
 * Hottel and Whillier (Duffie and Beckman §6.7, from memory), whatever the temperatures. The array takes up the mean of its
 * parts, never more than at an even flow.
 *
 * @param parts none for a flow that is even
 */
public record FlowSplit(List<Part> parts) {

    /** An even flow. */
    public static final FlowSplit EVEN = new FlowSplit(List.of());

    /** Shares of area, and flows over the mean weighted by them, sum up to 1 but for this. */
    private static final double ROUNDING = 1e-6;

    /** A part with less of the flow counts as one with so much. */
    private static final double STANDING = 1e-6;

    /**
     * A part of an array.
     *
     * @param areaShare share of the area
     * @param flowOverMean flow for each m² over the array's
     */
    public record Part(double areaShare, double flowOverMean) {}

    /** Checks that areas and flows sum up. */
    public FlowSplit {
        parts = List.copyOf(parts);
        double area = parts.stream().mapToDouble(Part::areaShare).sum();
        double flow = parts.stream()
                .mapToDouble(part -> part.areaShare * part.flowOverMean)
                .sum();
        if (!parts.isEmpty() && (Math.abs(area - 1) > ROUNDING || Math.abs(flow - 1) > ROUNDING)) {
            throw new IllegalArgumentException("the parts of an array have all of its area and its flow, had " + area
                    + " and " + flow + " of them");
        }
    }

    /** Least flow for each m² over the mean. */
    public double least() {
        return parts.stream().mapToDouble(Part::flowOverMean).min().orElse(1);
    }

    /** Greatest flow for each m² over the mean. */
    public double greatest() {
        return parts.stream().mapToDouble(Part::flowOverMean).max().orElse(1);
    }

    /**
     * Heat over that of an even flow, 0 to 1.
     *
     * @param lossOverFlow x, above 0
     */
    public double heatShare(double lossOverFlow) {
        double sum = 0;
        for (Part part : parts) {
            double flow = Math.max(STANDING, part.flowOverMean);
            sum += part.areaShare * flow * -Math.expm1(-lossOverFlow / flow);
        }
        return parts.isEmpty() ? 1 : sum / -Math.expm1(-lossOverFlow);
    }

    /** {@link #heatShare} drawn straight between so many points of 1 − e^(−x), from 0 to 1, to be asked often. */
    double[] table(int cells) {
        double[] shares = new double[cells + 1];
        Arrays.setAll(shares, i -> {
            double removed = Math.min(0.999, Math.max(1e-6, (double) i / cells));
            return heatShare(-Math.log1p(-removed));
        });
        return shares;
    }
}
