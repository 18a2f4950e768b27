package dev.warmlane.units;

/** The units that a reader wants numbers in. */
public enum UnitSystem {
    /** m², °C, kWh. */
    METRIC,
    /** ft², °F, therms, as is usual in the United States. */
    US,
    /** The same where the pool is heated with electricity, which nobody is billed in therms: ft², °F, kWh. */
    US_ELECTRIC;

    /** Whether lengths, areas and temperatures are in feet and °F. */
    public boolean us() {
        return this != METRIC;
    }

    /** The same for a pool that is heated with electricity. */
    public UnitSystem electric() {
        return us() ? US_ELECTRIC : this;
    }
}
