package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that cannot be read or trusted, each with the message that it must give. */
class RefusalsTest {

    private static final int FIRST = 9;

    @TempDir
    private Path folder;

    private static final InventedYear YEAR = InventedYear.sound();
    private static final List<String> EPW = YEAR.epw();

    private final List<String> epw = new ArrayList<>(EPW);

    @Test
    void unknownFormat() {
        refused(
                "time;temperature\n1;2\n",
                1,
                "time;temperature",
                "the beginning of plain csv, EPW, PVGIS hourly series csv, PVGIS TMY csv, PVGIS TMY json, NSRDB csv");
    }

    @Test
    void commasThatCouldMeanTwoThings() {
        List<String> both = YEAR.epw();
        both.replaceAll(line -> line.replace(',', ';'));
        both.set(5999, both.get(5999).replaceFirst(";(\\d+)\\.(\\d+);", ";$1,$2;"));
        refused(both, 6000, "numbers with a comma, and with a point on line 4385");

        List<String> thousands = YEAR.tmy3();
        thousands.replaceAll(line -> line.replace(',', ';').replace('.', ' '));
        Breakage.setCell(thousands, 7001, 10, "1,013", ';');
        refused(thousands, 7001, "before decimals or between thousands");
    }

    @Test
    void minutesThatChange() {
        Breakage.set(epw, 700, 5, "30");
        WeatherFileException e = refused(epw, 700, "found 30; expected 0 as in the rows before");
        assertThat(e.column()).isEqualTo("minute");
        Breakage.set(epw, FIRST, 5, "61");
        refused(epw, FIRST, "found 61; expected 0 to 60");
    }

    @Test
    void aDecimalComma() {
        Breakage.set(epw, 500, 22, "\"2.5\"");
        epw.set(499, epw.get(499).replace("\"2.5\"", "\"2,5\""));
        refused(epw, 500, "found \"2,5\"; expected a number. Write decimal points, not commas.");
    }

    /** An unquoted decimal comma moves what stands behind it into the next columns. */
    @Test
    void moreCellsThanColumns() {
        epw.set(499, epw.get(499) + ",7");
        refused(epw, 500, "found 36 columns, \"7\" in the last; expected 35 at most", "correct the line");
        List<String> pvgis = InventedYear.ofInstants().pvgis();
        pvgis.set(699, pvgis.get(699).replaceFirst("\\.", ","));
        refused(pvgis, 700, "found 11 columns", "expected 10 at most");
        List<String> tmy3 = YEAR.tmy3();
        tmy3.set(2, tmy3.get(2) + ",5");
        refused(tmy3, 3, "found 12 columns", "expected 11 at most");
    }

    /** Numbers of programming languages are none of a weather file. */
    @ParameterizedTest
    @ValueSource(strings = {"0x1p3", "3.0d", "1f", "Infinity", "1e999"})
    void numbersThatOnlyJavaReads(String cell) {
        Breakage.set(epw, 500, 22, cell);
        refused(epw, 500, "found \"" + cell + "\"; expected a number");
    }

    @Test
    void whatThePlainFormatHasTwice() throws IOException {
        Path file = folder.resolve("plain.csv");
        PlainWeatherWriter.write(YEAR.weather(), file);
        String text = Files.readString(file);
        int names = 1
                + text.lines()
                        .toList()
                        .indexOf(text.lines()
                                .filter(line -> !line.startsWith("#"))
                                .findFirst()
                                .orElseThrow());
        refused(text.replaceFirst("\n(?!#)", "\n# utc offset, h: -6\n"), names, "it a second time, first on line");
        refused(text.replaceFirst("pressure kPa|wind m/s", "air degC"), names, "the column a second time");
    }

    @Test
    void aTimeOffsetThatCannotBe() {
        List<String> pvgis = InventedYear.ofInstants().pvgis();
        pvgis.set(3, "Irradiance Time Offset (h): 1e16");
        refused(pvgis, 4, "found 1.0E16; expected -12 to 12 hours");
    }

    @Test
    void aScenarioFile() {
        refused(
                "# A pool.\n# INVENTED\n\n[site]\nname = \"x\"\n",
                4,
                "the section [site], as a scenario file has; expected a weather file");
        refused("[[collectors]]  # first\narea = \"10 m2\"\n", 1, "[[collectors]]");
    }

    @Test
    void emptyAndBinary() {
        refused(" \n", 0, "an empty file");
        refused("\u0007\0\u0004\0\0", 0, "bytes that are not text");
        refused("PK\u0003\u0004\0\0", 0, "an archive of 0 files, none of them weather");
    }

