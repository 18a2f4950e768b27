package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.univocity.parsers.common.record.Record;
import com.univocity.parsers.csv.CsvParser;
import com.univocity.parsers.csv.CsvParserSettings;
import dev.warmlane.SampleForecasts;
import dev.warmlane.pool.Flow;
import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
            for (Flow flow : Flow.values()) {
                assertThat(row.getDouble(flow.name().toLowerCase(Locale.ROOT) + "_kwh"))
                        .isCloseTo(ledger.heatKwh(flow, i), within(ROUNDED));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void monthsAndWeeksReadBackAddUpToTheLedger(SeasonForecast forecast) throws IOException {
        SeasonLedger ledger = forecast.with();
        Path written = write(forecast, UnitSystem.METRIC);

        for (String file : List.of("months.csv", "weeks.csv")) {
            List<Record> rows = rows(written, file);
            for (Flow flow : Flow.values()) {
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
        for (UnitSystem units : UnitSystem.values()) {
            for (Table table : List.of(
                    ForecastTables.allOfMonths(forecast, units),
                    ForecastTables.allOfWeeks(forecast, units),
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
        assertThat(report.data()).hasSize(3);
        return folder;
    }

    private static List<Record> rows(Path folder, String name) {
        CsvParserSettings settings = new CsvParserSettings();
        settings.setHeaderExtractionEnabled(true);
        settings.setReadInputOnSeparateThread(false);
        return new CsvParser(settings).parseAllRecords(folder.resolve(name).toFile());
    }
}
