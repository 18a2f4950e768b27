package dev.warmlane.examples;

import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.Subject;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.YearsStudy;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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
                    + " weeks.csv, months.csv, hours.csv, certainty.csv, and the charts as PNG and SVG."
        })
final class ForecastCommand implements Callable<Integer> {

    @Mixin
    private final JobOptions job = new JobOptions();

    @Option(
            names = {"-y", "--years"},
            paramLabel = "YEARS",
            description =
                    "Weather file or folder of real years of the scenario's place, in place of those that the scenario names;"
                            + " the report then says how the season differs from year to year. May be given several times.")
    private List<Path> years = List.of();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Scenario scenario = job.scenario(spec.commandLine().getErr());
        SeasonForecast forecast = SeasonForecast.of(scenario.installation(), scenario.readWeather());
        job.hand(spec, ForecastReport.of(Subject.of(forecast, scenario), realYears(scenario, forecast)));
        return 0;
    }

    private Optional<YearsStudy> realYears(Scenario scenario, SeasonForecast forecast) throws IOException {
        Optional<RealYearsOf> read =
                RealYearsOf.read(years, scenario, spec.commandLine().getErr());
        Optional<String> elsewhere =
                read.flatMap(of -> of.weather().elsewhere(forecast.weather().site()));
        if (elsewhere.isPresent()) {
            throw new IOException(RealYearsOf.from(years, scenario)
                    + ": the scenario's weather is not of the place of these years: " + elsewhere.get());
        }
        return read.map(RealYearsOf::study);
    }
}
