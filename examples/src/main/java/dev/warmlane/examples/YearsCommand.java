package dev.warmlane.examples;

import dev.warmlane.report.Subject;
import dev.warmlane.report.YearsReport;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.weather.PlainWeatherWriter;
import dev.warmlane.weather.TypicalYear;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.WeatherYears;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What the season of one installation would have been in real years. */
@Command(
        name = "years",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Shows what real years would have done: the season of each of them, with and without collectors, what"
                        + " nine of ten exceed, the worst and the best.",
        footer = {
            "",
            "Example:",
            "  warmlane years scenarios/municipal-25m.toml my-years --output years",
            "reads every weather file in the folder my-years, each a real year of the scenario's place, prints how the"
                    + " seasons differ and writes it to the folder years: years.html to hand over, years.txt, years.csv with a"
                    + " row for each year, years-spread.csv, and the charts as PNG and SVG."
        })
final class YearsCommand implements Callable<Integer> {

    /** Fewer make a poor choice of typical months, which is told only where it is asked for (own choice). */
    private static final int ENOUGH_YEARS = 10;

    @Mixin
    private final JobOptions job = new JobOptions();

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "YEARS",
            description =
                    "Weather files of real years of one place, or folders with such files, in place of those that the"
                            + " scenario names.")
    private List<Path> years = List.of();

    @Option(
            names = {"-t", "--typical"},
            paramLabel = "FILE",
            description =
                    "Weather file to write (plain csv): a typical year chosen from the years, which a scenario can"
                            + " name. At least 3 years.")
    private @Nullable Path typicalFile;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        Scenario scenario = job.scenario(err);
        WeatherYear typical = scenario.readWeather();
        RealYearsOf read = RealYearsOf.read(years, scenario, err)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "give weather files of real years, or name them in the scenario: [site] years = \"my-years\""));
        WeatherYears weather = read.weather();
        Optional<TypicalYear> own = Optional.empty();
        if (weather.years().size() >= (typicalFile == null ? ENOUGH_YEARS : TypicalYear.FEWEST_YEARS)) {
            own = Optional.of(TypicalYear.of(weather));
        }
        if (typicalFile != null) {
            PlainWeatherWriter.write(
                    own.orElseThrow(() -> new IOException(RealYearsOf.from(years, scenario)
                                    + ": a typical year is chosen from at least "
                                    + TypicalYear.FEWEST_YEARS + " real ones, there are "
                                    + weather.years().size()))
                            .weather(),
                    typicalFile);
        }
        Subject described = Subject.of(SeasonForecast.of(scenario.installation(), typical), scenario);
        job.hand(spec, YearsReport.of(read.study(), weather, own, described));
        return 0;
    }
}
