package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.ForecastText;
import dev.warmlane.report.page.ForecastFiles;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FOLDER",
            description = "Folder to write the forecast, its charts and its csv files to; made where it is missing.")
    private @Nullable Path output;

    @Option(
            names = {"-f", "--full"},
            description = "Print the whole forecast, as forecast.txt has it, and not its first page only.")
    private boolean full;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Scenario scenario = ScenarioReader.read(scenarioFile);
        scenario.warnings().forEach(warning -> spec.commandLine().getErr().println("warning: " + warning));
        WeatherYear weather = scenario.readWeather();
        SeasonForecast forecast = SeasonForecast.of(scenario.installation(), weather);
        ForecastReport report = ForecastReport.of(forecast, scenario);
        ForecastText text = ForecastText.of(report);
        List<Path> written = output == null ? List.of() : write(output, report);
        out.print(full ? text.text() : text.briefText());
        if (!written.isEmpty()) {
            out.println();
            out.println("Written:");
            written.forEach(file -> out.println("  " + Printable.line(file.toString())));
        }
        out.flush();
        return 0;
    }

    private List<Path> write(Path folder, ForecastReport report) throws IOException {
        ForecastFiles files = ForecastFiles.of(report);
        List<Path> written = files.files().write(folder);
        files.withoutCharts().ifPresent(why -> spec.commandLine().getErr().println("warning: " + why));
        return written;
    }
}
