package dev.warmlane.examples;

import dev.warmlane.report.Report;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;

/** What every command with a report is given: a scenario file, and where its files go. */
final class JobOptions {

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "Scenario file (TOML) that says what is built.")
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private Path scenarioFile;

    @Mixin
    private final ReportOutput output = new ReportOutput();

    Path scenarioFile() {
        return scenarioFile;
    }

    /**
     * Reads the scenario, its warnings going to {@code err}.
     *
     * @throws IOException if it cannot be read
     */
    Scenario scenario(PrintWriter err) throws IOException {
        Scenario scenario = ScenarioReader.read(scenarioFile);
        scenario.warnings().forEach(warning -> err.println("warning: " + warning));
        return scenario;
    }

    /** Prints the report, and writes its files where a folder was given. */
    void hand(CommandSpec spec, Report report) throws IOException {
        output.hand(spec, report);
    }
}
