package dev.warmlane.scenario;

import dev.warmlane.units.UnitSystem;

/**
 * What the value of a key may be, and the way from and to its text in the file.
 *
 * @param <T> what the value becomes
 */
interface Kind<T> {

    /**
     * Reads a value.
     *
     * @param toml as the TOML parser gives it: a String, Long, Double, Boolean, date or TomlArray
     * @throws BadValueException if the value is not allowed; its message says what was found and what is allowed
     */
    T read(Object toml) throws BadValueException;

    /** The value as TOML source, quoted where it must be; reading it gives the value back. */
    String write(T value);

    /** What is allowed, to follow the word "allowed". */
    String allowed();

    /** A value to go on with after a bad one has been reported, so that the rest of the file is read too. */
    T standIn();

    /** Whether a value may be a plain number, without quotes and without a unit. */
    default boolean takesNumbers() {
        return false;
    }

    /** Whether a value is one of a few words. */
    default boolean isChoice() {
        return false;
    }

    /** The value as a person reads it: its TOML source without quotes. */
    default String show(T value) {
        return write(value).replace("\"", "");
    }

    /** The value in words for the reader of a report, who has not seen the file: quantities in the report's own units. */
    default String show(T value, UnitSystem units) {
        return show(value);
    }
}
