package dev.warmlane.hydraulics;

import java.util.List;

/**
 * A way whose drop of pressure was measured at some flows: a power of the flow from each point to the next, the first and the
 * last of them going on beyond the ends.
 *
 * @param points at least two, of growing flow and drop
 */
public record MeasuredDrop(List<Point> points) implements Way {

    /**
     * A point.
     *
     * @param flowKgS flow, kg/s, above 0
     * @param dropPa pressure used up, Pa, above 0
     */
    public record Point(double flowKgS, double dropPa) {}

    /** Checks that flow and drop grow. */
    public MeasuredDrop {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException(
                    "a drop of pressure is known by at least two points, was given " + points.size());
        }
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            boolean grows =
                    i == 0 || (point.flowKgS > points.get(i - 1).flowKgS && point.dropPa > points.get(i - 1).dropPa);
            if (!(point.flowKgS > 0) || !(point.dropPa > 0) || !grows) {
                throw new IllegalArgumentException(
                        "the points of a drop of pressure go from small flow to large, each with"
                                + " more pressure than the one before, all above 0; point " + (i + 1) + " does not");
            }
        }
    }

    @Override
    public double dropPa(double kgS) {
        if (kgS == 0) {
            return 0;
        }
        double flow = Math.abs(kgS);
        int from = 0;
        while (from < points.size() - 2 && flow > points.get(from + 1).flowKgS) {
            from++;
        }
        Point one = points.get(from);
        Point next = points.get(from + 1);
        double power = Math.log(next.dropPa / one.dropPa) / Math.log(next.flowKgS / one.flowKgS);
        return Math.copySign(one.dropPa * Math.pow(flow / one.flowKgS, power), kgS);
    }
}
