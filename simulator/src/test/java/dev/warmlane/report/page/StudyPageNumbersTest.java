package dev.warmlane.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.AreaTables;
import dev.warmlane.report.ExposureTables;
import dev.warmlane.report.Measure;
import dev.warmlane.report.MountingTables;
import dev.warmlane.report.Numbers;
import dev.warmlane.report.SampleStudies;
import dev.warmlane.report.SensitivityTables;
import dev.warmlane.report.Table;
import dev.warmlane.report.chart.AreaCharts;
import dev.warmlane.report.chart.MountingCharts;
import dev.warmlane.report.chart.SensitivityCharts;
import dev.warmlane.scenario.Assumption;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.MountingResult;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The pages of studies. */
class StudyPageNumbersTest {

    @TempDir
    private Path folder;

    static Stream<Arguments> studies() {
        return SampleStudies.all().entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
    }

    private static String mountings(SampleStudies studies) {
        return MountingPage.of(
                studies.described(),
                studies.mountings(),
                MountingCharts.of(studies.mountings().study(), studies.units()),
                Optional.empty());
    }

    private static String areas(SampleStudies studies) {
        return AreaPage.of(
                studies.described(),
                studies.areas(),
                AreaCharts.of(studies.areas().study(), studies.units()),
                Optional.empty());
    }

    private static String sensitivity(SampleStudies studies) {
        return SensitivityPage.of(
                studies.described(),
                studies.sensitivity(),
                SensitivityCharts.of(
                        studies.sensitivity().name(), studies.sensitivity().study(), studies.units()),
                Optional.empty());
    }

