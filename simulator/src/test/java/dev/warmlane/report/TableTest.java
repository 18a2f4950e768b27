package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.warmlane.SampleForecasts;
import dev.warmlane.heater.Fuel;
import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.units.DateOrder;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Notation;
import dev.warmlane.units.NumberStyle;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TableTest {

    private static final List<Column> COLUMNS = List.of(
            Column.ofWords("place", "place"),
            Column.of("pool\nmean", "water_mean", Measure.TEMPERATURE, UnitSystem.METRIC),
            Column.of("heat", "heat", Measure.HEAT, UnitSystem.METRIC));

    private static final Table TABLE = new Table(
            COLUMNS,
            List.of(
                    List.of(Cell.of("Übersee, \"old\" bath"), Cell.of(21.349), Cell.of(1234567.8)),
                    List.of(Cell.of("b"), Cell.of(-0.04), Cell.of(Double.NaN))),
            List.of(List.of(Cell.of("all"), Cell.of(20), Cell.of(3))));

    private static Stream<Subject> subjects() {
        return Stream.concat(SampleReports.usual().values().stream(), Stream.of(SampleReports.odd("no collectors")));
    }

    @Test
    void alignsWordsLeftAndNumbersRight() {
        assertThat(TextWriter.table(TABLE)).isEqualTo("""
                                             pool
                        place                mean       heat
                                               °C        kWh
                        ------------------------------------
                        Übersee, "old" bath  21.3  1,234,568
                        b                     0.0          -
                        ------------------------------------
                        all                  20.0          3
                        """);
    }

    @Test
    void csvHasNamesWithUnitsPlainNumbersAndNoTotals() {
        assertThat(CsvWriter.csv(TABLE)).isEqualTo("""
                        place,water_mean_degc,heat_kwh
                        "Übersee, ""old"" bath",21.349,1234567.8
                        b,-0.04,
                        """);
    }

    @Test
    void rowThatDoesNotFitIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Table(COLUMNS, List.of(List.of(Cell.of("a"))), List.of()))
                .withMessage("a row has 1 cells, the table has 3 columns");
    }

    @Test
    void fuelIsShownInTheUnitItIsSoldIn() {
        assertThat(new Numbers(UnitSystem.METRIC).fuel(Fuel.NATURAL_GAS, 1000)).isEqualTo("1,000 m³");
        assertThat(new Numbers(UnitSystem.US).fuel(Fuel.NATURAL_GAS, 1000)).isEqualTo("35,315 ft³");
        assertThat(new Numbers(UnitSystem.US).fuel(Fuel.PROPANE, 1000)).isEqualTo("264 gal");
    }

    /** The municipal pool opens on 5 May and closes on 15 September. */
    @Test
    void monthOpenInPartNamesItsDaysInTheOrderOfThePlace() {
        for (DateOrder order : DateOrder.values()) {
            Numbers numbers = new Numbers(UnitSystem.METRIC, new Notation(NumberStyle.COMMA_POINT, order));
            Table months = ForecastTables.months(SampleForecasts.MUNICIPAL, numbers);

            assertThat(months.rows().stream()
                            .map(row -> months.shown(row, numbers.notation()).get(0)))
                    .containsExactlyElementsOf(
                            order == DateOrder.DAY_FIRST
                                    ? List.of("before opening", "5-31 May", "Jun", "Jul", "Aug", "1-15 Sep")
                                    : List.of("before opening", "May 5-31", "Jun", "Jul", "Aug", "Sep 1-15"));
        }
    }

    @Test
    void daysThatTheHeaterHoldsAreNoColumn() {
        Numbers numbers = new Numbers(UnitSystem.US);

        assertThat(TextWriter.table(ForecastTables.months(SampleForecasts.CLUB, numbers)))
                .doesNotContain("comfort");
        assertThat(TextWriter.table(ForecastTables.months(SampleForecasts.SOUTHERN, numbers)))
                .contains("comfort");
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void numbersOfAForecastEndUnderTheirHeadings(Subject subject) {
        for (UnitSystem units : UnitSystem.values()) {
            Subject in = subject.in(new ReportSettings("invented", units));
            for (Table table : List.of(ForecastTables.months(in.forecast(), in.numbers()), ForecastTables.weeks(in))) {
                List<String> lines = TextWriter.table(table).lines().toList();
                int width = lines.stream().mapToInt(String::length).max().orElseThrow();

                assertThat(width).isLessThanOrEqualTo(100);
                // the last column holds numbers, so every row of it ends at the right edge
                assertThat(lines.subList(3, lines.size())).allMatch(line -> line.length() == width);
            }
        }
    }
}
