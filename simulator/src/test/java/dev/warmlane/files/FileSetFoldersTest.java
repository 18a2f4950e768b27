package dev.warmlane.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of a set that lie in folders of their own. */
class FileSetFoldersTest {

    @TempDir
    private Path folder;

    @Test
    void foldersAreMade() throws IOException {
        new FileSet()
                .add("a.txt", "a")
                .add("charts/b.png", new byte[] {1, 2})
                .add("charts/c.png", new byte[] {3})
                .write(folder);

        assertThat(names()).containsExactly("a.txt", "charts", "charts/b.png", "charts/c.png");
        assertThat(folder.resolve("charts/b.png")).hasBinaryContent(new byte[] {1, 2});
    }

    @Test
    void failureTakesFoldersBack() throws IOException {
        FileSet files = new FileSet().add("charts/a.svg", "a").add("b.txt", "b");

        assertThatIOException().isThrownBy(() -> files.write(folder, FileSetFoldersTest::failAtB));

        assertThat(names()).isEmpty();
    }

    @Test
    void failureLeavesOldFilesInFoldersAsTheyWere() throws IOException {
        Files.createDirectory(folder.resolve("charts"));
        Files.writeString(folder.resolve("charts/a.svg"), "old");
        Files.writeString(folder.resolve("charts/other.svg"), "other");
        FileSet files = new FileSet().add("charts/a.svg", "a").add("b.txt", "b");

        assertThatIOException().isThrownBy(() -> files.write(folder, FileSetFoldersTest::failAtB));

        assertThat(names()).containsExactly("charts", "charts/a.svg", "charts/other.svg");
        assertThat(folder.resolve("charts/a.svg")).hasContent("old");
    }

    @Test
    void fileInPlaceOfAFolderIsNamed() throws IOException {
        Files.writeString(folder.resolve("charts"), "a file");

        assertThatIOException()
                .isThrownBy(() ->
                        new FileSet().add("a.txt", "a").add("charts/b.svg", "b").write(folder))
                .withMessageContaining("charts is a file, not a folder");
        assertThat(names()).containsExactly("charts");
    }

    private static void failAtB(Path from, Path to) throws IOException {
        if (to.endsWith("b.txt")) {
            throw new IOException("disk full");
        }
        Files.move(from, to);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> !file.equals(folder))
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
