package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.site.HourOfYear;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every format gives back the year it was made from, in all the spellings that open files come in. */
class FormatsTest {

    /** Dew point from whole percent of relative humidity. */
    private static final double DEW_FROM_PERCENT = 0.6;

    /** Binary fractions of decimal numbers. */
    private static final double EXACT = 1e-9;

    @TempDir
    private Path folder;

    private static final InventedYear YEAR = InventedYear.sound();

    @Test
    void epw() throws IOException {
        WeatherYear read = Breakage.read(folder, YEAR.epw());
        assertSame(read, EXACT);
        assertThat(read.findings()).isEmpty();
        assertThat(read.longWaveOrigin()).isEqualTo(WeatherYear.LongWaveOrigin.FILE);
        assertThat(read.skyLongWaveWm2(4000)).isEqualTo(YEAR.longWave[4000]);
        assertThat(read.source()).startsWith("EPW");
    }

    @Test
    void tmy3() throws IOException {
        WeatherYear read = Breakage.read(folder, YEAR.tmy3());
        assertSame(read, EXACT);
        assertThat(read.site().name()).isEqualTo("INVENTED, PLACE");
        assertThat(read.longWaveOrigin()).isEqualTo(WeatherYear.LongWaveOrigin.CLOUD_COVER);
    }

    @Test
    void tmy2() throws IOException {
        assertSame(Breakage.read(folder, YEAR.tmy2()), EXACT);
    }

    @Test
    void pvgisIsRolledToStandardTime() throws IOException {
        WeatherYear read = Breakage.read(folder, InventedYear.ofInstants().pvgis());
        assertSame(InventedYear.ofInstants(), read, DEW_FROM_PERCENT, true);
        assertThat(read.site().utcOffsetHours()).isEqualTo(-5);
        assertThat(read.sun().isHourlyMean()).isFalse();
        assertThat(read.sun().calendarYear(0)).isEqualTo(InventedYear.CALENDAR_YEAR);
        assertThat(read.sun().calendarYear(HourOfYear.HOURS - 1))
                .as("the last five hours of the local year are of the stamps that open it")
                .isEqualTo(InventedYear.CALENDAR_YEAR - 1);
    }

    @Test
    void pvgisInAnOffsetOfTheUser() throws IOException {
        Path file = Breakage.write(
                folder, String.join("\n", InventedYear.ofInstants().pvgis()));
        WeatherYear read = WeatherFiles.read(file, WeatherReadOptions.defaults().withUtcOffsetHours(-5.5));
        assertThat(read.site().utcOffsetHours()).isEqualTo(-5.5);
        assertThat(read.globalHorizontalWm2(4011)).isEqualTo(YEAR.global[4012]);
        assertThat(read.sun().offsetHours(0)).isCloseTo(1.0, within(EXACT));
        assertThat(read.sun().zenithDeg(4011)).isCloseTo(YEAR.sun.zenithDeg(4012), within(1e-4));
    }

    @Test
    void plainCsvGivesBackWhatWasWritten() throws IOException {
        Path file = folder.resolve("plain.csv");
        PlainWeatherWriter.write(YEAR.weather(), file);
        WeatherYear read = WeatherFiles.read(file);
        assertSame(read, EXACT);
        assertThat(read.findings()).isEmpty();
        assertThat(read.skyLongWaveWm2(4000)).isEqualTo(YEAR.longWave[4000]);
        assertThat(read.sun().zenithDeg(4010)).isEqualTo(YEAR.sun.zenithDeg(4010));
        assertThat(read.source()).isEqualTo("plain csv (" + YEAR.weather().source() + "), plain.csv");
        assertThat(folder.toFile().list()).as("no draft stays").containsExactly("plain.csv");
    }

