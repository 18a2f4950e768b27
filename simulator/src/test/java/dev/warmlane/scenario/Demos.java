package dev.warmlane.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The scenario files that come with the project. */
final class Demos {

    private static final Path FOLDER = Path.of("..", "examples", "scenarios");

    private Demos() {}

    static List<Path> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(f -> f.toString().endsWith(".toml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Path file(String name) {
        return FOLDER.resolve(name);
    }

    /** Reads a text as a scenario file; any weather file it names is made, empty, beside it. */
    static Scenario read(String text, Path folder) throws IOException {
        Path file = folder.resolve("a").resolve("b").resolve("job.toml");
        Files.createDirectories(file.getParent());
        Files.createDirectories(folder.resolve("weather-samples"));
        for (String name : List.of("cool-coast", "warm-inland", "southern-temperate")) {
            Files.writeString(folder.resolve("weather-samples").resolve(name + ".csv"), "");
        }
        Files.writeString(file, text);
        return ScenarioReader.read(file);
    }

    static Scenario read(Path demo, Path folder) throws IOException {
        return read(Files.readString(demo), folder);
    }
}
