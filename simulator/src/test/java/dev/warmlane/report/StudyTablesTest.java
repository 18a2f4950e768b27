package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.univocity.parsers.csv.CsvParser;
import com.univocity.parsers.csv.CsvParserSettings;
import dev.warmlane.money.Worth;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Prices;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.Terrain;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.Runs;
import dev.warmlane.study.Sensitivity;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.study.SharedForcing;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.wind.PoolShelter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Studies as text and as csv that is read back. */
class StudyTablesTest {

    /** Half of the last decimal that a csv file has. */
    private static final double WRITTEN = 0.5e-4;

    private static final SharedForcing FORCING = new SharedForcing(Demo.weather("cool-coast"));

    private static final Installation HEATED = Demo.pool(1.8)
            .heater(Demo.HEATER)
            .prices(new Prices("EUR", 0.09, 0.28, 140))
            .build();

    private static final Installation PLAIN = Demo.pool(1.8).build();

    @TempDir
    private Path folder;

    private List<Map<String, String>> rows(String file) throws IOException {
        CsvParserSettings settings = new CsvParserSettings();
        settings.getFormat().setLineSeparator("\n");
        settings.setReadInputOnSeparateThread(false);
        List<String[]> lines = new CsvParser(settings).parseAll(Files.newBufferedReader(folder.resolve(file)));
        List<Map<String, String>> rows = new ArrayList<>();
        for (String[] line : lines.subList(1, lines.size())) {
            Map<String, String> row = new LinkedHashMap<>();
            for (int c = 0; c < line.length; c++) {
                row.put(lines.get(0)[c], line[c]);
            }
            rows.add(row);
        }
        return rows;
    }

    private void write(String name, Table table) throws IOException {
        Files.writeString(folder.resolve(name + ".csv"), CsvWriter.csv(table));
    }

    private static String areas(AreaStudy study, UnitSystem units) {
        return TextWriter.full(AreaReport.of(study, described(study.installation(), units)));
    }

    private static String sensitivity(
            ExposureStudy exposure, SensitivityStudy study, Installation built, UnitSystem units) {
        return TextWriter.full(SensitivityReport.of(exposure, study, described(built, units)));
    }

