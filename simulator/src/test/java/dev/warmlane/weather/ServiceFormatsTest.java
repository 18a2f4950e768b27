package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Formats of satellite, reanalysis and weather services give back the year they were made from. */
class ServiceFormatsTest {

    private static final double EXACT = 1e-9;
    /** Dew point from whole percent of relative humidity, K. */
    private static final double DEW_FROM_PERCENT = 0.6;
    /** Beam on the horizontal is rounded to whole W/m², and the sun is 10 degrees up and more, W/m². */
    private static final double BEAM_FROM_HORIZONTAL = 8;

    private static final double SUN_UP_COSINE = 0.174;

    @TempDir
    private Path folder;

    private final InventedYear year = InventedYear.sound();
    private final InventedYear instants = InventedYear.ofInstants();

    @Test
    void nsrdbByTheHour() throws IOException {
        WeatherYear read = Breakage.read(folder, InventedFiles.nsrdb(instants, -5, 30));
        assertSame(instants, read, EXACT, true);
        assertThat(read.findings()).allMatch(f -> f.kind() == WeatherFinding.Kind.NOTE);
        assertThat(read.sun().isHourlyMean()).isFalse();
        assertThat(read.sun().offsetHours(0)).isEqualTo(0.5);
        assertThat(read.site().utcOffsetHours()).isEqualTo(-5);
        assertThat(read.site().name()).isEmpty();
        assertThat(read.source()).startsWith("NSRDB csv");
    }

    @Test
    void nsrdbInUtcIsRolledToTheOffsetOfItsHeader() throws IOException {
        WeatherYear read = Breakage.read(folder, InventedFiles.nsrdb(instants, 0, 30));
        assertSame(instants, read, EXACT, true);
        assertThat(read.findings()).anyMatch(f -> f.message().endsWith("UTC-5, as the file tells it"));
    }

    @Test
    void halfHoursAverageToTheHours() throws IOException {
        InventedYear quarterPast = InventedYear.withCentre(0.25);
        List<String> lines = InventedFiles.nsrdb(quarterPast, -5, 0, 30);
        // the mean of a half-hour that is 40 W/m² brighter and one that is 20 W/m² brighter
        int line = InventedFiles.NSRDB_HEADER + 2 * HourOfYear.of(7, 1, 12) + 1;
        double global = quarterPast.global[HourOfYear.of(7, 1, 12)];
        Breakage.set(lines, line, 7, "" + (global + 40));
        Breakage.set(lines, line + 1, 7, "" + (global + 20));
        WeatherYear read = Breakage.read(folder, lines);
        assertThat(read.globalHorizontalWm2(HourOfYear.of(7, 1, 12))).isEqualTo(global + 30);
        assertThat(read.globalHorizontalWm2(HourOfYear.of(7, 1, 13)))
                .isEqualTo(quarterPast.global[HourOfYear.of(7, 1, 13)]);
        assertThat(read.sun().isHourlyMean()).isTrue();
        assertThat(read.sun().offsetHours(0)).isEqualTo(0.25);
        assertThat(read.findings()).anyMatch(f -> f.message().equals("an hour is the mean of its 2 rows"));
        Breakage.set(lines, line, 7, "-9999");
        assertThat(Breakage.read(folder, lines).findings())
                .as("an hour that lacks a half is filled and told")
                .anyMatch(f -> f.kind() == WeatherFinding.Kind.REPAIR
                        && f.message().startsWith("missing global horizontal irradiance on line " + line + ":"));
    }

    @Test
    void openMeteo() throws IOException {
        List<String> lines = InventedFiles.openMeteo(year, InventedFiles.OPEN_METEO_NAMES);
        WeatherYear read = Breakage.read(folder, lines);
        assertSame(year, read, EXACT, true);
        assertThat(read.longWaveOrigin()).isEqualTo(WeatherYear.LongWaveOrigin.CLOUD_COVER);
        assertThat(read.source()).startsWith("Open-Meteo csv");
        lines.set(3, lines.get(3).replace("(km/h)", "(m/s)"));
        assertThat(Breakage.read(folder, lines).windSpeedMs(4000)).isCloseTo(3.6 * year.wind[4000], within(EXACT));
    }

