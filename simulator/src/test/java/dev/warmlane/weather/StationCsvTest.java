package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.physics.DiffuseFraction;
import dev.warmlane.site.HourOfYear;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The plain csv of a weather station: global irradiance alone, sunshine alone, its own clock, labels and wind height. */
class StationCsvTest {

    private static final String TIME = "month,day,hour,";
    private static final String AIR = ",air degC,dew point degC,wind m/s";
    private static final double EXACT = 1e-9;

    @TempDir
    private Path folder;

    private final InventedYear year = InventedYear.sound();

    @Test
    void globalAloneIsSplitByErbs() throws IOException {
        WeatherYear read = read(List.of(), TIME + "global W/m2" + AIR);
        int hour = HourOfYear.of(7, 1, 12);
        double outside = read.sun().extraterrestrialNormalWm2(hour) * read.sun().cosZenith(hour);
        double share = DiffuseFraction.erbs(year.global[hour] / outside);
        assertThat(read.globalHorizontalWm2(hour)).isEqualTo(year.global[hour]);
        assertThat(read.diffuseHorizontalWm2(hour)).isCloseTo(share * year.global[hour], within(EXACT));
        assertThat(read.directNormalWm2(hour))
                .isCloseTo((1 - share) * year.global[hour] / read.sun().cosZenith(hour), within(EXACT));
        assertThat(read.closure()).isNull();
        assertThat(read.findings())
                .anyMatch(f -> f.kind() == WeatherFinding.Kind.WARNING
                        && f.message().contains("Erbs, Klein and Duffie 1982")
                        && f.message().contains("Orgill and Hollands 1977")
                        && f.message().contains("67 W/m² root mean square by day"));
    }

    @Test
    void aThirdPartIsFoundFromTwo() throws IOException {
        WeatherYear beam = read(List.of(), TIME + "global W/m2,diffuse W/m2" + AIR);
        WeatherYear diffuse = read(List.of(), TIME + "global W/m2,direct W/m2" + AIR);
        WeatherYear global = read(List.of(), TIME + "direct W/m2,diffuse W/m2" + AIR);
        for (int hour = HourOfYear.of(3, 5, 9); hour < HourOfYear.of(3, 5, 15); hour++) {
            assertThat(beam.directNormalWm2(hour)).isCloseTo(year.direct[hour], within(3.0));
            assertThat(diffuse.diffuseHorizontalWm2(hour)).isCloseTo(year.diffuse[hour], within(2.0));
            assertThat(global.globalHorizontalWm2(hour)).isCloseTo(year.global[hour], within(2.0));
        }
    }

    @Test
    void sunshineAlone() throws IOException {
        WeatherYear read = read(List.of(), TIME + "sunshine h" + AIR);
        int sunny = HourOfYear.of(7, 5, 12);
        while (year.direct[sunny] <= 120) {
            sunny += 24;
        }
        double outside =
                read.sun().extraterrestrialNormalWm2(sunny) * read.sun().cosZenith(sunny);
        assertThat(read.globalHorizontalWm2(sunny))
                .as("FAO 56, equation 35: a quarter and a half")
                .isCloseTo(0.75 * outside, within(EXACT));
        assertThat(read.findings().get(0).message()).contains("sunshine and no irradiance", "Ångström");
    }

    @Test
    void aColumnThatIsThereAndEmptyWasLost() {
        List<String> lines = InventedFiles.plain(year, List.of(), TIME + "global W/m2,direct W/m2,diffuse W/m2" + AIR);
        for (int line = 7; line <= lines.size(); line++) {
            Breakage.set(lines, line, 6, "");
        }
        assertThatThrownBy(() -> Breakage.read(folder, lines))
                .isInstanceOf(WeatherFileException.class)
                .hasMessageContaining("diffuse horizontal irradiance: found no value in the whole year");
    }

