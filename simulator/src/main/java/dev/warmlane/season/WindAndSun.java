package dev.warmlane.season;

import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting.Outdoor;

/**
 * The two numbers of a pool under the sky that nobody knows from a drawing, and all that a log of its water tells of them.
 *
 * @param windFactor wind at the water over that of the station, {@link Outdoor#windFactor}
 * @param sunShare share of the sun on the surface that warms the water: what is absorbed of what is not shaded
 */
public record WindAndSun(double windFactor, double sunShare) {

    /** Checks both ranges. */
    public WindAndSun {
        Outdoor.WIND_FACTOR.check(windFactor);
        Pool.ABSORPTANCE.from(0).check(sunShare);
    }

    /**
     * Those of an installation.
     *
     * @throws IllegalArgumentException if its pool is in a hall
     */
    public static WindAndSun of(Installation built) {
        Outdoor outdoor = outdoor(built);
        return new WindAndSun(outdoor.windFactor(), built.pool().solarAbsorptance() * (1 - outdoor.shadedShare()));
    }

    /**
     * The installation with these. A share of the sun below its absorptance becomes shade, one above it absorptance, since
     * their product is all that is known.
     *
     * @throws IllegalArgumentException if its pool is in a hall
     */
    public Installation in(Installation built) {
        Pool pool = built.pool();
        double absorptance = Math.max(pool.solarAbsorptance(), sunShare);
        return built.toBuilder()
                .pool(pool.withSolarAbsorptance(absorptance)
                        .withSetting(
                                outdoor(built).withWindFactor(windFactor).withShadedShare(1 - sunShare / absorptance)))
                .build();
    }

    private static Outdoor outdoor(Installation built) {
        return built.pool()
                .setting()
                .outdoor()
                .orElseThrow(() -> new IllegalArgumentException(
                        "\"" + built.name() + "\" is in a hall: no wind and sun reach its water"));
    }
}