    private static Subject described(Installation built, UnitSystem units) {
        return Subject.of(
                SeasonForecast.of(built, FORCING.of(built), FORCING.weather()), new ReportSettings("A pool", units));
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    @Test
    void areasComeBackFromCsv() throws IOException {
        AreaStudy study = AreaStudy.of(HEATED, new AreaRange(100, 400, 4), FORCING, Runs.onAllCores());
        write("areas", AreaTables.all(study, UnitSystem.METRIC));
        List<Map<String, String>> rows = rows("areas.csv");
        assertThat(rows).hasSize(4);
        for (int i = 0; i < 4; i++) {
            AreaDesign design = study.designs().get(i);
            Map<String, String> row = rows.get(i);
            assertThat(number(row, "area_m2")).isCloseTo(design.areaM2(), within(WRITTEN));
            assertThat(number(row, "delivered_kwh"))
                    .isCloseTo(design.season().balance().deliveredKwh(), within(WRITTEN));
            assertThat(number(row, "next_delivered_kwh_per_m2"))
                    .isCloseTo(design.next().deliveredKwhPerM2(), within(WRITTEN));
            Worth worth = design.worth().orElseThrow();
            assertThat(number(row, "net_present_value_money")).isCloseTo(worth.netPresentValue(), within(WRITTEN));
            worth.payback()
                    .match(
                            years -> assertThat(number(row, "payback_years")).isCloseTo(years, within(WRITTEN)),
                            () -> assertThat(row).containsEntry("payback_years", ""));
            assertThat(row).containsEntry("fits_roof", design.fitsRoof() ? "yes" : "no");
        }
        assertThat(rows.stream().map(row -> row.get("as_described"))).containsExactly("no", "yes", "no", "no");
    }

    @Test
    void usUnitsConvertTheSameNumbers() throws IOException {
        AreaStudy study = AreaStudy.of(HEATED, new AreaRange(200, 200, 1), FORCING, Runs.onAllCores());
        write("areas", AreaTables.all(study, UnitSystem.US));
        Map<String, String> row = rows("areas.csv").get(0);
        // 1 m² is 10.7639 ft²
        assertThat(number(row, "area_ft2")).isCloseTo(2152.782, within(0.001));
        double kwh = study.designs().get(0).season().balance().deliveredKwh();
        // a therm is 29.3071 kWh
        assertThat(number(row, "delivered_therms")).isCloseTo(kwh / 29.3071, within(kwh * 1e-6));
    }

    @Test
    void exposureAndSensitivityComeBackFromCsv() throws IOException {
        ExposureStudy exposure = ExposureStudy.of(PLAIN, FORCING, Runs.onAllCores());
        SensitivityStudy sensitivity = SensitivityStudy.of(PLAIN, FORCING, Runs.onAllCores());
        write("exposure", ExposureTables.all(exposure, UnitSystem.METRIC));
        write("sensitivity", SensitivityTables.all(sensitivity, UnitSystem.METRIC));

        List<Map<String, String>> cases = rows("exposure.csv");
        assertThat(cases).hasSize(9);
        assertThat(cases.stream().map(row -> row.get("pool_wind_factor")).distinct())
                .containsExactly("0.15", "0.3", "0.4");
        for (int i = 0; i < 9; i++) {
            assertThat(number(cases.get(i), "water_mean_degc"))
                    .isCloseTo(exposure.cases().get(i).season().water().meanC(), within(WRITTEN));
        }

        List<Map<String, String>> ends = rows("sensitivity.csv");
        assertThat(ends).hasSize(2 * sensitivity.effects().size());
        for (int i = 0; i < ends.size(); i++) {
            Sensitivity s = sensitivity.effects().get(i / 2);
            Map<String, String> row = ends.get(i);
            assertThat(row).containsEntry("parameter", s.name()).containsEntry("end", i % 2 == 0 ? "low" : "high");
            Sensitivity.End end = i % 2 == 0 ? s.low() : s.high();
            assertThat(number(row, "delivered_change_kwh"))
                    .isCloseTo(end.change().deliveredKwh(), within(WRITTEN));
            assertThat(row).containsEntry("why", s.why());
        }
    }

    @Test
    void textMarksTheDescribedAreaAndTheRoof() {
        AreaStudy study = AreaStudy.of(HEATED, new AreaRange(100, 400, 4), FORCING, Runs.onAllCores());
        List<String> lines = areas(study, UnitSystem.METRIC).lines().toList();
        assertThat(lines).anyMatch(line -> line.matches(" +200 .* as planned"));
        assertThat(lines).anyMatch(line -> line.matches(" +400 .* more than the roof"));
        assertThat(lines).noneMatch(line -> line.matches(" +300 .* more than the roof"));
        assertThat(String.join(" ", lines).replaceAll("\\s+", " "))
                .contains("at most 336 m² of collectors", "limit of 30.0 °C");
    }

    @Test
    void withoutAHeaterNothingIsSaidOfGasDisplaced() {
        AreaStudy areas = AreaStudy.of(PLAIN, new AreaRange(100, 400, 4), FORCING, Runs.onAllCores());
        assertThat(areas(areas, UnitSystem.METRIC)).doesNotContain("displace", "gas burned", "Gas");
        String text = sensitivity(
                ExposureStudy.of(PLAIN, FORCING, Runs.onAllCores()),
                SensitivityStudy.of(PLAIN, FORCING, Runs.onAllCores()),
                PLAIN,
                UnitSystem.METRIC);
        assertThat(text).doesNotContain("Gas displaced").doesNotContain("gas displaced");
    }

    @Test
    void tablesOfStudiesAreNoWiderThanAPageOfPrintedText() {
        AreaStudy areas = AreaStudy.of(HEATED, new AreaRange(300, 2400, 8), FORCING, Runs.onAllCores());
        SensitivityStudy sensitivity = SensitivityStudy.of(HEATED, FORCING, Runs.onAllCores());
        ExposureStudy exposure = ExposureStudy.of(HEATED, FORCING, Runs.onAllCores());
        for (UnitSystem units : UnitSystem.values()) {
            assertThat(areas(areas, units).lines()).allMatch(line -> line.length() <= 120);
            assertThat(sensitivity(exposure, sensitivity, HEATED, units).lines())
                    .allMatch(line -> line.length() <= 120);
        }
    }

    @Test
    void whatIsDescribedAsShelteredAsAnyStandsOnce() {
        ExposureStudy exposure = ExposureStudy.of(
                PLAIN.toBuilder()
                        .terrain(Terrain.CITY)
                        .pool(PLAIN.pool().withSetting(new PoolSetting.Outdoor(PoolShelter.SHELTERED)))
                        .build(),
                FORCING,
                Runs.onAllCores());

        Table means = ExposureTables.square(exposure, new Numbers(UnitSystem.METRIC), PeriodColumn.WATER_MEAN);

        assertThat(means.rows()).hasSize(2);
        assertThat(means.columns().stream().map(Column::header))
                .containsExactly("the pool lies", "roof as planned\ncity", "roof exposed\nopen");
    }

    @Test
    void settingsShowTheirUnit() {
        SensitivityStudy study = SensitivityStudy.of(PLAIN, FORCING, Runs.onAllCores());
        assertThat(described(study, "plate-to-fluid conductance", UnitSystem.METRIC))
                .isEqualTo("250 W/m²K");
        assertThat(described(study, "plate-to-fluid conductance", UnitSystem.US))
                .isEqualTo("44 Btu/h ft² °F");
        assertThat(described(study, "gap below the mats", UnitSystem.METRIC)).isEqualTo("5 mm");
        assertThat(described(study, "gap below the mats", UnitSystem.US)).isEqualTo("0.197 in");
        assertThat(described(study, "stop difference", UnitSystem.US)).isEqualTo("0.54 °F");
        assertThat(described(study, "terrain around the roof", UnitSystem.US)).isEqualTo("suburban");
    }

    private static String described(SensitivityStudy study, String name, UnitSystem units) {
        return study.effects().stream()
                .filter(s -> s.name().equals(name))
                .map(s -> SettingWords.of(s.described(), new Numbers(units)))
                .findFirst()
                .orElseThrow();
    }
}