    @Test
    void labelsAtTheEndOfTheHour() throws IOException {
        List<String> keys = List.of("# label: end of the hour");
        List<String> lines = InventedFiles.plain(year, keys, TIME + "global W/m2,direct W/m2,diffuse W/m2" + AIR);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            Breakage.set(lines, hour + 8, 3, "" + (HourOfYear.hourOfDay(hour) + 1));
        }
        assertSame(Breakage.read(folder, lines));
    }

    @Test
    void stampsInUtc() throws IOException {
        List<String> keys = List.of("# clock: UTC");
        List<String> lines = InventedFiles.plain(year, keys, TIME + "global W/m2,direct W/m2,diffuse W/m2" + AIR);
        List<String> stamped = new ArrayList<>(lines.subList(0, 6));
        stamped.add("time,global W/m2,direct W/m2,diffuse W/m2" + AIR);
        for (int row = 0; row < HourOfYear.HOURS; row++) {
            int local = Math.floorMod(row - 5, HourOfYear.HOURS);
            String values = lines.get(local + 7).split(",", 4)[3];
            stamped.add(String.format(
                    Locale.ROOT,
                    "1999-%02d-%02d %02d:00,%s",
                    HourOfYear.monthOf(row),
                    HourOfYear.dayOfMonth(row),
                    HourOfYear.hourOfDay(row),
                    values));
        }
        assertSame(Breakage.read(folder, stamped));
    }

    @Test
    void windIsCarriedToTenMetres() throws IOException {
        String names = TIME + "global W/m2,direct W/m2,diffuse W/m2" + AIR;
        WeatherYear ten = read(List.of(), names);
        WeatherYear two = read(List.of("# wind height, m: 2"), names);
        Path file = Breakage.write(folder, String.join("\n", InventedFiles.plain(year, List.of(), names)));
        WeatherYear given =
                WeatherFiles.read(file, WeatherReadOptions.defaults().withWindHeightM(2));
        double factor = Math.pow(10 / 2.0, 0.14); // power law over open ground
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            assertThat(two.windSpeedMs(hour)).isCloseTo(factor * ten.windSpeedMs(hour), within(EXACT));
            assertThat(given.windSpeedMs(hour)).isEqualTo(two.windSpeedMs(hour));
        }
        assertThat(two.findings()).anyMatch(f -> f.message().startsWith("wind was measured at 2 m: times 1.253"));
        assertThatThrownBy(() -> read(List.of("# wind height, m: 0"), names))
                .hasMessageContaining(":6: wind height, m: found 0; expected 1 to 200 m");
    }

    /** A clock an hour off is told where no closure can tell it, and a right one is not. */
    @ParameterizedTest
    @ValueSource(ints = {-6, -5, -4})
    void theMiddleOfTheLightTellsTheClock(int offset) throws IOException {
        List<String> lines = InventedFiles.plain(year, List.of(), TIME + "global W/m2" + AIR);
        lines.set(4, "# utc offset, h: " + offset);
        WeatherYear read = Breakage.read(folder, lines);
        assertThat(read.findings().get(0).message().contains("the middle of the light is"))
                .isEqualTo(offset != -5);
        if (offset != -5) {
            assertThat(read.findings().get(0).message()).contains(offset == -6 ? "later" : "earlier");
        }
    }

    private WeatherYear read(List<String> keys, String names) throws IOException {
        return Breakage.read(folder, InventedFiles.plain(year, keys, names));
    }

    private void assertSame(WeatherYear read) {
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            assertThat(read.globalHorizontalWm2(hour)).isEqualTo(year.global[hour]);
            assertThat(read.directNormalWm2(hour)).isEqualTo(year.direct[hour]);
            assertThat(read.airTemperatureC(hour)).isEqualTo(year.air[hour]);
            assertThat(read.windSpeedMs(hour)).isEqualTo(year.wind[hour]);
        }
        assertThat(read.closure()).isNotNull().satisfies(c -> assertThat(c.usedRmseWm2())
                .isLessThan(0.6));
    }
}
