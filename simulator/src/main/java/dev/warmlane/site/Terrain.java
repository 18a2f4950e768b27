package dev.warmlane.site;

/**
 * The ground that the wind crosses before it arrives, as the ASHRAE Handbook of Fundamentals (chapter "Airflow Around
 * Buildings", table of atmospheric boundary layer parameters; from memory) divides it.
 */
public enum Terrain {
    /** Large city centres: at least half the buildings higher than 25 m. */
    CITY(0.33, 460),
    /** Urban and suburban ground, wooded areas, many obstacles the size of houses. */
    SUBURBAN(0.22, 370),
    /** Open ground with scattered obstacles lower than 10 m; where weather stations stand. */
    OPEN(0.14, 270),
    /** Flat ground exposed to wind over at least 1.6 km of open water. */
    WATER(0.10, 210);

    private final double exponent;
    private final double layerM;

    Terrain(double exponent, double layerM) {
        this.exponent = exponent;
        this.layerM = layerM;
    }

    /** Exponent of the power law, dimensionless. */
    public double exponent() {
        return exponent;
    }

    /** Thickness of the boundary layer, m. */
    public double layerM() {
        return layerM;
    }
}
