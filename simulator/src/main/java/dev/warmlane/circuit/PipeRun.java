package dev.warmlane.circuit;

import dev.warmlane.hydraulics.Pipe;
import dev.warmlane.hydraulics.PipeLoss;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.Optional;

/**
 * The pipe between the pool and the collectors, of which that on the roof is made too.
 *
 * @param innerM inner diameter, m
 * @param lengthM supply and return together, without what lies on the roof beside the banks, m
 * @param roughnessM roughness of its wall, m
 * @param lossFactor sum of the loss factors of bends, valves and tees on the way there and back
 * @param coat what it loses its heat through; nothing where that is not told
 */
public record PipeRun(double innerM, double lengthM, double roughnessM, double lossFactor, Optional<Coat> coat) {

    /** Range of {@link #innerM}. */
    public static final Range INNER =
            Range.of("inner diameter of the pipe", Dimension.LENGTH, 0.01, 0.6).writtenIn("mm");

    /** Range of {@link #lengthM}. */
    public static final Range LENGTH = Range.of("length of the pipe", Dimension.LENGTH, 0, 2000);

    /** Range of {@link #roughnessM}. */
    public static final Range ROUGHNESS =
            Range.of("roughness of the pipe", Dimension.LENGTH, 0, 3e-3).writtenIn("mm");

    /** Range of {@link #lossFactor}. */
    public static final Range LOSS_FACTOR = Range.number("loss factors of the pipe", 0, 500);

    /** Usual {@link #roughnessM}. */
    public static final Usual USUAL_ROUGHNESS =
            ROUGHNESS.usually(1.5e-6, "plastic, as drawn tubing after Moody, from memory");

    /** Usual {@link #lossFactor}. */
    public static final Usual USUAL_LOSS_FACTOR = LOSS_FACTOR.usually(
            15, "ten bends of 0.9, two tees of 1.8 and a non-return valve of 2.5, White, table 6.5, from memory");

    /** Checks every range. */
    public PipeRun {
        INNER.check(innerM);
        LENGTH.check(lengthM);
        ROUGHNESS.check(roughnessM);
        LOSS_FACTOR.check(lossFactor);
        coat.ifPresent(there -> there.checkAround(innerM, lengthM));
    }

    /** The run between pool and roof. */
    public Pipe run() {
        return new Pipe(innerM, lengthM, roughnessM, lossFactor);
    }

    /** The same pipe straight on, of a length, m. */
    public Pipe straight(double metres) {
        return run().straight(metres);
    }

    /** What all of it loses to the air, W/K, with so much more of it on the roof, m; nothing where no coat is told. */
    public Optional<Double> heatLossWK(double onRoofM) {
        return coat.map(there -> (lengthM - there.buriedM + onRoofM) * there.inAirWmK(innerM)
                + (there.buriedM > 0 ? there.buriedM * there.inGroundWmK(innerM) : 0));
    }

    /**
     * What a pipe loses its heat through.
     *
     * @param outerM its outer diameter, m
     * @param wallWmK conductivity of its wall, W/mK
     * @param insulationM thickness of insulation, m; 0 for none
     * @param insulationWmK conductivity of the insulation, W/mK
     * @param buriedM how much of the run lies in the ground, m
     * @param depthM how deep its middle lies there, m
     */
    public record Coat(
            double outerM, double wallWmK, double insulationM, double insulationWmK, double buriedM, double depthM) {

        /** Range of {@link #outerM}. */
        public static final Range OUTER = Range.of("outer diameter of the pipe", Dimension.LENGTH, 0.01, 0.7)
                .writtenIn("mm");

        /** Range of conductivities. */
        public static final Range CONDUCTIVITY = Range.of("conductivity", Dimension.CONDUCTIVITY, 0.01, 500);

        /** Range of {@link #insulationM}. */
        public static final Range INSULATION =
                Range.of("thickness of insulation", Dimension.LENGTH, 0, 0.3).writtenIn("mm");

        /** Range of {@link #depthM}. */
        public static final Range DEPTH = Range.of("depth of the pipe in the ground", Dimension.LENGTH, 0.1, 5);

        /** Usual {@link #wallWmK}. */
        public static final Usual USUAL_WALL = CONDUCTIVITY.usually(0.19, "rigid PVC, handbook tables, from memory");

        /** Usual {@link #insulationWmK}. */
        public static final Usual USUAL_INSULATION =
                CONDUCTIVITY.usually(0.04, "foam that has aged, common practice, no source");

        /** Usual {@link #depthM}. */
        public static final Usual USUAL_DEPTH = DEPTH.usually(0.6, "common practice, no source");

        /** Film to the outdoor air, radiation with it, W/m²K: 1/0.04 m²K/W of ISO 6946, from memory. */
        public static final double FILM_WM2K = 25;

        /** Conductivity of the ground, W/mK, as around the pool: ISO 13370, from memory. */
        public static final double GROUND_WMK = 2;

        /** Checks every range. */
        public Coat {
            OUTER.check(outerM);
            CONDUCTIVITY.check(wallWmK);
            INSULATION.check(insulationM);
            CONDUCTIVITY.check(insulationWmK);
            LENGTH.named("length of pipe in the ground").check(buriedM);
            DEPTH.check(depthM);
        }

        private void checkAround(double innerM, double lengthM) {
            if (!(outerM > innerM)) {
                throw new IllegalArgumentException(
                        "the pipe's outer diameter must be above its inner one, " + 1000 * innerM + " mm");
            }
            if (buriedM > lengthM) {
                throw new IllegalArgumentException("no more of the pipe can lie in the ground than there is, " + lengthM
                        + " m; what lies on the roof is not in it");
            }
        }

        private double inAirWmK(double innerM) {
            return PipeLoss.inAirWmK(wall(innerM), insulation(), FILM_WM2K);
        }

        private double inGroundWmK(double innerM) {
            return PipeLoss.inGroundWmK(wall(innerM), insulation(), depthM, GROUND_WMK);
        }

        private PipeLoss.Layer wall(double innerM) {
            return new PipeLoss.Layer(innerM, outerM, wallWmK);
        }

        private PipeLoss.Insulation insulation() {
            return new PipeLoss.Insulation(insulationM, insulationWmK);
        }
    }
}
