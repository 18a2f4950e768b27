package dev.warmlane.examples;

import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.ForecastTables;
import dev.warmlane.report.Subject;
import dev.warmlane.report.write.ReportFiles;
import dev.warmlane.report.write.TextWriter;
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
        if (arguments.length != 2) {
            System.err.println("give a scenario file and a folder for the page");
            System.exit(2);
        }
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
        Subject subject = Subject.of(forecast, scenario);
        PeriodSummary season = subject.summary().season();

        System.out.println(TextWriter.table(ForecastTables.weeks(subject)));
        System.out.println("Days warm enough: " + season.comfort().daysAtComfort() + ", without collectors "
                + season.comfortWithout().daysAtComfort());
        ReportFiles files = ReportFiles.of(ForecastReport.of(subject));
        for (Path file : files.files().write(folder)) {
            System.out.println(file);
        }
    }
}
