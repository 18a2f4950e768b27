package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.Mounting;
import dev.warmlane.heater.Boiler;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.season.Installation;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DemoScenariosTest {

    @TempDir
    private Path folder;

    private static List<Path> demos() {
        return Demos.all();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void readsWithoutAWarning(Path demo) throws IOException {
        assertThat(Demos.read(demo, folder).warnings()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void namesAWeatherSampleThatIsThere(Path demo) throws IOException {
        Assumptions.assumeTrue(Files.isDirectory(Path.of("..", "weather-samples")), "no weather-samples in this tree");

        assertThat(ScenarioReader.read(demo).weatherFile()).isRegularFile();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void saysThatItIsInvented(Path demo) throws IOException {
        assertThat(Files.readString(demo)).contains("INVENTED");
    }

    @Test
    void municipalPoolIsWhatItsFileSays() throws IOException {
        Scenario scenario = Demos.read(Demos.file("municipal-25m.toml"), folder);

        Installation built = scenario.installation();
        assertThat(scenario.report())
                .isEqualTo(new ReportSettings("Municipal outdoor pool: season forecast", UnitSystem.METRIC));
        assertThat(scenario.weatherFile()).isEqualTo(folder.resolve("weather-samples/cool-coast.csv"));
        assertThat(built.pool().areaM2()).isEqualTo(312.5);
        assertThat(built.pool().setting()).isEqualTo(new PoolSetting.Outdoor(0.30, 0.05, 1));
        assertThat(built.collectorAreaM2()).isEqualTo(210);
        assertThat(built.arrays().get(0).panelAreaM2()).isEqualTo(2.5);
        assertThat(built.makeUp().litresPerDay()).isCloseTo(6000, within(1e-9));
        assertThat(((Boiler) built.heater().orElseThrow()).efficiency()).isCloseTo(0.85, within(1e-12));
        assertThat(built.season().days()).isEqualTo(27 + 30 + 31 + 31 + 15);
        assertThat(built.cover().orElseThrow().drawn().at(HourOfYear.of(6, 1, 20)))
                .isEqualTo(1);
        assertThat(built.cover().orElseThrow().drawn().at(HourOfYear.of(6, 1, 8)))
                .isZero();
        assertThat(built.bathers().presence().at(HourOfYear.of(7, 1, 14))).isEqualTo(0.5);
        assertThat(built.bathers().presence().at(HourOfYear.of(9, 1, 14))).isCloseTo(0.15, within(1e-12));
        assertThat(built.bathers().presence().at(HourOfYear.of(7, 1, 21))).isZero();
    }

    @Test
    void rowLengthGivesTheNumberOfRows() throws IOException {
        Installation built = Demos.read(Demos.file("us-club.toml"), folder).installation();

        assertThat(((Mounting.OpenRack) built.arrays().get(1).mounting()).rows())
                .isEqualTo(2);
    }

    @Test
    void southernSeasonRunsOverNewYear() throws IOException {
        Installation built =
                Demos.read(Demos.file("southern-summer.toml"), folder).installation();

        assertThat(built.season().days()).isEqualTo(12 + 30 + 31 + 31 + 28 + 31 + 10);
    }

    @Test
    void indoorPoolIsClosedInTheHolidaysAndOpenAllYearElse() throws IOException {
        Installation built =
                Demos.read(Demos.file("indoor-school.toml"), folder).installation();

        assertThat(built.season().days()).isEqualTo(365);
        assertThat(built.season().openHours().hoursPerYear()).isEqualTo((365 - 62) * 10);
        assertThat(built.bathers().presence().hoursPerYear()).isEqualTo((365 - 62) * 10 * 0.5);
    }
}
