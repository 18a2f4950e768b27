package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.FittedDoubt;
import dev.warmlane.season.Installation;
import dev.warmlane.season.RecordLedger;
import dev.warmlane.season.RecordSimulator;
import dev.warmlane.season.RecordState;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.WindAndSun;
import dev.warmlane.weather.RecordOptions;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherRecord;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command fit on an invented log, which this test makes: {@code -Dsamples.write=true} writes it. */
class FitCommandTest {

    private static final Path SCENARIO = Path.of("scenarios", "southern-summer.toml");
    private static final Path LOG = Path.of("logs", "southern-summer-log.csv");
    private static final Path WEATHER = Path.of("..", "weather-samples", "southern-temperate.csv");

    /** What the invented pool has and its scenario does not know. */
    private static final WindAndSun TRUTH = new WindAndSun(0.24, 0.76);

    private static final double ERROR_K = 0.3;
    private static final double FADE_HOURS = 72;
    private static final double NOISE_K = 0.05;
    private static final int DAYS = 50;

    /** The sample's rows have no year; the invented log is of this one. */
    private static final LocalDateTime FROM = LocalDateTime.of(2002, 1, 10, 0, 0);

    @TempDir
    private Path folder;

    @Test
    void theLogIsTheOneThatThisTestMakes() throws IOException {
        String made = madeLog();
        if (Boolean.getBoolean("samples.write")) {
            Files.writeString(LOG, made);
        }
        assertThat(Files.readString(LOG).replace("\r\n", "\n")).isEqualTo(made);
    }

    @Test
    void findsWhatIsTrueAndWritesAScenarioThatForecastsWithItsDoubt() throws IOException {
        Path fitted = folder.resolve("fitted.toml");
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = run(
                out,
                err,
                "fit",
                SCENARIO.toString(),
                "--log",
                LOG.toString(),
                "--weather",
                WEATHER.toString(),
                "--weather-year",
                "2002",
                "--output",
                folder.resolve("fit").toString(),
                "--fitted",
                fitted.toString());
        assertThat(err.toString()).doesNotContain("fault");
        assertThat(exit).isZero();
        assertThat(out.toString())
                .contains(
                        "the wind at the water is",
                        "Its clock is 1.0 h ahead",
                        "What the log cannot tell",
                        "fitted.toml");
        assertThat(folder.resolve("fit/fit.html")).exists();
        assertThat(folder.resolve("fit/charts/fit-residuals.png")).exists();

        Scenario scenario = ScenarioReader.read(fitted);
        WindAndSun found = WindAndSun.of(scenario.installation());
        FittedDoubt doubt = scenario.installation().fitted().orElseThrow();
        assertThat(found.windFactor())
                .isCloseTo(TRUTH.windFactor(), within(2.5 * doubt.wind().sd()))
                .isNotCloseTo(0.35, within(2.5 * doubt.wind().sd()));
        assertThat(found.sunShare())
                .isCloseTo(TRUTH.sunShare(), within(2.5 * doubt.sun().sd()));
        assertThat(Files.readString(fitted))
                .contains("# wind_factor, absorptance and shaded_share of [pool] were fitted");

        StringWriter forecast = new StringWriter();
        assertThat(run(forecast, err, "forecast", fitted.toString(), "--full")).isZero();
        assertThat(forecast.toString().replaceAll("\\s+", " "))
                .contains(
                        "fitted to a log of its water (southern-summer-log.csv, 2002-01-",
                        "wind at pool as fitted",
                        "wind at pool in other seasons than the log's")
                .doesNotContain("wind at pool over the station's");
    }

    /** The sample is a typical year, whose rows have none: nobody said that the log's hours had this weather. */
    @Test
    void aWeatherWithoutYearsIsRefused() {
        StringWriter err = new StringWriter();
        assertThat(run(
                        new StringWriter(),
                        err,
                        "fit",
                        SCENARIO.toString(),
                        "--log",
                        LOG.toString(),
                        "--weather",
                        WEATHER.toString()))
                .isEqualTo(1);
        assertThat(err.toString())
                .contains("no year in its rows", "A typical year cannot stand for them", "add a column \"year\"")
                .doesNotContain("fault");
    }

    @Test
    void saysWhatIsWrongWithALog() throws IOException {
        Path log =
                Files.writeString(folder.resolve("log.csv"), "time,water_degC\n2002-01-10 00:00,22.1\n10.1.02,22.0\n");
        StringWriter err = new StringWriter();
        assertThat(run(
                        new StringWriter(),
                        err,
                        "fit",
                        SCENARIO.toString(),
                        "--log",
                        log.toString(),
                        "--weather",
                        WEATHER.toString(),
                        "--weather-year",
                        "2002"))
                .isEqualTo(1);
        assertThat(err.toString()).contains("log.csv:3: found \"10.1.02\"; expected a time such as 2019-06-01 14:30");
        Files.writeString(log, "time,water_degC\n2002-01-10 00:00,22.1\n2002-01-10 01:00,22.0\n");
        StringWriter few = new StringWriter();
        assertThat(run(
                        new StringWriter(),
                        few,
                        "fit",
                        SCENARIO.toString(),
                        "--log",
                        log.toString(),
                        "--weather",
                        WEATHER.toString(),
                        "--weather-year",
                        "2002"))
                .isEqualTo(1);
        assertThat(few.toString())
                .contains("a fit needs 30 of them over 7 days")
                .doesNotContain("fault");
    }

    private static int run(StringWriter out, StringWriter err, String... arguments) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
    }

    /** What a logger with a clock on summer time would have written of the invented pool in the invented weather. */
    private static String madeLog() throws IOException {
        WeatherRecord weather = WeatherFiles.readRecord(WEATHER, RecordOptions.USUAL.withYear(2002));
        Installation truth = TRUTH.in(ScenarioReader.read(SCENARIO).installation());
        RecordLedger run = RecordSimulator.simulate(
                truth, SeasonForcing.of(truth, weather), RecordState.water(FROM, 24), FROM.plusDays(DAYS));
        RandomGenerator random = new Well19937c(11);
        double phi = Math.exp(-1 / FADE_HOURS);
        double error = ERROR_K * random.nextGaussian();
        StringBuilder text = new StringBuilder(
                        "# INVENTED: there is no such pool. Simulated with a wind factor and a share of the sun"
                                + " that the scenario does not know, an error that fades over three days and noise; the clock keeps"
                                + " summer time.\n")
                .append("time,water_degC\n");
        DateTimeFormatter stamp = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
        for (LocalDateTime time = FROM.plusMinutes(20);
                time.isBefore(run.time(run.hours()));
                time = time.plusHours(1)) {
            double shown = run.waterC(time) + error + NOISE_K * random.nextGaussian();
            text.append(stamp.format(time.plusHours(1))).append(String.format(Locale.ROOT, ",%.1f\n", shown));
            error = phi * error + ERROR_K * Math.sqrt(1 - phi * phi) * random.nextGaussian();
        }
        return text.toString();
    }
}
