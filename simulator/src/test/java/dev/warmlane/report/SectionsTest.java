package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.TextWriter;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Nothing that is told in one form of a report is missing in the other. */
class SectionsTest {

    static Stream<Report> reports() {
        return Stream.concat(
                Stream.concat(SampleReports.usual().values().stream(), SampleReports.odd().values().stream())
                        .map(SampleReports::report),
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
