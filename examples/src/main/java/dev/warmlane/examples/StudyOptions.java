package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.page.StudyFiles;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.SharedForcing;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
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
            description = "Folder to write page, text, charts and csv files to; made where it is missing.")
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

    /** The forecast of the scenario as it is described, which pages of studies begin from. */
    static ForecastReport described(Scenario scenario, SharedForcing forcing) {
        Installation installation = scenario.installation();
        return ForecastReport.of(
                SeasonForecast.of(installation, forcing.of(installation), forcing.weather()),
                scenario.report(),
                scenario.assumed());
    }

    /** Prints the text; where a folder was given, makes the files, writes them there and says so. */
    void hand(PrintWriter out, PrintWriter err, String text, Supplier<StudyFiles> files) throws IOException {
        if (output == null) {
            out.print(text);
        } else {
            StudyFiles made = files.get();
            List<Path> written = made.files().write(output);
            made.withoutCharts().ifPresent(why -> err.println("warning: " + why));
            out.print(text);
            out.println();
            out.println("Written:");
            written.forEach(file -> out.println("  " + Printable.line(file.toString())));
        }
        out.flush();
    }
}
