package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.site.Terrain;
import dev.warmlane.wind.PoolShelter;

/** How much wind reaches pool and roof: less than described, as described, more. */
public enum WindExposure {
    /**
     * Sheltered. Pool: wind factor 0.15 (ISO/TR 12596:1995, from memory). Roof: the profile of a city (ASHRAE Handbook
     * of Fundamentals, see {@link Terrain}).
     */
    SHELTERED("sheltered"),
    /** As the installation describes it. */
    LIKELY("as planned"),
    /**
     * Exposed. Pool: wind factor 0.40 (logarithmic profile over short grass, see {@link PoolShelter#EXPOSED}). Roof: the
     * profile of open ground (ASHRAE).
     */
    EXPOSED("exposed");

    private final String label;

    WindExposure(String label) {
        this.label = label;
    }

    /** The words for it. */
    public String label() {
        return label;
    }

    /**
     * The wind factor of a pool.
     *
     * @param described the factor that the installation has; a pool described as more sheltered than sheltered, or more
     *     exposed than exposed, stays as it is
     */
    public double poolWindFactor(double described) {
        return switch (this) {
            case SHELTERED -> Math.min(described, PoolShelter.SHELTERED.factor());
            case LIKELY -> described;
            case EXPOSED -> Math.max(described, PoolShelter.EXPOSED.factor());
        };
    }

    /** An outdoor installation with another wind factor at the pool; one with a pool in a hall as it is. */
    static Installation withPoolWind(Installation installation, double windFactor) {
        return installation
                .pool()
                .setting()
                .match(
                        outdoor -> installation.toBuilder()
                                .pool(installation.pool().withSetting(outdoor.withWindFactor(windFactor)))
                                .build(),
                        indoor -> installation);
    }

    /**
     * The terrain around a roof.
     *
     * @param described the terrain that the installation has; by open water it is more exposed than on open ground, and
     *     stays as it is
     */
    public Terrain terrain(Terrain described) {
        return switch (this) {
            case SHELTERED -> Terrain.CITY;
            case LIKELY -> described;
            case EXPOSED -> described == Terrain.WATER ? Terrain.WATER : Terrain.OPEN;
        };
    }
}
