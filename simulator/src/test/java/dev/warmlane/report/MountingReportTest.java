package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.collector.UnglazedForm2013;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.Assumption;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.Progress;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SharedForcing;
import dev.warmlane.study.TurningPoint;
import dev.warmlane.study.TurningPoints;
import dev.warmlane.study.TurningVariable;
import dev.warmlane.study.UsualMountings;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class MountingReportTest {

    private static final double ROUNDING = 1e-9;

    /** The plate's temperature follows from a loss coefficient that is settled to 0.1 %; of 500 kWh/m² absorbed. */
    private static final double CLOSURE_KWH_M2 = 0.5;

    private static final TurningPoints TURNING = new TurningPoints(
            "flat",
            "30° racks",
            List.of(
                    new TurningPoint(
                            TurningVariable.POOL_TEMPERATURE,
                            10,
                            40,
                            24,
                            new TurningPoint.Crossings(
                                    List.of(new TurningPoint.Crossing(20, 400, "30° racks", "flat")))),
                    new TurningPoint(
                            TurningVariable.ROOF_ALBEDO,
                            0.05,
                            0.85,
                            0.2,
                            new TurningPoint.NoneInRange("flat", 12.34, 0.85))));

    private static WeatherYear weather;
    private static MountingStudy study;

    @BeforeAll
    static void simulate() {
        weather = Demo.weather("cool-coast");
        study = study(Demo.pool(1.8).build());
    }

    private static MountingStudy study(Installation built) {
        return MountingStudy.of(
                built,
                new SharedForcing(weather),
                UsualMountings.of(built, weather.site()),
                new Runs(2, Progress.SILENT));
    }

    private static Subject described(MountingStudy study, UnitSystem units) {
        return Subject.of(SeasonForecast.of(study.template(), study.weather()), new ReportSettings("A pool", units))
                .assuming(List.of(new Assumption("roof", "albedo", "0.2", "aged dark roofing")));
    }

    private static double number(Cell cell) {
        return ((Cell.Value) cell).value();
    }

    private static String unbroken(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void differencesFromTheFirstAddUpToThatOfTheHeat() {
        Table table = MountingTables.lightAgainstFirst(study.sameArea(), UnitSystem.METRIC);

        assertThat(table.columns()).hasSize(5);
        for (int column = 1; column < 5; column++) {
            int at = column;
            double sum = table.rows().stream()
                    .mapToDouble(row -> number(row.get(at)))
                    .sum();
            double useful = number(table.totals().get(0).get(column));
            assertThat(sum).isCloseTo(useful, within(CLOSURE_KWH_M2));
            assertThat(useful)
                    .isCloseTo(
                            study.sameArea().get(column).light().orElseThrow().useful()
                                    - study.sameArea()
                                            .get(0)
                                            .light()
                                            .orElseThrow()
                                            .useful(),
                            within(ROUNDING));
        }
    }

    @Test
    void monthsOfAMountingEndWithItsSeason() {
        Table table = MountingTables.months(study.sameArea().get(1), new Numbers(UnitSystem.METRIC));

        assertThat(table.rows()).hasSize(5);
        assertThat(table.totals()).hasSize(1);
    }

    @Test
    void csvHasARowForEachMountingAndComparison() {
        List<String> lines = CsvWriter.csv(MountingCsv.seasons(study, UnitSystem.METRIC))
                .lines()
                .toList();

        assertThat(lines).hasSize(1 + 2 * 5);
        assertThat(lines.get(0))
                .startsWith("comparison,mounting,tilt_deg,panels,rows,row_pitch_m,fits_the_roof,area_m2")
                .contains("gained_convection_back_kwh_per_m2", "film_front_w_per_m2k", "warmed_by_air_h");
        assertThat(lines.get(1)).startsWith("same area,flat,0");
        assertThat(lines.get(6)).startsWith("same roof,flat,0");
        assertThat(CsvWriter.csv(MountingCsv.months(study, UnitSystem.US)).lines())
                .hasSize(1 + 2 * 5 * 5);
    }

    @Test
    void csvNamesEachColumnOnce() {
        List<String> names = List.of(CsvWriter.csv(MountingCsv.months(study, UnitSystem.METRIC))
                .lines()
                .findFirst()
                .orElseThrow()
                .split(",", -1));

        assertThat(names).doesNotHaveDuplicates();
    }

    @Test
    void textSaysBothComparisonsWhyAndWhereItTurns() {
        Report report = MountingReport.of(study, Optional.of(TURNING), described(study, UnitSystem.METRIC));

        assertThat(unbroken(TextWriter.brief(report)))
                .contains(
                        "Same collector area",
                        "The most that fits the same roof",
                        "Where the difference comes from",
                        "Films and temperatures",
                        "unshaded from 9 to 15 o'clock solar time on 30 September",
                        "“30° racks” is ahead up to 20.0 °C (both 400 kWh/m²), then “flat”",
                        "“flat” is ahead throughout, least at 0.85, there by 12.3 kWh/m²")
                .doesNotContain("Month by month");
        assertThat(unbroken(TextWriter.full(report)))
                .contains(
                        "Month by month, same collector area",
                        "45° racks sun on it",
                        "0.2 (roof albedo; aged dark roofing)");
        assertThat(TextWriter.full(report).lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThan(180));
    }

    @Test
    void usUnitsReachEveryPart() {
        assertThat(TextWriter.full(MountingReport.of(study, Optional.of(TURNING), described(study, UnitSystem.US))))
                .contains("ft²", "kBtu/ft²", "Btu/h ft² °F", "68.0 °F")
                .doesNotContain(" m²", "°C", "kWh/m²");
    }

    @Test
    void certificateSaysWhyThereIsNoWhy() {
        CertificateCurve curve = new UnglazedForm2013(0.85, 0.02, 10, 4, 0.95)
                .curve(new MatteBlack(), new CertificateCurve.TestStand(true, 2, 0, 4));
        MountingStudy certified = study(Demo.pool(1.8)
                .arrays(new CollectorArray("tested", 100, Mounting.FlatOnRoof.USUAL, curve))
                .build());

        assertThat(TextWriter.full(MountingReport.of(certified, UnitSystem.METRIC)))
                .contains("described by a test certificate", "Same collector area")
                .doesNotContain("Films and temperatures");
        assertThat(CsvWriter.csv(MountingCsv.months(certified, UnitSystem.METRIC)))
                .contains("same roof,45° racks");
    }
}
