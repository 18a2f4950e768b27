package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.Schedule;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.study.SharedForcing;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A season that is not to be believed says so before anything else. */
class CredibilityTest {

    private static final String WARNING = "NOT CREDIBLE: the water reaches ";

    /** Where the first sheet's answer begins. */
    private static final String ANSWER = "<section class=\"answer\">\\s*<p>";

    @Test
    void waterHotterThanAnyPoolIsToldFirst() {
        // covered by day and night in the desert
        Subject report = report(0.5, Cover.bubble(Schedule.ALWAYS));
        String text = TextWriter.brief(ForecastReport.of(report));
        assertThat(text.substring(text.indexOf("In short"))).startsWith("In short\n  " + WARNING);
        assertThat(page(report)).containsPattern(ANSWER + WARNING);
    }

    @Test
    void soundWaterIsNot() {
        Subject report = report(1.5, Cover.bubble(Schedule.daily(20, 8)));
        assertThat(TextWriter.full(ForecastReport.of(report))).doesNotContain("NOT CREDIBLE");
        assertThat(page(report)).doesNotContain("NOT CREDIBLE");
    }

    /** Text and page tell of wind beyond what evaporation was measured in. */
    @Test
    void strongWindIsToldWithTheHoursItHas() {
        Subject report = report(1.5, Cover.bubble(Schedule.daily(20, 8)));
        String told = CertaintySection.strongWind(report.numbers(), report.forecast());
        assertThat(told)
                .matches("In [1-9][0-9]* of the season's 3,672 hours the wind at the water is stronger than .*");
        assertThat(page(report).replace('\u00a0', ' ')).contains(told.replace("'", "&#39;"));
        assertThat(TextWriter.full(ForecastReport.of(report)).replaceAll("\\s+", " "))
                .contains(told);
    }

    /** Text and page of each study say it before anything else, the sound one's do not. */
    @Test
    void studiesTellItFirstAsWell() {
        Subject hot = report(0.5, Cover.bubble(Schedule.ALWAYS), Demo.FLAT.withAreaM2(20));
        assertThat(studies(hot)).hasSize(3).allSatisfy(text -> assertThat(text)
                .containsPattern("={5,}\\n\\nIn short\\n  " + WARNING));
        assertThat(pages(hot)).hasSize(3).allSatisfy(page -> assertThat(page).containsPattern(ANSWER + WARNING));
        Subject sound = report(1.5, Cover.bubble(Schedule.daily(20, 8)), Demo.FLAT.withAreaM2(20));
        assertThat(studies(sound)).allSatisfy(text -> assertThat(text).doesNotContain("NOT CREDIBLE"));
        assertThat(pages(sound)).allSatisfy(page -> assertThat(page).doesNotContain("NOT CREDIBLE"));
    }

    private static List<String> studies(Subject described) {
        return reports(described).stream().map(TextWriter::brief).toList();
    }

    private static List<String> pages(Subject described) {
        return reports(described).stream().map(CredibilityTest::page).toList();
    }

    private static List<Report> reports(Subject described) {
        Studies of = new Studies(described);
        return List.of(
                AreaReport.of(of.areas, described),
                SensitivityReport.of(of.exposure, of.sensitivity, described),
                MountingReport.of(of.mountings, Optional.empty(), described));
    }

    private static final class Studies {
        private final AreaStudy areas;
        private final ExposureStudy exposure;
        private final SensitivityStudy sensitivity;
        private final MountingStudy mountings;

        Studies(Subject described) {
            Installation built = described.forecast().installation();
            SharedForcing forcing = new SharedForcing(described.forecast().weather());
            areas = AreaStudy.of(built, new AreaRange(10, 20, 2), forcing, Runs.onAllCores());
            exposure = ExposureStudy.of(built, forcing, Runs.onAllCores());
            sensitivity = SensitivityStudy.of(built, forcing, Runs.onAllCores());
            mountings = MountingStudy.of(
                    built,
                    forcing,
                    List.of(new MountingOption.Flat("flat", Mounting.FlatOnRoof.USUAL)),
                    Runs.onAllCores());
        }
    }

    private static String page(Subject report) {
        return page(ForecastReport.of(report));
    }

    private static String page(Report report) {
        return HtmlWriter.page(report, Optional.of("no charts"));
    }

    private static Subject report(double depthM, Cover cover, CollectorArray... arrays) {
        SeasonForecast forecast = SeasonForecast.of(
                Demo.pool(depthM)
                        .pool(Pool.of(100, depthM, new PoolSetting.Outdoor(0.3)))
                        .arrays(arrays)
                        .cover(cover)
                        .build(),
                Demo.weather("hot-dry"));
        return Subject.of(forecast, new ReportSettings("A pool", UnitSystem.METRIC));
    }
}
