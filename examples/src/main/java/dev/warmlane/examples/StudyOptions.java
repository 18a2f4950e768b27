package dev.warmlane.examples;

import dev.warmlane.report.Report;
import dev.warmlane.report.Subject;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SeasonBands;
import dev.warmlane.study.SharedForcing;
import java.io.IOException;
import java.io.PrintWriter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;

/** What a study of collectors is given: a scenario that has some, and where its files go. */
final class StudyOptions {

    @Mixin
    private final JobOptions job = new JobOptions();

    /**
     * Reads the scenario, its warnings going to {@code err}.
     *
     * @throws IOException if it cannot be read, or has no collectors to study
     */
    Scenario scenario(PrintWriter err) throws IOException {
        Scenario scenario = job.scenario(err);
        if (scenario.installation().arrays().isEmpty()) {
            throw new IOException(
                    job.scenarioFile() + ": there are no collectors to study; add a section [[collectors]]");
        }
        return scenario;
    }

    /** What the study starts from. */
    static Subject described(Scenario scenario, SharedForcing forcing) {
        Installation installation = scenario.installation();
        return Subject.of(
                SeasonForecast.of(installation, forcing.of(installation), forcing.weather()),
                scenario,
                new SeasonBands(forcing, Runs.onAllCores()));
    }

    /** Prints the report, and writes its files where a folder was given. */
    void hand(CommandSpec spec, Report report) throws IOException {
        job.hand(spec, report);
    }
}
