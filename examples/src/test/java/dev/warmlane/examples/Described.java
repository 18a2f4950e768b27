package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Runs the command that asks in a folder with weather, answered as people answer. */
abstract class Described {

    static final Path SAMPLES = Path.of("..", "weather-samples");

    /** A question and what was answered. */
    static final Pattern PROMPT = Pattern.compile("(?m)^\\S.*?[\\])]:(?: (.*))?$");

    @TempDir
    Path folder;

    Path file = Path.of("");
    String out = "";
    String err = "";

    @BeforeEach
    void haveWeather() throws IOException {
        Files.copy(SAMPLES.resolve("cool-coast.csv"), folder.resolve("my town.csv"));
        Files.copy(SAMPLES.resolve("southern-temperate.csv"), folder.resolve("south.csv"));
        Files.copy(SAMPLES.resolve("cool-coast.normals.csv"), folder.resolve("town.normals.csv"));
        file = folder.resolve("job.toml");
    }

    final int describe(String... answers) {
        return run(String.join("\n", answers) + "\n", "describe", file.toString());
    }

    final int run(String typed, String... arguments) {
        StringWriter printed = new StringWriter();
        StringWriter problems = new StringWriter();
        Terminal terminal = new Terminal(new BufferedReader(new StringReader(typed)), true);
        int code = Main.run(terminal, new PrintWriter(printed), new PrintWriter(problems), arguments);
        out = printed.toString();
        err = problems.toString();
        return code;
    }

    final String weather(String name) {
        return folder.resolve(name).toString();
    }

    final void forecasts() {
        assertThat(run(
                        "",
                        "forecast",
                        file.toString(),
                        "--output",
                        folder.resolve("page").toString()))
                .as(err)
                .isZero();
        assertThat(folder.resolve("page").resolve("forecast.html")).exists();
    }
}
