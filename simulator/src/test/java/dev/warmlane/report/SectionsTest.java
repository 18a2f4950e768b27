package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Nothing that is told in one form of a report is missing in the other. */
class SectionsTest {

    /** Where the list of what was assumed says which key it is. */
    private static final String ITS_KEY = "\\((?:[a-z0-9. ]+ [a-z_]+[,;] )+";

    static Stream<Report> reports() {
        Stream<Subject> subjects = Stream.of(
                        SampleReports.usual().values(), SampleReports.odd().values(), List.of(SampleReports.DRAWN))
                .flatMap(Collection::stream);
        return Stream.concat(
                subjects.map(SampleReports::report),
                SampleStudies.all().values().stream().flatMap(studies -> studies.reports().stream()));
    }

    @ParameterizedTest
    @MethodSource("reports")
    void everySectionStandsInTextAndPage(Report report) throws Exception {
        List<String> text = TextWriter.full(report).lines().toList();
        List<String> headings = headings(SampleReports.page(report));

        assertThat(report.sections()).isNotEmpty();
        for (Section section : report.sections()) {
            assertThat(text).contains(section.heading());
            // the answer stands below the title, without a heading
            if (!section.heading().equals("In short")) {
                assertThat(headings).contains(section.heading());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("reports")
    void everySentenceStandsInTextAndPage(Report report) throws Exception {
        String text = TextWriter.full(report).replaceAll("[\\s\u00a0]+", " ").replace("- ", "");
        String page = parsed(HtmlWriter.page(report, Optional.of("no charts")))
                .getDocumentElement()
                .getTextContent()
                .replaceAll("[\\s\u00a0]+", " ")
                .replace("- ", "");
        for (Section section : report.sections()) {
            for (Section.Part part : section.parts()) {
                if (part.block() instanceof Block.Words words && part.places().contains(Place.FULL)) {
                    assertThat(page).contains(words.text().replace("- ", ""));
                    assertThat(text).contains(words.text().replace("- ", ""));
                }
                if (part.block() instanceof Block.Points points) {
                    points.points().forEach(point -> {
                        if (onPage(part)) {
                            assertThat(page).contains(point.replace("- ", ""));
                        }
                        if (part.places().contains(Place.FULL)) {
                            assertThat(text).contains(point.replace("- ", ""));
                        }
                    });
                }
            }
            // what page and text say otherwise, such as the keys of what was assumed, both say of as many things
            assertThat(points(section, SectionsTest::onPage))
                    .isEqualTo(points(section, part -> part.places().contains(Place.FULL)));
        }
    }

    /** A key is no word for an owner; only beside what was assumed, and in names of files, it says where to change it. */
    @ParameterizedTest
    @MethodSource("reports")
    void noSentenceAndNoTableNamesAKeyOfTheScenario(Report report) throws Exception {
        Pattern keys = keys();
        for (Section section : report.sections()) {
            for (Section.Part part : section.parts()) {
                for (String told : told(part.block())) {
                    String plain = told.replaceAll("\\S+\\.(?:csv|toml|html|epw|tm2)\\b", "");
                    String bare = section.heading().startsWith("Assumed") ? plain.replaceFirst(ITS_KEY, "(") : plain;
                    assertThat(keys.matcher(bare).results())
                            .as("%s: %s", section.heading(), told)
                            .isEmpty();
                }
            }
        }
        assertThat(keys.matcher("give roof.wind_speed_ratio").find()).isTrue();
        assertThat(keys.matcher("see roof.height").find()).isTrue();
    }

    private static List<String> told(Block block) {
        List<String> told = new ArrayList<>();
        if (block instanceof Block.Words words) {
            told.add(words.text());
        } else if (block instanceof Block.Points points) {
            told.addAll(points.points());
        } else if (block instanceof Block.KeyFigures figures) {
            figures.figures().forEach(f -> told.addAll(List.of(f.value(), f.meaning(), f.range(), f.beside())));
        } else if (block instanceof Table table) {
            told.add(table.caption());
            table.columns().forEach(column -> told.add(column.header()));
            table.rows().forEach(row -> told.addAll(table.shown(row, Notation.usual(UnitSystem.METRIC))));
        }
        return told;
    }

    /** All keys of more than one word, and any key behind its section, of the page that is made from the schema. */
    private static Pattern keys() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("..", "docs", "scenario.md"));
        List<String> keys = named(lines, "\\| `([a-z_]+)` \\|.*");
        List<String> sections = named(lines, "#+ `\\[+([a-z._]+)]+`.*");
        assertThat(keys).contains("wind_speed_ratio", "height");
        assertThat(sections).contains("roof");
        String joined = keys.stream().filter(key -> key.contains("_")).collect(Collectors.joining("|"));
        return Pattern.compile("\\b(?:" + joined + ")\\b|\\b(?:" + String.join("|", sections) + ")\\.(?:"
                + String.join("|", keys) + ")\\b");
    }

    private static List<String> named(List<String> lines, String pattern) {
        Pattern line = Pattern.compile(pattern);
        return lines.stream()
                .map(line::matcher)
                .filter(Matcher::matches)
                .map(found -> found.group(1))
                .distinct()
                .toList();
    }

    private static boolean onPage(Section.Part part) {
        return part.places().contains(Place.FIRST_SHEET) || part.places().contains(Place.TECHNICAL);
    }

    private static int points(Section section, Predicate<Section.Part> shown) {
        return section.parts().stream()
                .filter(part -> part.block() instanceof Block.Points && shown.test(part))
                .mapToInt(part -> ((Block.Points) part.block()).points().size())
                .sum();
    }

    private static List<String> headings(String page) throws Exception {
        NodeList found = parsed(page).getElementsByTagName("h2");
        List<String> headings = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            headings.add(found.item(i).getTextContent());
        }
        return headings;
    }

    private static Document parsed(String page) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }
}
