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
        assertThat(err.toString()).contains("or name them in the scenario");
    }

    /** The demo, and what its section [site] says besides. */
    private String scenario(String... keys) throws IOException {
        String weather = Path.of("..", "weather-samples", "cool-coast.csv")
                .toAbsolutePath()
                .normalize()
                .toString()
                .replace('\\', '/');
        String text = Files.readString(Path.of(DEMO))
                .replaceFirst("(?m)^weather = .*$", "weather = \"" + weather + "\"\n" + String.join("\n", keys));
        return Files.writeString(folder.resolve("job.toml"), text).toString();
    }

    private Path years(String name, int... calendarYears) throws IOException {
        Path years = Files.createDirectory(folder.resolve(name));
        for (int calendarYear : calendarYears) {
            year(calendarYear);
            Files.move(folder.resolve(calendarYear + ".csv"), years.resolve(calendarYear + ".csv"));
        }
        return years;
    }

    @Test
    void theScenarioNamesYearsAndTheCommandOverridesThem() throws IOException {
        years("named", 2001, 2002);
        String other = years("other", 2004, 2005).toString();
        String job = scenario("years = \"named\"");

        assertThat(run("years", job)).isZero();
        assertThat(out.toString()).contains("2 real years, 2001 to 2002");
        assertThat(run("forecast", job)).isZero();
        assertThat(out.toString()).contains("Good years and bad", "2 real years, 2001 to 2002");
        assertThat(run("forecast", job, "--years", other)).isZero();
        assertThat(out.toString()).contains("2 real years, 2004 to 2005");
        assertThat(run("years", job, other)).isZero();
        assertThat(out.toString()).contains("2 real years, 2004 to 2005");
    }

    /** Wind measured at 2 m is stronger at 10 m: the season must differ, as it does in the typical year. */
    @Test
    void realYearsAreReadWithWhatTheScenarioKnowsBetter() throws IOException {
        years("named", 2001);
        Path plain = folder.resolve("plain");
        Path low = folder.resolve("low");

        assertThat(run("years", scenario("years = \"named\""), "-o", plain.toString()))
                .isZero();
        assertThat(run("years", scenario("years = \"named\"", "wind_height = \"2 m\""), "-o", low.toString()))
                .isZero();

        assertThat(Files.readString(low.resolve("years.csv")))
                .isNotEqualTo(Files.readString(plain.resolve("years.csv")));
    }

    /** A scenario that came from somebody else must not read out what lies elsewhere on the machine. */
    @Test
    void nothingIsShownOfFilesElsewhere() throws IOException {
        Path secret = years("secret", 2001);
        Files.writeString(secret.resolve("notes.txt"), "the code of the safe is 1234");
        Path jobs = Files.createDirectory(folder.resolve("jobs"));
        String job = scenario("years = \"../secret\"");
        Files.move(Path.of(job), jobs.resolve("job.toml"));

        assertThat(run("years", jobs.resolve("job.toml").toString())).isZero();

        assertThat(out.toString()).contains("1 file or year").doesNotContain("notes.txt", "the code of the safe");
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
