package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command dates. */
class DatesCommandTest extends CommandRuns {

    private static final String DEMO =
            Path.of("scenarios", "municipal-25m.toml").toString();

    @TempDir
    private Path folder;

    @Test
    void everyWeekOnEitherSideIsARowAndTodayComesFirst() throws IOException {
        assertThat(run("dates", DEMO, "--weeks", "2", "-o", folder.toString())).isZero();

        List<String[]> rows = Files.readAllLines(folder.resolve("dates.csv")).stream()
                .map(line -> line.split(",", -1))
                .toList();
        assertThat(rows.stream().map(row -> row[0] + " " + row[1]))
                .containsExactly(
                        "way weeks",
                        "today 0",
                        "open earlier 1",
                        "open earlier 2",
                        "close later 1",
                        "close later 2",
                        "both 1",
                        "both 2");
        // one week before 5 May, two weeks after 15 September
        assertThat(column(rows, "opens")[1]).isEqualTo("04-28");
        assertThat(column(rows, "closes")[4]).isEqualTo("09-29");
        assertThat(column(rows, "opens")[4]).isEqualTo("05-05");

        // a longer season takes more gas, and with collectors less than without
        double[] burned = numbers(column(rows, "gas_burned_kwh"));
        double[] without = numbers(column(rows, "gas_burned_without_kwh"));
        assertThat(burned[2]).isGreaterThan(burned[1]).isGreaterThan(burned[0]);
        for (int row = 0; row < burned.length; row++) {
            assertThat(burned[row]).isLessThan(without[row]);
        }
        assertThat(out.toString().replaceAll("\\s+", " "))
                .contains(
                        "For the gas of today's season without collectors it may, with them, open earlier by",
                        "Written:");
        assertThat(folder.resolve("dates.html")).isNotEmptyFile();
        assertThat(folder.resolve("charts").resolve("dates.svg")).isNotEmptyFile();
        assertThat(Files.readString(folder.resolve("dates.txt"))).startsWith("Municipal outdoor pool: ");
    }

    @Test
    void aPoolWithoutHeaterIsToldNothingOfFuel() {
        assertThat(run("dates", Path.of("scenarios", "southern-summer.toml").toString(), "--weeks", "1"))
                .isZero();

        assertThat(out.toString())
                .contains("It has no heater: opened 1 week earlier")
                .doesNotContain("gas dis", "gas burn", "gas of");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "21", "two"})
    void weeksThatMakeNoSenseAreWrongUsage(String weeks) {
        assertThat(run("dates", DEMO, "--weeks", weeks)).isEqualTo(2);
        assertThat(err.toString()).contains("--weeks");
        assertThat(out.toString()).isEmpty();
    }

    private static String[] column(List<String[]> rows, String name) {
        int at = Arrays.asList(rows.get(0)).indexOf(name);
        assertThat(at)
                .as("column " + name + " of " + Arrays.toString(rows.get(0)))
                .isNotNegative();
        return rows.stream().skip(1).map(row -> row[at]).toArray(String[]::new);
    }

    private static double[] numbers(String[] column) {
        return Arrays.stream(column).mapToDouble(Double::parseDouble).toArray();
    }
}
