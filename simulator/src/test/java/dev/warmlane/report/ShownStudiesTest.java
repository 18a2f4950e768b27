package dev.warmlane.report;

import dev.warmlane.DocBlock;
import dev.warmlane.report.chart.LeadMapChart;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.AreaWorth;
import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.LeadMap;
import dev.warmlane.study.MoreArea;
import dev.warmlane.study.MountingDuel;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.RoofMap;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SharedForcing;
import dev.warmlane.study.TracedPair;
import dev.warmlane.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The tables of docs/areas.md and docs/mountings.md. {@code -Ddocs.write=true} writes them. */
class ShownStudiesTest {

    private static final int SHOWN_PARAMETERS = 6;

    @Test
    void areasAreThoseOfTheStudy() throws IOException {
        Subject described = SampleStudies.MUNICIPAL.described();
        AreaStudy areas = AreaStudy.of(
                described.forecast().installation(), described.forecast().weather(), new AreaRange(100, 400, 7));
        show("areas.md", "areas", AreaTables.areas(areas, MoreArea.of(areas, described.bands()), described.numbers()));
        AreaWorth worth = AreaWorth.of(areas, described.bands()).orElseThrow();
        show("areas.md", "areas, worth", new AreaMoney(worth, described.numbers()).table());
    }

    @Test
    void exposureAndSensitivityAreThoseOfTheStudies() throws IOException {
        SampleStudies studies = SampleStudies.MUNICIPAL;
        show(
                "areas.md",
                "exposure, pool",
                ExposureTables.square(studies.exposure(), new Numbers(studies.units()), PeriodColumn.WATER_MEAN));
        show(
                "areas.md",
                "exposure, heat",
                ExposureTables.square(studies.exposure(), new Numbers(studies.units()), PeriodColumn.DELIVERED));
        Table effects = SensitivityTables.effects(studies.sensitivity(), new Numbers(studies.units()));
        show(
                "areas.md",
                "largest effects",
                new Table(effects.columns(), effects.rows().subList(0, SHOWN_PARAMETERS), List.of()));
    }

    @Test
    void mountingsAreThoseOfTheStudy() throws IOException {
        MountingStudy study = SampleStudies.MUNICIPAL.mountings();
        UnitSystem units = SampleStudies.MUNICIPAL.units();
        List<MountingResult> sameArea = study.sameArea();
        show("mountings.md", "same area", MountingTables.comparison(sameArea, units));
        show("mountings.md", "same roof", MountingTables.comparison(study.sameRoof(), units));
        show("mountings.md", "ways of the heat", MountingTables.lightAgainstFirst(sameArea, units));
        show("mountings.md", "films", MountingTables.films(sameArea, units));
    }

    @Test
    void nearnessIsThatOfTheStudy() throws IOException {
        MountingStudy study = SampleStudies.MUNICIPAL.mountings();
        TracedPair pair = TracedPair.best(study).orElseThrow();
        MountingDuel duel =
                new MountingDuel(study.template(), new SharedForcing(study.weather()), pair.flat(), pair.racks());
        BreakEvenMap map = BreakEvenMap.of(duel, Runs.onAllCores()).orElseThrow();
        LeadMap roof = RoofMap.of(duel, Runs.onAllCores()).orElseThrow();
        String place = study.template().name();
        Numbers numbers = SampleStudies.MUNICIPAL.described().numbers();
        DocBlock.check("mountings.md", "nearness", "> " + new BreakEvenWords(numbers, map).conclusion() + "\n");
        DocBlock.check(
                "mountings.md", "nearness of the roof", "> " + new RoofMapWords(numbers, roof).conclusion() + "\n");
        if (Boolean.getBoolean("docs.write")) {
            Path docs = Path.of("..", "docs");
            Files.write(
                    docs.resolve("mounting-even.png"),
                    LeadMapChart.windAndWater("mounting-even", map, place, numbers)
                            .png());
            Files.write(
                    docs.resolve("mounting-roof.png"),
                    LeadMapChart.roof("mounting-roof", roof, place, numbers).png());
        }
    }

    /** The usual mountings of every scenario that comes along, whatever it asks to have compared. */
    @Test
    void leadsAreThoseOfAllScenarios() throws IOException {
        Map<String, SampleStudies> scenarios = new LinkedHashMap<>();
        scenarios.put("municipal-25m.toml", SampleStudies.MUNICIPAL);
        scenarios.put("us-club.toml", SampleStudies.CLUB);
        scenarios.put("southern-summer.toml", SampleStudies.SOUTHERN);
        scenarios.put("indoor-school.toml", SampleStudies.INDOOR);
        StringBuilder rows = new StringBuilder("""
                | scenario | pool, air | same area: 15° racks, 30°, 45° | the most on the roof |
                |---|---|---|---|
                """);
        scenarios.forEach((name, studies) -> {
            MountingStudy study = studies.mountings();
            PeriodSummary flat = study.sameArea().get(0).season();
            rows.append(String.format(
                    Locale.ROOT,
                    "| `%s` | %.1f, %.1f °C | %s %% | %s %% |\n",
                    name,
                    flat.water().meanC(),
                    flat.airMeanC(),
                    leads(study.sameArea()),
                    leads(study.sameRoof())));
        });
        DocBlock.check("mountings.md", "all scenarios", rows.toString());
    }

    /** Heat of the usual racks against that of the first mounting, %. */
    private static String leads(List<MountingResult> results) {
        double flat = results.get(0).deliveredKwh();
        return results.stream()
                .filter(result -> result.option().name().startsWith("racks"))
                .map(result -> DocBlock.signed(100 * (result.deliveredKwh() / flat - 1), 0))
                .collect(Collectors.joining(", "));
    }

    private static void show(String document, String name, Table table) throws IOException {
        DocBlock.check(document, name, "```\n" + TextWriter.table(table) + "```\n");
    }
}
