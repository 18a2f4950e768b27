package dev.warmlane.examples;

import dev.warmlane.report.AreaReport;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.season.Installation;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SharedForcing;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** One installation with more and less collector area. */
@Command(
        name = "areas",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Compares collector areas: pool temperature, days at comfort, heat, the worth of the next m2, gas"
                + " and refused heat, up to what the roof holds and beyond.",
        footer = {
            "",
            "Example:",
            "  warmlane areas scenarios/municipal-25m.toml --from \"100 m2\" --to \"400 m2\" --steps 7",
            "prints seven areas, each as near as whole panels come. Without --from and --to: from a quarter of the"
                    + " scenario's area to twice of it; where even a quarter is more than the roof, from what the roof"
                    + " holds."
        })
final class AreasCommand implements Callable<Integer> {

    @Mixin
    private final StudyOptions options = new StudyOptions();

    @Option(
            names = "--from",
            paramLabel = "AREA",
            converter = AreaConverter.class,
            description = "Smallest collector area with its unit, such as \"100 m2\" or \"1000 ft2\".")
    private @Nullable Double fromM2;

    @Option(
            names = "--to",
            paramLabel = "AREA",
            converter = AreaConverter.class,
            description = "Largest collector area with its unit.")
    private @Nullable Double toM2;

    @Option(
            names = "--steps",
            paramLabel = "N",
            description = "How many areas, both ends among them; 8 where it is not given.")
    private @Nullable Integer steps;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        Scenario scenario = options.scenario(err);
        Installation installation = scenario.installation();
        AreaRange range = range(installation);
        SharedForcing forcing = new SharedForcing(scenario.readWeather());
        AreaStudy study = AreaStudy.of(
                installation, range, forcing, Runs.onAllCores(TerminalProgress.of(err, "collector areas")));
        options.hand(spec, AreaReport.of(study, StudyOptions.described(scenario, forcing)));
        return 0;
    }

    private AreaRange range(Installation installation) {
        try {
            // an installation may be larger than what a study goes through by itself
            double from = fromM2 == null ? AreaRange.around(installation).fromM2() : fromM2;
            double to = toM2 == null ? AreaRange.around(installation).toM2() : toM2;
            AreaRange range = new AreaRange(from, to, steps == null ? AreaRange.USUAL_DESIGNS : steps);
            range.checkFor(installation);
            return range;
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--from, --to, --steps: " + e.getMessage(), e);
        }
    }
}
