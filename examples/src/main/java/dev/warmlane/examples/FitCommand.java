package dev.warmlane.examples;

import dev.warmlane.files.FileSet;
import dev.warmlane.files.Printable;
import dev.warmlane.fit.FitOptions;
import dev.warmlane.fit.FittedPool;
import dev.warmlane.fit.LogFiles;
import dev.warmlane.fit.Metered;
import dev.warmlane.fit.PoolFit;
import dev.warmlane.fit.WaterLog;
import dev.warmlane.report.FitReport;
import dev.warmlane.scenario.FittedScenario;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.weather.RecordOptions;
import dev.warmlane.weather.WeatherRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What an owner's log says about the pool. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Finds from a log of the water's temperature what nobody knows from a drawing: the wind at the water and"
                        + " the share of the sun that warms it, each with its interval; with bills the heater's efficiency,"
                        + " with a meter the water that is replaced. Needs the weather of the same hours, not a typical"
                        + " year.",
        footer = {
            "",
            "Example:",
            "  warmlane fit my-pool.toml --log pool-log.csv --weather station-2019.csv --output fit --fitted my-pool-fitted.toml",
            "The log is a csv file with the columns time,water_degC. \"warmlane forecast my-pool-fitted.toml\" then has the"
                    + " range that the log leaves. docs/fit.md says more."
        })
final class FitCommand implements Callable<Integer> {

    @Mixin
    private final JobOptions job = new JobOptions();

    @Option(names = "--log", required = true, paramLabel = "FILE", description = "Water temperatures: time,water_degC.")
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private Path logFile;

    @Option(
            names = "--weather",
            required = true,
            paramLabel = "FILE",
            description = "Weather of the hours of the log, in any format that has real hours.")
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private Path weatherFile;

    @Option(
            names = "--log-utc-offset",
            paramLabel = "HOURS",
            description = "Time zone of the log's clock minus UTC; that of the weather's standard time if not given.")
    private @Nullable Double logUtcOffset;

    @Option(
            names = "--clock",
            paramLabel = "HOURS",
            description = "The log's clock may be off by so many hours, which is found; 1.5 if not given.")
    private @Nullable Double clockHours;

    @Option(names = "--bills", paramLabel = "FILE", description = "Bought for a boiler: from,to,bought_kWh.")
    private @Nullable Path billsFile;

    @Option(names = "--meter", paramLabel = "FILE", description = "Make-up water: from,to,water_L.")
    private @Nullable Path meterFile;

    @Option(
            names = "--gap-hours",
            paramLabel = "HOURS",
            description =
                    "Longest gap of the weather that is filled, 6 if not given; the log's hours in it are not used.")
    private @Nullable Integer gapHours;

    @Option(
            names = "--weather-year",
            paramLabel = "YEAR",
            description = "The year in which the weather was measured, where its rows have none.")
    private @Nullable Integer weatherYear;

    @Option(
            names = "--fitted",
            paramLabel = "FILE",
            description = "Write the scenario with what was found, and how sure that is, to FILE.")
    private @Nullable Path fittedFile;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Scenario scenario = job.scenario(spec.commandLine().getErr());
        WeatherRecord weather = PoolFit.readWeather(weatherFile, recordOptions());
        double zone = logUtcOffset == null ? weather.site().utcOffsetHours() : logUtcOffset;
        WaterLog log = LogFiles.water(logFile, zone);
        List<Metered> bills = billsFile == null ? List.of() : LogFiles.bills(billsFile);
        List<Metered> meter = meterFile == null ? List.of() : LogFiles.meter(meterFile);
        FittedPool fit = new PoolFit(scenario.installation(), weather, log, bills, meter, options()).fit();
        job.hand(spec, FitReport.of(fit, scenario.report()));
        if (fittedFile != null) {
            write(fittedFile, fit);
        }
        return 0;
    }

    /** The same scenario with what was found. */
    private void write(Path file, FittedPool fit) throws IOException {
        Path folder = Objects.requireNonNull(file.toAbsolutePath().normalize().getParent());
        String text = FittedScenario.text(job.scenarioFile(), fit.described(), fit.installation(), folder);
        List<Path> written =
                new FileSet().add(String.valueOf(file.getFileName()), text).write(folder);
        spec.commandLine().getOut().println("Written: " + Printable.line(String.valueOf(written.get(0))));
        spec.commandLine().getOut().flush();
    }

    private RecordOptions recordOptions() {
        try {
            RecordOptions options = RecordOptions.USUAL;
            options = gapHours == null ? options : options.withGapHours(gapHours);
            return weatherYear == null ? options : options.withYear(weatherYear);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()), e);
        }
    }

    private FitOptions options() {
        try {
            return clockHours == null ? FitOptions.USUAL : FitOptions.USUAL.withClockHours(clockHours);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--clock: " + e.getMessage(), e);
        }
    }
}
