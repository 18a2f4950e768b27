package dev.warmlane.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.AreaParts;
import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.Measure;
import dev.warmlane.report.MountingParts;
import dev.warmlane.report.Numbers;
import dev.warmlane.report.SampleReports;
import dev.warmlane.report.SensitivityParts;
import dev.warmlane.season.Installation;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.study.SharedForcing;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** The pages of the studies: well formed, in the report's units, and with the numbers of the study. */
class StudyPagesTest {

    @TempDir
    private Path folder;

    static Stream<ForecastReport> reports() {
        return Stream.of(SampleReports.MUNICIPAL, SampleReports.CLUB);
    }

    @ParameterizedTest
    @MethodSource("reports")
    void mountingsHaveTheirNumbersOnThePage(ForecastReport report) throws Exception {
        MountingStudy study = MountingStudy.of(
                installation(report),
                report.forecast().weather(),
                List.of(MountingOption.flat("flat <b>"), MountingOption.racks("racks & more", 25, 180)));
        String page = written(
                StudyFiles.of(report, new MountingParts(study, Optional.empty(), report.units())), "mountings.html");
        Document document = parsed(page);
        for (MountingResult result : study.sameArea()) {
            assertThat(document.getDocumentElement().getTextContent())
                    .contains(result.option().name())
                    .contains(number(report, Measure.HEAT, result.deliveredKwh()));
        }
        assertThat(page).doesNotContain("flat <b>");
        assertThat(document.getElementsByTagName("svg").getLength()).isPositive();
        assertThat(folder.resolve("charts").resolve("mounting-heat.png")).isNotEmptyFile();
    }

    @ParameterizedTest
    @MethodSource("reports")
    void areasHaveTheirNumbersOnThePage(ForecastReport report) throws Exception {
        AreaStudy study = AreaStudy.of(installation(report), report.forecast().weather(), new AreaRange(100, 400, 4));
        Document document = parsed(written(StudyFiles.of(report, new AreaParts(study, report.units())), "areas.html"));
        for (AreaDesign design : study.designs()) {
            assertThat(document.getDocumentElement().getTextContent())
                    .contains(number(
                            report, Measure.HEAT, design.season().balance().deliveredKwh()));
        }
    }

    @Test
    void everyParameterStandsOnThePageOfTheSensitivity() throws Exception {
        ForecastReport report = SampleReports.MUNICIPAL;
        SharedForcing forcing = new SharedForcing(report.forecast().weather());
        ExposureStudy exposure = ExposureStudy.of(installation(report), forcing, Runs.onAllCores());
        SensitivityStudy study = SensitivityStudy.of(installation(report), forcing, Runs.onAllCores());
        Document document = parsed(written(
                StudyFiles.of(report, new SensitivityParts("job", exposure, study, report.units())),
                "sensitivity.html"));
        assertThat(study.effects()).isNotEmpty().allSatisfy(effect -> assertThat(
                        document.getDocumentElement().getTextContent())
                .contains(effect.name()));
    }

    @Test
    void withoutChartsThePageSaysSo() throws Exception {
        ForecastReport report = SampleReports.MUNICIPAL;
        AreaStudy study = AreaStudy.of(installation(report), report.forecast().weather(), new AreaRange(210, 210, 1));
        StudyFiles files = StudyFiles.of(report, new AreaParts(study, report.units()), Optional.of("no fonts here"));
        Document document = parsed(written(files, "areas.html"));
        assertThat(document.getElementsByTagName("svg").getLength()).isZero();
        assertThat(document.getDocumentElement().getTextContent()).contains("no fonts here");
        assertThat(folder.resolve("charts")).doesNotExist();
    }

    private static Installation installation(ForecastReport report) {
        return report.forecast().installation();
    }

    private static String number(ForecastReport report, Measure measure, double value) {
        String shown = new Numbers(report.units()).show(measure, value);
        return shown.substring(0, shown.indexOf(' '));
    }

    private String written(StudyFiles files, String name) throws IOException {
        files.files().write(folder);
        return Files.readString(folder.resolve(name));
    }

    private static Document parsed(String page) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }
}
