package dev.warmlane.scenario;

import dev.warmlane.units.Spelling;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Hints for names that the schema does not know. */
final class Nearest {

    private Nearest() {}

    /** The name that was probably meant. */
    static Optional<String> word(String name, Collection<String> known) {
        return Spelling.nearest(name, known);
    }

    /** The choice that was probably meant: one that has the word as a part, else the one spelt most alike. */
    static Optional<String> choice(String word, Collection<String> known) {
        String lower = word.strip().toLowerCase(Locale.ROOT);
        return known.stream()
                .filter(name -> List.of(name.split("-", -1)).contains(lower))
                .findFirst()
                .or(() -> OtherWords.choice(word, known))
                .or(() -> Spelling.nearest(word, known));
    }

    /** What to say after "unknown key": the nearest key, else the section that has this key, else all keys. */
    static String key(String name, SectionSchema schema) {
        Optional<String> other = OtherWords.key(schema.name(), name);
        if (other.isPresent()) {
            return "; " + other.get();
        }
        Optional<String> near = word(name, schema.names());
        if (near.isPresent()) {
            return "; did you mean " + near.get() + "?";
        }
        return Stream.concat(Stream.of(schema), Schema.SECTIONS.stream())
                .flatMap(section -> homes(name, section))
                .findFirst()
                .map(heading -> "; it belongs to " + heading)
                .orElse("; allowed: " + String.join(", ", schema.names()));
    }

    /** Headings of a section and its parts, of those that have the key. */
    private static Stream<String> homes(String name, SectionSchema section) {
        Stream<String> own = section.key(name).isPresent() ? Stream.of(section.heading()) : Stream.empty();
        Stream<String> parts =
                section.parts().stream().filter(p -> p.key(name).isPresent()).map(section::heading);
        return Stream.concat(own, parts);
    }

    /** What to say after "unknown section". */
    static String section(String name) {
        return word(name, Schema.names())
                .map(n -> "; did you mean "
                        + Schema.section(n).map(SectionSchema::heading).orElse(n) + "?")
                .orElse("; allowed: " + String.join(", ", Schema.names()));
    }
}
