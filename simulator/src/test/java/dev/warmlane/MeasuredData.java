package dev.warmlane;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;

/**
 * Measured data for tests, from the folder that {@code -Dmeasured.dir=} names. Without it a test that asks is skipped.
 * No row of it is ever copied into this project.
 */
public final class MeasuredData {

    private MeasuredData() {}

    /** The path of a file in the folder of measured data. */
    public static Path file(String name) {
        String folder = System.getProperty("measured.dir", "");
        Path file = Path.of(folder, name).toAbsolutePath();
        Assumptions.assumeTrue(
                !folder.isEmpty() && Files.isRegularFile(file),
                () -> "give -Dmeasured.dir= with the folder that holds " + name);
        return file;
    }
}