    @Test
    void notThere() {
        assertThatThrownBy(() -> WeatherFiles.read(folder.resolve("nothing.epw")))
                .isInstanceOf(NoSuchFileException.class);
    }

    @Test
    void aFolder() {
        WeatherFileException e = catchThrowableOfType(WeatherFileException.class, () -> WeatherFiles.read(folder));
        assertThat(e).hasMessageStartingWith(folder + ": found a folder; expected a weather file.");
    }

    @Test
    void aCellThatIsNoNumber() {
        Breakage.set(epw, 500, 22, "calm");
        WeatherFileException e = refused(epw, 500, "found \"calm\"; expected a number");
        assertThat(e.column()).isEqualTo("wind speed (field 22)");
        assertThat(e.found()).isEqualTo("\"calm\"");
        assertThat(e.expected()).isEqualTo("a number");
        assertThat(e.remedy()).isNotBlank();
        assertThat(e.file().getFileName()).hasToString("broken.txt");
        assertThat(e)
                .hasMessageStartingWith(folder.resolve("broken.txt") + ":500: wind speed (field 22): found \"calm\"");
    }

    @Test
    void aLineCutOff() {
        epw.set(700, epw.get(700).substring(0, 40));
        refused(epw, 701, "columns", "35 as in the rows before");
    }

    @Test
    void aRecordCutOff() {
        List<String> tmy2 = YEAR.tmy2();
        tmy2.set(99, tmy2.get(99).substring(0, 100));
        refused(tmy2, 100, "100 characters", "a record of 142");
    }

    @Test
    void aRecordThatMoved() {
        List<String> tmy2 = YEAR.tmy2();
        tmy2.set(99, "x" + tmy2.get(99).replace("19", "?9"));
        WeatherFileException e = refused(tmy2, 100, "a whole number");
        assertThat(e.column()).contains("places");
    }

    @Test
    void anHourTwice() {
        epw.add(1000, epw.get(999));
        refused(epw, 1001, "a second time, first on line 1000", "every hour of the year once");
    }

    @Test
    void aDateThatIsNot() {
        Breakage.set(epw, 2000, 3, "31");
        Breakage.set(epw, 2000, 2, "4");
        refused(epw, 2000, "month 4, day 31", "a date of the year and an hour of 1 to 24");
    }

    @Test
    void halfAYear() {
        refused(epw.subList(0, 4388), 0, "4380 hourly rows", "8760");
    }

    @Test
    void aFileCutOffSaysWhereItEnds() {
        refused(epw.subList(0, 4388), 0, "missing are the hours from 07-02 12:00 to 12-31 23:00, all of August,");
    }

    @Test
    void aFileCutOffWithinALineSaysSo() {
        String whole = String.join("\n", epw.subList(0, 4388));
        refused(whole.substring(0, whole.length() - 60), 4388, "The file ends within this line, it was cut off");
    }

    @Test
    void monthsThatAreMissingAreNamed() {
        epw.subList(FIRST - 1 + HourOfYear.firstHourOf(7), FIRST - 1 + HourOfYear.firstHourOf(8))
                .clear();
        epw.subList(FIRST - 1 + HourOfYear.firstHourOf(2), FIRST - 1 + HourOfYear.firstHourOf(3))
                .clear();
        refused(
                epw,
                0,
                "7344 hourly rows",
                "missing are 1416 hours, the first 02-01 00:00, the last 07-31 23:00, and all of February, July");
    }

    @Test
    void notHourly() {
        epw.set(7, "DATA PERIODS,1,4,Data,Sunday, 1/ 1,12/31");
        refused(epw, 8, "found 4; expected 1");
    }

    @Test
    void aHeaderThatCannotBe() {
        Breakage.set(epw, 1, 7, "136.0");
        refused(epw, 1, "latitude must be -90 to 90 degrees");
    }

    @Test
    void noNamesOfColumns() {
        List<String> tmy3 = YEAR.tmy3();
        Breakage.set(tmy3, 2, 7, "Temperature");
        WeatherFileException e = refused(tmy3, 2, "no such column");
        assertThat(e.column()).isEqualTo("Dry-bulb (C)");
    }

    @Test
    void aLongGap() {
        for (int line = 3000; line < 3012; line++) {
            Breakage.set(epw, line, 7, "99.9");
        }
        WeatherFileException e = refused(epw, 3000, "12 hours in a row without a value", "gaps of at most 6 hours");
        assertThat(e.column()).isEqualTo("air temperature");
    }

