package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The library used by a program that is itself a module, with nothing on the class path. */
class ModulePathTest {

    private static final Path SCENARIO = Path.of("scenarios", "municipal-25m.toml");

    /** A class of each library that a forecast needs, this one among them. */
    private static final List<String> NEEDED = List.of(
            "dev.warmlane.season.SeasonForecast",
            "com.fasterxml.jackson.core.JsonFactory",
            "com.samskivert.mustache.Mustache",
            "com.univocity.parsers.csv.CsvParser",
            "de.erichseifert.vectorgraphics2d.VectorGraphics2D",
            "net.e175.klaus.solarpositioning.SPA",
            "org.antlr.v4.runtime.Parser",
            "org.apache.commons.math3.util.FastMath",
            "org.apache.commons.rng.UniformRandomProvider",
            "org.apache.commons.rng.sampling.distribution.ZigguratSampler",
            "org.checkerframework.checker.nullness.qual.Nullable",
            "org.jspecify.annotations.Nullable",
            "org.knowm.xchart.XYChart",
            "org.locationtech.jts.geom.Geometry",
            "org.tomlj.Toml");

    @TempDir
    private Path folder;

    @Test
    void forecastsFromAnotherModule() throws IOException, InterruptedException {
        Path program = compiled("requires dev.warmlane;", """
                Scenario scenario = ScenarioReader.read(Path.of(arguments[0]));
                var season = SeasonForecast.of(scenario.installation(), scenario.readWeather()).summary().season();
                System.out.println("Days warm enough: " + season.comfort().daysAtComfort());
                """);

        Process run = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--module-path",
                        program + File.pathSeparator + modulePath(),
                        "--module",
                        "owner/owner.Forecast",
                        SCENARIO.toString())
                .redirectErrorStream(true)
                .start();
        String printed = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(run.waitFor(2, TimeUnit.MINUTES)).isTrue();
        assertThat(printed).matches("Days warm enough: [1-9]\\d*\\R");
    }

    private Path compiled(String requires, String body) throws IOException {
        Path sources = folder.resolve("owner");
        Files.createDirectories(sources.resolve("owner"));
        Path module = Files.writeString(sources.resolve("module-info.java"), "module owner { " + requires + " }");
        Path program = Files.writeString(sources.resolve("owner").resolve("Forecast.java"), """
                package owner;
                import dev.warmlane.scenario.Scenario;
                import dev.warmlane.scenario.ScenarioReader;
                import dev.warmlane.season.SeasonForecast;
                import java.nio.file.Path;
                public class Forecast {
                    public static void main(String[] arguments) throws Exception {
                        %s
                    }
                }
                """.formatted(body));
        Path classes = folder.resolve("classes");
        StringWriter said = new StringWriter();
        int failed = ToolProvider.findFirst("javac")
                .orElseThrow()
                .run(
                        new PrintWriter(said),
                        new PrintWriter(said),
                        "-d",
                        classes.toString(),
                        "--module-path",
                        modulePath(),
                        module.toString(),
                        program.toString());
        assertThat(failed).as(said.toString()).isZero();
        return classes;
    }

    private static String modulePath() {
        return NEEDED.stream().map(ModulePathTest::library).collect(Collectors.joining(File.pathSeparator));
    }

    private static String library(String name) {
        try {
            var source = Class.forName(name).getProtectionDomain().getCodeSource();
            return Path.of(source.getLocation().toURI()).toString();
        } catch (ClassNotFoundException | URISyntaxException e) {
            throw new IllegalStateException(name + " is not among the tests' libraries", e);
        }
    }
}
