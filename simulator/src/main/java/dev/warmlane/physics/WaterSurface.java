package dev.warmlane.physics;

/**
 * Light at a calm surface of water, by the equations of Fresnel for light that is not polarised. Waves change it below some
 * 20° of the sun's height, where they let more in.
 */
public final class WaterSurface {

    /** Refractive index of water in sunlight, about 20 °C; handbook value, from memory. */
    public static final double REFRACTIVE_INDEX = 1.333;

    private static final int STEPS = 2000;

    /**
     * Share that is reflected of light from a sky that is evenly bright, ∫ρ·sin 2θ dθ: 0.066 (derived, as in Jerlov, Marine
     * Optics, chapter 5).
     */
    public static final double EVEN_SKY_REFLECTANCE = evenSky();

    private WaterSurface() {}

    /**
     * Share that is reflected of light that comes from one direction: half of the sum of sin²(i−j)/sin²(i+j) and
     * tan²(i−j)/tan²(i+j), the angles i in air and j in water bound by Snell's law.
     *
     * @param cosIncidence cosine of the angle to the vertical, 0 to 1; below 0 it counts as 0, where all is reflected
     */
    public static double reflectance(double cosIncidence) {
        double cosAir = Math.max(0, Math.min(1, cosIncidence));
        double sinWater = Math.sqrt(1 - cosAir * cosAir) / REFRACTIVE_INDEX;
        double cosWater = Math.sqrt(1 - sinWater * sinWater);
        double across = (cosAir - REFRACTIVE_INDEX * cosWater) / (cosAir + REFRACTIVE_INDEX * cosWater);
        double along = (cosWater - REFRACTIVE_INDEX * cosAir) / (cosWater + REFRACTIVE_INDEX * cosAir);
        return (across * across + along * along) / 2;
    }

    private static double evenSky() {
        // with u = cos²θ the integral is the plain mean of ρ over u from 0 to 1
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            sum += reflectance(Math.sqrt((i + 0.5) / STEPS));
        }
        return sum / STEPS;
    }
}
