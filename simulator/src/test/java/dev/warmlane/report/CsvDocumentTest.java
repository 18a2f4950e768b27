package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.study.SharedForcing;
import dev.warmlane.study.UsualMountings;
import dev.warmlane.study.YearsStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.RealYears;
import dev.warmlane.weather.WeatherYears;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** docs/csv.md against the files. */
class CsvDocumentTest {

    /** What columns measure that is converted. */
    private static final List<Measure> COLUMNS = List.of(
            Measure.TEMPERATURE,
            Measure.HEAT,
            Measure.AREA,
            Measure.HEAT_PER_AREA,
            Measure.IRRADIANCE,
            Measure.POWER,
            Measure.MASS,
            Measure.VOLUME,
            Measure.LENGTH,
            Measure.TEMPERATURE_DIFFERENCE,
            Measure.FILM);

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
                forcing,
                UsualMountings.of(built, forecast.weather().site()).subList(0, 2),
                runs);
        YearsStudy years = YearsStudy.of(
                built,
                WeatherYears.of(List.of(
                        RealYears.like(forecast.weather(), 2001, 0, 1),
                        RealYears.like(forecast.weather(), 2002, 1, 1))));
        SeasonBand band = SeasonBand.of(forecast);
        List<Table> tables = List.of(
                YearsTables.all(years, UnitSystem.METRIC),
                YearsTables.allSpreads(years, UnitSystem.METRIC),
                HourTable.of(forecast, UnitSystem.METRIC),
                ForecastTables.allOfWeeks(forecast, band, UnitSystem.METRIC),
                ForecastTables.allOfMonths(forecast, band, UnitSystem.METRIC),
                AreaTables.all(AreaStudy.of(built, new AreaRange(100, 200, 2), forcing, runs), UnitSystem.METRIC),
                ExposureTables.all(ExposureStudy.of(built, forcing, runs), UnitSystem.METRIC),
                SensitivityTables.all(SensitivityStudy.of(built, forcing, runs), UnitSystem.METRIC),
                MountingCsv.seasons(mountings, UnitSystem.METRIC),
                MountingCsv.months(mountings, UnitSystem.METRIC));

        for (Table table : tables) {
            assertThat(table.columns())
                    .extracting(column -> column.csvName().replaceFirst("array_[0-9]+", "array_1"))
                    .allSatisfy(name -> assertThat(document).contains("`" + name + "`"));
        }
    }

    @Test
    void everyUnitThatChangesInUsUnitsIsDescribed() throws IOException {
        String document = Files.readString(Path.of("..", "docs", "csv.md")).replaceAll("\\s+", " ");
        for (Measure measure : COLUMNS) {
            assertThat(document)
                    .contains("`_" + measure.suffix(UnitSystem.METRIC) + "`")
                    .contains("to `_" + measure.suffix(UnitSystem.US) + "`");
        }
    }
}
