package dev.warmlane.fit;

/** What a fit may find. */
public enum Unknown {
    /** Wind at the water over wind of the station, {@link dev.warmlane.pool.PoolSetting.Outdoor#windFactor}. */
    WIND("wind factor at the water"),
    /** Share of the sun on the surface that warms the water: solar absorptance times the share that nothing shades. */
    SUN("share of the sun that warms the water"),
    /** Efficiency of a boiler; only with bills. */
    EFFICIENCY("efficiency of the heater"),
    /** Water replaced beyond what evaporates, L/day; only with a meter. */
    MAKE_UP("water replaced beyond evaporation"),
    /** What the sky sends to the water beyond the long-wave of the weather, W/m²; whatever else warms it steadily goes here. */
    SKY("long-wave of the sky beyond the weather's"),
    /** Water temperature when the log begins, °C. */
    START("water when the log begins"),
    /** By how much the log's clock is ahead of the time zone that was stated, h. */
    CLOCK("clock of the log ahead of its time zone");

    private final String label;

    Unknown(String label) {
        this.label = label;
    }

    /** The words for it in tables. */
    public String label() {
        return label;
    }
}
