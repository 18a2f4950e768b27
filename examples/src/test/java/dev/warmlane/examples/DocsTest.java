package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** What the documents name is there: what links lead to, commands, options, keys, tests. */
class DocsTest {

    private static final Path ROOT = Path.of("..");
    private static final Path SCENARIO = ROOT.resolve("docs").resolve("scenario.md");
    private static final Path CSV = ROOT.resolve("docs").resolve("csv.md");

    private static final Pattern LINK = Pattern.compile("\\]\\((?!https?:)([^)#\\s]*)(?:#([^)\\s]+))?\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.*)$");
    private static final Pattern COMMAND =
            Pattern.compile("(?m)(?:^|`)(?:warmlane|java -jar examples/target/warmlane\\.jar) +([a-z]+)([^`\\n]*)");
    private static final Pattern OPTION = Pattern.compile("(?<![\\w-])--[a-z][a-z-]+");
    private static final Pattern SPAN_OF_OPTIONS = Pattern.compile("`(--[^`]+)`");

    private static final Pattern KEY = Pattern.compile("`(?:[a-z]+\\.)?([a-z]+_[a-z_]+)`");
    private static final Pattern SECTION = Pattern.compile("`(\\[+[a-z.]+\\]+)`");
    private static final Pattern TEST = Pattern.compile("`([A-Z]\\w*Test)`");

    private static List<Path> documents() throws IOException {
        try (Stream<Path> docs = Files.walk(ROOT.resolve("docs"))) {
            return Stream.concat(
                            docs.filter(file -> file.toString().endsWith(".md")).sorted(),
                            Stream.of("README.md", "DEVELOPERS.md", "weather-samples/README.md")
                                    .map(ROOT::resolve))
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("documents")
    void linksLeadSomewhere(Path document) throws IOException {
        for (MatchResult link : found(LINK, document)) {
            Path target = link.group(1).isEmpty() ? document : document.resolveSibling(link.group(1));
            assertThat(target).as("%s in %s", link.group(), document).exists();
            if (link.group(2) != null) {
                assertThat(anchors(target))
                        .as("%s in %s", link.group(), document)
                        .contains(link.group(2));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("documents")
    void commandsAndOptionsAreThere(Path document) throws IOException {
        var commands = new CommandLine(new Main()).getSubcommands();
        for (MatchResult shown : found(COMMAND, document)) {
            assertThat(commands).as("%s in %s", shown.group(), document).containsKey(shown.group(1));
            CommandLine command = Objects.requireNonNull(commands.get(shown.group(1)));
            assertThat(options(command)).as("%s in %s", shown.group(), document).containsAll(named(shown.group(2)));
        }
        Set<String> all = commands.values().stream()
                .flatMap(command -> options(command).stream())
                .collect(Collectors.toSet());
        for (MatchResult span : found(SPAN_OF_OPTIONS, document)) {
            assertThat(all).as("%s in %s", span.group(), document).containsAll(named(span.group(1)));
        }
    }

    /** The page of the scenario file is held to the schema, that of csv to what is written, each by its own test. */
    @ParameterizedTest
    @MethodSource("documents")
    void keysAndSectionsAreThere(Path document) throws IOException {
        String pages = Files.readString(SCENARIO) + Files.readString(CSV);
        for (Pattern pattern : List.of(KEY, SECTION)) {
            for (MatchResult span : found(pattern, document)) {
                assertThat(pages).as("%s in %s", span.group(), document).contains("`" + span.group(1) + "`");
            }
        }
    }

    @Test
    void testsThatAreNamedAreThere() throws IOException {
        Set<String> tests = new TreeSet<>();
        for (String module : List.of("simulator", "examples")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/test/java"))) {
                files.map(file -> file.getFileName().toString().replace(".java", ""))
                        .forEach(tests::add);
            }
        }
        for (Path document : documents()) {
            for (MatchResult span : found(TEST, document)) {
                assertThat(tests).as(document.toString()).contains(span.group(1));
            }
        }
    }

    private static Set<String> options(CommandLine command) {
        return command.getCommandSpec().optionsMap().keySet();
    }

    private static List<String> named(String words) {
        return OPTION.matcher(words).results().map(MatchResult::group).toList();
    }

    private static List<MatchResult> found(Pattern pattern, Path document) throws IOException {
        return pattern.matcher(Files.readString(document)).results().toList();
    }

    /** The anchors that a heading gets where these documents are read: its words in small letters, joined by dashes. */
    private static List<String> anchors(Path document) throws IOException {
        return found(HEADING, document).stream()
                .map(heading -> heading.group(1).toLowerCase(Locale.ROOT).strip())
                .map(words -> words.replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-'))
                .toList();
    }
}
