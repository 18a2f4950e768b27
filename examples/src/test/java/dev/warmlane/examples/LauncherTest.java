package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The shell's launcher, beside a jar that says what it was given: the real one is made only after the tests. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the launcher is a script for a Unix shell")
class LauncherTest {

    private static final Path LAUNCHER = Path.of("src", "main", "launcher", "warmlane");

    /** Ends with its first argument, and says the others. */
    static final class Echo {
        private Echo() {}

        public static void main(String[] arguments) {
            for (int i = 1; i < arguments.length; i++) {
                System.out.println("<" + arguments[i] + ">");
            }
            System.exit(Integer.parseInt(arguments[0]));
        }
    }

    private record Run(int code, String printed) {}

    @TempDir
    private Path temporary;

    private Path folder;
    private Path launcher;

    @BeforeEach
    void layOut() throws IOException {
        folder = Files.createDirectories(temporary.resolve("a folder, $HOME"));
        launcher = folder.resolve("warmlane");
        Files.copy(LAUNCHER, launcher, StandardCopyOption.COPY_ATTRIBUTES);
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Echo.class.getName());
        String entry = Echo.class.getName().replace('.', '/') + ".class";
        try (OutputStream file = Files.newOutputStream(folder.resolve("warmlane.jar"));
                JarOutputStream jar = new JarOutputStream(file, manifest);
                var bytes = Echo.class.getClassLoader().getResourceAsStream(entry)) {
            jar.putNextEntry(new JarEntry(entry));
            jar.write(bytes.readAllBytes());
        }
    }

    @Test
    void passesArgumentsAndExitCodeAsTheyAre() throws Exception {
        assertThat(run(launcher, "7", "two words", "", "*", "$HOME", "it's \"so\"", "@file"))
                .isEqualTo(new Run(7, "<two words>\n<>\n<*>\n<$HOME>\n<it's \"so\">\n<@file>\n"));
    }

    @Test
    void isFoundThroughLinks() throws Exception {
        Path elsewhere = Files.createDirectories(temporary.resolve("bin"));
        Path link =
                Files.createSymbolicLink(elsewhere.resolve("warmlane"), Path.of("..", "a folder, $HOME", "warmlane"));
        Path second = Files.createSymbolicLink(temporary.resolve("wl"), link);
        assertThat(run(second, "0", "x")).isEqualTo(new Run(0, "<x>\n"));
    }

    @Test
    void leavesAnArchiveWithTheFirstFolderAndSaysNothingOfIt() throws Exception {
        run(launcher, "0", "no folder");
        assertThat(archives()).isEmpty();
        run(launcher, "1", "--output", "out");
        assertThat(archives()).as("after a run that failed").isEmpty();

        assertThat(run(launcher, "0", "--output", "out")).isEqualTo(new Run(0, "<--output>\n<out>\n"));
        assertThat(archives()).hasSize(1);

        Path archive = archives().get(0);
        var made = Files.getLastModifiedTime(archive);
        assertThat(run(launcher, "3", "-o", "out")).isEqualTo(new Run(3, "<-o>\n<out>\n"));
        assertThat(Files.getLastModifiedTime(archive)).isEqualTo(made);
        assertThat(archives()).containsExactly(archive);
    }

    /** Java takes an archive in no other place than its own. */
    @Test
    void aFolderThatWasMovedMakesItsOwnArchive() throws Exception {
        run(launcher, "0", "-o", "out");
        Path before = archives().get(0);
        Path moved = temporary.resolve("moved");
        Files.move(folder, moved);
        folder = moved;

        run(moved.resolve("warmlane"), "0", "-o", "out");
        assertThat(archives()).hasSize(2).contains(moved.resolve(before.getFileName()));
    }

    @Test
    void goesOnWithoutAnArchiveThatIsNone() throws Exception {
        run(launcher, "0", "-o", "out");
        Path archive = archives().get(0);
        Files.delete(archive);
        Files.writeString(archive, "no archive");
        assertThat(run(launcher, "0", "x")).isEqualTo(new Run(0, "<x>\n"));
    }

    @Test
    void worksWhereNothingCanBeWritten() throws Exception {
        assertThat(folder.toFile().setWritable(false)).isTrue();
        try {
            assertThat(run(launcher, "0", "-o", "out")).isEqualTo(new Run(0, "<-o>\n<out>\n"));
        } finally {
            assertThat(folder.toFile().setWritable(true)).isTrue();
        }
    }

    @Test
    void takesTheJavaThatLiesBesideIt() throws Exception {
        Path bin = Files.createDirectories(folder.resolve("runtime").resolve("bin"));
        Path own = bin.resolve("java");
        Files.writeString(
                own,
                "#!/bin/sh\necho the one beside it\nexec '" + Path.of(System.getProperty("java.home"), "bin", "java")
                        + "' \"$@\"\n");
        assertThat(own.toFile().setExecutable(true)).isTrue();

        assertThat(run(launcher, "5", "x")).isEqualTo(new Run(5, "the one beside it\n<x>\n"));
    }

    private List<Path> archives() throws IOException {
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.jsa*")) {
            files.forEach(found::add);
        }
        return found;
    }

    private Run run(Path start, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(start.toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        // with one of these Java says that it saw it
        builder.environment().keySet().removeAll(List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS"));
        Process process = builder.start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Run(process.waitFor(), printed);
    }
}
