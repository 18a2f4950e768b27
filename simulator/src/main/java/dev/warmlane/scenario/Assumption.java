package dev.warmlane.scenario;

/**
 * A value that the scenario file leaves open and the reader therefore assumed.
 *
 * @param section the section it belongs to, such as {@code roof}
 * @param key the key that would set it
 * @param value the value with its unit, as it would be written in the file
 * @param why where the value comes from
 */
public record Assumption(String section, String key, String value, String why) {

    /** The assumption as a person reads it: {@code roof albedo 0.2 (aged dark roofing)}. */
    @Override
    public String toString() {
        return section + " " + key + " " + value + " (" + why + ")";
    }
}
