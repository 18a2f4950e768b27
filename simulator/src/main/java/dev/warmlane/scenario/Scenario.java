package dev.warmlane.scenario;

import dev.warmlane.season.Installation;
import dev.warmlane.study.MountingOption;
import dev.warmlane.weather.WeatherFileException;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherReadOptions;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.WeatherYears;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * One job as its file describes it.
 *
 * @param installation what is built
 * @param mountings mountings to compare; empty where the file names none
 * @param weatherFile the weather file, resolved against the folder of the scenario file
 * @param weatherIsNear whether the scenario names a weather file in its own folder or below; a file elsewhere need not
 *     be one that its author may read, and is not quoted
 * @param realYears where the scenario names weather files of real years; nothing where it names none
 * @param weatherReading what the scenario knows better than its weather files
 * @param report how the report is wanted
 * @param assumed every value that the file leaves open about the installation
 * @param mountingsAssumed the same about the mountings to compare
 * @param warnings what is allowed but hardly meant
 */
public record Scenario(
        Installation installation,
        List<MountingOption> mountings,
        Path weatherFile,
        boolean weatherIsNear,
        Optional<RealYears> realYears,
        WeatherReadOptions weatherReading,
        ReportSettings report,
        List<Assumption> assumed,
        List<Assumption> mountingsAssumed,
        List<Finding> warnings) {

    /**
     * Weather files of real years.
     *
     * @param from a folder with them, or a file of several years
     * @param isNear whether it is named in the scenario file's own folder or below
     */
    public record RealYears(Path from, boolean isNear) {}

    /** Keeps its own copies of the lists. */
    public Scenario {
        mountings = List.copyOf(mountings);
        assumed = List.copyOf(assumed);
        mountingsAssumed = List.copyOf(mountingsAssumed);
        warnings = List.copyOf(warnings);
    }

    /**
     * Reads the weather file with what the scenario knows better. What is wrong with a file outside of the scenario's
     * folder is told without a word of its content.
     *
     * @throws WeatherFileException if the file is of no known format, is broken, or cannot be trusted
     * @throws IOException if it cannot be opened
     */
    public WeatherYear readWeather() throws IOException {
        try {
            return WeatherFiles.read(weatherFile, weatherReading);
        } catch (WeatherFileException e) {
            throw weatherIsNear ? e : e.withoutContent();
        }
    }

    /**
     * Reads the real years that the scenario names, with what it knows better, as {@link #readWeather}; nothing where it
     * names none.
     *
     * @throws WeatherFileException if none of the files holds a year that can be used, or a year is there twice
     * @throws IOException if one cannot be opened
     */
    public Optional<WeatherYears> readYears() throws IOException {
        if (realYears.isEmpty()) {
            return Optional.empty();
        }
        RealYears named = realYears.get();
        try {
            WeatherYears years = readYears(List.of(named.from));
            return Optional.of(named.isNear ? years : years.withoutContent());
        } catch (WeatherFileException e) {
            throw named.isNear ? e : e.withoutContent();
        }
    }

    /**
     * Reads other real years with what the scenario knows better than its weather files.
     *
     * @param from files of one or several years each, or folders with such files
     * @throws WeatherFileException if none of the files holds a year that can be used, or a year is there twice
     * @throws IOException if one is not there or cannot be opened
     */
    public WeatherYears readYears(List<Path> from) throws IOException {
        return WeatherYears.read(from, weatherReading);
    }
}
