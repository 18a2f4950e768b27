package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What the README shows is what the command prints. */
class ReadmeTest {

    @Test
    void theReadmeShowsWhatTheDemoPrints() throws IOException {
        StringWriter out = new StringWriter();
        Main.run(
                new PrintWriter(out),
                new PrintWriter(new StringWriter()),
                "forecast",
                Path.of("scenarios", "municipal-25m.toml").toString());
        String printed = out.toString();
        String shown = printed.substring(printed.indexOf("In short"), printed.indexOf("\nHow sure this is"));

        assertThat(Files.readString(Path.of("..", "README.md"))).contains("```\n" + shown.stripTrailing() + "\n```");
    }
}
