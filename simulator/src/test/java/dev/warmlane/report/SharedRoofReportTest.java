package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What reports say of racks and mats that share the invented roof of the examples. */
class SharedRoofReportTest {

    private static final Path SCENARIO = Path.of("..", "examples", "scenarios", "drawn-roof.toml");

    private static final String COLLECTORS = """
            [[collectors]]
            name = "racks"
            mounting = "rack"
            area = "40 m2"
            tilt = "20 deg"
            azimuth = "%s deg"
            chord = "2.4 m"
            pitch = "4 m"
            clearance = "0.3 m"

            [[collectors]]
            name = "mats"
            mounting = "flat"
            area = "60 m2"
            dry_weight = "3 kg/m2"

            """;

    private static Subject shared;
    private static Report report;
    private static String text;

    @BeforeAll
    static void forecast() throws IOException {
        Scenario scenario = scenario("200");
        shared = Subject.of(SeasonForecast.of(scenario.installation(), scenario.readWeather()), scenario);
        report = ForecastReport.of(shared, Optional.empty());
        text = text(report);
    }

    private static Scenario scenario(String azimuth) throws IOException {
        String file = Files.readString(SCENARIO).replace("\r", "");
        String described = file.substring(0, file.indexOf("[[collectors]]"))
                + COLLECTORS.formatted(azimuth)
                + file.substring(file.indexOf("[[mountings]]"));
        return ScenarioReader.parse(described, SCENARIO);
    }

    private static String text(Report report) {
        return TextWriter.full(report).replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }

    private static String csv(String name) {
        return report.data().stream()
                .filter(data -> data.name().equals(name))
                .findFirst()
                .map(data -> TextWriter.table(data.table().get()))
                .orElseThrow();
    }

    @Test
    void allOfASurfaceStandOnOnePlan() {
        assertThat(report.plans()).extracting(Block.Plan::name).containsExactly("forecast-roof-plan");
        assertThat(report.plans().get(0).draw().get().title()).isEqualTo("racks, mats: changing rooms");
        // 40 / 2.88 = 14 and 60 / 4.32 = 14 panels, of 8 and 6 in a bank
        assertThat(csv("forecast_roof_banks").lines().skip(4).map(line -> line.replaceAll(" +", " ")))
                .satisfiesExactly(
                        bank -> assertThat(bank).startsWith("racks changing rooms 1 1 1.00 1.00 8 2.40"),
                        bank -> assertThat(bank).startsWith("racks changing rooms 2 1 11.20 1.00 6 2.40"),
                        bank -> assertThat(bank).startsWith("mats changing rooms 3 "),
                        bank -> assertThat(bank).startsWith("mats changing rooms 4 "));
        assertThat(csv("water_banks").lines().skip(4).map(line -> line.replaceAll(" +", " ")))
                .as("by the same numbers")
                .satisfiesExactly(
                        bank -> assertThat(bank).startsWith("racks changing rooms 1 "),
                        bank -> assertThat(bank).startsWith("racks changing rooms 2 "),
                        bank -> assertThat(bank).startsWith("mats changing rooms 3 "),
                        bank -> assertThat(bank).startsWith("mats changing rooms 4 "));
        assertThat(text).doesNotContain("turned to the left");
    }

    @Test
    void racksThatStandAskewSayByHowMuch() throws IOException {
        RoofSection askew = RoofSection.of("any", scenario("180").installation(), new Numbers(UnitSystem.METRIC));

        // mats are laid square to the edge, racks 20 degrees off it, and the plan is theirs: it is drawn in their rows
        assertThat(TextWriter.table(askew.data().get(1).table().get()))
                .contains("turned to")
                .containsPattern("mats .* 3.20 +[-−]20\\n");
    }

    @Test
    void whatIsNotSimulatedIsSaid() {
        assertThat(text)
                .contains("Collectors that share a surface are laid in the order in which they are described")
                .contains("Collectors that share a surface throw no shade on one another")
                // 40.32 m² of 3.4 kg/m² and 60.48 m² of 6.4 kg/m²
                .contains("changing rooms: all collectors on it together are, full of water, 524 kg");
    }

    @Test
    void studiesSayHowTheyTakeThem() {
        AreaStudy areas = AreaStudy.of(shared.installation(), shared.forecast().weather(), new AreaRange(100, 100, 1));
        MountingStudy mountings = MountingStudy.of(
                shared.installation(), shared.forecast().weather(), List.of(MountingOption.flat("flat")));

        assertThat(text(AreaReport.of(areas, shared)))
                .contains("collectors share a surface, and those that are described later have what the others leave");
        assertThat(text(MountingReport.of(mountings, Optional.empty(), shared)))
                .contains("Each mounting is compared alone, in place of all 2 collectors described");
    }
}
