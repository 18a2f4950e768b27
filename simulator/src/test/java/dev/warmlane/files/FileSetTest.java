package dev.warmlane.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
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

    @Test
    void leftoversOfAKilledRunAreSwept() throws IOException {
        Path drafts = Files.createDirectory(folder.resolve(".draft-123"));
        Files.writeString(drafts.resolve("a.csv"), "half");
        Files.writeString(folder.resolve(".warmlane.lock"), "");
        Files.writeString(folder.resolve("mine.txt"), "mine");

        three().write(folder);

        assertThat(names(folder)).containsExactly("a.csv", "b.csv", "c.csv", "mine.txt");
    }

    @Test
    void whatAnEarlierRunWroteAndThisOneDoesNotIsRemoved() throws IOException {
        Files.createDirectory(folder.resolve("charts"));
        Files.writeString(folder.resolve("charts/old.svg"), "old");
        Files.writeString(folder.resolve("charts/mine.svg"), "mine");

        three().supersede(List.of("charts/old.svg", "charts/never.svg", "a.csv"))
                .write(folder);

        assertThat(names(folder)).containsExactly("a.csv", "b.csv", "c.csv", "charts");
        assertThat(names(folder.resolve("charts"))).containsExactly("mine.svg");
    }

    @Test
    void failureLeavesWhatWouldHaveBeenRemoved() throws IOException {
        Files.writeString(folder.resolve("old.svg"), "old");

        assertThatIOException()
                .isThrownBy(() -> three().supersede(List.of("old.svg")).write(folder, FileSetTest::failAtC));

        assertThat(names(folder)).containsExactly("old.svg");
    }

    /** More than a run takes to write, so that some wait for each other. */
    private static final int RUNS = 40;

    @Test
    void runsIntoOneFolderWaitForEachOtherAndLeaveOneResult() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<List<Path>>> runs = IntStream.range(0, RUNS)
                    .mapToObj(run -> threads.submit(() -> new FileSet()
                            .add("a.csv", "run " + run)
                            .add("deep/b.csv", "run " + run)
                            .write(folder.resolve("made"))))
                    .toList();
            for (Future<List<Path>> run : runs) {
                assertThat(run.get()).hasSize(2);
            }
        } finally {
            threads.shutdownNow();
        }
        Path made = folder.resolve("made");
        assertThat(names(made)).containsExactly("a.csv", "deep");
        assertThat(made.resolve("a.csv")).hasSameTextualContentAs(made.resolve("deep/b.csv"));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS) // where a link needs rights
    void linksAndWhatTheyLeadToStayAsTheyAre() throws IOException {
        Path mine = Files.writeString(folder.resolve("mine.txt"), "mine");
        Files.createSymbolicLink(folder.resolve("b.csv"), mine);

        assertThatIOException().isThrownBy(() -> three().write(folder)).withMessageContaining("b.csv is a link");

        assertThat(names(folder)).containsExactly("b.csv", "mine.txt");
        assertThat(mine).hasContent("mine");
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
