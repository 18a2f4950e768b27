package dev.warmlane.units;

/** The units that a reader wants numbers in. */
public enum UnitSystem {
    /** m², °C, kWh. */
    METRIC,
    /** ft², °F, therms, as is usual in the United States. */
    US
}
