package dev.warmlane.scenario;

/**
 * A value that the scenario file leaves open and the reader therefore assumed.
 *
 * @param section the section it belongs to, such as {@code roof}
 * @param key the key that would set it
 * @param value the value in words, with its unit, in the units of the report
 * @param why where the value comes from
 */
public record Assumption(String section, String key, String value, String why) {

    /** What was assumed, as somebody who has not seen the file would say it: {@code share of light the roof reflects}. */
    public String words() {
        return KeyWords.of(section, key);
    }

    /** The assumption with the names of the file: {@code roof albedo 20 % (aged dark roofing)}. */
    @Override
    public String toString() {
        return section + " " + key + " " + value + " (" + why + ")";
    }
}
