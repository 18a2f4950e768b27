package dev.warmlane.examples;

import dev.warmlane.report.Report;
import dev.warmlane.report.WeatherReport;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherReadOptions;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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
            description =
                    "Weather by the hour: EPW, TMY3, TMY2, PVGIS, NSRDB, Open-Meteo, German test reference year or"
                            + " plain csv, as it is or in a zip or gz, found from its content.")
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private Path file;

    @Option(
            names = {"-u", "--units"},
            defaultValue = "metric",
            converter = UnitsConverter.class,
            description = "Units: metric (the default) or us.")
    private UnitSystem units = UnitSystem.METRIC;

    @Option(
            names = "--utc-offset",
            paramLabel = "HOURS",
            description = "Local standard time of the file minus UTC, where the file has it wrong or is in UTC.")
    private @Nullable Double utcOffsetHours;

    @Option(
            names = "--irradiance-time",
            paramLabel = "HOURS",
            description = "Time that irradiance belongs to, in hours after the start of its hour (the middle is 0.5);"
                    + " taken as it is, even where the sun contradicts.")
    private @Nullable Double irradianceTimeHours;

    @Option(names = "--years", description = "Every calendar year of a file of real weather, one line each.")
    private boolean years;

    @Option(
            names = "--wind-height",
            paramLabel = "METRES",
            description = "Height above open ground that the wind was measured at, where the file does not tell it.")
    private @Nullable Double windHeightM;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Report report = years
                ? WeatherReport.ofYears(
                        String.valueOf(file.getFileName()), WeatherFiles.readYears(file, reading()), units)
                : WeatherReport.of(WeatherFiles.read(file, reading()), units);
        String text = TextWriter.full(report);
        spec.commandLine().getOut().print(text);
        spec.commandLine().getOut().flush();
        return 0;
    }

    private WeatherReadOptions reading() {
        try {
            return new WeatherReadOptions(utcOffsetHours, irradianceTimeHours, windHeightM);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(
                    spec.commandLine(), "--utc-offset, --irradiance-time, --wind-height: " + e.getMessage(), e);
        }
    }
}