    @Test
    void pvgisJsonIsAsTheCsv() throws IOException {
        WeatherYear json = Breakage.read(folder, InventedFiles.pvgisJson(instants));
        WeatherYear csv = Breakage.read(folder, instants.pvgis());
        assertSame(instants, json, DEW_FROM_PERCENT, true);
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            assertThat(json.skyLongWaveWm2(h)).isEqualTo(csv.skyLongWaveWm2(h));
            assertThat(json.sun().zenithDeg(h)).isEqualTo(csv.sun().zenithDeg(h));
        }
        assertThat(json.source()).startsWith("PVGIS TMY json");
    }

    @Test
    void pvgisSeriesOnTheHorizontal() throws IOException {
        WeatherYear read = Breakage.read(folder, InventedFiles.pvgisSeries(instants, 0));
        assertBeamOnTheHorizontal(instants, read);
        assertThat(read.sun().offsetHours(0)).isEqualTo(0.5);
        int noon = HourOfYear.of(7, 1, 12);
        double lowest = Double.MAX_VALUE;
        for (int h = noon - 12; h < noon + 12; h++) {
            lowest = Math.min(lowest, read.airTemperatureC(h));
        }
        assertThat(read.dewPointC(noon)).as("FAO 56, equation 48").isEqualTo(lowest);
        assertThat(read.findings().get(0).message()).startsWith("the file has no humidity");
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void testReferenceYears(boolean of2010) throws IOException {
        InventedYear there = InventedYear.at(
                of2010 ? new Site("Invented", 49.5, 8.25, 96, 1) : new Site("Invented", 49.49, 8.464, 103, 1));
        WeatherYear read = Breakage.read(folder, InventedFiles.testReference(there, of2010));
        assertThat(read.site().latitudeDeg()).isCloseTo(of2010 ? 49.5 : 49.490, within(0.001));
        assertThat(read.site().longitudeDeg()).isCloseTo(of2010 ? 8.25 : 8.464, within(0.001));
        assertThat(read.site().elevationM()).isEqualTo(of2010 ? 96 : 103);
        assertThat(read.site().utcOffsetHours()).isEqualTo(1);
        assertBeamOnTheHorizontal(there, read);
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            assertThat(read.windSpeedMs(h)).isEqualTo(there.wind[h]);
            assertThat(read.pressureKpa(h)).isCloseTo(there.pressure[h], within(EXACT));
            assertThat(read.dewPointC(h)).isCloseTo(there.dew[h], within(DEW_FROM_PERCENT));
            assertThat(read.skyLongWaveWm2(h)).isEqualTo(there.longWave[h]);
        }
        assertThat(read.closure()).as("parts that agree at any hour test none").isNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16LE", "UTF-16BE"})
    void wideLetters(String charset) throws IOException {
        String text = String.join("\r\n", year.epw());
        for (String start : List.of("\uFEFF", "")) {
            Path file = folder.resolve("wide.epw");
            Files.write(file, (start + text).getBytes(Charset.forName(charset)));
            assertSame(year, WeatherFiles.read(file), EXACT, true);
        }
    }

    @Test
    void gzAndZip() throws IOException {
        byte[] epw = String.join("\n", year.epw()).getBytes(StandardCharsets.UTF_8);
        Path gz = folder.resolve("year.epw.gz");
        try (GZIPOutputStream out = new GZIPOutputStream(Files.newOutputStream(gz))) {
            out.write(epw);
        }
        assertSame(year, WeatherFiles.read(gz), EXACT, true);
        Path zip = Files.write(
                folder.resolve("year.zip"),
                zip(
                        "readme.txt",
                        "a description\n".getBytes(StandardCharsets.UTF_8),
                        "folder/year.epw",
                        epw,
                        "__MACOSX/year.epw",
                        epw));
        WeatherYear read = WeatherFiles.read(zip);
        assertSame(year, read, EXACT, true);
        assertThat(read.findings()).singleElement().satisfies(f -> assertThat(f.message())
                .isEqualTo("read from folder/year.epw in the archive"));
    }

    static byte[] zip(Object... namesAndBytes) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (int i = 0; i < namesAndBytes.length; i += 2) {
                out.putNextEntry(new ZipEntry((String) namesAndBytes[i]));
                out.write((byte[]) namesAndBytes[i + 1]);
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private static void assertBeamOnTheHorizontal(InventedYear year, WeatherYear read) {
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            assertThat(read.globalHorizontalWm2(h)).isCloseTo(year.global[h], within(EXACT));
            assertThat(read.diffuseHorizontalWm2(h)).isEqualTo(year.diffuse[h]);
            assertThat(read.airTemperatureC(h)).isEqualTo(year.air[h]);
            if (read.sun().cosZenith(h) > SUN_UP_COSINE) {
                assertThat(read.directNormalWm2(h)).isCloseTo(year.direct[h], within(BEAM_FROM_HORIZONTAL));
            }
        }
    }

    private static void assertSame(InventedYear year, WeatherYear read, double dewTolerance, boolean pressureToo) {
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            assertThat(read.globalHorizontalWm2(h)).isEqualTo(year.global[h]);
            assertThat(read.directNormalWm2(h)).isEqualTo(year.direct[h]);
            assertThat(read.diffuseHorizontalWm2(h)).isEqualTo(year.diffuse[h]);
            assertThat(read.airTemperatureC(h)).isCloseTo(year.air[h], within(EXACT));
            assertThat(read.dewPointC(h)).isCloseTo(year.dew[h], within(dewTolerance));
            assertThat(read.windSpeedMs(h)).isCloseTo(year.wind[h], within(EXACT));
            if (pressureToo) {
                assertThat(read.pressureKpa(h)).isCloseTo(year.pressure[h], within(EXACT));
            }
        }
        assertThat(read.closure()).isNotNull().satisfies(c -> {
            assertThat(c.usedShiftHours()).isEqualTo(c.statedShiftHours());
            assertThat(c.usedRmseWm2()).isLessThan(0.6);
        });
    }
}
