package dev.warmlane.examples;

import dev.warmlane.report.DatesReport;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.study.DatesStudy;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SharedForcing;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** One installation that opens earlier and closes later. */
@Command(
        name = "dates",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Opens the pool earlier and closes it later, week by week: water at opening, days at comfort and what"
                        + " is bought for the heater, with collectors and without, and the weeks that they gain.",
        footer = {
            "",
            "Example:",
            "  warmlane dates scenarios/municipal-25m.toml --weeks 4 --output dates",
            "goes up to four weeks on either side. Collectors and heater run before opening where the scenario's [season]"
                    + " says so: collectors_from, collectors_before, heater_before."
        })
final class DatesCommand implements Callable<Integer> {

    @Mixin
    private final StudyOptions options = new StudyOptions();

    @Option(
            names = "--weeks",
            paramLabel = "N",
            defaultValue = "" + DatesStudy.USUAL_WEEKS,
            description = "The most weeks on either side; ${DEFAULT-VALUE} where it is not given.")
    private int weeks;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (weeks < 1 || weeks > DatesStudy.MOST_WEEKS) {
            throw new ParameterException(
                    spec.commandLine(), "--weeks: found " + weeks + "; allowed: 1 to " + DatesStudy.MOST_WEEKS);
        }
        PrintWriter err = spec.commandLine().getErr();
        Scenario scenario = options.scenario(err);
        SharedForcing forcing = new SharedForcing(scenario.readWeather());
        DatesStudy study = DatesStudy.of(
                scenario.installation(), weeks, forcing, Runs.onAllCores(TerminalProgress.of(err, "seasons")));
        options.hand(spec, DatesReport.of(study, StudyOptions.described(scenario, forcing)));
        return 0;
    }
}
