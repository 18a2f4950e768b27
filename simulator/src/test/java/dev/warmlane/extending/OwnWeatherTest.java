package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.WeatherYear;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Weather from a source of one's own. */
class OwnWeatherTest {

    /** An invented archive that knows temperature, wind and how clear it is in any hour. */
    static final class Archive {

        static WeatherYear year(double warmerK) {
            Site site = new Site("invented", 48, 9, 300, 1);
            int[] years = new int[HourOfYear.HOURS];
            Arrays.fill(years, 2021);
            SunPath sun = SunPath.ofHourlyMeans(site, years, 0.5);
            double[] global = new double[HourOfYear.HOURS];
            double[] beam = new double[HourOfYear.HOURS];
            double[] diffuse = new double[HourOfYear.HOURS];
            double[] air = new double[HourOfYear.HOURS];
            double[] dew = new double[HourOfYear.HOURS];
            double[] wind = new double[HourOfYear.HOURS];
            for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
                double height = sun.isUp(hour) ? Math.max(0, sun.cosZenith(hour)) : 0;
                beam[hour] = height > 0.05 ? 500 : 0;
                diffuse[hour] = 150 * height;
                global[hour] = diffuse[hour] + beam[hour] * height;
                double season = Math.cos(2 * Math.PI * (HourOfYear.dayOf(hour) - 200) / HourOfYear.DAYS);
                double day = Math.cos(2 * Math.PI * (HourOfYear.hourOfDay(hour) - 15) / 24);
                air[hour] = 10 + warmerK + 9 * season + 4 * day;
                dew[hour] = 4 + 7 * season;
                wind[hour] = 3 + day + Math.sin(hour);
            }
            return WeatherYear.builder(site, "an archive of one's own", sun)
                    .irradianceWm2(global, beam, diffuse)
                    .airC(air, dew)
                    .windSpeedMs(wind)
                    .note("beam from cloud cover, by a rule of the archive")
                    .build();
        }
    }

    @Test
    void runsASeason() {
        SeasonSummary cool = summary(0);
        SeasonSummary warm = summary(3);
        assertThat(warm.season().water().meanC())
                .isGreaterThan(cool.season().water().meanC() + 1);
        assertThat(cool.season().collectors().deliveredKwh()).isGreaterThan(10_000);
    }

    @Test
    void isJudgedAsAFileIs() {
        WeatherYear year = Archive.year(0);
        assertThat(year.findings())
                .anySatisfy(finding -> assertThat(finding.message()).contains("beam from cloud cover"));
        assertThat(year.closure()).isNotNull();
        assertThatThrownBy(() -> Archive.year(70))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("an archive of one's own");
    }

    private static SeasonSummary summary(double warmerK) {
        Installation built = Lido.built().build();
        return SeasonForecast.of(built, Archive.year(warmerK)).summary();
    }
}
