package dev.warmlane.examples;

import dev.warmlane.report.SensitivityReport;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.season.Installation;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.study.SharedForcing;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What the season of one installation depends on. */
@Command(
        name = "sensitivity",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Shows what the forecast depends on: pool and roof sheltered and exposed to the wind, then one"
                + " thing at a time low and high, the largest effect on the heat first.",
        footer = {
            "",
            "Example:",
            "  warmlane sensitivity scenarios/municipal-25m.toml --output sensitivity",
            "prints both and writes them to the folder sensitivity: sensitivity.html to hand over, sensitivity.txt,"
                    + " exposure.csv, sensitivity.csv, and the charts as PNG and SVG."
        })
final class SensitivityCommand implements Callable<Integer> {

    @Mixin
    private final StudyOptions options = new StudyOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        Scenario scenario = options.scenario(err);
        Installation installation = scenario.installation();
        SharedForcing forcing = new SharedForcing(scenario.readWeather());
        ExposureStudy exposure =
                ExposureStudy.of(installation, forcing, Runs.onAllCores(TerminalProgress.of(err, "wind exposure")));
        SensitivityStudy sensitivity = SensitivityStudy.of(
                installation, forcing, Runs.onAllCores(TerminalProgress.of(err, "one thing at a time")));
        options.hand(spec, SensitivityReport.of(exposure, sensitivity, StudyOptions.described(scenario, forcing)));
        return 0;
    }
}
