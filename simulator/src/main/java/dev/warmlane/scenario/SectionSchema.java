package dev.warmlane.scenario;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A section of the file.
 *
 * @param name its name in the file
 * @param repeated whether it may stand any number of times, {@code [[name]]}, or once, {@code [name]}
 * @param needed whether the file must have it
 * @param meaning what it describes, in one line
 * @param keys its keys in their order
 * @param parts sections inside it, {@code [name.part]}
 */
record SectionSchema(
        String name, boolean repeated, boolean needed, String meaning, List<Key<?>> keys, List<SectionSchema> parts) {

    private static final String UNLESS = "required without ";

    /** A section that stands once and must. */
    static SectionSchema needed(String name, String meaning, Key<?>... keys) {
        return new SectionSchema(name, false, true, meaning, List.of(keys), List.of());
    }

    /** A section that may stand once. */
    static SectionSchema optional(String name, String meaning, Key<?>... keys) {
        return new SectionSchema(name, false, false, meaning, List.of(keys), List.of());
    }

    /** A section that may stand any number of times. */
    static SectionSchema repeated(String name, String meaning, Key<?>... keys) {
        return new SectionSchema(name, true, false, meaning, List.of(keys), List.of());
    }

    /** The same section with sections inside it. */
    SectionSchema with(SectionSchema... inside) {
        return new SectionSchema(name, repeated, needed, meaning, keys, List.of(inside));
    }

    /** The key of a name. */
    Optional<Key<?>> key(String wanted) {
        return keys.stream().filter(k -> k.name().equals(wanted)).findFirst();
    }

    /** The section inside of a name. */
    Optional<SectionSchema> part(String wanted) {
        return parts.stream().filter(p -> p.name().equals(wanted)).findFirst();
    }

    /** The names of all that may stand in it. */
    List<String> names() {
        return Stream.concat(keys.stream().map(Key::name), parts.stream().map(SectionSchema::name))
                .toList();
    }

    /** The names of the keys that it must have, joined by commas: those in any case, then the first of two ways. */
    String needs() {
        List<String> inAnyCase = namesOf("required");
        return keys.stream()
                .map(Key::otherwise)
                .filter(otherwise -> otherwise.startsWith(UNLESS))
                .findFirst()
                .map(otherwise -> String.join(", ", inAnyCase) + ", " + String.join(", ", namesOf(otherwise)) + " (or "
                        + otherwise.substring(UNLESS.length()) + ")")
                .orElseGet(() -> String.join(", ", inAnyCase));
    }

    private List<String> namesOf(String otherwise) {
        return keys.stream()
                .filter(k -> k.otherwise().equals(otherwise))
                .map(Key::name)
                .toList();
    }

    /** Its heading in the file. */
    String heading() {
        return repeated ? "[[" + name + "]]" : "[" + name + "]";
    }

    /** The heading of one of its parts. */
    String heading(SectionSchema part) {
        return "[" + name + "." + part.name() + "]";
    }
}
