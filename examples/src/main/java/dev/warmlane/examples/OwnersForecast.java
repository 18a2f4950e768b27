package dev.warmlane.examples;

import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.ForecastTables;
import dev.warmlane.report.page.ForecastFiles;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioException;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.ImpossibleSeasonException;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import java.io.IOException;
import java.nio.file.Path;

/** An owner asks: how warm will my pool be, week by week? The arguments are a scenario file and a folder for the page. */
public final class OwnersForecast {
    public static void main(String[] arguments) {
        try {
            forecast(Path.of(arguments[0]), Path.of(arguments[1]));
        } catch (IOException | ScenarioException | ImpossibleSeasonException problem) {
            System.err.println(problem.getMessage());
            System.exit(1);
        }
    }

    private static void forecast(Path scenarioFile, Path folder) throws IOException {
        Scenario scenario = ScenarioReader.read(scenarioFile);
        SeasonForecast forecast = SeasonForecast.of(scenario.installation(), scenario.readWeather());
        ForecastReport report = ForecastReport.of(forecast, scenario.report(), scenario.assumed());
        PeriodSummary season = report.summary().season();

        System.out.println(ForecastTables.weeks(forecast, report.units()).text());
        System.out.println("Days warm enough: " + season.comfort().daysAtComfort() + ", without collectors "
                + season.comfortWithout().daysAtComfort());
        for (Path file : ForecastFiles.of(report).files().write(folder)) {
            System.out.println(file);
        }
    }
}
