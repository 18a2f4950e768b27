package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a file holds, the command says in a few printable lines what is wrong, and shows no inside of itself. */
class HostileInputTest extends CommandRuns {

    private static final Path DEMO = Path.of("scenarios", "municipal-25m.toml");
    private static final Path WEATHER = Path.of("..", "weather-samples", "cool-coast.csv");

    /** Of one line that is told, characters. */
    private static final int LINE_AT_MOST = 2000;

    @TempDir
    private Path folder;

    private void refused(int exitCode) {
        assertThat(exitCode).isEqualTo(1);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).isNotBlank().doesNotContain("Exception", "\tat ", "fault of the program");
        assertThat(err.toString().lines()).allSatisfy(line -> assertThat(line)
                .hasSizeLessThan(LINE_AT_MOST)
                .doesNotContainPattern("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}]"));
    }

    static Stream<UnaryOperator<String>> weather() {
        return Stream.of(
                year -> row(year, "\"" + row(year)),
                year -> row(year, row(year).replaceFirst(",", "," + "9".repeat(100_000))),
                year -> row(year, row(year).replaceFirst(",[^,]*,", ",\u001B[31m\u202E,")),
                year -> row(year, row(year).replaceFirst(",[^,]*$", ",Infinity")),
                year -> year.replaceFirst("latitude, degrees north: .*", "latitude, degrees north: Infinity"),
                year -> year.replaceFirst("latitude, degrees north: .*", "latitude, degrees north: \u001B]0;x\u0007"),
                year -> year.replaceFirst("utc offset, h: .*", "utc offset, h: 1e16"),
                year -> year.replaceAll("\n", " "),
                year -> "\u0000" + year,
                year -> "PK\u0003\u0004",
                year -> "\u202E\u001B[2J",
                year -> "#".repeat(50_000),
                year -> " \n\t\n");
    }

    private static String row(String year) {
        return year.lines().skip(5000).findFirst().orElseThrow();
    }

    private static String row(String year, String other) {
        return year.replace(row(year), other);
    }

    @ParameterizedTest
    @MethodSource("weather")
    void weather(UnaryOperator<String> broken) throws IOException {
        Path file = Files.writeString(folder.resolve("w.csv"), broken.apply(Files.readString(WEATHER)));

        refused(run("weather", file.toString()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"1e308 in\"",
                "\"1e999 m\"",
                "\"-0 m\"",
                "\"NaN m\"",
                "nan",
                "inf",
                "-inf",
                "\"٣ m\"",
                "1e400",
                "\"\\u001B[31m m\"",
                "\"1 \\u202Em\"",
                "[[1]]",
                "{a={b=1}}",
                "''",
                "\"\"\"\n\"\"\"",
                "1979-05-27",
                "99999999999999999999",
                "\"0x10 m\"",
                "\"1 m; DROP\""
            })
    void quantities(String value) throws IOException {
        refused(scenario(text -> text.replaceFirst("depth = .*", "depth = " + value.replace("\\", "\\\\"))));
    }

    @Test
    void aRowOfTwoThousandMoreColumns() throws IOException {
        String year = Files.readString(WEATHER);
        Path file = Files.writeString(folder.resolve("w.csv"), row(year, row(year) + ",1".repeat(2000)));

        refused(run("weather", file.toString()));
        assertThat(err.toString()).contains("2009 columns", "9 at most");
    }

    static Stream<UnaryOperator<String>> scenarios() {
        return Stream.of(
                text -> text + "\nx = " + "[".repeat(1000) + "]".repeat(1000),
                text -> text + "\nx = " + "{a=".repeat(1000),
                text -> text + "\n" + "a.".repeat(1000) + "b = 1",
                text -> text + "\n" + "x".repeat(100_000) + " = 1",
                text -> text + "\nx = \"" + "y".repeat(100_000),
                text -> text.replaceFirst("depth = .*", "depth = \"" + "9".repeat(100_000) + " m\""),
                text -> text.replaceFirst("name = .*", "name = \"a\\\\u202Eb\""),
                text -> text.replaceFirst("name = .*", "name = \"" + "n".repeat(100_000) + "\""),
                text -> text.replaceFirst("weather = .*", "weather = \"" + "w".repeat(100_000) + "\""),
                text -> text.replaceFirst("weather = .*", "weather = \"/dev/zero\""),
                text -> text.replace("\n", "\u0000"),
                text -> "",
                text -> "=",
                text -> "\"".repeat(1000));
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void scenarios(UnaryOperator<String> broken) throws IOException {
        refused(scenario(broken));
    }

    @Test
    void moreArraysAndMountingsThanAStudyHas() throws IOException {
        String array = "\n[[collectors]]\nname = \"a%d\"\narea = \"1 m2\"\nmounting = \"flat\"\n";
        String mounting = "\n[[mountings]]\nname = \"m%d\"\nmounting = \"flat\"\n";
        refused(scenario(text -> text + many(array, 2000)));
        refused(scenario(text -> text + many(mounting, 300)));

        assertThat(err.toString())
                .contains("[collectors 21] is one of 2001; allowed: at most 20")
                .contains("[mountings 31] is one of 300; allowed: at most 30");
    }

    private static String many(String section, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> String.format(Locale.ROOT, section, i))
                .collect(Collectors.joining());
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void filesOfTwoGigabytesWithNothingInThem() throws IOException {
        Path file = folder.resolve("big.csv");
        try (RandomAccessFile big = new RandomAccessFile(file.toFile(), "rw")) {
            big.setLength(1L << 31); // no block of it is written
        }
        for (String command : new String[] {"weather", "forecast", "generate"}) {
            refused(run(command, file.toString()));
        }
        assertThat(err.toString()).contains("big.csv: has more than 64 MB", "big.csv: has more than 1 MB");
    }

    /** The scenario allows it with warnings; no command falls over it. */
    @Test
    void aDropOfWaterBesideAFieldOfCollectors() throws IOException {
        Path file = folder.resolve("s.toml");
        Files.writeString(
                file,
                Files.readString(DEMO)
                        .replace(
                                "../../weather-samples",
                                WEATHER.resolveSibling("").toAbsolutePath().toString())
                        .replaceFirst("length = \"25 m\" .*\nwidth = .*", "area = \"1 m2\"")
                        .replaceFirst("bathers = 60", "bathers = 1")
                        .replaceFirst("panels = 84 .*\npanel_area = .*", "area = \"80000 m2\"")
                        .replaceFirst("length = \"30 m\"\nwidth = .*", "length = \"500 m\"\nwidth = \"300 m\""));

        assertThat(run("areas", file.toString())).as("80000 m² twice").isEqualTo(2);
        assertThat(err.toString()).contains("at most 50000 m2", "--to").doesNotContain("fault of the program");
        assertThat(out.toString()).isEmpty();
        assertThat(run("forecast", file.toString())).isZero();
        assertThat(err.toString()).contains("are more than 2 times the water surface", "could warm this pool");
        assertThat(out.toString()).doesNotContain("NaN", "Infinity");
    }

    private int scenario(UnaryOperator<String> broken) throws IOException {
        Path file = folder.resolve("s.toml");
        Files.writeString(file, broken.apply(Files.readString(DEMO)));
        return run("forecast", file.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"weather", "forecast", "generate"})
    @EnabledOnOs(OS.LINUX)
    void whatHasNoEnd(String command) {
        refused(run(command, "/dev/zero"));
        assertThat(err.toString()).contains("/dev/zero: has more than");
    }

    @Test
    void aFileElsewhereIsNotQuoted() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "root:x:0:0\n[secret]\n");
        Path inner = Files.createDirectory(folder.resolve("inner"));
        for (String name : new String[] {secret.toAbsolutePath().toString().replace('\\', '/'), "../secret"}) {
            Path file = inner.resolve("s.toml");
            Files.writeString(file, Files.readString(DEMO).replaceFirst("weather = .*", "weather = \"" + name + "\""));

            refused(run("forecast", file.toString()));
        }
        assertThat(err.toString()).contains("secret").doesNotContain("root", "[secret]");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aLinkToAFileElsewhereIsNotQuoted() throws IOException {
        Files.writeString(folder.resolve("secret"), "root:x:0:0\n[secret]\n");
        Path inner = Files.createDirectory(folder.resolve("inner"));
        Files.createSymbolicLink(inner.resolve("year.csv"), folder.resolve("secret"));
        Path file = inner.resolve("s.toml");
        Files.writeString(file, Files.readString(DEMO).replaceFirst("weather = .*", "weather = \"year.csv\""));

        refused(run("forecast", file.toString()));
        assertThat(err.toString()).contains("year.csv").doesNotContain("root", "[secret]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/dev/null", "."})
    @EnabledOnOs(OS.LINUX)
    void theYearReplacesAFileOnly(String output) {
        refused(run(
                "generate",
                Path.of("..", "weather-samples", "cool-coast.normals.csv").toString(),
                "-o",
                output));
        assertThat(err.toString()).doesNotContain("draft");
    }

    @Test
    void argumentsAreShownPrintable() {
        assertThat(run("forecast", "--\u001B[31m\u202E")).isEqualTo(2);

        assertThat(err.toString()).doesNotContain("\u001B", "\u202E");
    }
}
