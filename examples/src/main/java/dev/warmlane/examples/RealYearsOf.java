package dev.warmlane.examples;

import dev.warmlane.scenario.Scenario;
import dev.warmlane.study.Runs;
import dev.warmlane.study.YearsStudy;
import dev.warmlane.weather.WeatherYears;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The real years that a command was given, and what they would have done.
 *
 * @param weather the years
 * @param study their seasons
 */
record RealYearsOf(WeatherYears weather, YearsStudy study) {

    /**
     * Reads and simulates those that the command was given, or else those that the scenario names; nothing where there are
     * neither.
     *
     * @throws IOException if they cannot be read, or hold no season of the installation
     */
    static Optional<RealYearsOf> read(List<Path> files, Scenario scenario, PrintWriter err) throws IOException {
        Optional<WeatherYears> read = files.isEmpty() ? scenario.readYears() : Optional.of(scenario.readYears(files));
        if (read.isEmpty()) {
            return Optional.empty();
        }
        WeatherYears weather = read.get();
        Optional<String> noSeason = YearsStudy.noSeason(scenario.installation(), weather);
        if (noSeason.isPresent()) {
            throw new IOException(from(files, scenario) + ": " + noSeason.get());
        }
        Runs runs = Runs.onAllCores(TerminalProgress.of(err, "years"));
        return Optional.of(new RealYearsOf(weather, YearsStudy.of(scenario.installation(), weather, runs)));
    }

    /** What a message names: the first that the command was given, or what the scenario names. */
    static String from(List<Path> files, Scenario scenario) {
        return files.stream()
                .findFirst()
                .or(() -> scenario.realYears().map(Scenario.RealYears::from))
                .map(Path::toString)
                .orElse("years");
    }
}
