package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class FileSetTest {

    @TempDir
    private Path folder;

    private static FileSet three() {
        return new FileSet().add("a.csv", "new a").add("b.csv", "new b").add("c.csv", "new c");
    }

    @Test
    void writesAllAndLeavesNothingElse() throws IOException {
        Files.writeString(folder.resolve("b.csv"), "old b");

        assertThat(three().write(folder))
                .containsExactly(folder.resolve("a.csv"), folder.resolve("b.csv"), folder.resolve("c.csv"));

        assertThat(names(folder)).containsExactly("a.csv", "b.csv", "c.csv");
        assertThat(folder.resolve("b.csv")).hasContent("new b");
    }

    @Test
    void makesMissingFolders() throws IOException {
        Path deep = folder.resolve("one").resolve("two");

        three().write(deep);

        assertThat(names(deep)).containsExactly("a.csv", "b.csv", "c.csv");
    }

    @Test
    void failureOfTheLastFilePutsBackWhatWasThere() throws IOException {
        Files.writeString(folder.resolve("a.csv"), "old a");

        assertThatIOException()
                .isThrownBy(() -> three().write(folder, FileSetTest::failAtC))
                .withMessage("disk full");

        assertThat(names(folder)).containsExactly("a.csv");
        assertThat(folder.resolve("a.csv")).hasContent("old a");
    }

    @Test
    void failureLeavesNoNewFolders() throws IOException {
        assertThatIOException()
                .isThrownBy(() -> three().write(folder.resolve("one").resolve("two"), FileSetTest::failAtC));

        assertThat(names(folder)).isEmpty();
    }

    @Test
    void folderInPlaceOfAFileIsNamedAndNothingChanges() throws IOException {
        Files.createDirectory(folder.resolve("c.csv"));

        assertThatIOException().isThrownBy(() -> three().write(folder)).withMessageContaining("c.csv is a folder");

        assertThat(names(folder)).containsExactly("c.csv");
    }

    @Test
    void aDraftThatCannotBeWrittenIsToldByTheFolder() throws IOException {
        FileSet tooLong = new FileSet().add("x".repeat(5000), "");

        assertThatIOException()
                .isThrownBy(() -> tooLong.write(folder))
                .withMessageStartingWith(folder + ": cannot be written to: ")
                .withMessageNotContaining(".draft-");

        assertThat(names(folder)).isEmpty();
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aFolderThatCannotBeMadeIsNamed() {
        assertThatIOException()
                .isThrownBy(() -> three().write(Path.of("/proc/warmlane")))
                .withMessage("/proc/warmlane: no folder can be made there");
    }

    private static void failAtC(Path from, Path to) throws IOException {
        if (to.endsWith("c.csv")) {
            throw new IOException("disk full");
        }
        Files.move(from, to);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
