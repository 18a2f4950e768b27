package dev.warmlane;

import static org.assertj.core.api.Assertions.fail;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;

/**
 * Real typical-year files for tests, from the folder that {@code -Dweather.dir=} names. Without it a test that asks is
 * skipped; with {@code -Dweather.required=true} it fails instead.
 */
public final class RealWeather {

    private RealWeather() {}

    /** The path of a file in the folder of real weather. */
    public static Path file(String name) {
        String folder = System.getProperty("weather.dir", "");
        Path path = Path.of(folder, name).toAbsolutePath();
        boolean there = !folder.isEmpty() && Files.isRegularFile(path);
        if (!there && Boolean.getBoolean("weather.required")) {
            fail("real weather is required here, but %s is not in the folder weather.dir=%s", name, folder);
        }
        Assumptions.assumeTrue(there, () -> "give -Dweather.dir= with the folder that holds " + name);
        return path;
    }
}
