package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.report.page.ForecastPage;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Demo;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.Schedule;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A season that is not to be believed says so before anything else. */
class CredibilityTextTest {

    private static final String WARNING = "NOT CREDIBLE: the water reaches 4";

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

    private static String page(ForecastReport report) {
        return ForecastPage.of(report, List.of(), Optional.empty());
    }

    private static ForecastReport report(double depthM, Cover cover) {
        SeasonForecast forecast = SeasonForecast.of(
                Demo.pool(depthM)
                        .pool(Pool.of(100, depthM, new PoolSetting.Outdoor(0.3)))
                        .arrays()
                        .cover(cover)
                        .build(),
                Demo.weather("hot-dry"));
        return ForecastReport.of(forecast, new ReportSettings("A pool", ReportSettings.Units.METRIC), List.of());
    }
}
