package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.Parameter;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.study.Sensitivity;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** That text, page and csv tell the same doubt, and that it is in order. */
class CertaintyTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    private static final Map<String, Subject> ALL = all();

    private static Map<String, Subject> all() {
        Map<String, Subject> all = new TreeMap<>(SampleReports.usual());
        all.putAll(SampleReports.odd());
        return all;
    }

    @Test
    void csvRunsFromLowOverLikelyToHigh() {
        ALL.forEach((name, subject) -> {
            Table table = csv(subject);
            assertThat(table.rows().stream().limit(3).map(row -> table.shown(row, PLAIN)
                            .get(0)))
                    .containsExactly("low", "likely", "high");
            for (int column = 1; column < table.columns().size(); column++) {
                String what = name + ", " + table.columns().get(column).csvName();
                assertThat(number(table, 0, column)).as(what).isLessThanOrEqualTo(number(table, 1, column));
                assertThat(number(table, 2, column)).as(what).isGreaterThanOrEqualTo(number(table, 1, column));
            }
        });
    }

    @Test
    void csvHasTheNumbersOfTheSeason() {
        PeriodSummary season = SampleReports.MUNICIPAL.season();
        Table table = csv(SampleReports.MUNICIPAL);

        assertThat(number(table, 1, column(table, "water_mean_degc")))
                .isCloseTo(season.water().meanC(), within(1e-9));
        assertThat(number(table, 1, column(table, "gas_displaced_kwh")))
                .isCloseTo(season.gas().replacedKwh(), within(1e-6));
        assertThat(number(table, 1, column(table, "co2_avoided_kg")))
                .isCloseTo(season.gas().replacedCo2Kg(), within(1e-6));
    }

    @Test
    void textAndPageTellTheSameRange() {
        ALL.forEach((name, subject) -> {
            BandWords words = new BandWords(subject, SeasonBand.of(subject.forecast()));
            Report report = ForecastReport.of(subject);
            String text = oneLine(TextWriter.full(report));
            String page = oneLine(HtmlWriter.page(report, Optional.of("none"))
                    .replace("&#39;", "'")
                    .replaceAll("<[^>]*>", " "));
            for (BandQuantity quantity : BandQuantity.of(subject)) {
                BandQuantity said = quantity.said(subject.season());
                if (quantity.measure() == Measure.DAYS
                        && Telling.heldByHeater(subject.installation(), subject.season())) {
                    // days that the heater makes with and without collectors
                    assertThat(text).as(name).doesNotContain(said.words() + " " + words.likely(said));
                    continue;
                }
                String told = said.words() + " " + words.likely(said) + " " + words.range(said);
                assertThat(text).as(name).contains(told);
                assertThat(page).as(name).contains(told);
            }
        });
    }

    @Test
    void whatIsBelowZeroIsToldWithoutItsSign() {
        BandQuantity heat = BandQuantity.HEAT;
        PeriodSummary season = SampleReports.MUNICIPAL.season();
        BandQuantity taken = new BandQuantity(
                heat.words(),
                heat.turned(),
                heat.csvName(),
                heat.measure(),
                heat.lowest(),
                heat.highest(),
                p -> -heat.number().applyAsDouble(p));

        assertThat(heat.said(season)).isSameAs(heat);
        assertThat(taken.said(season).words()).isEqualTo("heat taken from the pool");
        assertThat(taken.said(season).number().applyAsDouble(season))
                .isEqualTo(season.collectors().deliveredKwh());
    }

    @Test
    void doubtTakesTheThirdDigit() {
        Numbers numbers = new Numbers(UnitSystem.METRIC);
        Estimate sure = new Estimate(67_891, 69_806, 72_345);
        Estimate unsure = new Estimate(54_987, 69_806, 76_123);

        assertThat(numbers.bare(Measure.HEAT, sure.likely(), sure)).isEqualTo("69,800");
        assertThat(numbers.bare(Measure.HEAT, unsure.likely(), unsure)).isEqualTo("70,000");
        assertThat(numbers.bare(Measure.HEAT, unsure.low(), unsure)).isEqualTo("55,000");
        assertThat(numbers.bare(Measure.DAYS, 134, new Estimate(39, 134, 150))).isEqualTo("134");
    }

    @Test
    void everyDoubtOfAForecastHasWordsForAnOwner() {
        List<String> without = new ArrayList<>();
        for (Parameter parameter : SeasonBand.USUAL) {
            if (!DoubtWords.has(parameter.name())) {
                without.add(parameter.name());
            }
        }
        assertThat(without).isEmpty();
        Sensitivity wind = SeasonBand.of(SampleReports.MUNICIPAL.forecast())
                .leastCertain(BandQuantity.MEAN.number())
                .orElseThrow();
        assertThat(DoubtWords.of(wind)).isEqualTo("the wind at the water");
    }

    private static Table csv(Subject subject) {
        return ForecastReport.of(subject).data().stream()
                .filter(data -> data.name().equals("certainty"))
                .findFirst()
                .orElseThrow()
                .table()
                .get();
    }

    private static int column(Table table, String csvName) {
        return table.columns().stream().map(Column::csvName).toList().indexOf(csvName);
    }

    private static double number(Table table, int row, int column) {
        return table.rows().get(row).get(column) instanceof Cell.Value cell ? cell.value() : Double.NaN;
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