    @Test
    void aDayWithoutIrradiance() {
        int line = FIRST + HourOfYear.of(6, 1, 0);
        for (int hour = 0; hour < 24; hour++) {
            Breakage.set(epw, line + hour, 14, "9999");
        }
        WeatherFileException e = refused(epw, line + 5, "hours in a row without a value", "3 in daylight");
        assertThat(e.column()).isEqualTo("global horizontal irradiance");
    }

    @Test
    void aColumnThatIsEmpty() {
        for (int line = FIRST; line < FIRST + HourOfYear.HOURS; line++) {
            Breakage.set(epw, line, 16, "9999");
        }
        assertThat(refused(epw, 0, "no value in the whole year").column()).isEqualTo("diffuse horizontal irradiance");
    }

    @ParameterizedTest
    @CsvSource({
        "7, 1, 273.15, air temperature, -65 to 60 °C, Is the column in kelvin?",
        "7, 1.8, 32, air temperature, -65 to 60 °C, Is the column in degrees Fahrenheit?",
        "14, 3.6, 0, global horizontal irradiance, 0 to 1500 W/m², Is the column in kJ/m²?",
        "22, 0, -5, wind speed, 0 to 50 m/s, a code for missing values?",
        "22, 20, 0, wind speed, 0 to 50 m/s, 'Is the column in km/h, mph or knots?'"
    })
    void aColumnOfWhichMuchCannotBe(
            int cell, double factor, double offset, String column, String allowed, String guess) {
        // the code for a missing temperature would hide kelvin in an EPW file
        List<String> lines = cell == 7 ? YEAR.tmy3() : epw;
        int at = cell == 7 ? tmy3Column("Dry-bulb (C)") : cell;
        int first = lines == epw ? FIRST : 3;
        for (int line = first; line < first + HourOfYear.HOURS; line++) {
            double value = Double.parseDouble(Breakage.get(lines, line, at));
            Breakage.set(lines, line, at, String.format(Locale.ROOT, "%.1f", value * factor + offset));
        }
        WeatherFileException e =
                catchThrowableOfType(WeatherFileException.class, () -> Breakage.read(folder, String.join("\n", lines)));
        assertThat(e).isNotNull().hasMessageContainingAll("impossible values, ", " first", allowed, guess);
        assertThat(e.column()).isEqualTo(column);
        assertThat(e.line()).isGreaterThanOrEqualTo(first);
    }

    private int tmy3Column(String name) {
        return List.of(YEAR.tmy3().get(1).split(",", -1)).indexOf(name) + 1;
    }

    @Test
    void aColumnThatOnlyLooksMissing() {
        for (int line = FIRST; line < FIRST + HourOfYear.HOURS; line++) {
            Breakage.set(epw, line, 7, "293.1");
        }
        refused(epw, 0, "only what counts as a code for a missing value, 293.1");
    }

    @Test
    void humidityAsAFractionWhereThereIsNothingElse() {
        List<String> pvgis = YEAR.pvgis();
        for (int line = 6; line < 6 + HourOfYear.HOURS; line++) {
            Breakage.set(pvgis, line, 3, "0.5");
        }
        refused(pvgis, 11, "no value above 1.2, 0.5 first", "Is the column a fraction of 1 and not in %?");
    }

    @Test
    void noHumidityLeft() {
        List<String> pvgis = YEAR.pvgis();
        for (int line = 6; line < 6 + HourOfYear.HOURS; line++) {
            Breakage.set(pvgis, line, 3, line == 6 ? "50" : "0");
        }
        refused(pvgis, 7, "8759 missing values");
    }

    @Test
    void aLongGapThatWasNotOneInTheFile() {
        for (int line = 3000; line < 3012; line++) {
            Breakage.set(epw, line, 7, line < 3004 ? "99.9" : "-80.5");
        }
        refused(epw, 3000, "12 hours in a row", "8 of them were thrown out because they cannot be, -80.5 °C first");
    }

    @Test
    void aConstantTemperature() {
        for (int line = FIRST; line < FIRST + HourOfYear.HOURS; line++) {
            Breakage.set(epw, line, 7, "20.0");
        }
        refused(epw, FIRST, "the same value in the whole year");
    }

