package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.scenario.ReportSettings.Units;
import dev.warmlane.weather.WeatherSummary;
import org.junit.jupiter.api.Test;

class WeatherTextTest {

    @Test
    void saysWhatItIsWhatItHoldsAndHowGoodItIs() {
        String text = WeatherText.of(SampleForecasts.SOUTHERN.weather(), Units.METRIC);
        double air =
                WeatherSummary.of(SampleForecasts.SOUTHERN.weather()).year().airC();

        assertThat(text)
                .contains("Farrowick (invented, southern temperate)", "southern-temperate.csv", "37.0 S 145.0 E")
                .contains("By month", "Jan", "Dec", "Quality", "Closure")
                .contains(Numbers.show(air, 1))
                .doesNotContain("NaN", "null");
    }

    @Test
    void speaksUsUnits() {
        assertThat(WeatherText.of(SampleForecasts.SOUTHERN.weather(), Units.US))
                .contains("°F", "mph", "kBtu/ft²")
                .doesNotContain("°C", "m/s");
    }
}
