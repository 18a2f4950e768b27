package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is known and unusable is named as what it is; what is broken says where. */
class ServiceRefusalsTest {

    @TempDir
    private Path folder;

    private final InventedYear year = InventedYear.sound();
    private final InventedYear instants = InventedYear.ofInstants();

    @Test
    void aSeriesOnATiltedPlane() throws IOException {
        refused(
                InventedFiles.pvgisSeries(instants, 35),
                ":6: Slope: found a PVGIS hourly series on a tilted plane",
                "fetch the hourly series again with slope 0");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "%PDF-1.7 and more|a PDF document|Fetch the weather itself",
                "<!DOCTYPE html><html>|a web page (HTML)|fetch the file that the page links to",
                "CDF\1 and more|a NetCDF or HDF file|Fetch the weather itself",
                "GRIB and more|a GRIB file|Fetch the weather itself",
                "valid_time,u10,v10,d2m,t2m,sp,ssrd,strd|an ERA5 series, whose irradiance (ssrd) is global alone|Open-Meteo"
            })
    void otherThings(String start, String found, String remedy) throws IOException {
        refused(List.of(start), "found " + found, remedy);
    }

    @Test
    void officeDocuments() throws IOException {
        byte[] any = {1};
        refused(
                ServiceFormatsTest.zip("[Content_Types].xml", any, "xl/workbook.xml", any),
                "found a workbook",
                "as csv");
        refused(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0}, "found a workbook", "as csv");
    }

    @Test
    void archives() throws IOException {
        byte[] epw = String.join("\n", year.epw()).getBytes(StandardCharsets.UTF_8);
        refused(
                ServiceFormatsTest.zip("a.epw", epw, "b.epw", epw),
                "found an archive of several weather files: a.epw, b.epw",
                "Unpack it and name");
        refused(
                ServiceFormatsTest.zip("a.txt", "words".getBytes(StandardCharsets.UTF_8)),
                "found an archive of 1 files, none of them weather",
                "Unpack it and name");
        byte[] whole = ServiceFormatsTest.zip("a.epw", epw);
        refused(Arrays.copyOf(whole, whole.length / 2), "broken or locked", "Fetch it again");
    }

    @Test
    void archivesThatUnpackToMuch() throws IOException {
        byte[] nothing = new byte[40 << 20];
        refused(
                ServiceFormatsTest.zip("a", nothing, "b", nothing),
                "found an archive that unpacks to more than a weather file may have",
                "Unpack it");
        Object[] many = new Object[202];
        for (int i = 0; i < many.length; i += 2) {
            many[i] = "f" + i;
            many[i + 1] = new byte[0];
        }
        refused(ServiceFormatsTest.zip(many), "found more than 100 files", "Unpack it");
    }

    @Test
    void nsrdb() throws IOException {
        List<String> lines = InventedFiles.nsrdb(instants, -5, 30);
        lines.set(1, lines.get(1).replace("mbar", "inHg"));
        refused(lines, ":2: Pressure Units: found \"inHg\"; expected kPa", "usual units");
        List<String> clock = InventedFiles.nsrdb(instants, -5, 30);
        clock.set(1, clock.get(1).replace(",-5,250,-5,", ",-6,250,-5,"));
        refused(clock, ":2: Time Zone: found -6 beside a local one of -5", "in local standard time");
        List<String> step = InventedFiles.nsrdb(instants, -5, 30);
        Breakage.set(step, 500, 5, "15");
        refused(step, ":500: Minute: found 15", "one time step");
        List<String> twice = InventedFiles.nsrdb(instants, -5, 0, 30);
        twice.add(10, twice.get(9));
        refused(twice, "found 3 rows of one hour; expected 2", "Remove");
    }

    @Test
    void openMeteo() throws IOException {
        List<String> lines = InventedFiles.openMeteo(year, InventedFiles.OPEN_METEO_NAMES);
        lines.set(3, lines.get(3).replace("temperature_2m (°C)", "temperature_2m (°F)"));
        refused(lines, ":4: temperature_2m: found the unit \"°F\"", "in these units");
        List<String> stamp = InventedFiles.openMeteo(year, InventedFiles.OPEN_METEO_NAMES);
        Breakage.set(stamp, 300, 1, "1999-01-13T07:30");
        refused(stamp, ":300: time: found \"1999-01-13T07:30\"; expected a full hour", "average the file to hours");
    }

    @Test
    void json() throws IOException {
        refused(List.of("{\"hourly\": {\"time\": []}}"), "found JSON without the hours", "as csv");
        String whole = InventedFiles.pvgisJson(instants);
        refused(List.of(whole.substring(0, whole.length() / 2)), "found JSON that ends or breaks", "fetch it again");
        refused(
                List.of(whole.replaceFirst("\"T2m\": [-\\d.]+", "\"T2m\": \"warm\"")),
                "record 1, T2m: found \"warm\"; expected a number",
                "Fetch the typical year again");
        refused(List.of(whole.replace("\"latitude\": 36.0, ", "")), "inputs/location/latitude", "the place");
    }

    @Test
    void testReferenceYears() throws IOException {
        List<String> lines = InventedFiles.testReference(year, false);
        lines.set(3, "Hoehenlage        :");
        refused(lines, "no line \"Lage: ...\", nor all of Rechtswert", "Restore the header");
        List<String> cut = InventedFiles.testReference(year, true);
        cut.set(99, "12     1   1   1");
        refused(cut, ":100: found 4 columns; expected 19", "complete the line");
    }

    private void refused(List<String> lines, String... words) throws IOException {
        refused((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8), words);
    }

    private void refused(byte[] bytes, String... words) throws IOException {
        Path file = Files.write(folder.resolve("file"), bytes);
        assertThatThrownBy(() -> WeatherFiles.read(file))
                .isInstanceOf(WeatherFileException.class)
                .satisfies(e -> {
                    for (String word : words) {
                        assertThat(e.getMessage()).contains(word);
                    }
                });
    }
}
