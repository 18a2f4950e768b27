package dev.warmlane.examples;

import dev.warmlane.season.Installation;
import dev.warmlane.study.Runs;
import dev.warmlane.study.YearsStudy;
import dev.warmlane.weather.WeatherReadOptions;
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
     * Reads and simulates them.
     *
     * @throws IOException if they cannot be read, or hold no season of the installation
     */
    static RealYearsOf read(List<Path> files, Installation installation, PrintWriter err) throws IOException {
        WeatherYears weather = WeatherYears.read(files, WeatherReadOptions.defaults());
        Optional<String> noSeason = YearsStudy.noSeason(installation, weather);
        if (noSeason.isPresent()) {
            throw new IOException(files.get(0) + ": " + noSeason.get());
        }
        Runs runs = Runs.onAllCores(TerminalProgress.of(err, "years"));
        return new RealYearsOf(weather, YearsStudy.of(installation, weather, runs));
    }
}
