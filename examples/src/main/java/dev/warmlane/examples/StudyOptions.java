package dev.warmlane.examples;

import dev.warmlane.report.FileSet;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every study is given: a scenario file, and where its files go. */
final class StudyOptions {

    @Parameters(paramLabel = "SCENARIO", description = "Scenario file (TOML) that says what is built.")
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private Path scenarioFile;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FOLDER",
            description = "Folder to write the text and its csv files to; made where it is missing.")
    private @Nullable Path output;

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

    /** Prints the text; where a folder was given, writes the files there and says so. */
    void hand(PrintWriter out, String text, FileSet files) throws IOException {
        if (output == null) {
            out.print(text);
        } else {
            var written = files.write(output);
            out.print(text);
            out.println();
            out.println("Written:");
            written.forEach(file -> out.println("  " + file));
        }
        out.flush();
    }
}
