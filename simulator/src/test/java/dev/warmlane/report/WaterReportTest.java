package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.report.write.TextWriter;
import dev.warmlane.study.WaterCircuit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the forecast tells of the water of the invented drawn roof. */
class WaterReportTest {

    private static final Report REPORT = SampleReports.report(SampleReports.DRAWN);

    private static final WaterCircuit CIRCUIT =
            WaterCircuit.of(SampleReports.DRAWN.installation()).orElseThrow();

    private static Table data(String name) {
        return REPORT.data().stream()
                .filter(data -> data.name().equals(name))
                .findFirst()
                .orElseThrow()
                .table()
                .get();
    }

    private static double[] column(String table, String csvName) {
        Table data = data(table);
        List<String> names = data.columns().stream().map(Column::csvName).toList();
        int at = names.indexOf(csvName);
        assertThat(at).as("%s of %s", csvName, names).isNotNegative();
        return data.rows().stream()
                .mapToDouble(row -> row.get(at).match(words -> Double.NaN, Cell.Value::value, empty -> Double.NaN))
                .toArray();
    }

    @Test
    void theHeadsOfThePartsSumUp() {
        double sum = 0;
        for (double head : column("water_head", "head_m")) {
            sum += head;
        }
        assertThat(sum).isCloseTo(CIRCUIT.headM(), within(1e-3 * CIRCUIT.headM()));
    }

    @Test
    void theFlowsOfTheBanksSumUp() {
        double sum = 0;
        for (double flow : column("water_banks", "flow_m3_per_h")) {
            sum += flow;
        }
        assertThat(sum).isCloseTo(CIRCUIT.flowM3h(), within(1e-3 * CIRCUIT.flowM3h()));
        assertThat(column("water_banks", "over_mean_percent"))
                .hasSize(CIRCUIT.banks().size());
    }

    @Test
    void theTextTellsPumpPipesAndValves() {
        String text = TextWriter.full(REPORT).replaceAll("\\s+", " ");
        assertThat(text)
                .contains("its curve meets the circuit here")
                .contains("lets air in on vacuum would open")
                .contains("licensed practice and the maker's instructions decide")
                .contains("of pipe lose");
    }

    @Test
    void aCircuitThatIsNotDescribedIsNotToldOf() {
        assertThat(TextWriter.full(SampleReports.report(SampleReports.MUNICIPAL)))
                .doesNotContain("Water through the collectors\n- ");
        assertThat(SampleReports.report(SampleReports.MUNICIPAL).data())
                .noneMatch(data -> data.name().startsWith("water_"));
    }
}
