package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.pool.Flow;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.season.Installation;
import dev.warmlane.season.RecordLedger;
import dev.warmlane.season.RecordSimulator;
import dev.warmlane.season.RecordState;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.site.Site;
import dev.warmlane.weather.RecordOptions;
import dev.warmlane.weather.RecordPeriod;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pool alone through measured hours over New Year, from a file and from columns. The measurements are invented. */
class MeasuredPeriodTest {

    private static final LocalDateTime FILLED = LocalDateTime.of(2019, 12, 3, 9, 0);
    private static final Site SITE = new Site("invented", 48, 9, 300, 1);

    /** The hours of a station's csv over some months; gaps of up to three days are filled, and told. */
    static WeatherRecord measured(Path stationCsv) throws IOException {
        RecordPeriod period =
                new RecordPeriod(LocalDateTime.of(2019, 12, 1, 0, 0), LocalDateTime.of(2020, 3, 15, 0, 0));
        RecordOptions options = RecordOptions.USUAL.withPeriod(period).withGapHours(72);
        WeatherRecord weather = WeatherFiles.readRecord(stationCsv, options);
        weather.gaps().forEach(gap -> System.out.println(gap.what() + ": " + gap.hours() + " h from " + gap.from()));
        return weather;
    }

    /** The same of columns in memory: what is not given is estimated. */
    static WeatherRecord ofColumns(double[] global, double[] air, double[] humidity, double[] wind) {
        return WeatherRecord.builder(SITE, "our own station", LocalDateTime.of(2019, 12, 1, 0, 0))
                .globalWm2(global)
                .airC(air)
                .relativeHumidityPercent(humidity)
                .windSpeedMs(wind)
                .build();
    }

    /** A pool and nothing else, from the day it was filled with water of 12 °C to the end of the weather. */
    static RecordLedger pool(WeatherRecord weather, double windFactor) {
        Pool pool = Pool.of(80, 1.4, new PoolSetting.Outdoor(windFactor));
        Installation built = Installation.builder("pool alone", pool).build();
        return RecordSimulator.simulate(
                built, SeasonForcing.of(built, weather), RecordState.water(FILLED, 12), weather.end());
    }

    @Test
    void runsOverNewYearAndTheLeapDay(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("station.csv");
        Files.writeString(file, station());
        WeatherRecord weather = measured(file);
        RecordLedger run = pool(weather, 0.3);
        assertThat(run.time(run.hours())).isEqualTo(LocalDateTime.of(2020, 3, 15, 0, 0));
        assertThat(run.waterC(FILLED)).isEqualTo(12);
        assertThat(run.waterC(LocalDateTime.of(2020, 2, 29, 15, 40))).isBetween(0.0, 15.0);
        assertThat(weather.gaps()).isNotEmpty().allSatisfy(gap -> assertThat(gap.hours())
                .isEqualTo(20));
        double evaporation = IntStream.range(0, run.hours())
                .mapToDouble(index -> run.heatKwh(Flow.EVAPORATION, index))
                .sum();
        assertThat(evaporation).isNegative();
    }

    @Test
    void columnsGiveTheSame(@TempDir Path folder) throws IOException {
        int hours = 24 * 31;
        WeatherRecord weather = ofColumns(
                column(hours, MeasuredPeriodTest::global),
                column(hours, MeasuredPeriodTest::air),
                column(hours, MeasuredPeriodTest::humidity),
                column(hours, MeasuredPeriodTest::wind));
        Path file = folder.resolve("station.csv");
        Files.writeString(file, station());
        RecordLedger one = pool(weather, 0.3);
        RecordLedger other = pool(measured(file), 0.3);
        // by the ground alone, which stands at the mean air of the record
        assertThat(one.waterC(LocalDateTime.of(2019, 12, 31, 0, 0)))
                .isCloseTo(other.waterC(LocalDateTime.of(2019, 12, 31, 0, 0)), within(0.5));
    }

    private static String station() {
        StringBuilder text = new StringBuilder("""
                # invented
                # latitude, degrees north: 48
                # longitude, degrees east: 9
                # elevation, m: 300
                # utc offset, h: 1
                time,global W/m2,air degC,relative humidity %,wind m/s
                """);
        LocalDateTime first = LocalDateTime.of(2019, 12, 1, 0, 0);
        for (int hour = 0; hour < 24 * 110; hour++) {
            if (hour < 1000 || hour >= 1020) {
                LocalDateTime start = first.plusHours(hour);
                text.append(String.format(
                        Locale.ROOT,
                        "%s %02d:00,%.1f,%.1f,%.0f,%.1f%n",
                        start.toLocalDate(),
                        start.getHour(),
                        global(hour),
                        air(hour),
                        humidity(hour),
                        wind(hour)));
            }
        }
        return text.toString();
    }

    private static double[] column(int hours, IntToDoubleFunction value) {
        return IntStream.range(0, hours).mapToDouble(value).toArray();
    }

    private static double global(int hour) {
        return Math.max(0, 260 * Math.cos(2 * Math.PI * (hour % 24 - 12) / 24) - 60);
    }

    private static double air(int hour) {
        return 5 + 3 * Math.cos(2 * Math.PI * (hour % 24 - 15) / 24) + 2 * Math.sin(hour / 70.0);
    }

    private static double humidity(int hour) {
        return 70 + 10 * Math.sin(hour / 9.0);
    }

    private static double wind(int hour) {
        return 2 + Math.sin(hour / 5.0);
    }
}
