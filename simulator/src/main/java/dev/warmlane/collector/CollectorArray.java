package dev.warmlane.collector;

import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.Wanted;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;

/**
 * Collectors of one kind, mounted one way, on one pumped circuit.
 *
 * @param name what the designer calls it
 * @param areaM2 collector area, m²
 * @param mounting how it is mounted
 * @param model how it makes heat
 * @param flowKgSM2 water flow per area while running, kg/s per m²
 * @param panelAreaM2 area of one panel, m², or 0 where the area is not made of panels
 * @param filling how much water it holds and what it weighs; no part of the balance
 * @param split how unevenly its flow divides among its panels
 */
public record CollectorArray(
        String name,
        double areaM2,
        Mounting mounting,
        CollectorModel model,
        double flowKgSM2,
        double panelAreaM2,
        Filling filling,
        FlowSplit split) {

    /** Range of {@link #areaM2}. */
    public static final Range AREA = Range.of("collector area", Dimension.AREA, 0.5, 100_000);

    /** Range of {@link #flowKgSM2}. */
    public static final Range FLOW = Range.of("collector flow", Dimension.MASS_FLOW_PER_AREA, 0.005, 0.3);

    /** Range of {@link #panelAreaM2} where there are panels. */
    public static final Range PANEL_AREA = Range.of("panel area", Dimension.AREA, 0.1, 100);

    /** Usual {@link #flowKgSM2}. */
    public static final Usual USUAL_FLOW =
            FLOW.usually(0.05, "about 0.07 US gal/min per ft2, common practice, no source");

    /** {@link #USUAL_FLOW}, kg/s per m². */
    public static final double USUAL_FLOW_KG_S_M2 = USUAL_FLOW.value();

    /** Checks every range. */
    public CollectorArray {
        AREA.check(areaM2);
        FLOW.check(flowKgSM2);
        if (panelAreaM2 != 0) {
            PANEL_AREA.check(panelAreaM2);
        }
    }

    /** An array whose flow divides evenly. */
    public CollectorArray(
            String name,
            double areaM2,
            Mounting mounting,
            CollectorModel model,
            double flowKgSM2,
            double panelAreaM2,
            Filling filling) {
        this(name, areaM2, mounting, model, flowKgSM2, panelAreaM2, filling, FlowSplit.EVEN);
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
        return new CollectorArray(name, value, mounting, model, flowKgSM2, panelAreaM2, filling, split);
    }

    /** The same array mounted another way. */
    public CollectorArray withMounting(Mounting value) {
        return new CollectorArray(name, areaM2, value, model, flowKgSM2, panelAreaM2, filling, split);
    }

    /** The same array with another model. */
    public CollectorArray withModel(CollectorModel value) {
        return new CollectorArray(name, areaM2, mounting, value, flowKgSM2, panelAreaM2, filling, split);
    }

    /** The same array with another flow, kg/s per m². */
    public CollectorArray withFlowKgSM2(double value) {
        return new CollectorArray(name, areaM2, mounting, model, value, panelAreaM2, filling, split);
    }

    /** The same array made of panels of an area, m². */
    public CollectorArray withPanelAreaM2(double value) {
        return new CollectorArray(name, areaM2, mounting, model, flowKgSM2, value, filling, split);
    }

    /** The same array with another filling. */
    public CollectorArray withFilling(Filling value) {
        return new CollectorArray(name, areaM2, mounting, model, flowKgSM2, panelAreaM2, value, split);
    }

    /** The same array with another division of its flow. */
    public CollectorArray withSplit(FlowSplit value) {
        return new CollectorArray(name, areaM2, mounting, model, flowKgSM2, panelAreaM2, filling, value);
    }

    /** What of it is to be laid on a roof that is drawn, and where. */
    public Wanted wanted(RoofPlan plan) {
        return new Wanted(mounting.surfaces(plan), mounting.laying(), areaM2);
    }

    /**
     * Flat roof that it takes, m²: mats their area; racks their rows and the ways between them, the rows all of one
     * length, area / (rows · chord), tents with two chords to a row; on a pitched roof nothing. It grows in proportion to the area: with more of it racks
     * have longer rows, not more of them.
     */
    public double flatRoofTakenM2() {
        return mounting.match(flat -> areaM2, this::takenByRows, pitched -> 0.0);
    }

    private double takenByRows(Mounting.OpenRack racks) {
        double rowLength = areaM2 / (racks.rows() * racks.collectorPerRowM());
        return rowLength * ((racks.rows() - 1) * racks.pitchM() + racks.layout().coveredM());
    }

    /**
     * What a collector holds and weighs, per m².
     *
     * @param waterLM2 water in it, L/m²
     * @param dryKgM2 its weight without water, kg/m²; 0 where it is not known
     */
    public record Filling(double waterLM2, double dryKgM2) {

        /** Range of {@link #waterLM2}. */
        public static final Range WATER =
                Range.of("water in the collector", Dimension.VOLUME_PER_AREA, "L/m2", 0.5, 30);

        /** Range of {@link #dryKgM2} where it is known. */
        public static final Range DRY_WEIGHT =
                Range.of("dry weight of the collector", Dimension.MASS_PER_AREA, 0.1, 50);

        /** Usual {@link #waterLM2}: tubes of 5 to 6 mm bore side by side hold 2.6 to 4.2 L/m² (derived). */
        public static final Usual USUAL_WATER = WATER.usually(3.4, "middle of usual mats, low certainty");

        /** Usual plastic mats, of a weight that is not known. */
        public static final Filling USUAL = new Filling(USUAL_WATER.value(), 0);

        /** Checks every range. */
        public Filling {
            WATER.check(waterLM2);
            if (dryKgM2 != 0) {
                DRY_WEIGHT.check(dryKgM2);
            }
        }

        /** Weight full of water, kg/m², or that of the water alone where the dry weight is not known. */
        public double wetKgM2() {
            return waterLM2 + dryKgM2;
        }
    }
}
