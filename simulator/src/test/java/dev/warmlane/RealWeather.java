package dev.warmlane;

import static org.assertj.core.api.Assertions.fail;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * Real weather files for tests, from the folders that {@code -Dweather.dir=} names, separated as in a class path. Without
 * them a test that asks is skipped; with {@code -Dweather.required=true} it fails instead.
 */
public final class RealWeather {

    private RealWeather() {}

    /** The path of a file in the folders of real weather. */
    public static Path file(String name) {
        String folders = System.getProperty("weather.dir", "");
        Optional<Path> found = Stream.of(folders.split(File.pathSeparator))
                .filter(folder -> !folder.isEmpty())
                .map(folder -> Path.of(folder, name).toAbsolutePath())
                .filter(Files::isRegularFile)
                .findFirst();
        if (found.isEmpty() && Boolean.getBoolean("weather.required")) {
            fail("real weather is required here, but %s is in none of the folders weather.dir=%s", name, folders);
        }
        Assumptions.assumeTrue(found.isPresent(), () -> "give -Dweather.dir= with the folder that holds " + name);
        return found.orElseThrow();
    }
}
