package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.report.page.AreaPage;
import dev.warmlane.report.page.ForecastPage;
import dev.warmlane.report.page.MountingPage;
import dev.warmlane.report.page.SensitivityPage;
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
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A season that is not to be believed says so before anything else. */
class CredibilityTextTest {

    private static final String WARNING = "NOT CREDIBLE: the water reaches ";

    @Test
    void waterHotterThanAnyPoolIsToldFirst() {
        // covered by day and night in the desert
        ForecastReport report = report(0.5, Cover.bubble(Schedule.ALWAYS));
        String text = ForecastText.of(report).briefText();
        assertThat(text.substring(text.indexOf("In short"))).startsWith("In short\n  - " + WARNING);
        assertThat(page(report)).contains("<p class=\"answer\">" + WARNING);
    }

    @Test
    void soundWaterIsNot() {
        ForecastReport report = report(1.5, Cover.bubble(Schedule.daily(20, 8)));
        assertThat(ForecastText.of(report).text()).doesNotContain("NOT CREDIBLE");
        assertThat(page(report)).doesNotContain("NOT CREDIBLE");
    }

    /** Text and page tell of wind beyond what evaporation was measured in. */
    @Test
    void strongWindIsToldWithTheHoursItHas() {
        ForecastReport report = report(1.5, Cover.bubble(Schedule.daily(20, 8)));
        String told = new ForecastParts(report).strongWind().orElseThrow();
        assertThat(told).matches("In [1-9][0-9]* of the season's 3672 hours the wind at the water is stronger than .*");
        assertThat(page(report)).contains(told.replace("'", "&#39;"));
        assertThat(ForecastText.of(report).text().replaceAll("\\s+", " ")).contains(told);
    }

    /** Text and page of each study say it before anything else, the sound one's do not. */
    @Test
    void studiesTellItFirstAsWell() {
        ForecastReport hot = report(0.5, Cover.bubble(Schedule.ALWAYS), Demo.FLAT.withAreaM2(20));
        assertThat(studies(hot)).hasSize(3).allSatisfy(text -> assertThat(text)
                .containsPattern("={5,}\\n\\nBefore anything else\\n  " + WARNING));
        assertThat(pages(hot)).hasSize(3).allSatisfy(page -> assertThat(page)
                .contains("<p class=\"answer\">" + WARNING));
        ForecastReport sound = report(1.5, Cover.bubble(Schedule.daily(20, 8)), Demo.FLAT.withAreaM2(20));
        assertThat(studies(sound)).allSatisfy(text -> assertThat(text).doesNotContain("NOT CREDIBLE"));
        assertThat(pages(sound)).allSatisfy(page -> assertThat(page).doesNotContain("NOT CREDIBLE"));
    }

    private static List<String> studies(ForecastReport described) {
        Studies of = new Studies(described);
        return List.of(
                StudyText.of(of.areas, ReportSettings.Units.METRIC).text(),
                StudyText.of("pool", of.exposure, of.sensitivity, ReportSettings.Units.METRIC)
                        .text(),
                MountingText.of(of.mountings, Optional.empty(), ReportSettings.Units.METRIC, List.of())
                        .briefText());
    }

    private static List<String> pages(ForecastReport described) {
        Studies of = new Studies(described);
        return List.of(
                AreaPage.of(
                        described, new AreaParts(of.areas, ReportSettings.Units.METRIC), List.of(), Optional.empty()),
                SensitivityPage.of(
                        described,
                        new SensitivityParts("pool", of.exposure, of.sensitivity, ReportSettings.Units.METRIC),
                        List.of(),
                        Optional.empty()),
                MountingPage.of(
                        described,
                        new MountingParts(of.mountings, Optional.empty(), ReportSettings.Units.METRIC),
                        List.of(),
                        Optional.empty()));
    }

    private static final class Studies {
        private final AreaStudy areas;
        private final ExposureStudy exposure;
        private final SensitivityStudy sensitivity;
        private final MountingStudy mountings;

        Studies(ForecastReport described) {
            Installation built = described.forecast().installation();
            SharedForcing forcing = new SharedForcing(described.forecast().weather());
            areas = AreaStudy.of(built, new AreaRange(10, 20, 2), forcing, Runs.onAllCores());
            exposure = ExposureStudy.of(built, forcing, Runs.onAllCores());
            sensitivity = SensitivityStudy.of(built, forcing, Runs.onAllCores());
            mountings = MountingStudy.of(
                    built,
                    described.forecast().weather(),
                    List.of(new MountingOption.Flat("flat", Mounting.FlatOnRoof.USUAL)),
                    Runs.onAllCores());
        }
    }

    private static String page(ForecastReport report) {
        return ForecastPage.of(report, List.of(), Optional.empty());
    }

    private static ForecastReport report(double depthM, Cover cover, CollectorArray... arrays) {
        SeasonForecast forecast = SeasonForecast.of(
                Demo.pool(depthM)
                        .pool(Pool.of(100, depthM, new PoolSetting.Outdoor(0.3)))
                        .arrays(arrays)
                        .cover(cover)
                        .build(),
                Demo.weather("hot-dry"));
        return ForecastReport.of(forecast, new ReportSettings("A pool", ReportSettings.Units.METRIC), List.of());
    }
}