    @Test
    void plainCsvWrittenByHand() throws IOException {
        StringBuilder text = new StringBuilder("# Warmlane plain weather csv\n# name: By Hand\n"
                + "# latitude, degrees north: 36\n# longitude, degrees east: -80\n# elevation, m: 250\n"
                + "# utc offset, h: -5\nmonth,day,hour,global W/m2,direct W/m2,diffuse W/m2,air degC,"
                + "relative humidity %,wind m/s\n");
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            text.append(HourOfYear.monthOf(h) + "," + HourOfYear.dayOfMonth(h) + "," + HourOfYear.hourOfDay(h) + ","
                    + YEAR.global[h] + "," + YEAR.direct[h] + "," + YEAR.diffuse[h] + "," + YEAR.air[h] + ","
                    + YEAR.humidity(h) + "," + YEAR.wind[h] + "\n");
        }
        WeatherYear read = Breakage.read(folder, text.toString());
        assertSame(YEAR, read, DEW_FROM_PERCENT, false);
        assertThat(read.longWaveOrigin()).isEqualTo(WeatherYear.LongWaveOrigin.CLEARNESS);
        assertThat(read.findings())
                .extracting(WeatherFinding::message)
                .anyMatch(m -> m.startsWith("the file has no pressure"))
                .anyMatch(m -> m.contains("Kasten and Czeplak 1980"));
    }

    @Test
    void lineEndingsAndLetters() throws IOException {
        List<String> lines = YEAR.epw();
        lines.set(0, lines.get(0).replace("Invented Place", "Örtchen"));
        assertSame(Breakage.read(folder, String.join("\r\n", lines)), EXACT);
        String mixed = String.join("\r\n", lines.subList(0, 9)) + "\r\n" + String.join("\n", lines.subList(9, 8768));
        assertSame(Breakage.read(folder, mixed), EXACT);
        Path latin = folder.resolve("latin.epw");
        Files.write(latin, String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1));
        assertThat(WeatherFiles.read(latin).site().name()).isEqualTo("Örtchen");
        assertThat(Breakage.read(folder, "\uFEFF" + String.join("\n", lines))
                        .site()
                        .name())
                .isEqualTo("Örtchen");
    }

    @Test
    void epwOf32ColumnsAndMinuteZero() throws IOException {
        List<String> lines = YEAR.epw();
        for (int line = 9; line <= lines.size(); line++) {
            String row = lines.get(line - 1).replace(",60,?9", ",0,?9");
            lines.set(line - 1, row.substring(0, row.length() - ",0,0,0".length()));
        }
        assertSame(Breakage.read(folder, lines), EXACT);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 30, 59})
    void epwWhoseMinuteIsOneConstant(int minute) throws IOException {
        List<String> lines = YEAR.epw();
        lines.replaceAll(line -> line.replace(",60,?9", "," + minute + ",?9"));
        assertSameAndNothingTold(Breakage.read(folder, lines));
    }

    @Test
    void ctrlZAtTheEnd() throws IOException {
        assertSameAndNothingTold(Breakage.read(folder, String.join("\r\n", YEAR.epw()) + "\r\n\u001A"));
        assertSame(Breakage.read(folder, String.join("\n", YEAR.tmy2()) + "\n\u001A\n"), EXACT);
    }

    @Test
    void blankLinesBeforeTheHeader() throws IOException {
        assertSameAndNothingTold(Breakage.read(folder, "\n" + String.join("\n", YEAR.epw())));
        assertSame(Breakage.read(folder, " \n\n" + String.join("\n", YEAR.tmy3())), EXACT);
        assertSame(Breakage.read(folder, "\n" + String.join("\n", YEAR.tmy2())), EXACT);
        assertSameAndNothingTold(Breakage.read(folder, "\n" + plain()));
        WeatherYear pvgis = Breakage.read(
                folder, "\n" + String.join("\n", InventedYear.ofInstants().pvgis()));
        assertSame(InventedYear.ofInstants(), pvgis, DEW_FROM_PERCENT, true);
    }

    @Test
    void everyCellInQuotes() throws IOException {
        assertSameAndNothingTold(Breakage.read(folder, quoted(YEAR.epw())));
        assertSame(Breakage.read(folder, quoted(YEAR.tmy3())), EXACT);
        assertSameAndNothingTold(Breakage.read(folder, quoted(List.of(plain().split("\n", -1)))));
        WeatherYear pvgis =
                Breakage.read(folder, quoted(InventedYear.ofInstants().pvgis()));
        assertSame(InventedYear.ofInstants(), pvgis, DEW_FROM_PERCENT, true);
    }

    @ParameterizedTest
    @CsvSource({"';', false", "';', true", "'\t', false", "'\t', true"})
    void otherSeparatorsAndDecimalCommas(char separator, boolean decimalCommas) throws IOException {
        for (List<String> lines : List.of(YEAR.epw(), YEAR.tmy3(), List.of(plain().split("\n", -1)))) {
            assertSame(Breakage.read(folder, separated(lines, separator, decimalCommas)), EXACT);
        }
        WeatherYear pvgis =
                Breakage.read(folder, separated(InventedYear.ofInstants().pvgis(), separator, decimalCommas));
        assertSame(InventedYear.ofInstants(), pvgis, DEW_FROM_PERCENT, true);
    }

    /** Every line filled up with commas to the longest; the header split at its own commas, or kept in quotes. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void plainCsvSavedByASpreadsheet(boolean headerInQuotes) throws IOException {
        StringBuilder text = new StringBuilder();
        for (String line : plain().split("\n", -1)) {
            boolean remark = line.startsWith("#");
            boolean quotes = headerInQuotes && remark && line.contains(",");
            int cells = quotes || !remark ? line.split(",", -1).length : 2;
            text.append(quotes ? '"' + line + '"' : remark ? line.replace(", ", ",") : line)
                    .append(",".repeat(14 - (quotes ? 1 : cells)))
                    .append("\r\n");
        }
        assertSameAndNothingTold(Breakage.read(folder, text + ",".repeat(13) + "\r\n"));
    }

    @Test
    void pvgisFilledUpWithCommas() throws IOException {
        List<String> lines = InventedYear.ofInstants().pvgis();
        lines.replaceAll(line -> line + ",".repeat(11 - line.split(",", -1).length));
        assertSame(InventedYear.ofInstants(), Breakage.read(folder, lines), DEW_FROM_PERCENT, true);
    }

    @Test
    void leapDayIsLeftOut() throws IOException {
        List<String> lines = YEAR.epw();
        int firstOfMarch = HourOfYear.of(3, 1, 0) + 9;
        for (int hour = 1; hour <= 24; hour++) {
            lines.add(
                    firstOfMarch + hour - 2, lines.get(firstOfMarch + hour - 26).replace("1999,2,28,", "2000,2,29,"));
        }
        WeatherYear read = Breakage.read(folder, lines);
        assertSame(read, EXACT);
        assertThat(read.findings()).singleElement().satisfies(f -> {
            assertThat(f.kind()).isEqualTo(WeatherFinding.Kind.REPAIR);
            assertThat(f.line()).isEqualTo(firstOfMarch);
            assertThat(f.hours()).isEqualTo(24);
        });
    }

    @Test
    void tmy3AsASpreadsheetSavesIt() throws IOException {
        for (boolean rolled : new boolean[] {false, true}) {
            List<String> lines = YEAR.tmy3();
            for (int h = 0; h < HourOfYear.HOURS; h++) {
                int label = HourOfYear.hourOfDay(h) + 1;
                int dateOf = rolled && label == 24 ? (h + 1) % HourOfYear.HOURS : h;
                int calendar = InventedYear.CALENDAR_YEAR + (dateOf < h ? 1 : 0);
                Breakage.set(
                        lines,
                        h + 3,
                        1,
                        HourOfYear.monthOf(dateOf) + "/" + HourOfYear.dayOfMonth(dateOf) + "/" + calendar);
                Breakage.set(lines, h + 3, 2, label % 24 + ":00");
            }
            WeatherYear read = Breakage.read(folder, lines);
            assertSame(read, EXACT);
            assertThat(read.sun().calendarYear(HourOfYear.HOURS - 1)).isEqualTo(InventedYear.CALENDAR_YEAR);
        }
    }

    @Test
    void rowsMayStartInAnyMonth() throws IOException {
        List<String> lines = YEAR.epw();
        List<String> moved = new java.util.ArrayList<>(lines.subList(0, 8));
        moved.addAll(lines.subList(8 + 181 * 24, lines.size()));
        moved.addAll(lines.subList(8, 8 + 181 * 24));
        WeatherYear read = Breakage.read(folder, moved);
        assertSame(read, EXACT);
        assertThat(read.findings()).isEmpty();
    }

    private String plain() throws IOException {
        Path file = folder.resolve("plain.csv");
        PlainWeatherWriter.write(YEAR.weather(), file);
        return Files.readString(file).strip();
    }

    private static String quoted(List<String> lines) {
        return lines.stream()
                .map(line -> line.startsWith("#")
                        ? '"' + line + '"'
                        : '"'
                                + line.replace("\"", "")
                                        .replace("INVENTED, ", "INVENTED ")
                                        .replace(",", "\",\"")
                                + '"')
                .collect(Collectors.joining("\n"));
    }

    /** As a spreadsheet of another language writes it: header lines of the plain csv are one cell. */
    private static String separated(List<String> lines, char separator, boolean decimalCommas) {
        return lines.stream()
                .map(line -> line.startsWith("#")
                        ? line
                        : line.replace("\"", "")
                                .replace("INVENTED, ", "INVENTED ")
                                .replace(',', separator))
                .map(line -> decimalCommas ? line.replaceAll("(\\d)\\.(\\d)", "$1,$2") : line)
                .collect(Collectors.joining("\r\n"));
    }

    private void assertSameAndNothingTold(WeatherYear read) {
        assertSame(read, EXACT);
        assertThat(read.findings()).isEmpty();
    }

    private void assertSame(WeatherYear read, double dewTolerance) {
        assertSame(YEAR, read, dewTolerance, true);
    }

    private static void assertSame(InventedYear year, WeatherYear read, double dewTolerance, boolean pressureToo) {
        assertThat(farthest(read::globalHorizontalWm2, year.global)).isZero();
        assertThat(farthest(read::directNormalWm2, year.direct)).isZero();
        assertThat(farthest(read::diffuseHorizontalWm2, year.diffuse)).isZero();
        assertThat(farthest(read::airTemperatureC, year.air)).isLessThanOrEqualTo(EXACT);
        assertThat(farthest(read::dewPointC, year.dew)).isLessThanOrEqualTo(dewTolerance);
        assertThat(farthest(read::windSpeedMs, year.wind)).isLessThanOrEqualTo(EXACT);
        if (pressureToo) {
            assertThat(farthest(read::pressureKpa, year.pressure)).isLessThanOrEqualTo(EXACT);
        }
        assertThat(read.closure()).isNotNull().satisfies(c -> {
            assertThat(c.usedShiftHours()).isEqualTo(c.statedShiftHours());
            // rounding of three numbers to whole W/m²
            assertThat(c.usedRmseWm2()).isLessThan(0.6);
        });
    }

    /** The largest difference of any hour; NaN where any is. */
    private static double farthest(IntToDoubleFunction read, double[] made) {
        double farthest = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            farthest = Math.max(farthest, Math.abs(read.applyAsDouble(hour) - made[hour]));
        }
        return farthest;
    }
}
