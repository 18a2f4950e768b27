package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.season.Installation;
import dev.warmlane.study.ArrayLayout;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Both sides of a pitched roof, as {@code docs/roof.md} describes them. */
class BothSidesTest {

    private static final Path SCENARIO = Path.of("..", "examples", "scenarios", "both-sides.toml");

    private static final String REST = """
            [site]
            weather = "../../weather-samples/cool-coast.csv"
            [pool]
            area = "312.5 m2"
            depth = "1.8 m"
            setting = "outdoor"
            [roof]
            height = "6 m"
            """;

    @Test
    void eachSideHasItsOwnFlow() throws IOException {
        assertThat(asDescribed().arrays()).extracting(CollectorArray::flowKgSM2).containsExactly(0.04, 0.06);
    }

    @Test
    void eachSideIsLaidAsIfTheOtherWereNotThere() throws IOException {
        Installation both = asDescribed();
        List<ArrayLayout> laid = ArrayLayout.of(both);

        assertThat(laid).hasSize(2).allMatch(ArrayLayout::fits);
        for (ArrayLayout side : laid) {
            assertThat(side.layout().surfaces()).hasSize(1);
            Installation alone = both.toBuilder().arrays(side.array()).build();
            assertThat(ArrayLayout.of(alone)).containsExactly(side);
        }
        RoofLayout most = laid.get(0).layout();
        assertThat(laid.get(1).layout().panels())
                .as("25 m² in panels of 3.6 m², of a side that is as large")
                .isEqualTo(7)
                .isLessThan(most.panels());
    }

    /** A row of (12 m - 2 x 1 m) / 1.2 m = 8 panels of 3.6 m²; two rows are deeper than the slope. */
    @Test
    void whatDoesNotFitIsToldOfItsSide() throws IOException {
        Scenario crowded = read(described().replace("area = \"25 m2\"", "area = \"250 m2\""));

        assertThat(crowded.warnings())
                .extracting(Finding::toString)
                .filteredOn(warning -> warning.contains("do not fit on the drawn roof"))
                .singleElement()
                .asString()
                .contains("[collectors 2] area: 250 m²", "holds 28.8 m²");
        assertThat(ArrayLayout.of(crowded.installation()))
                .extracting(ArrayLayout::fits)
                .containsExactly(true, false);
    }

    private static Installation asDescribed() throws IOException {
        return read(described()).installation();
    }

    private static Scenario read(String roof) {
        return ScenarioReader.parse(REST + roof, SCENARIO);
    }

    private static String described() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "roof.md")).replace("\r", "");
        String section = page.substring(page.indexOf("\n## Both sides of a pitched roof\n"));
        int from = section.indexOf("```toml\n") + "```toml\n".length();
        return section.substring(from, section.indexOf("```\n", from));
    }
}
