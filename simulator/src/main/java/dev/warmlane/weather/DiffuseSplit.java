package dev.warmlane.weather;

import dev.warmlane.physics.DiffuseFraction;

/** How global irradiance is split into beam and diffuse where it alone was measured, from the clearness of each hour. */
public enum DiffuseSplit {
    /** Erbs, Klein and Duffie 1982, {@link DiffuseFraction#erbs}. The usual one. */
    ERBS("Erbs, Klein and Duffie 1982"),
    /** Orgill and Hollands 1977, {@link DiffuseFraction#orgillHollands}. */
    ORGILL_HOLLANDS("Orgill and Hollands 1977");

    private final String source;

    DiffuseSplit(String source) {
        this.source = source;
    }

    /** Where it is published. */
    public String source() {
        return source;
    }

    /** The diffuse share of an hour's global irradiance, 0 to 1, from its share of the light outside the atmosphere. */
    public double diffuseShare(double clearness) {
        return switch (this) {
            case ERBS -> DiffuseFraction.erbs(clearness);
            case ORGILL_HOLLANDS -> DiffuseFraction.orgillHollands(clearness);
        };
    }
}
