package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What docs/library.md shows of Java stands in the tests of this package, line by line. */
class LibraryDocTest {

    private static final Pattern BLOCK = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL);

    @Test
    void allThatIsShownIsCompiledAndTested() throws IOException {
        String sources;
        try (Stream<Path> files = Files.list(Path.of("src", "test", "java", "dev", "warmlane", "extending"))) {
            sources = files.map(LibraryDocTest::read).map(LibraryDocTest::lines).collect(Collectors.joining("\n"));
        }
        List<String> blocks = BLOCK.matcher(read(Path.of("..", "docs", "library.md")))
                .results()
                .map(found -> lines(found.group(1)))
                .toList();
        assertThat(blocks).hasSizeGreaterThanOrEqualTo(8).allSatisfy(block -> assertThat(sources)
                .contains(block));
    }

    /** Without indentation. */
    private static String lines(String text) {
        return text.lines().map(String::strip).filter(line -> !line.isEmpty()).collect(Collectors.joining("\n"));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
