package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.Letterhead;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.units.DateOrder;
import dev.warmlane.units.Notation;
import dev.warmlane.units.NumberStyle;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every number and date of every report is written as its place does, and csv stays as machines read it. */
class ReportNotationTest {

    private static final Notation PLACE = new Notation(NumberStyle.POINT_COMMA, DateOrder.MONTH_FIRST);

    /** What a number with a decimal point or a comma between thousands looks like: the notation that is not asked for. */
    private static final Pattern OTHER =
            Pattern.compile("(?<![\\d.,])(?:[1-9]\\d{0,2}(?:,\\d{3})+|\\d+\\.\\d{1,2})(?![\\d.,]*\\d)");

    private static final Pattern DAY_FIRST = Pattern.compile("\\b\\d{1,2} (?:January|February|March|April|May|June|July"
            + "|August|September|October|November|December|Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sep|Oct|Nov|Dec)\\b");

    /** What is cited or read from a file is not rewritten: it names standards, papers and products. */
    private static final List<String> CITED = List.of(
            "Model and sources",
            "Assumed, because it was not given",
            "Not of this program",
            "Why so far",
            "The weather file, as it was read");

    static Stream<Report> reports() {
        return Stream.of(SampleStudies.MUNICIPAL, SampleStudies.SOUTHERN).flatMap(studies -> {
            SampleStudies of = studies.in(new ReportSettings("invented", UnitSystem.METRIC, PLACE, Letterhead.NONE));
            return Stream.concat(Stream.of(ForecastReport.of(of.described())), of.reports().stream());
        });
    }

    @ParameterizedTest
    @MethodSource("reports")
    void wordsTablesAndChartsAreWrittenAlike(Report report) {
        Report told = new Report(
                report.name(),
                report.title(),
                report.place(),
                report.notation(),
                report.sections().stream()
                        .filter(section -> !CITED.contains(section.heading()))
                        .toList(),
                List.of());
        String text = TextWriter.full(told);
        String page = HtmlWriter.page(told);
        String shown = page.substring(page.indexOf("<body"))
                .replaceAll(
                        "<(?:path|rect|line|polyline|polygon|ellipse|circle|g|svg|clipPath|defs|text)\\b[^>]*>", "<>")
                .replaceAll("<p class=\"foot\">.*?</p>", "");

        List<String> wrong = new ArrayList<>();
        for (String one : List.of(text, shown)) {
            OTHER.matcher(one).results().forEach(m -> wrong.add(around(one, m.start())));
            DAY_FIRST.matcher(one).results().forEach(m -> wrong.add(around(one, m.start())));
        }
        assertThat(wrong).isEmpty();
        assertThat(text).containsPattern("\\d\\.\\d{3}").containsPattern("\\d,\\d");
    }

    @ParameterizedTest
    @MethodSource("reports")
    void csvIsAsEverywhere(Report report) {
        for (Report.Data data : report.data()) {
            assertThat(CsvWriter.csv(data.table().get()).lines().skip(1).limit(20))
                    .as(data.name())
                    .allSatisfy(line -> assertThat(line).doesNotContainPattern("\"-?\\d+(?:\\.\\d{3})*,\\d+\""));
        }
    }

    private static String around(String text, int at) {
        return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 30))
                .replaceAll("\\s+", " ");
    }
}
