package dev.warmlane.examples;

import dev.warmlane.report.ForecastReport;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.SeasonForecast;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The season of one installation. */
@Command(
        name = "forecast",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Forecasts the season of one installation: pool temperature, days at comfort, heat, gas and money,"
                        + " with the collectors and without them.",
        footer = {
            "",
            "Example:",
            "  warmlane forecast scenarios/municipal-25m.toml --output forecast",
            "prints the first page and writes all of it to the folder \"forecast\": forecast.html to hand over, forecast.txt,"
                    + " weeks.csv, months.csv, hours.csv, and the charts as PNG and SVG."
        })
final class ForecastCommand implements Callable<Integer> {

    @Parameters(paramLabel = "SCENARIO", description = "Scenario file (TOML) that says what is built.")
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private Path scenarioFile;

    @Mixin
    private final ReportOutput output = new ReportOutput();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Scenario scenario = ScenarioReader.read(scenarioFile);
        scenario.warnings().forEach(warning -> spec.commandLine().getErr().println("warning: " + warning));
        SeasonForecast forecast = SeasonForecast.of(scenario.installation(), scenario.readWeather());
        output.hand(spec, ForecastReport.of(forecast, scenario));
        return 0;
    }
}
