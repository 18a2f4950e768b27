package dev.warmlane.examples;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.regex.Pattern;
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
        ShownOutput.isAsPrinted(
                Path.of("..", "README.md"), Pattern.compile("(?s)\n```\n(In short\n.*?)\n```"), 1, out.toString());
    }
}
