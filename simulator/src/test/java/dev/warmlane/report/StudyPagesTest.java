package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.write.ReportFiles;
import dev.warmlane.scenario.Assumption;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaWorth;
import dev.warmlane.study.MoreArea;
import dev.warmlane.study.MountingResult;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
class StudyPagesTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    @TempDir
    private Path folder;

    static Stream<Arguments> studies() {
        return SampleStudies.all().entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
    }

    private static String mountings(SampleStudies studies) {
        return SampleReports.page(studies.mountingReport());
    }

    private static String areas(SampleStudies studies) {
        return SampleReports.page(studies.areaReport());
    }

    private static String sensitivity(SampleStudies studies) {
        return SampleReports.page(studies.sensitivityReport());
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
            assertThat(text(page)).as("raw keys").doesNotContainPattern("\\b[a-z]+_[a-z_]+\\b(?!\\.csv)");
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
                        shown(MountingTables.comparison(studies.mountings().sameArea(), units)),
                        shown(MountingTables.comparison(studies.mountings().sameRoof(), units)),
                        shown(MountingTables.heldPool(studies.mountings().sameArea(), units)));
        assertThat(tables(areas(studies)))
                .contains(shown(AreaTables.areas(
                        studies.areas(),
                        MoreArea.of(studies.areas(), studies.described().bands()),
                        new Numbers(units))));
        assertThat(tables(sensitivity(studies)))
                .contains(
                        shown(SensitivityTables.effects(studies.sensitivity(), new Numbers(units))),
                        shown(ExposureTables.square(studies.exposure(), new Numbers(units), PeriodColumn.WATER_MEAN)),
                        shown(ExposureTables.square(studies.exposure(), new Numbers(units), PeriodColumn.DELIVERED)));
    }

    @Test
    void whyAndTurningPointsAreInThePageWhereTheyAreKnown() throws Exception {
        String page = mountings(SampleStudies.CLUB);
        assertThat(tables(page))
                .contains(
                        shown(MountingTables.lightAgainstFirst(
                                SampleStudies.CLUB.mountings().sameArea(), SampleStudies.CLUB.units())),
                        shown(MountingTables.films(
                                SampleStudies.CLUB.mountings().sameArea(), SampleStudies.CLUB.units())));
        assertThat(text(page)).contains("is ahead up to 68.0 °F");
        assertThat(text(mountings(SampleStudies.INDOOR)))
                .contains("described by a test certificate")
                .doesNotContain("Films and temperatures", "What speaks most for it");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void headlineNamesTheMountingThatGivesMost(String name, SampleStudies studies) {
        List<MountingResult> results = studies.mountings().sameArea();
        MountingResult best = results.stream()
                .max(Comparator.comparingDouble(MountingResult::deliveredKwh))
                .orElseThrow();
        MountingAnswer headline =
                new MountingAnswer(studies.mountings(), studies.bands(), new Numbers(studies.units()));

        assertThat(headline.details())
                .contains(
                        "collectors “" + best.option().name() + "” gives",
                        new Numbers(studies.units()).show(Measure.HEAT, best.deliveredKwh()));
        Estimate perArea = studies.bands()
                .of(best)
                .of(season -> season.balance().deliveredKwh() / best.fit().areaM2());
        assertThat(headline.figures().get(0).value())
                .isEqualTo(
                        new Numbers(studies.units()).about(Measure.HEAT_PER_AREA, best.deliveredKwhPerM2(), perArea));
        // every large number has its range
        assertThat(headline.figures())
                .allSatisfy(figure -> assertThat(figure.range()).contains(" to "));
    }

    @Test
    void headlineOfAreasGoesFromTheSmallestToTheLargest() {
        List<AreaDesign> designs = SampleStudies.MUNICIPAL.areas().designs();
        AreaAnswer headline = answer(SampleStudies.MUNICIPAL);
        Numbers numbers = new Numbers(SampleStudies.MUNICIPAL.units());

        assertThat(headline.sentences())
                .contains(
                        "goes from "
                                + numbers.about(
                                        Measure.HEAT,
                                        designs.get(0).season().balance().deliveredKwh())
                                + " to "
                                + numbers.about(
                                        Measure.HEAT,
                                        designs.get(designs.size() - 1)
                                                .season()
                                                .balance()
                                                .deliveredKwh()),
                        "the roof holds 336 m²");
        assertThat(headline.figures().get(0).meaning()).contains("with 210 m², as planned");
    }

    @Test
    void oneMountingAndOneAreaAreNotCompared() {
        assertThat(new MountingAnswer(
                                SampleStudies.SINGLE.mountings(),
                                SampleStudies.SINGLE.bands(),
                                new Numbers(SampleStudies.SINGLE.units()))
                        .sentences())
                .contains("With 210 m² of collectors “flat” gives")
                .doesNotContain("most heat", "than");
        assertThat(answer(SampleStudies.SINGLE).sentences())
                .startsWith("With 210 m²")
                .contains("Each further square metre adds")
                .doesNotContain("goes from");
    }

    private static AreaAnswer answer(SampleStudies studies) {
        Subject described = studies.described();
        return new AreaAnswer(
                studies.areas(),
                AreaWorth.of(studies.areas(), described.bands()),
                MoreArea.of(studies.areas(), described.bands()),
                described);
    }

    @Test
    void headlineOfSensitivityNamesTheLargestEffect() {
        SampleStudies studies = SampleStudies.MUNICIPAL;
        SensitivityAnswer headline = new SensitivityAnswer(
                studies.exposure(),
                studies.sensitivity(),
                studies.described().installation(),
                new Numbers(studies.units()));

        assertThat(headline.sentences())
                .contains(
                        "depends most on "
                                + DoubtWords.of(studies.sensitivity().effects().get(0)),
                        new Numbers(studies.units())
                                .about(
                                        Measure.HEAT,
                                        Math.abs(studies.sensitivity()
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
        ReportFiles.of(studies.mountingReport()).files().write(folder.resolve("m"));
        ReportFiles.of(studies.areaReport()).files().write(folder.resolve("a"));
        ReportFiles.of(studies.sensitivityReport()).files().write(folder.resolve("s"));

        assertThat(names("m"))
                .contains(
                        "mountings.html",
                        "mountings.txt",
                        "mountings.csv",
                        "mountings_months.csv",
                        "mountings_even.csv")
                .contains("charts/mounting-light.png", "charts/mounting-light.svg")
                .hasSize(7 + 2 * 7);
        assertThat(names("a"))
                .contains("areas.html", "areas.txt", "areas.csv", "charts/area-heat.png", "charts/area-value.png")
                .hasSize(3 + 2 * 4);
        assertThat(names("s"))
                .contains("sensitivity.html", "sensitivity.txt", "exposure.csv", "sensitivity.csv")
                .hasSize(4 + 2 * 3);
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
                .map(row -> table.shown(row, PLAIN))
                .toList();
    }
}