    private static List<String> pages(SampleStudies studies) {
        return List.of(mountings(studies), areas(studies), sensitivity(studies));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void isWellFormedSaysNothingSillyAndAsksForNothing(String name, SampleStudies studies) throws Exception {
        for (String page : pages(studies)) {
            assertThat(text(page))
                    .doesNotContain("NaN", "Infinity", "Optional", "{{", "null", "Part[")
                    .contains("local code and a licensed professional decide", "does not show how much warmer");
            assertThat(page)
                    .doesNotContain("<script", "<link", "<img", "@import", " src=", "href=")
                    .doesNotContainPattern("url\\([^#]")
                    .contains("default-src 'none'");
            for (Assumption assumption : studies.described().assumed()) {
                assertThat(text(page)).contains(assumption.why(), assumption.value());
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void tablesAreThoseOfTheStudies(String name, SampleStudies studies) throws Exception {
        var units = studies.units();
        assertThat(tables(mountings(studies)))
                .contains(
                        shown(MountingTables.comparison(
                                studies.mountings().study().sameArea(), units)),
                        shown(MountingTables.comparison(
                                studies.mountings().study().sameRoof(), units)),
                        shown(MountingTables.heldPool(
                                studies.mountings().study().sameArea(), units)));
        assertThat(tables(areas(studies)))
                .contains(shown(AreaTables.areas(studies.areas().study(), units)));
        assertThat(tables(sensitivity(studies)))
                .contains(
                        shown(SensitivityTables.effects(studies.sensitivity().study(), units)),
                        shown(ExposureTables.means(studies.sensitivity().exposure(), units)),
                        shown(ExposureTables.heat(studies.sensitivity().exposure(), units)));
    }

    @Test
    void whyAndTurningPointsAreInThePageWhereTheyAreKnown() throws Exception {
        String page = mountings(SampleStudies.CLUB);
        assertThat(tables(page))
                .contains(
                        shown(MountingTables.lightAgainstFirst(
                                SampleStudies.CLUB.mountings().study().sameArea(), SampleStudies.CLUB.units())),
                        shown(MountingTables.films(
                                SampleStudies.CLUB.mountings().study().sameArea(), SampleStudies.CLUB.units())));
        assertThat(text(page)).contains("is ahead up to 68.0 °F");
        assertThat(text(mountings(SampleStudies.INDOOR)))
                .contains("described by a test certificate")
                .doesNotContain("Films and temperatures", "What speaks most for it");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void headlineNamesTheMountingThatGivesMost(String name, SampleStudies studies) {
        List<MountingResult> results = studies.mountings().study().sameArea();
        MountingResult best = results.stream()
                .max(Comparator.comparingDouble(MountingResult::deliveredKwh))
                .orElseThrow();
        MountingHeadline headline = new MountingHeadline(studies.mountings().study(), studies.units());

        assertThat(headline.sentences())
                .contains(
                        "collectors \"" + best.option().name() + "\" gives",
                        new Numbers(studies.units()).show(Measure.HEAT, best.deliveredKwh()));
        assertThat(headline.keyNumbers().get(0).value())
                .isEqualTo(new Numbers(studies.units()).show(Measure.HEAT_PER_AREA, best.deliveredKwhPerM2()));
    }

    @Test
    void headlineOfAreasGoesFromTheSmallestToTheLargest() {
        List<AreaDesign> designs = SampleStudies.MUNICIPAL.areas().study().designs();
        AreaHeadline headline =
                new AreaHeadline(SampleStudies.MUNICIPAL.areas().study(), SampleStudies.MUNICIPAL.units());
        Numbers numbers = new Numbers(SampleStudies.MUNICIPAL.units());

        assertThat(headline.sentences())
                .contains(
                        "goes from "
                                + numbers.show(
                                        Measure.HEAT,
                                        designs.get(0).season().balance().deliveredKwh())
                                + " to "
                                + numbers.show(
                                        Measure.HEAT,
                                        designs.get(designs.size() - 1)
                                                .season()
                                                .balance()
                                                .deliveredKwh()),
                        "the roof holds 336 m²");
        assertThat(headline.keyNumbers().get(0).meaning()).contains("with 210 m², as described");
    }

    @Test
    void oneMountingAndOneAreaAreNotCompared() {
        assertThat(new MountingHeadline(SampleStudies.SINGLE.mountings().study(), SampleStudies.SINGLE.units())
                        .sentences())
                .contains("With 210 m² of collectors \"flat\" gives")
                .doesNotContain("most heat", "than");
        assertThat(new AreaHeadline(SampleStudies.SINGLE.areas().study(), SampleStudies.SINGLE.units()).sentences())
                .startsWith("With 210 m²")
                .contains("Each further square metre adds")
                .doesNotContain("goes from");
    }

    @Test
    void headlineOfSensitivityNamesTheLargestEffect() {
        var parts = SampleStudies.MUNICIPAL.sensitivity();
        SensitivityHeadline headline = new SensitivityHeadline(parts.exposure(), parts.study(), parts.units());

        assertThat(headline.sentences())
                .contains(
                        "depends most on "
                                + SensitivityTables.varied(
                                        parts.study().effects().get(0), parts.units()),
                        new Numbers(parts.units())
                                .show(
                                        Measure.HEAT,
                                        Math.abs(parts.study()
                                                .effects()
                                                .get(0)
                                                .high()
                                                .change()
                                                .deliveredKwh())));
    }

    @Test
    void withoutAHeaterNoGasIsClaimed() throws Exception {
        assertThat(text(areas(SampleStudies.SOUTHERN))).doesNotContain("gas displaced", "Gas displaced");
        assertThat(text(sensitivity(SampleStudies.SOUTHERN))).doesNotContain("gas displaced", "Gas displaced");
        assertThat(text(mountings(SampleStudies.SOUTHERN))).doesNotContain("gas displaced", "Gas displaced");
    }

    @Test
    void usUnitsReachEveryPart() throws Exception {
        assertThat(text(mountings(SampleStudies.CLUB)))
                .contains("therms", "kBtu/ft²", "°F")
                .doesNotContain("°C", "kWh/m²", "square metre");
        assertThat(text(areas(SampleStudies.CLUB)))
                .contains("therms", "square foot")
                .doesNotContain("°C", "kWh/m²", "square metre");
        assertThat(text(sensitivity(SampleStudies.CLUB)))
                .contains("therms", "°F")
                .doesNotContain("°C", "kWh/m²");
    }

    @Test
    void namesAreEscaped() throws Exception {
        String name = "<script>alert(1)</script> & \"quoted\" 'twice' </title><h1>";
        for (String page : pages(SampleStudies.named(name))) {
            Document document = parse(page);
            assertThat(page).doesNotContain("<script");
            assertThat(document.getElementsByTagName("script").getLength()).isZero();
            assertThat(document.getElementsByTagName("h1").item(0).getTextContent())
                    .startsWith(name);
        }
    }

    @Test
    void filesBelongTogether() throws IOException {
        SampleStudies studies = SampleStudies.MUNICIPAL;
        StudyFiles.of(studies.described(), studies.mountings()).files().write(folder.resolve("m"));
        StudyFiles.of(studies.described(), studies.areas()).files().write(folder.resolve("a"));
        StudyFiles.of(studies.described(), studies.sensitivity()).files().write(folder.resolve("s"));

        assertThat(names("m"))
                .contains("mountings.html", "mountings.txt", "mountings.csv", "mountings_months.csv")
                .contains("charts/mounting-light.png", "charts/mounting-light.svg")
                .hasSize(4 + 2 * 5);
        assertThat(names("a"))
                .contains("areas.html", "areas.txt", "areas.csv", "charts/area-heat.png")
                .hasSize(3 + 2 * 3);
        assertThat(names("s"))
                .contains("sensitivity.html", "sensitivity.txt", "exposure.csv", "sensitivity.csv")
                .hasSize(4 + 2 * 3);
    }

    @Test
    void whereNothingCanBeDrawnAllElseIsWritten() throws Exception {
        SampleStudies studies = SampleStudies.MUNICIPAL;
        Optional<String> why = Optional.of("install fonts");
        List<StudyFiles> all = List.of(
                StudyFiles.of(studies.described(), studies.mountings(), why),
                StudyFiles.of(studies.described(), studies.areas(), why),
                StudyFiles.of(studies.described(), studies.sensitivity(), why));
        for (StudyFiles files : all) {
            assertThat(files.withoutCharts()).isEqualTo(why);
            files.files().write(folder.resolve("all"));
        }

        assertThat(names("all"))
                .containsExactly(
                        "areas.csv",
                        "areas.html",
                        "areas.txt",
                        "exposure.csv",
                        "mountings.csv",
                        "mountings.html",
                        "mountings.txt",
                        "mountings_months.csv",
                        "sensitivity.csv",
                        "sensitivity.html",
                        "sensitivity.txt");
        for (String page : List.of("areas.html", "mountings.html", "sensitivity.html")) {
            String written = Files.readString(folder.resolve("all").resolve(page));
            assertThat(parse(written).getElementsByTagName("svg").getLength()).isZero();
            assertThat(written).contains("install fonts");
        }
    }

    private List<String> names(String of) throws IOException {
        Path within = folder.resolve(of);
        try (Stream<Path> files = Files.walk(within)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> within.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    private static Document parse(String page) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    private static String text(String page) throws Exception {
        Element root = parse(page).getDocumentElement();
        return ((Element) root.getElementsByTagName("body").item(0))
                .getTextContent()
                .replaceAll("\\s+", " ");
    }

    /** The cells of all tables of a page, rows and totals. */
    private static List<List<List<String>>> tables(String page) throws Exception {
        List<List<List<String>>> tables = new ArrayList<>();
        NodeList found = parse(page).getElementsByTagName("table");
        for (int t = 0; t < found.getLength(); t++) {
            List<List<String>> rows = new ArrayList<>();
            NodeList bodies = ((Element) found.item(t)).getElementsByTagName("tbody");
            for (int b = 0; b < bodies.getLength(); b++) {
                NodeList lines = ((Element) bodies.item(b)).getElementsByTagName("tr");
                for (int r = 0; r < lines.getLength(); r++) {
                    NodeList cells = ((Element) lines.item(r)).getElementsByTagName("td");
                    List<String> row = new ArrayList<>();
                    for (int c = 0; c < cells.getLength(); c++) {
                        row.add(cells.item(c).getTextContent());
                    }
                    rows.add(row);
                }
            }
            tables.add(rows);
        }
        return tables;
    }

    private static List<List<String>> shown(Table table) {
        return Stream.concat(table.rows().stream(), table.totals().stream())
                .map(table::shown)
                .toList();
    }
}
