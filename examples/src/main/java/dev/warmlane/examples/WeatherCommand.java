package dev.warmlane.examples;

import dev.warmlane.report.WeatherText;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.weather.WeatherFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a weather file is and holds. */
@Command(
        name = "weather",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Says what a weather file is, what it holds by month, and what is wrong with it.",
        footer = {"", "Example:", "  warmlane weather weather-samples/cool-coast.csv --units us"})
final class WeatherCommand implements Callable<Integer> {

    @Parameters(
            paramLabel = "FILE",
            description = "Typical year: TMY3 csv, TMY2, EPW, PVGIS csv or plain csv, found from its content.")
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private Path file;

    @Option(
            names = {"-u", "--units"},
            defaultValue = "metric",
            converter = UnitsConverter.class,
            description = "Units: metric (the default) or us.")
    private ReportSettings.Units units = ReportSettings.Units.METRIC;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        String text = WeatherText.of(WeatherFiles.read(file), units);
        spec.commandLine().getOut().print(text);
        spec.commandLine().getOut().flush();
        return 0;
    }
}
