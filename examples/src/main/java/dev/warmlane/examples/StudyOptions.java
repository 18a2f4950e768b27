package dev.warmlane.examples;

import dev.warmlane.report.Report;
import dev.warmlane.report.Subject;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.SharedForcing;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;

/** What every study is given: a scenario file, and where its files go. */
final class StudyOptions {

    @Parameters(paramLabel = "SCENARIO", description = "Scenario file (TOML) that says what is built.")
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private Path scenarioFile;

    @Mixin
    private final ReportOutput output = new ReportOutput();

    /**
     * Reads the scenario, its warnings going to {@code err}.
     *
     * @throws IOException if it cannot be read, or has no collectors to study
     */
    Scenario scenario(PrintWriter err) throws IOException {
        Scenario scenario = ScenarioReader.read(scenarioFile);
        if (scenario.installation().arrays().isEmpty()) {
            throw new IOException(scenarioFile + ": there are no collectors to study; add a section [[collectors]]");
        }
        scenario.warnings().forEach(warning -> err.println("warning: " + warning));
        return scenario;
    }

    /** What the study starts from. */
    static Subject described(Scenario scenario, SharedForcing forcing) {
        Installation installation = scenario.installation();
        return Subject.of(SeasonForecast.of(installation, forcing.of(installation), forcing.weather()), scenario);
    }

    /** Prints the report, and writes its files where a folder was given. */
    void hand(CommandSpec spec, Report report) throws IOException {
        output.hand(spec, report);
    }
}
