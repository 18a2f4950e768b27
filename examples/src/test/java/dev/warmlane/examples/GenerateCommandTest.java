package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.weather.PlainWeatherWriter;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.generate.NormalsFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GenerateCommandTest extends CommandRuns {

    private static final Path NORMALS = Path.of("..", "weather-samples", "cool-coast.normals.csv");

    /** Values are written with three decimals. */
    private static final double WRITTEN = 0.0005;

    @TempDir
    private Path folder;

    @Test
    void writesTheYearOfTheNormals() throws IOException {
        Path file = folder.resolve("year.csv");
        assertThat(run("generate", NORMALS.toString(), "-o", file.toString())).isZero();

        WeatherYear year = NormalsFile.read(NORMALS).generate();
        WeatherYear read = WeatherFiles.read(file);
        assertSame(read, year);
        assertThat(read.source()).contains("generated from monthly normals, seed 48001");
        assertThat(out.toString()).contains("By month", "not a measured one", "Written:", file.toString());
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void theLibraryWritesTheSameFile() throws IOException {
        Path asked = folder.resolve("asked.csv");
        assertThat(run("generate", NORMALS.toString(), "-o", asked.toString())).isZero();
        Path file = folder.resolve("year.csv");
        write(NORMALS, file);
        assertThat(asked).hasSameTextualContentAs(file);
    }

    /** As the guide shows it. */
    private static void write(Path normals, Path file) throws IOException {
        WeatherYear year = NormalsFile.read(normals).generate();
        PlainWeatherWriter.write(year, file);
    }

    private static void assertSame(WeatherYear read, WeatherYear year) {
        for (int hour = 0; hour < 8760; hour++) {
            assertThat(Math.abs(read.globalHorizontalWm2(hour) - year.globalHorizontalWm2(hour)))
                    .isLessThanOrEqualTo(WRITTEN);
            assertThat(Math.abs(read.windSpeedMs(hour) - year.windSpeedMs(hour)))
                    .isLessThanOrEqualTo(WRITTEN);
        }
    }

    @Test
    void anotherSeedGivesOtherDaysAndWritesNothingUnasked() {
        assertThat(run("generate", NORMALS.toString(), "--seed", "7", "-u", "us"))
                .isZero();

        assertThat(out.toString()).contains("the seed 7", "°F").doesNotContain("Written:");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void theNormalsAreNotOverwritten() throws IOException {
        Path mine = Files.copy(NORMALS, folder.resolve("mine.csv"));

        assertThat(run("generate", mine.toString(), "-o", mine.toString())).isEqualTo(2);

        assertThat(err.toString()).contains("is the file of normals");
        assertThat(mine).hasSameTextualContentAs(NORMALS);
    }

    @Test
    void whatIsWrongWithTheNormalsIsAProblemOfTheInput() throws IOException {
        String text = Files.readString(NORMALS);
        Path wrongCell = Files.writeString(folder.resolve("cell.csv"), text.replace("6,5.95,", "6,much,"));
        Path tooSunny = Files.writeString(folder.resolve("sunny.csv"), text.replace("12,0.85,", "12,8.5,"));

        assertThat(run("generate", wrongCell.toString())).isEqualTo(1);
        assertThat(run("generate", tooSunny.toString())).isEqualTo(1);

        assertThat(err.toString().lines())
                .hasSize(2)
                .anyMatch(line -> line.contains("cell.csv") && line.contains("\"much\""))
                .anyMatch(line -> line.contains("sunny.csv"));
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void helpShowsAnExample() {
        assertThat(run("generate", "--help")).isZero();
        assertThat(out.toString()).contains("Example:", "warmlane generate weather-samples/cool-coast.normals.csv");
    }
}
