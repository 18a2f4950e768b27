package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.season.Installation;
import dev.warmlane.study.ArrayLayout;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Racks and mats on one surface, as {@code docs/roof.md} describes them; counted by hand in {@code LaidRoofTest}. */
class SharedSurfaceTest {

    private static final Path SCENARIO = Path.of("..", "examples", "scenarios", "shared-surface.toml");

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
    void theLaterHaveWhatTheFirstLeave() throws IOException {
        Installation built = read(described()).installation();

        assertThat(built.arrays()).extracting(CollectorArray::flowKgSM2).containsExactly(0.06, 0.04);
        assertThat(built.arrays().get(1).areaM2()).isCloseTo(35 * 3.6, within(1e-9));
        assertThat(built.arrays().get(0).mounting().racks().orElseThrow().rows())
                .isEqualTo(1);
        List<ArrayLayout> laid = ArrayLayout.of(built);
        assertThat(laid).extracting(one -> one.layout().panels()).containsExactly(20, 35);
        assertThat(laid).allMatch(ArrayLayout::fits);
        assertThat(ArrayLayout.share(built)).isTrue();
        assertThat(laid.get(0))
                .as("the first lie as if they were alone")
                .isEqualTo(ArrayLayout.of(
                                built.toBuilder().arrays(built.arrays().get(0)).build())
                        .get(0));
    }

    @Test
    void whereAnAreaThatIsLeftOutComesFromIsTold() throws IOException {
        assertThat(read(described()).assumed())
                .filteredOn(one -> one.key().equals("area"))
                .singleElement()
                .satisfies(area -> {
                    assertThat(area.section()).isEqualTo("collectors 2");
                    assertThat(area.why()).isEqualTo("the most that fits the drawn roof beside \"racks in front\"");
                });
    }

    @Test
    void whatDoesNotFitIsToldWithWhatItLiesBeside() throws IOException {
        Scenario crowded = read(described() + "area = \"130 m2\"\n");

        assertThat(crowded.warnings())
                .extracting(Finding::toString)
                .filteredOn(warning -> warning.contains("do not fit on the drawn roof"))
                .singleElement()
                .asString()
                .contains("[collectors 2] area: 130 m²", "which holds 126 m² beside \"racks in front\"");
        assertThat(ArrayLayout.of(crowded.installation()))
                .extracting(ArrayLayout::fits)
                .containsExactly(true, false);
        assertThat(read(described() + "area = \"126 m2\"\n").warnings())
                .extracting(Finding::toString)
                .noneMatch(warning -> warning.contains("do not fit"));
    }

    @Test
    void whereThereIsNoRoomForAPanelItIsAnError() throws IOException {
        String allTaken = described().replace("area = \"48 m2\"\n", "") + """
                [[collectors]]
                name = "more"
                mounting = "flat"
                area = "10 m2"
                """;

        assertThatThrownBy(() -> read(allTaken))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("[collectors 3] area: no panel fits on the drawn roof beside \"racks in front\","
                        + " \"mats behind them\"; they are laid in the order in which the file names them");
    }

    @Test
    void anotherOrderIsAnotherRoof() throws IOException {
        String rest = described();
        int second = rest.lastIndexOf("[[collectors]]");
        int first = rest.indexOf("[[collectors]]");
        String mats = rest.substring(second) + "area = \"100 m2\"\n";
        String racks = rest.substring(first, second).replace("area = \"48 m2\"\n", "");

        Installation turnedRound = read(rest.substring(0, first) + mats + racks).installation();

        assertThat(turnedRound.arrays())
                .extracting(CollectorArray::name)
                .containsExactly("mats behind them", "racks in front");
        // on an empty roof two rows of 22 panels stand 6 m apart
        assertThat(ArrayLayout.of(turnedRound)).allMatch(ArrayLayout::fits);
        assertThat(turnedRound.arrays().get(1).areaM2()).isBetween(1.0, 2 * 22 * 2.4 - 1);
    }

    /** Slopes that are drawn are surfaces, and any surface takes several collectors. */
    @Test
    void aGableIsStillRefusedAndToldHow() throws IOException {
        String gable = described()
                .replace(
                        "mounting = \"flat\"",
                        "mounting = \"gable\"\ntilt = \"25 deg\"\nazimuth = \"110 deg\"\nslope_length = \"6 m\"\narea = \"20 m2\"");

        assertThatThrownBy(() -> read(gable))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("each slope is a surface of its own")
                .hasMessageContaining("one surface takes several [[collectors]] too");
    }

    @Test
    void whatIsWrittenIsReadAgain() throws IOException {
        Scenario scenario = read(described());
        String written = ScenarioWriter.write(
                scenario.installation(), "../../weather-samples/cool-coast.csv", scenario.report());

        assertThat(ScenarioReader.parse(written, SCENARIO).installation().arrays())
                .isEqualTo(scenario.installation().arrays());
    }

    private static Scenario read(String roof) {
        return ScenarioReader.parse(REST + roof, SCENARIO);
    }

    private static String described() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "roof.md")).replace("\r", "");
        String section = page.substring(page.indexOf("\n## Several collectors on one surface\n"));
        int from = section.indexOf("```toml\n") + "```toml\n".length();
        return section.substring(from, section.indexOf("```\n", from));
    }
}
