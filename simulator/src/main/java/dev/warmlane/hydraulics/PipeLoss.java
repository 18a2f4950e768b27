package dev.warmlane.hydraulics;

/**
 * Heat that a pipe loses, W for each kelvin and metre of it, by conduction through round layers. What the water's own film
 * holds back is left out: above 500 W/m²K in running water, against the 25 of the outer one.
 */
public final class PipeLoss {

    private PipeLoss() {}

    /**
     * In air: 1/(ln(d_o/d_i)/(2π k_w) + ln(D/d_o)/(2π k) + 1/(h π D)), with D the diameter over the insulation (conduction
     * of heat through a hollow cylinder, any handbook; derived).
     *
     * @param wall the pipe's own wall
     * @param insulation what is around it
     * @param filmWm2K coefficient from its outside to the air, W/m²K, above 0
     */
    public static double inAirWmK(Layer wall, Insulation insulation, double filmWm2K) {
        return 1 / (through(wall, insulation) + 1 / (filmWm2K * Math.PI * outerM(wall, insulation)));
    }

    /**
     * In the ground: the same with ln(2z/D + √((2z/D)² − 1))/(2π k_g) in place of the film, for a depth z of its middle
     * (conduction shape factor of a cylinder beside a plane, Incropera and DeWitt, table 4.1, from memory).
     *
     * @param wall the pipe's own wall
     * @param insulation what is around it
     * @param depthM depth of its middle under the ground, m, more than half of its outer diameter
     * @param groundWmK conductivity of the ground, W/mK
     */
    public static double inGroundWmK(Layer wall, Insulation insulation, double depthM, double groundWmK) {
        double ratio = 2 * depthM / outerM(wall, insulation);
        if (!(ratio > 1)) {
            throw new IllegalArgumentException(
                    "a pipe in the ground lies deeper than half its thickness, was " + depthM + " m");
        }
        double ground = Math.log(ratio + Math.sqrt(ratio * ratio - 1)) / (2 * Math.PI * groundWmK);
        return 1 / (through(wall, insulation) + ground);
    }

    private static double through(Layer wall, Insulation insulation) {
        return resistance(wall.innerM, wall.outerM, wall.conductivityWmK)
                + resistance(wall.outerM, outerM(wall, insulation), insulation.conductivityWmK);
    }

    private static double resistance(double innerM, double outerM, double conductivityWmK) {
        return Math.log(outerM / innerM) / (2 * Math.PI * conductivityWmK);
    }

    private static double outerM(Layer wall, Insulation insulation) {
        return wall.outerM + 2 * insulation.thicknessM;
    }

    /**
     * The wall of a pipe.
     *
     * @param innerM inner diameter, m
     * @param outerM outer diameter, m, above the inner one
     * @param conductivityWmK of its material, W/mK
     */
    public record Layer(double innerM, double outerM, double conductivityWmK) {

        /** Refuses a wall without thickness. */
        public Layer {
            if (!(innerM > 0) || !(outerM > innerM) || !(conductivityWmK > 0)) {
                throw new IllegalArgumentException(
                        "a pipe's outer diameter is above its inner one, was " + outerM + " m over " + innerM + " m");
            }
        }
    }

    /**
     * What is around a pipe.
     *
     * @param thicknessM m; 0 for none
     * @param conductivityWmK of it, W/mK
     */
    public record Insulation(double thicknessM, double conductivityWmK) {

        /** Refuses what insulates nothing. */
        public Insulation {
            if (!(thicknessM >= 0) || !(conductivityWmK > 0)) {
                throw new IllegalArgumentException(
                        "insulation has a thickness of 0 or more and a conductivity above 0");
            }
        }
    }
}
