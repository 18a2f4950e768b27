package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.WeatherSummary;
import dev.warmlane.weather.WeatherYear;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WeatherReportTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    private static String text(WeatherYear weather, UnitSystem units) {
        return TextWriter.full(WeatherReport.of(weather, units));
    }

    @Test
    void saysWhatItIsWhatItHoldsAndHowGoodItIs() {
        String text = text(SampleForecasts.SOUTHERN.weather(), UnitSystem.METRIC);
        double air =
                WeatherSummary.of(SampleForecasts.SOUTHERN.weather()).year().airC();

        assertThat(text)
                .contains("Farrowick (invented, southern temperate)", "southern-temperate.csv", "37.0 S 145.0 E")
                .contains(
                        "By month",
                        "Jan",
                        "Dec",
                        "Quality",
                        "irradiance agree with the sun at the time that is stated: nothing to",
                        "In numbers: ")
                .contains(PLAIN.show(air, 1))
                .doesNotContain("NaN", "null");
    }

    @Test
    void countsTheHoursOfLongWaveThatAreNotTheFiles() {
        assertThat(text(longWave(0), UnitSystem.METRIC)).contains("Long-wave of the sky: from the file\n");
        assertThat(text(longWave(3), UnitSystem.METRIC)).contains("sky: from the file, 3 hours estimated\n");
    }

    @Test
    void aPlaceThatNoFileNamesIsCalledByItsCoordinatesOnce() {
        Site named = SampleForecasts.SOUTHERN.weather().site();
        Site unnamed = new Site("", named.latitudeDeg(), named.longitudeDeg(), named.elevationM(), 10);
        Numbers numbers = new Numbers(UnitSystem.METRIC);

        assertThat(numbers.place(named)).isEqualTo("Farrowick (invented, southern temperate), 37.0 S 145.0 E");
        assertThat(numbers.place(unnamed)).isEqualTo("37.0 S 145.0 E").isEqualTo(numbers.placeName(unnamed));
    }

    private static WeatherYear longWave(int estimatedHours) {
        WeatherYear year = SampleForecasts.SOUTHERN.weather();
        return WeatherYear.builder(year.site(), year.source(), year.sun())
                .irradianceWm2(
                        hours(year::globalHorizontalWm2),
                        hours(year::directNormalWm2),
                        hours(year::diffuseHorizontalWm2))
                .skyLongWaveWm2(
                        hours(h -> h < estimatedHours ? Double.NaN : year.skyLongWaveWm2(h)),
                        WeatherYear.LongWaveOrigin.FILE)
                .airC(hours(year::airTemperatureC), hours(year::dewPointC))
                .pressureKpa(hours(year::pressureKpa))
                .windSpeedMs(hours(year::windSpeedMs))
                .build();
    }

    private static double[] hours(IntToDoubleFunction values) {
        return IntStream.range(0, HourOfYear.HOURS).mapToDouble(values).toArray();
    }

    @Test
    void speaksUsUnits() {
        assertThat(text(SampleForecasts.SOUTHERN.weather(), UnitSystem.US))
                .contains("°F", "mph", "kBtu/ft²")
                .doesNotContain("°C", "m/s");
    }

    @Test
    void aForecastTellsWhatWasMended() {
        WeatherYear year = SampleForecasts.SOUTHERN.weather();
        double[] wind = hours(year::windSpeedMs);
        wind[100] = 98;
        WeatherYear mended = WeatherYear.builder(year.site(), year.source(), year.sun())
                .irradianceWm2(
                        hours(year::globalHorizontalWm2),
                        hours(year::directNormalWm2),
                        hours(year::diffuseHorizontalWm2))
                .airC(hours(year::airTemperatureC), hours(year::dewPointC))
                .windSpeedMs(wind)
                .build();

        assertThat(WeatherReport.mended(mended)).anySatisfy(p -> assertThat(p)
                .contains("impossible wind speed in hour 100", "taken as missing and filled"));
    }
}
