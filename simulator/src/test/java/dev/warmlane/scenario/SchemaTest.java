package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import dev.warmlane.units.Usual;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tomlj.Toml;

/** The schema agrees with itself, with the records it leads to and with its documentation. */
class SchemaTest {

    private static final Path DOCUMENT = Path.of("..", "docs", "scenario.md");
    /** How findings begin that are about several keys together, so that no one key is to blame. */
    private static final List<String> RELATIONS = List.of("rack row pitch must be");

    private static final Pattern RANGE = Pattern.compile("(?:a (?:whole )?number, )?(\\S+) to (\\S+)(?: (.+))?");

    @TempDir
    private Path folder;

    private static List<Path> demos() {
        return Demos.all();
    }

    @Test
    void usualValuesAreAllowed() throws BadValueException {
        for (Key<?> key : keys()) {
            checkUsual(key);
        }
    }

    /** What a record takes where nobody says otherwise is what the file assumes, with the words of the record. */
    @Test
    void usualValuesOfRecordsAreThoseOfTheFile() {
        List<Usual> ofRecords = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("dev.warmlane").stream()
                        .flatMap(type -> type.getFields().stream())
                        .filter(field -> field.getModifiers().contains(JavaModifier.STATIC))
                        .filter(field -> field.getRawType().isEquivalentTo(Usual.class))
                        .map(SchemaTest::usual)
                        .toList();
        assertThat(ofRecords)
                .hasSizeGreaterThan(20)
                .allSatisfy(usual -> assertThat(keys()).as("%s", usual).anySatisfy(key -> {
                    assertThat(key.why()).isEqualTo(usual.source());
                    assertThat(number(key)).isEqualTo(usual.value());
                }));
    }

    /** The usual value of a key where it is a number, or a flow of one area. */
    private static double number(Key<?> key) {
        return key.usual() instanceof FlowKind.Flow flow
                ? flow.over(1)
                : key.usual() instanceof Number number ? number.doubleValue() : Double.NaN;
    }

    private static Usual usual(JavaField constant) {
        try {
            return (Usual) constant.reflect().get(null);
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    private static <T> void checkUsual(Key<T> key) throws BadValueException {
        T usual = key.usual();
        if (usual != null) {
            assertThat(key.kind().read(parsed(key.kind().write(usual))))
                    .as(key.name())
                    .isEqualTo(usual);
        }
    }

    /** A range that the schema declares wider than the record has it would end in a finding that names no key. */
    @ParameterizedTest
    @MethodSource("demos")
    void endsOfRangesAreThoseOfTheRecords(Path demo) throws IOException {
        Scenario scenario = Demos.read(demo, folder);
        String full = ScenarioWriter.write(
                scenario.installation(), "../../weather-samples/cool-coast.csv", scenario.report());
        List<String> lines = full.lines().toList();
        String section = "";
        int tried = 0;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            section = line.startsWith("[") ? line.replaceAll("[\\[\\]]", "") : section;
            for (String end :
                    line.contains(" = ") ? ends(section, line.substring(0, line.indexOf(' '))) : List.<String>of()) {
                List<String> changed = new ArrayList<>(lines);
                changed.set(i, line.substring(0, line.indexOf('=')) + "= " + end);
                assertThat(keyless(String.join("\n", changed)))
                        .as("%s %s", section, changed.get(i))
                        .isEmpty();
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(50);
    }

    private List<Finding> keyless(String text) throws IOException {
        try {
            Demos.read(text, folder);
            return List.of();
        } catch (ScenarioException e) {
            return e.findings().stream()
                    .filter(f -> f.key().isEmpty())
                    .filter(f -> RELATIONS.stream().noneMatch(f.message()::startsWith))
                    .toList();
        }
    }

    /** Both ends of the range of a key as TOML, none for a key without a range. */
    private static List<String> ends(String section, String name) {
        Matcher range = RANGE.matcher(find(section, name).kind().allowed().replaceAll(", or .*", ""));
        if (!range.matches() || range.group(1).startsWith("\"")) {
            return List.of();
        }
        return Stream.of(range.group(1), range.group(2))
                .map(number -> range.group(3) == null ? number : "\"" + number + " " + range.group(3) + "\"")
                .toList();
    }

    private static Key<?> find(String section, String name) {
        String[] path = section.split("\\.", -1);
        SectionSchema schema = Schema.section(path[0]).orElseThrow();
        return (path.length == 1 ? schema : schema.part(path[1]).orElseThrow())
                .key(name)
                .orElseThrow();
    }

    private static List<Key<?>> keys() {
        return Schema.SECTIONS.stream()
                .flatMap(s -> Stream.concat(Stream.of(s), s.parts().stream()))
                .<Key<?>>flatMap(s -> s.keys().stream())
                .toList();
    }

    private static Object parsed(String toml) {
        Object value = Toml.parse("x = " + toml).get("x");
        assertThat(value).isNotNull();
        return Objects.requireNonNull(value);
    }

    /** Rewrites docs/scenario.md when {@code -Ddocs.write=true} is given, else compares with it. */
    @Test
    void documentIsThatOfTheSchema() throws IOException {
        String text = SchemaDocument.text();
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(DOCUMENT, text);
        }
        assertThat(Files.readString(DOCUMENT)).isEqualTo(text);
    }
}
