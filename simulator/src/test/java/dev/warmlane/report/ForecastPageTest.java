package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.pool.Flow;
import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.season.Period;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ForecastPageTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    static Stream<Subject> usual() {
        return SampleReports.usual().values().stream();
    }

    static Stream<Arguments> all() {
        return Stream.concat(SampleReports.usual().entrySet().stream(), SampleReports.odd().entrySet().stream())
                .map(entry -> Arguments.of(entry.getKey(), entry.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void isWellFormedAndSaysNothingSilly(String name, Subject report) throws Exception {
        Document page = parse(page(report));

        assertThat(page.getDocumentElement().getTextContent())
                .doesNotContain("NaN")
                .doesNotContain("Infinity")
                .doesNotContain("Optional")
                .doesNotContain("{{")
                .doesNotContain("null");
    }

    @ParameterizedTest
    @MethodSource("usual")
    void asksForNothingFromOutside(Subject report) {
        assertThat(page(report))
                .doesNotContain("<script")
                .doesNotContain("<link")
                .doesNotContain("<img")
                .doesNotContain("@import")
                .doesNotContain(" src=")
                .doesNotContain("href=")
                .doesNotContainPattern("url\\([^#]")
                .contains("default-src 'none'");
    }

    @ParameterizedTest
    @MethodSource("usual")
    void monthsAgreeWithTextCsvAndLedger(Subject report) throws Exception {
        List<List<String>> months = cells(
                (Element) parse(page(report)).getElementsByTagName("table").item(0));
        String text = TextWriter.full(SampleReports.report(report));
        List<String> csv = CsvWriter.csv(ForecastTables.allOfMonths(
                        report.forecast(), report.bands().of(report.installation()), report.units()))
                .lines()
                .toList();
        List<String> names = List.of(csv.get(0).split(",", -1));
        String heat = Measure.HEAT.suffix(report.units());
        int delivered = names.indexOf("delivered_" + heat);
        int mean = names.indexOf("water_mean_" + Measure.TEMPERATURE.suffix(report.units()));

        assertThat(months).hasSize(csv.size());
        for (int month = 0; month < csv.size() - 1; month++) {
            String[] line = csv.get(month + 1).split(",", -1);
            assertThat(months.get(month))
                    .startsWith(report.numbers().label(new Period(line[0], 0, 1)))
                    .contains(
                            PLAIN.show(Double.parseDouble(line[delivered]), Measure.HEAT.decimals(report.units())),
                            PLAIN.show(Double.parseDouble(line[mean]), Measure.TEMPERATURE.decimals(report.units())));
            assertThat(text).containsPattern(String.join(" +", escaped(months.get(month))));
        }
        SeasonLedger ledger = report.forecast().with();
        double kwh = ledger.heatKwh(Flow.COLLECTORS, Periods.season(ledger))
                + ledger.heatKwh(Flow.PIPES, Periods.season(ledger));
        assertThat(months.get(months.size() - 1))
                .contains(PLAIN.show(Measure.HEAT.in(report.units(), kwh), Measure.HEAT.decimals(report.units())));
    }

    @ParameterizedTest
    @MethodSource("usual")
    void saysEveryPointOfTheText(Subject report) throws Exception {
        String page = oneLine(parse(page(report)).getDocumentElement().getTextContent());
        String text = oneLine(TextWriter.full(SampleReports.report(report)));
        report.assumed().forEach(assumption -> {
            assertThat(page).contains(assumption.why(), assumption.value());
        });
        report.summary().workingRange().ifPresent(range -> {
            String highest = new Numbers(report.units()).show(Measure.TEMPERATURE, range.highestPlateC());
            assertThat(page).contains("Dry collector standing in the sun: up to " + highest);
            assertThat(text).contains("Dry collector standing in the sun: up to " + highest);
        });
        assertThat(page).contains("local code and a licensed professional decide", "does not show how much warmer");
    }

    @Test
    void largeNumbersAreThoseOfTheSeason() {
        Numbers numbers = new Numbers(SampleReports.CLUB.units());
        PeriodSummary season = SampleReports.CLUB.summary().season();
        // the owner's numbers have two or three digits; the tables below have all of them
        assertThat(new ForecastAnswer(SampleReports.CLUB, SeasonBand.of(SampleReports.CLUB.forecast())).figures())
                .extracting(Block.Figure::value)
                .contains(
                        numbers.show(Measure.TEMPERATURE, season.water().meanC()),
                        numbers.about(
                                Measure.HEAT,
                                season.gas().replacedKwh(),
                                BandQuantity.DISPLACED.in(SeasonBand.of(SampleReports.CLUB.forecast()))))
                .allSatisfy(value -> assertThat(value).doesNotContain("°C").doesNotContain("kWh"));
    }

    @Test
    void displacedGasIsNotClaimedWithoutAHeater() throws Exception {
        String page =
                oneLine(parse(page(SampleReports.SOUTHERN)).getDocumentElement().getTextContent());

        assertThat(page).doesNotContain("gas was displaced", "The collectors displace", "gas displaced");
    }

    @Test
    void textOfTheScenarioIsEscaped() throws Exception {
        String title = "<script>alert(1)</script> & \"quoted\" 'twice' </title><h1>";
        String page = page(SampleReports.titled(title));
        Document document = parse(page);

        assertThat(page).doesNotContain("<script");
        assertThat(document.getElementsByTagName("script").getLength()).isZero();
        assertThat(document.getElementsByTagName("h1").item(0).getTextContent()).isEqualTo(title);
        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo(title);
    }

    @Test
    void withoutChartsThePageSaysSo() throws Exception {
        Document page =
                parse(HtmlWriter.page(SampleReports.report(SampleReports.MUNICIPAL), Optional.of("no fonts here")));

        assertThat(page.getElementsByTagName("svg").getLength()).isZero();
        assertThat(page.getDocumentElement().getTextContent()).contains("no fonts here", "month by month");
    }

    private static String page(Subject report) {
        return SampleReports.page(SampleReports.report(report));
    }

    private static Document parse(String page) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    /** The cells of all rows but the headings. */
    private static List<List<String>> cells(Element table) {
        List<List<String>> rows = new ArrayList<>();
        NodeList bodies = table.getElementsByTagName("tbody");
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
        return rows;
    }

    private static List<String> escaped(List<String> cells) {
        return cells.stream().map(Pattern::quote).toList();
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
