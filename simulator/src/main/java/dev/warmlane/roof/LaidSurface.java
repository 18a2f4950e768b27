package dev.warmlane.roof;

import java.util.List;

/**
 * A surface with all collectors that lie on it, as it is set out on the roof: along the rows of the first of them and across
 * those, from the corner of the rectangle around the surface at which both are least.
 *
 * @param collectors what lies on it, one or more, in the order in which it is named
 */
public record LaidSurface(List<On> collectors) {

    /** Rows that are turned by less against a quarter turn are not askew, degrees; rounding of a surface's edge. */
    private static final double SQUARE_DEG = 1e-6;

    private static final double QUARTER_DEG = 90;
    private static final double HALF_DEG = 180;

    /**
     * Some collectors.
     *
     * @param name what they are called
     * @param layout their banks on the surface
     * @param laying whether mats lie or racks stand
     */
    public record On(String name, SurfaceLayout layout, Laying laying) {}

    /**
     * Where a bank lies, m. Of one whose rows run along or across those of the first, the rectangle that it takes; of one that
     * stands askew its own beginning and sides.
     *
     * @param alongM where it begins, along the rows
     * @param acrossM where it begins, across them
     * @param lengthM how far it goes along them
     * @param depthM how far it goes across them
     * @param askewDeg by how much its own length is turned to the left of the rows, degrees, negative to the right; 0 unless
     *     it stands askew
     */
    public record Place(double alongM, double acrossM, double lengthM, double depthM, double askewDeg) {}

    /** Keeps its own copy of the list. */
    public LaidSurface {
        if (collectors.isEmpty()) {
            throw new IllegalArgumentException("nothing lies on the surface");
        }
        collectors = List.copyOf(collectors);
    }

    /** The surface. */
    public Surface surface() {
        return first().surface();
    }

    /** The first of the layouts, in whose rows the surface is set out. */
    public SurfaceLayout first() {
        return collectors.get(0).layout;
    }

    /** Number of panels. */
    public int panels() {
        return collectors.stream().mapToInt(one -> one.layout.panels()).sum();
    }

    /** Number of banks. */
    public int banks() {
        return collectors.stream().mapToInt(one -> one.layout.banks().size()).sum();
    }

    /** Collector area, m². */
    public double areaM2() {
        return collectors.stream().mapToDouble(one -> one.layout.areaM2()).sum();
    }

    /** By how much the rows of collectors are turned to the left of those of the first, degrees, 0 to below 360. */
    public double turnedDeg(On collectors) {
        double turned = (collectors.layout.alongDeg() - first().alongDeg()) % 360;
        return turned < 0 ? turned + 360 : turned;
    }

    /** Quarter turns of the same, 0 to 3; -1 where they stand askew. */
    public int quarterTurns(On collectors) {
        double quarters = turnedDeg(collectors) / QUARTER_DEG;
        return Math.abs(quarters - Math.rint(quarters)) * QUARTER_DEG > SQUARE_DEG ? -1 : (int) Math.rint(quarters) % 4;
    }

    /** Where a bank of some collectors lies. */
    public Place place(On collectors, Bank bank) {
        Patch place = bank.place();
        int quarters = quarterTurns(collectors);
        RoofPoint begin = first().fromCorner(place.corner());
        if (quarters <= 0) {
            return new Place(
                    begin.xM(),
                    begin.yM(),
                    place.lengthM(),
                    place.depthM(),
                    quarters == 0 ? 0 : turnedDeg(collectors) - (turnedDeg(collectors) > HALF_DEG ? 2 * HALF_DEG : 0));
        }
        RoofPoint end = first().fromCorner(place.at(place.lengthM(), place.depthM()));
        boolean across = quarters % 2 == 1;
        return new Place(
                Math.min(begin.xM(), end.xM()),
                Math.min(begin.yM(), end.yM()),
                across ? place.depthM() : place.lengthM(),
                across ? place.lengthM() : place.depthM(),
                0);
    }
}
