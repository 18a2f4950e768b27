package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.univocity.parsers.common.record.Record;
import com.univocity.parsers.csv.CsvParser;
import com.univocity.parsers.csv.CsvParserSettings;
import dev.warmlane.SampleForecasts;
import dev.warmlane.SyntheticYear;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.StartWater;
import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CsvFilesTest {

    /** Half of the last of four decimals, and the rounding of the reader. */
    private static final double ROUNDED = 0.5001e-4;

    @TempDir
    private Path folder;

    private static List<SeasonForecast> forecasts() {
        return SampleForecasts.all();
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void hoursReadBackAreTheLedger(SeasonForecast forecast) throws IOException {
        SeasonLedger ledger = forecast.with();

        List<Record> hours = rows(write(forecast, UnitSystem.METRIC), "hours.csv");

        assertThat(hours).hasSize(ledger.hours());
        for (int i = 0; i < ledger.hours(); i++) {
            Record row = hours.get(i);
            assertThat(HourOfYear.of(row.getInt("month"), row.getInt("day"), row.getInt("hour_starting")))
                    .isEqualTo(ledger.hourOfYear(i));
            assertThat(row.getDouble("water_degc")).isCloseTo(ledger.waterC(i), within(ROUNDED));
            assertThat(row.getDouble("water_without_degc"))
                    .isCloseTo(forecast.without().waterC(i), within(ROUNDED));
            for (Flow flow : ledger.installation().pool().flows()) {
                assertThat(row.getDouble(flow.name().toLowerCase(Locale.ROOT) + "_kwh"))
                        .isCloseTo(ledger.heatKwh(flow, i), within(ROUNDED));
            }
        }
    }

    /** A pool that stands open through a frost. */
    @Test
    void iceHasItsColumnsWhereThereIsSome() throws IOException {
        SeasonForecast frozen = frozen();
        SeasonLedger ledger = frozen.with();
        List<Record> hours = rows(write(frozen, UnitSystem.METRIC), "hours.csv");
        double areaM2 = frozen.installation().pool().areaM2();
        double most = 0;
        for (int i = 0; i < ledger.hours(); i++) {
            Record row = hours.get(i);
            double kwh = ledger.iceJm2(i) * areaM2 / 3.6e6;
            assertThat(row.getDouble("ice_kwh")).isCloseTo(kwh, within(ROUNDED));
            assertThat(row.getDouble("ice_without_kwh"))
                    .isCloseTo(frozen.without().iceJm2(i) * areaM2 / 3.6e6, within(ROUNDED));
            if (kwh > 0 && i > 0) {
                double before = ledger.iceJm2(i - 1) * areaM2 / 3.6e6;
                double taken = ledger.installation().pool().flows().stream()
                        .mapToDouble(flow -> row.getDouble(flow.name().toLowerCase(Locale.ROOT) + "_kwh"))
                        .sum();
                if (before > 0) {
                    assertThat(kwh - before).isCloseTo(-taken, within(ROUNDED * Flow.values().length));
                }
            }
            most = Math.max(most, kwh);
        }
        assertThat(most).isGreaterThan(100);
        assertThat(frozen.without().everIced()).isTrue();
        assertThat(Files.readString(Path.of("..", "docs", "csv.md"))).contains("`ice_kwh`", "`ice_without_kwh`");
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void noColumnOfIceWithoutIce(SeasonForecast forecast) {
        assertThat(forecast.with().everIced()).isFalse();
        assertThat(HourTable.of(forecast, UnitSystem.METRIC).columns())
                .extracting(Column::csvName)
                .noneMatch(name -> name.startsWith("ice"));
    }

    private static SeasonForecast frozen() {
        Installation built = SampleForecasts.MUNICIPAL.installation().toBuilder()
                .heater(null)
                .cover(null)
                .season(new OpeningSeason(MonthDay.of(1, 1), MonthDay.of(2, 28), Schedule.ALWAYS))
                .startWater(new StartWater.Given(2))
                .build();
        WeatherYear frost = SyntheticYear.at(50)
                .sunless()
                .airC(hour -> -6)
                .dewPointC(hour -> -9)
                .build();
        return SeasonForecast.of(built, frost);
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void monthsAndWeeksReadBackAddUpToTheLedger(SeasonForecast forecast) throws IOException {
        SeasonLedger ledger = forecast.with();
        Path written = write(forecast, UnitSystem.METRIC);

        for (String file : List.of("months.csv", "weeks.csv")) {
            List<Record> rows = rows(written, file);
            for (Flow flow : ledger.installation().pool().flows()) {
                double sum = rows.stream()
                        .mapToDouble(row -> row.getDouble(flow.name().toLowerCase(Locale.ROOT) + "_kwh"))
                        .sum();
                assertThat(sum).isCloseTo(ledger.heatKwh(flow, Periods.season(ledger)), within(ROUNDED * rows.size()));
            }
            assertThat(rows.stream().mapToInt(row -> row.getInt("length_h")).sum())
                    .isEqualTo(ledger.hours());
        }
    }

    @Test
    void usUnitsAreTheSameNumbersConverted() throws IOException {
        SeasonForecast forecast = SampleForecasts.CLUB;
        SeasonLedger ledger = forecast.with();

        List<Record> hours = rows(write(forecast, UnitSystem.US), "hours.csv");

        for (int i = 0; i < ledger.hours(); i++) {
            Record row = hours.get(i);
            assertThat(row.getDouble("water_degf")).isCloseTo(ledger.waterC(i) * 1.8 + 32, within(ROUNDED));
            // a therm is 29.3071 kWh
            assertThat(row.getDouble("sun_therms")).isCloseTo(ledger.heatKwh(Flow.SUN, i) / 29.307107, within(ROUNDED));
            assertThat(row.getDouble("array_2_running_h")).isCloseTo(ledger.runShare(1, i), within(ROUNDED));
        }
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void namesOfColumnsAreSnakeCaseAndDiffer(SeasonForecast forecast) {
        SeasonBand band = SeasonBand.of(forecast);
        for (UnitSystem units : UnitSystem.values()) {
            for (Table table : List.of(
                    ForecastTables.allOfMonths(forecast, band, units),
                    ForecastTables.allOfWeeks(forecast, band, units),
                    HourTable.of(forecast, units))) {
                assertThat(table.columns())
                        .extracting(Column::csvName)
                        .doesNotHaveDuplicates()
                        .allMatch(name -> name.matches("[a-z][a-z0-9_]*"));
            }
        }
    }

    private Path write(SeasonForecast forecast, UnitSystem units) throws IOException {
        Report report = ForecastReport.of(Subject.of(forecast, new ReportSettings("A pool", units)));
        for (Report.Data data : report.data()) {
            Files.writeString(
                    folder.resolve(data.name() + ".csv"),
                    CsvWriter.csv(data.table().get()));
        }
        assertThat(report.data()).hasSizeGreaterThanOrEqualTo(4);
        return folder;
    }

    private static List<Record> rows(Path folder, String name) {
        CsvParserSettings settings = new CsvParserSettings();
        settings.setHeaderExtractionEnabled(true);
        settings.setReadInputOnSeparateThread(false);
        return new CsvParser(settings).parseAllRecords(folder.resolve(name).toFile());
    }
}
