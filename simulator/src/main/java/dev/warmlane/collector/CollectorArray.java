package dev.warmlane.collector;

import dev.warmlane.units.Checks;

/**
 * Collectors of one kind, mounted one way, on one pumped circuit.
 *
 * @param name what the designer calls it
 * @param areaM2 collector area, m², 0.5 to 100000
 * @param mounting how it is mounted
 * @param model how it makes heat
 * @param flowKgSM2 water flow per area while running, kg/s per m², 0.005 to 0.3
 * @param panelAreaM2 area of one panel, m², or 0 where the area is not made of panels
 * @param filling how much water it holds and what it weighs; no part of the balance
 */
public record CollectorArray(
        String name,
        double areaM2,
        Mounting mounting,
        CollectorModel model,
        double flowKgSM2,
        double panelAreaM2,
        Filling filling) {

    /** Usual specific flow, kg/s per m²: about 0.07 US gal/min per ft², the middle of common practice; no source. */
    public static final double USUAL_FLOW_KG_S_M2 = 0.05;

    /** Smallest area of an array, m². */
    public static final double SMALLEST_M2 = 0.5;

    /** Largest area of an array, m². */
    public static final double LARGEST_M2 = 100_000;

    /** Checks every range. */
    public CollectorArray {
        Checks.within("collector area", areaM2, SMALLEST_M2, LARGEST_M2, "m2");
        Checks.within("collector flow", flowKgSM2, 0.005, 0.3, "kg/s m2");
        Checks.within("panel area", panelAreaM2, 0, 100, "m2");
    }

    /** An array of usual filling. */
    public CollectorArray(
            String name, double areaM2, Mounting mounting, CollectorModel model, double flowKgSM2, double panelAreaM2) {
        this(name, areaM2, mounting, model, flowKgSM2, panelAreaM2, Filling.USUAL);
    }

    /** An array that is not counted in panels, at the usual flow. */
    public CollectorArray(String name, double areaM2, Mounting mounting, CollectorModel model) {
        this(name, areaM2, mounting, model, USUAL_FLOW_KG_S_M2, 0);
    }

    /** The same array with another area, m². */
    public CollectorArray withAreaM2(double value) {
        return new CollectorArray(name, value, mounting, model, flowKgSM2, panelAreaM2, filling);
    }

    /** The same array mounted another way. */
    public CollectorArray withMounting(Mounting value) {
        return new CollectorArray(name, areaM2, value, model, flowKgSM2, panelAreaM2, filling);
    }

    /** The same array with another model. */
    public CollectorArray withModel(CollectorModel value) {
        return new CollectorArray(name, areaM2, mounting, value, flowKgSM2, panelAreaM2, filling);
    }

    /** The same array with another flow, kg/s per m². */
    public CollectorArray withFlowKgSM2(double value) {
        return new CollectorArray(name, areaM2, mounting, model, value, panelAreaM2, filling);
    }

    /**
     * Flat roof that it takes, m²: mats their area; racks their rows and the ways between them, the rows all of one
     * length, area / (rows · chord); on a pitched roof nothing. It grows in proportion to the area: with more of it racks
     * have longer rows, not more of them.
     */
    public double flatRoofTakenM2() {
        if (mounting instanceof Mounting.OpenRack rack) {
            double rowLength = areaM2 / (rack.rows() * rack.chordM());
            double footprint = rack.chordM() * Math.cos(Math.toRadians(rack.tiltDeg()));
            return rowLength * ((rack.rows() - 1) * rack.pitchM() + footprint);
        }
        return mounting instanceof Mounting.FlatOnRoof ? areaM2 : 0;
    }

    /**
     * What a collector holds and weighs, per m².
     *
     * @param waterLM2 water in it, L/m², 0.5 to 30
     * @param dryKgM2 its weight without water, kg/m², 0 to 50; 0 where it is not known
     */
    public record Filling(double waterLM2, double dryKgM2) {

        /**
         * Usual plastic mats hold 2.6 to 4.2 L/m² (derived from tubes of 5 to 6 mm bore side by side, low certainty): the
         * middle; their weight is not known.
         */
        public static final Filling USUAL = new Filling(3.4, 0);

        /** Checks every range. */
        public Filling {
            Checks.within("water in the collector", waterLM2, 0.5, 30, "L/m2");
            Checks.within("dry weight of the collector", dryKgM2, 0, 50, "kg/m2");
        }

        /** Weight full of water, kg/m², or that of the water alone where the dry weight is not known. */
        public double wetKgM2() {
            return waterLM2 + dryKgM2;
        }
    }
}