    @Test
    void irradianceThatDoesNotClose() throws IOException {
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            Breakage.set(epw, FIRST + h, 15, Double.toString(Math.rint(YEAR.global[h] * 0.9)));
        }
        refused(epw, 0, "all year global irradiance that differs from diffuse plus beam by", "cannot be trusted");
        Path file = Breakage.write(folder, String.join("\n", epw));
        WeatherYear insisted =
                WeatherFiles.read(file, WeatherReadOptions.defaults().withCentreHours(0.5));
        assertThat(insisted.findings())
                .anySatisfy(f -> assertThat(f.message()).contains("the parts come from different sources"));
    }

    /** The two numbers are of the same hours, so that the best time is never worse than the one taken. */
    @Test
    void theBestTimeIsNotWorseThanTheOneTaken() {
        Breakage.set(epw, 1, 7, "-36.0");
        WeatherFileException e = refused(epw, 0, "all year global irradiance that differs");
        Matcher numbers = Pattern.compile(
                        "by (\\d+) W/m² \\(root mean square\\) at the time taken and by (\\d+) at the best one")
                .matcher(e.found());
        assertThat(numbers.find()).isTrue();
        assertThat(Integer.parseInt(numbers.group(2))).isLessThanOrEqualTo(Integer.parseInt(numbers.group(1)));
    }

    @Test
    void oneMonthThatDoesNotClose() {
        for (int h = HourOfYear.firstHourOf(5); h < HourOfYear.firstHourOf(6); h++) {
            Breakage.set(epw, FIRST + h, 14, Double.toString(Math.rint(YEAR.global[(h + 4000) % HourOfYear.HOURS])));
        }
        refused(epw, FIRST + HourOfYear.firstHourOf(5), "in May global irradiance that differs");
    }

    @Test
    void oneMonthOfAnotherClock() {
        int first = FIRST + HourOfYear.firstHourOf(3);
        Breakage.shift(epw, first, first + 31 * 24 - 1, 8, 14, 16);
        refused(epw, first, "in March irradiance that closes 8 hours later than in the rest of the year");
    }

    @Test
    void eastForWest() {
        Breakage.set(epw, 1, 8, "80.0");
        refused(
                epw,
                1,
                "irradiance that follows the sun only 10 h 40 min earlier",
                "It would close with longitude -80",
                "Check longitude and UTC offset");
    }

    @Test
    void southForNorth() {
        Breakage.set(epw, 1, 7, "-36.0");
        refused(
                epw,
                0,
                "It would close with latitude 36: the header lost a sign",
                "give irradiance_time in [site] of the scenario, or --irradiance-time");
    }

    /** Far in the west of its zone: nearer to the sun's time than to the clock that is kept. */
    @Test
    void anOffsetThatWouldFitIsNamed() {
        List<String> west =
                InventedYear.at(new Site("Invented Place", 36, -20, 250, 0)).epw();
        Breakage.set(west, 1, 9, "-1.5");
        refused(west, 1, "With UTC+0 in place of UTC-1.5 it would follow", "give utc_offset in [site]");
    }

    @Test
    void plainCsv() throws IOException {
        Path file = folder.resolve("plain.csv");
        PlainWeatherWriter.write(YEAR.weather(), file);
        String text = Files.readString(file);
        refused(text.replace("# utc offset, h: -5.0\n", ""), 0, "no header line \"# utc offset, h: ...\"");
        refused(text.replace("wind m/s", "wind km/h"), 11, "a column that is not known");
        refused(text.replace("mean over the hour", "sometimes"), 8, "\"sometimes\"", "mean over the hour or instant");
    }

    @Test
    void pvgisWithOtherColumns() {
        List<String> pvgis = YEAR.pvgis();
        pvgis.set(4, pvgis.get(4).replace("Gb(n)", "Gb(i)"));
        refused(pvgis, 5, "Gb(i)", "Gb(n)");
    }

    @Test
    void tmy3AtHalfHours() {
        List<String> tmy3 = YEAR.tmy3();
        Breakage.set(tmy3, 30, 2, "04:30");
        refused(tmy3, 30, "\"04:30\"", "a full hour");
    }

    private WeatherFileException refused(List<String> lines, int line, String... words) {
        return refused(String.join("\n", lines), line, words);
    }

    private WeatherFileException refused(String text, int line, String... words) {
        WeatherFileException e = catchThrowableOfType(WeatherFileException.class, () -> Breakage.read(folder, text));
        assertThat(e).isNotNull().hasMessageContainingAll(words);
        assertThat(e.line()).isEqualTo(line);
        return e;
    }
}
