package dev.warmlane.scenario;

import dev.warmlane.units.Spelling;
import java.util.Collection;
import java.util.Optional;
import java.util.stream.Stream;

/** Hints for names that the schema does not know. */
final class Nearest {

    private Nearest() {}

    /** The name that was probably meant. */
    static Optional<String> word(String name, Collection<String> known) {
        return Spelling.nearest(name, known);
    }

    /** What to say after "unknown key": the nearest key, else the section that has this key, else all keys. */
    static String key(String name, SectionSchema schema) {
        Optional<String> near = word(name, schema.names());
        if (near.isPresent()) {
            return "; did you mean " + near.get() + "?";
        }
        Optional<String> elsewhere = Schema.SECTIONS.stream()
                .flatMap(s -> Stream.concat(Stream.of(s), s.parts().stream()))
                .filter(s -> s.key(name).isPresent())
                .map(SectionSchema::heading)
                .findFirst();
        return elsewhere
                .map(heading -> "; it belongs to " + heading)
                .orElse("; allowed: " + String.join(", ", schema.names()));
    }

    /** What to say after "unknown section". */
    static String section(String name) {
        return word(name, Schema.names())
                .map(n -> "; did you mean "
                        + Schema.section(n).map(SectionSchema::heading).orElse(n) + "?")
                .orElse("; allowed: " + String.join(", ", Schema.names()));
    }
}
