package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.season.Periods;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The large numbers of page, text and csv are the same numbers, read back from what is written. */
class AgreementTest {

    /** Numbers in csv files are written to six digits and more. */
    private static final double CSV_ROUNDING = 1e-3;

    static Stream<Subject> subjects() {
        return SampleReports.usual().values().stream();
    }

    static Stream<SampleStudies> studies() {
        return SampleStudies.all().values().stream();
    }

    static Stream<Report> reports() {
        return Stream.concat(subjects().map(ForecastReport::of), studies().flatMap(study -> study.reports().stream()));
    }

    @ParameterizedTest
    @MethodSource("reports")
    void pageAndTextHaveTheSameLargeNumbers(Report report) throws Exception {
        String text = TextWriter.brief(report).replaceAll("\\s+", " ");
        List<Key> keys = keys(report);

        assertThat(keys).hasSizeGreaterThan(1);
        int at = 0;
        for (Key key : keys) {
            if (key.inMoney) {
                assertThat(text).contains(key.value);
                continue;
            }
            int found = text.indexOf(key.value + " " + key.meaning, at);
            assertThat(found).as(key.value + " " + key.meaning).isGreaterThan(at);
            at = found;
        }
    }

    /** Hours of a month in which the pool was open to people; temperatures are told of these alone. */
    private static double opened(Csv months, List<String> row) {
        return row.get(0).equals(Periods.BEFORE) ? 0 : months.number(row, "length_h");
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void largeNumbersOfAForecastAreThoseOfItsMonths(Subject subject) throws Exception {
        Report report = ForecastReport.of(subject);
        Csv months = new Csv(report, "months");
        UnitSystem units = subject.units();
        String degrees = Measure.TEMPERATURE.suffix(units);
        String heat = Measure.HEAT.suffix(units);

        agrees(
                key(report, "mean pool temperature"),
                months.sum(row -> opened(months, row) * months.number(row, "water_mean_" + degrees))
                        / months.sum(row -> opened(months, row)));
        boolean heldByHeater = subject.installation()
                .heater()
                .filter(heater -> subject.installation().comfortC() <= heater.setPointC())
                .isPresent();
        if (!heldByHeater) {
            agrees(key(report, "or above"), months.sum(row -> months.number(row, "at_comfort_days")));
        }
        agrees(key(report, "heat from the collectors"), months.sum(row -> months.number(row, "delivered_" + heat)));
        if (subject.installation().heater().isPresent()) {
            agrees(
                    key(report, "displaced"),
                    months.sum(row ->
                            months.number(row, FuelWords.of(subject.season()).slug() + "_displaced_" + heat)));
        }
    }

    @ParameterizedTest
    @MethodSource("studies")
    void largeNumbersOfStudiesAreThoseOfTheirRows(SampleStudies study) throws Exception {
        String perArea = "delivered_" + Measure.HEAT_PER_AREA.suffix(study.units());
        Report mountings = study.mountingReport();
        Csv rows = new Csv(mountings, "mountings");
        double most = rows.rows.stream()
                .filter(row -> row.get(0).equals("same area"))
                .mapToDouble(row -> rows.number(row, perArea))
                .max()
                .orElseThrow();
        agrees(key(mountings, "same collector area"), most);

        Report areas = study.areaReport();
        Csv designs = new Csv(areas, "areas");
        String heat = "delivered_" + Measure.HEAT.suffix(study.units());
        Key shown = key(areas, "heat from the collectors");
        assertThat(designs.rows).anySatisfy(row -> agrees(shown, designs.number(row, heat)));
    }

    /** As near as the digits that are shown. */
    private static void agrees(Key key, double csv) {
        String digits = key.value.replaceFirst(" .*", "").replace(",", "");
        BigDecimal shown = new BigDecimal(digits);
        BigDecimal plain = digits.contains(".") || shown.signum() == 0 ? shown : shown.stripTrailingZeros();
        double half = Math.pow(10, -plain.scale()) / 2;
        assertThat(shown.doubleValue())
                .as(key.value + " " + key.meaning)
                .isEqualTo(csv, within(half + CSV_ROUNDING * Math.abs(csv)));
    }

    private static Key key(Report report, String meaning) throws Exception {
        return keys(report).stream()
                .filter(key -> key.meaning.contains(meaning))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no large number says \"" + meaning + "\""));
    }

    /** The large numbers of a page. */
    private static List<Key> keys(Report report) throws Exception {
        Document page = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(
                        new StringReader(SampleReports.loose(HtmlWriter.page(report, Optional.of("no charts"))))));
        List<Key> keys = new ArrayList<>();
        NodeList lists = page.getElementsByTagName("ul");
        for (int i = 0; i < lists.getLength(); i++) {
            Element list = (Element) lists.item(i);
            if (list.getAttribute("class").equals("keys")) {
                NodeList points = list.getElementsByTagName("li");
                for (int p = 0; p < points.getLength(); p++) {
                    Element point = (Element) points.item(p);
                    keys.add(new Key(
                            point.getElementsByTagName("b").item(0).getTextContent(),
                            point.getElementsByTagName("span").item(0).getTextContent(),
                            list.getParentNode().getTextContent().contains("Money over the years")));
                }
            }
        }
        return keys;
    }

    /** A large number; that of the money over the years stands in a table of the text. */
    private record Key(String value, String meaning, boolean inMoney) {}

    /** A csv file, read back. */
    private static final class Csv {

        private final List<String> names;
        private final List<List<String>> rows;

        Csv(Report report, String name) {
            List<List<String>> all = report.data().stream()
                    .filter(data -> data.name().equals(name))
                    .flatMap(data -> CsvWriter.csv(data.table().get()).lines())
                    .map(line -> List.of(line.split(",", -1)))
                    .toList();
            names = all.get(0);
            rows = all.subList(1, all.size());
        }

        double number(List<String> row, String column) {
            assertThat(names).contains(column);
            // names of mountings may hold commas: count from the end
            return Double.parseDouble(row.get(row.size() - names.size() + names.indexOf(column)));
        }

        double sum(ToDoubleFunction<List<String>> number) {
            return rows.stream().mapToDouble(number).sum();
        }
    }
}
