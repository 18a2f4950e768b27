package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.SeasonForecast;

/** The csv files of a forecast: weeks.csv, months.csv and hours.csv. Names of columns end with their unit. */
public final class CsvFiles {

    private CsvFiles() {}

    /** Adds the files to a set, to be written with whatever else is in it. */
    public static FileSet addTo(FileSet files, SeasonForecast forecast, ReportSettings.Units units) {
        return files.add("weeks.csv", PeriodTables.weeks(forecast, units).csv())
                .add("months.csv", PeriodTables.months(forecast, units).csv())
                .add("hours.csv", HourTable.of(forecast, units).csv());
    }
}
