package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.circuit.Control;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.StartWater;
import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.Subject;
import dev.warmlane.report.write.ReportFiles;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Schedule;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.wind.PoolShelter;
import java.io.IOException;
import java.nio.file.Path;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first season that somebody who builds on the library simulates. */
class FirstSeasonTest {

    @TempDir
    private Path folder;

    static Installation lido() {
        Pool pool = Pool.of(312.5, 1.8, new PoolSetting.Outdoor(PoolShelter.SUBURBAN));
        Roof roof = Roof.builder(30, 14, 6).build();
        return Installation.builder("lido", pool, roof)
                .arrays(new CollectorArray("mats", 200, Mounting.FlatOnRoof.USUAL, Absorber.USUAL_MAT))
                .control(Control.withLimit(28))
                .season(new OpeningSeason(MonthDay.of(6, 1), MonthDay.of(7, 31), Schedule.ALWAYS))
                .startWater(new StartWater.Given(20))
                .build();
    }

    static SeasonForecast forecast(Installation built, Path weatherFile, Path folder) throws IOException {
        WeatherYear weather = WeatherFiles.read(weatherFile);
        SeasonForecast forecast = SeasonForecast.of(built, weather);

        PeriodSummary season = forecast.summary().season();
        System.out.println("mean of the season, degC: " + season.water().meanC());
        System.out.println("without collectors, degC: " + season.waterWithout().meanC());
        System.out.println("heat delivered, kWh: " + season.balance().deliveredKwh());

        Subject subject = Subject.of(forecast, new ReportSettings("lido", UnitSystem.METRIC));
        ReportFiles.of(ForecastReport.of(subject)).files().write(folder);
        return forecast;
    }

    /** Heat that evaporation took from the pool at one hour of the day over the season, kWh. */
    static double evaporatedAt(int hourOfDay, SeasonLedger ledger) {
        double kwh = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            if (HourOfYear.hourOfDay(ledger.hourOfYear(index)) == hourOfDay) {
                kwh -= ledger.heatKwh(Flow.EVAPORATION, index);
            }
        }
        return kwh;
    }

    @Test
    void isAPoolItsWeatherAndAForecast() throws IOException {
        Path weather = Path.of("..", "weather-samples", "cool-coast.csv");
        SeasonForecast forecast = forecast(lido(), weather, folder);
        PeriodSummary season = forecast.summary().season();
        assertThat(season.gainedK()).isPositive();
        assertThat(folder.resolve("forecast.html")).isNotEmptyFile();
        assertThat(folder.resolve("hours.csv")).isNotEmptyFile();
        // the same installation as that of the other tests
        assertThat(season.water().meanC())
                .isEqualTo(SeasonForecast.of(Lido.built().build(), Lido.WEATHER)
                        .summary()
                        .season()
                        .water()
                        .meanC());
        double all = 0;
        for (int hour = 0; hour < 24; hour++) {
            all += evaporatedAt(hour, forecast.with());
        }
        assertThat(all).isCloseTo(-season.balance().kwh(Flow.EVAPORATION), within(1e-6 * all));
    }
}
