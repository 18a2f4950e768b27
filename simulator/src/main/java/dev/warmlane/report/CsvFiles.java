package dev.warmlane.report;

import dev.warmlane.files.FileSet;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.SensitivityStudy;

/**
 * The csv files of a forecast, weeks.csv, months.csv and hours.csv, and of studies, areas.csv, exposure.csv and
 * sensitivity.csv. Names of columns end with their unit.
 */
public final class CsvFiles {

    private CsvFiles() {}

    /** Adds the files to a set, to be written with whatever else is in it. */
    public static FileSet addTo(FileSet files, SeasonForecast forecast, ReportSettings.Units units) {
        return files.add("weeks.csv", PeriodTables.weeks(forecast, units).csv())
                .add("months.csv", PeriodTables.months(forecast, units).csv())
                .add("hours.csv", HourTable.of(forecast, units).csv());
    }

    /** Adds the file of an area study. */
    public static FileSet addTo(FileSet files, AreaStudy study, ReportSettings.Units units) {
        return files.add("areas.csv", AreaTables.all(study, units).csv());
    }

    /** Adds the file of an exposure study. */
    public static FileSet addTo(FileSet files, ExposureStudy study, ReportSettings.Units units) {
        return files.add("exposure.csv", ExposureTables.all(study, units).csv());
    }

    /** Adds the file of a sensitivity study. */
    public static FileSet addTo(FileSet files, SensitivityStudy study, ReportSettings.Units units) {
        return files.add("sensitivity.csv", SensitivityTables.all(study, units).csv());
    }
}
