package dev.warmlane.scenario;

import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import org.jspecify.annotations.Nullable;

/**
 * A key of a section.
 *
 * @param name its name in the file
 * @param kind what its value may be
 * @param meaning what it means, in one line
 * @param otherwise what holds when it is not given, in words; empty where a usual value holds
 * @param usual the value that holds when it is not given, or null where there is none
 * @param why where the usual value comes from; empty for a plain convention that no report need mention
 */
record Key<T>(
        String name,
        Kind<T> kind,
        String meaning,
        String otherwise,
        @Nullable T usual,
        String why) {

    /** A key that must be given. */
    static <T> Key<T> required(String name, Kind<T> kind, String meaning) {
        return new Key<>(name, kind, meaning, "required", null, "");
    }

    /** A number that must be given. */
    static Key<Double> required(String name, Range range, String meaning) {
        return required(name, Kinds.of(range), meaning);
    }

    /** A key without a usual value: {@code otherwise} says in words when it must be given, or what holds without it. */
    static <T> Key<T> optional(String name, Kind<T> kind, String meaning, String otherwise) {
        return new Key<>(name, kind, meaning, otherwise, null, "");
    }

    /** A number without a usual value. */
    static Key<Double> optional(String name, Range range, String meaning, String otherwise) {
        return optional(name, Kinds.of(range), meaning, otherwise);
    }

    /** A key whose usual value is an assumption, which the report will name. */
    static <T> Key<T> assumed(String name, Kind<T> kind, String meaning, T usual, String why) {
        return new Key<>(name, kind, meaning, "", usual, why);
    }

    /** A number that is usually nothing, so that it has no constant in the record. */
    static Key<Double> assumed(String name, Range range, String meaning, double usual, String why) {
        return assumed(name, Kinds.of(range), meaning, usual, why);
    }

    /** A number whose usual value is an assumption; value and source stand beside its range. */
    static Key<Double> assumed(String name, Usual usual, String meaning) {
        return assumed(name, Kinds.of(usual.range()), meaning, usual.value(), usual.source());
    }

    /** A key whose usual value is a convention of the file, nothing assumed about the job. */
    static <T> Key<T> convention(String name, Kind<T> kind, String meaning, T usual) {
        return new Key<>(name, kind, meaning, "", usual, "");
    }

    /** A number whose usual value is a convention of the file. */
    static Key<Double> convention(String name, Range range, String meaning, double usual) {
        return convention(name, Kinds.of(range), meaning, usual);
    }
}
