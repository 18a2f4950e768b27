package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.DocBlock;
import dev.warmlane.report.chart.RoofSheet;
import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.ReportFiles;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.roof.RoofDrawing;
import dev.warmlane.roof.Surface;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.weather.WeatherYear;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What docs/roof.md shows of the invented roof is what the report says of it. */
class RoofDocTest {

    private static final Path SCENARIO = Path.of("..", "examples", "scenarios", "drawn-roof.toml");
    private static final Path PAGE = Path.of("..", "docs", "roof.md");
    private static final Path PLAN = Path.of("..", "docs", "roof-plan.png");

    private static Subject subject;
    private static Report mountings;
    private static Report areas;
    private static Report report;

    @BeforeAll
    static void forecast() throws IOException {
        Scenario scenario = ScenarioReader.read(SCENARIO);
        subject = Subject.of(SeasonForecast.of(scenario.installation(), scenario.readWeather()), scenario);
        report = ForecastReport.of(subject, Optional.empty());
        Installation built = subject.installation();
        WeatherYear weather = subject.forecast().weather();
        double area = built.collectorAreaM2();
        mountings = MountingReport.of(
                MountingStudy.of(built, weather, List.of(MountingOption.flat("flat"))), Optional.empty(), subject);
        areas = AreaReport.of(AreaStudy.of(built, weather, new AreaRange(area, area, 1)), subject);
    }

    private static List<Block> onTheRoof() {
        return report.sections().stream()
                .filter(section -> section.heading().equals("On the roof"))
                .findFirst()
                .orElseThrow()
                .at(Place.FULL);
    }

    private static Table table(int number) {
        return onTheRoof().stream()
                .flatMap(block -> block instanceof Table table ? Stream.of(table) : Stream.empty())
                .skip(number)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theListsAreThoseOfTheReport() throws IOException {
        DocBlock.check("roof.md", "pieces", "```\n" + TextWriter.table(table(0)) + "```\n");
        DocBlock.check("roof.md", "banks", "```\n" + TextWriter.table(table(1)) + "```\n");
    }

    /** Letters are drawn by the machine's own font: its size is held, and {@code -Ddocs.write=true} draws it again. */
    @Test
    void thePlanIsThatOfTheReport() throws IOException {
        RoofSheet sheet = report.plans().get(0).draw().get();
        if (Boolean.getBoolean("docs.write")) {
            Files.write(PLAN, sheet.png());
        }
        var shown = ImageIO.read(PLAN.toFile());
        var drawn = ImageIO.read(new ByteArrayInputStream(sheet.png()));
        assertThat(shown.getWidth()).isEqualTo(drawn.getWidth());
        assertThat(shown.getHeight()).isEqualTo(drawn.getHeight());
    }

    @Test
    void thePlanStandsOnThePageAndBesideIt(@TempDir Path folder) throws IOException {
        assertThat(report.plans()).hasSize(1);
        assertThat(HtmlWriter.page(report))
                .contains("<div class=\"plan scrolls\"><svg", "aria-label=\"mats: changing rooms\"");
        assertThat(ReportFiles.of(report).files().write(folder))
                .extracting(file -> folder.relativize(file).toString().replace('\\', '/'))
                .contains(
                        "forecast_roof_pieces.csv",
                        "forecast_roof_banks.csv",
                        "charts/forecast-roof-plan.svg",
                        "charts/forecast-roof-plan.png");
        assertThat(TextWriter.full(report))
                .contains("licensed practice and the local code decide", "full of water", "kg/m² over the whole roof")
                .doesNotContain("share a surface");
    }

    /** A designer writes all three into one folder: none may take plan, table or chart of another away. */
    @Test
    void reportsInOneFolderKeepTheirOwnFiles() {
        assertThat(Stream.of(report, mountings, areas)
                        .flatMap(one -> Stream.concat(
                                one.pictures().stream().map(picture -> "charts/" + picture.name()),
                                one.data().stream().map(Report.Data::name))))
                .contains("water_head", "water_banks", "shade", "flows", "charts/sky", "charts/pump")
                .doesNotHaveDuplicates();
        assertThat(Stream.of(report, mountings, areas)
                        .flatMap(one -> Stream.concat(
                                one.plans().stream().map(Block.Plan::name),
                                one.data().stream().map(Report.Data::name).filter(name -> name.contains("roof")))))
                .hasSize(9)
                .doesNotHaveDuplicates();
    }

    @Test
    void everyReportSaysWhatShadeCosts() {
        String lost = Pattern.compile("What stands around takes (\\S+ %) of the season's sun from the collectors")
                .matcher(text(report))
                .results()
                .findFirst()
                .orElseThrow()
                .group(1);

        assertThat(text(areas))
                .contains(
                        "The area as planned: What stands around takes " + lost + " of the season's sun",
                        "the shade of its own layout");
        // the mats of the forecast and of the comparison are the same
        assertThat(text(mountings)).contains("flat: " + lost + " of the season's sun on the collectors");
    }

    private static String text(Report report) {
        return TextWriter.full(report).replaceAll("\\s+", " ");
    }

    @Test
    void everyColumnIsDescribed() throws IOException {
        String document = Files.readString(Path.of("..", "docs", "csv.md"));
        assertThat(report.data())
                .filteredOn(data -> data.name().contains("_roof_"))
                .hasSize(2)
                .flatExtracting(data -> data.table().get().columns())
                .allSatisfy(column -> assertThat(document).contains("`" + column.csvName() + "`"));
    }

    @Test
    void theDrawingThatIsShownCanBeRead(@TempDir Path folder) throws IOException {
        Matcher json = Pattern.compile("(?s)```json\n(.*?)```").matcher(Files.readString(PAGE));
        assertThat(json.find()).isTrue();
        Path file = Files.writeString(folder.resolve("roof.geojson"), json.group(1));

        List<Surface> surfaces = RoofDrawing.read(file, 6);

        assertThat(surfaces).hasSize(1);
        assertThat(surfaces.get(0).outline().areaM2()).isEqualTo(420);
        assertThat(surfaces.get(0).obstacles()).hasSize(1);
    }
}
