package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The launcher for Windows, as far as it can be held where there is no Windows to run it. */
class WindowsLauncherTest {

    @Test
    void linesEndAsTheShellOfWindowsWantsThemAndAMissingJavaIsTold() throws IOException {
        String script = Files.readString(Path.of("src", "main", "launcher", "warmlane.cmd"));

        assertThat(script).contains("\r\n");
        assertThat(script.replace("\r\n", "")).doesNotContain("\n", "\r");
        assertThat(script).containsSubsequence("where java", "warmlane needs Java 17 or newer", "-jar");
    }
}
