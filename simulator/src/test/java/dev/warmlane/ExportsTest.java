package dev.warmlane;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the module exports is what DEVELOPERS.md promises or says may change. */
class ExportsTest {

    private static final Path MODULE = Path.of("src", "main", "java", "module-info.java");
    private static final Path DEVELOPERS = Path.of("..", "DEVELOPERS.md");

    @Test
    void everyExportedPackageIsPromisedOrMayChange() throws IOException {
        List<String> told = new ArrayList<>(packages("promised"));
        List<String> mayChange = packages("may change");
        assertThat(told).doesNotContainAnyElementsOf(mayChange);
        told.addAll(mayChange);
        assertThat(told)
                .containsExactlyInAnyOrderElementsOf(all("exports dev\\.warmlane\\.(\\S+);", Files.readString(MODULE)));
    }

    /** The row of the table that begins with a word. */
    private static List<String> packages(String row) throws IOException {
        String line = Files.readAllLines(DEVELOPERS).stream()
                .filter(text -> text.startsWith("| " + row + " |"))
                .findFirst()
                .orElseThrow();
        return all("`([a-z.]+)`", line);
    }

    private static List<String> all(String pattern, String text) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(found -> found.group(1))
                .toList();
    }
}
