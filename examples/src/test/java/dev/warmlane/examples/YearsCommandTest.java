package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command years. */
class YearsCommandTest extends CommandRuns {

    private static final String DEMO =
            Path.of("scenarios", "municipal-25m.toml").toString();

    @TempDir
    private Path folder;

    /** The sample year as one of another calendar year. */
    private void year(int calendarYear) throws IOException {
        List<String> lines = Files.readAllLines(Path.of("..", "weather-samples", "cool-coast.csv")).stream()
                .map(line -> line.replaceFirst("^month,", "year,month,").replaceFirst("^([0-9])", calendarYear + ",$1"))
                .toList();
        Files.write(folder.resolve(calendarYear + ".csv"), lines);
    }

    @Test
    void everyYearOfAFolderHasItsRowAndTheTypicalYearIsWritten() throws IOException {
        for (int calendarYear = 2001; calendarYear <= 2003; calendarYear++) {
            year(calendarYear);
        }
        Path out = folder.resolve("out");
        Path typical = folder.resolve("typical.csv");

        assertThat(run("years", DEMO, folder.toString(), "-t", typical.toString(), "-o", out.toString()))
                .isZero();

        assertThat(Files.readAllLines(out.resolve("years.csv")))
                .hasSize(4)
                .element(1)
                .asString()
                .startsWith("2001,2001,");
        assertThat(out.resolve("years.html")).isNotEmptyFile();
        assertThat(out.resolve("years-spread.csv")).isNotEmptyFile();
        assertThat(this.out.toString()).contains("3 real years, 2001 to 2003", "Year by year", "Written:");
        assertThat(run("weather", typical.toString())).isZero();
    }

    @Test
    void whatCannotBeUsedIsAnErrorOfTheInput() throws IOException {
        assertThat(run("years", DEMO, folder.resolve("nowhere").toString())).isOne();
        assertThat(err.toString()).contains("there is no such file");
        assertThat(run("years", DEMO, folder.toString())).isOne();
        assertThat(err.toString()).contains("no files");
        year(2001);
        assertThat(run(
                        "years",
                        DEMO,
                        folder.toString(),
                        "-t",
                        folder.resolve("t.csv").toString()))
                .isOne();
        assertThat(err.toString()).contains("at least 3 real ones, there are 1");
        assertThat(run("years", DEMO)).isEqualTo(2);
    }

    @Test
    void aForecastTakesItsBandFromYears() throws IOException {
        year(2001);
        year(2002);
        assertThat(run("forecast", DEMO, "--years", folder.toString())).isZero();
        assertThat(out.toString()).contains("Good years and bad", "2 real years, 2001 to 2002");
        String southern = Path.of("scenarios", "southern-summer.toml").toString();
        assertThat(run("forecast", southern, "-y", folder.toString())).isOne();
        assertThat(err.toString()).contains("not of the place of these years");
    }
}
