package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.scenario.ReportSettings.Units;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.study.SharedForcing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** docs/csv.md against the files. */
class CsvDocumentTest {

    private static List<SeasonForecast> forecasts() {
        return List.of(SampleForecasts.MUNICIPAL, SampleForecasts.SOUTHERN);
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void everyColumnIsDescribed(SeasonForecast forecast) throws IOException {
        String document = Files.readString(Path.of("..", "docs", "csv.md"));
        SharedForcing forcing = new SharedForcing(forecast.weather());
        Runs runs = Runs.onAllCores();
        var built = forecast.installation();
        MountingStudy mountings = MountingStudy.of(
                built,
                forecast.weather(),
                MountingOption.usual(built, forecast.weather().site()).subList(0, 2),
                runs);
        List<Table> tables = List.of(
                HourTable.of(forecast, Units.METRIC),
                PeriodTables.weeks(forecast, Units.METRIC),
                PeriodTables.months(forecast, Units.METRIC),
                AreaTables.all(AreaStudy.of(built, new AreaRange(100, 200, 2), forcing, runs), Units.METRIC),
                ExposureTables.all(ExposureStudy.of(built, forcing, runs), Units.METRIC),
                SensitivityTables.all(SensitivityStudy.of(built, forcing, runs), Units.METRIC),
                MountingCsv.seasons(mountings, Units.METRIC),
                MountingCsv.months(mountings, Units.METRIC));

        for (Table table : tables) {
            assertThat(table.columns())
                    .extracting(column -> column.csvName().replaceFirst("array_[0-9]+", "array_1"))
                    .allSatisfy(name -> assertThat(document).contains("`" + name + "`"));
        }
    }
}
