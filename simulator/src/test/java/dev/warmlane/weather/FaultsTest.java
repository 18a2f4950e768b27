package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.physics.Constants;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.weather.WeatherFinding.Kind;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Faults that real files have, put into a sound file on purpose: each is found, told with its line, and mended. */
class FaultsTest {

    /** Line of an EPW file that holds the first hour of the year. */
    private static final int FIRST = 9;

    private static final int DRY_BULB = 7;
    private static final int DEW_POINT = 8;
    private static final int HUMIDITY = 9;
    private static final int INFRARED = 13;
    private static final int GLOBAL = 14;
    private static final int DIRECT = 15;
    private static final int DIFFUSE = 16;
    private static final int WIND = 22;

    /** Noon in July. */
    private static final int NOON = HourOfYear.of(7, 14, 12);

    /** The shift is found from a quarter of the days, rounded to whole W/m². */
    private static final double SHIFT_H = 0.03;

    @TempDir
    private Path folder;

    private final InventedYear year = InventedYear.sound();
    private final List<String> lines = year.epw();

    @ParameterizedTest
    @ValueSource(doubles = {0.0, 1.0})
    void labelsHalfAnHourOff(double centre) throws IOException {
        WeatherYear read = Breakage.read(folder, InventedYear.withCentre(centre).epw());
        expect(
                read,
                Kind.REPAIR,
                0,
                "the file's sun is half an hour " + (centre > 0.5 ? "early" : "late"),
                "corrected; nothing to do");
        assertThat(read.airTemperatureC(NOON)).as("rows stay").isEqualTo(year.air[NOON]);
        assertThat(read.sun().offsetHours(NOON)).isCloseTo(centre, within(SHIFT_H));
        Closure closure = Objects.requireNonNull(read.closure());
        assertThat(closure.usedRmseWm2()).isLessThan(1);
        assertThat(closure.statedRmseWm2()).isGreaterThan(20);
        assertThat(closure.bestShiftHours()).isCloseTo(centre - 1, within(SHIFT_H));
    }

    @Test
    void labelsThatAreTheStartOfTheHour() throws IOException {
        InventedYear late = InventedYear.withCentre(1.5);
        WeatherYear read = Breakage.read(folder, late.epw());
        // -80 degrees lies 0.33 h west of its zone, so that UTC-6 is farther and the labels are blamed
        expect(
                read,
                Kind.WARNING,
                0,
                "the file's sun is an hour early",
                "the labels are wrong, or the UTC offset in the header is and should be UTC-6 in place of UTC-5",
                "rows are moved by an hour",
                "give utc_offset in [site] of the scenario, or --utc-offset");
        assertThat(read.site().utcOffsetHours()).isEqualTo(-5);
        assertThat(read.sun().offsetHours(NOON)).isCloseTo(0.5, within(SHIFT_H));
        assertThat(read.globalHorizontalWm2(NOON + 1)).isEqualTo(late.global[NOON]);
        assertThat(read.airTemperatureC(NOON + 1)).isEqualTo(late.air[NOON]);
        assertThat(Objects.requireNonNull(read.closure()).usedShiftHours()).isCloseTo(0.5, within(SHIFT_H));
    }

    @Test
    void aTimeGivenByTheUserIsThatOfIrradianceAlone() throws IOException {
        InventedYear late = InventedYear.withCentre(1.5);
        Path file = Breakage.write(folder, String.join("\n", late.epw()));
        WeatherYear read = WeatherFiles.read(file, WeatherReadOptions.defaults().withCentreHours(1.5));
        expect(read, Kind.NOTE, 0, "irradiance is taken an hour later than the file says, as given");
        assertThat(read.sun().offsetHours(NOON)).isEqualTo(0.5);
        assertThat(read.globalHorizontalWm2(NOON + 1)).isEqualTo(late.global[NOON]);
        assertThat(read.airTemperatureC(NOON)).isEqualTo(late.air[NOON]);

        WeatherYear wrong =
                WeatherFiles.read(file, WeatherReadOptions.defaults().withCentreHours(4.5));
        expect(wrong, Kind.WARNING, 0, "4 hours later than the file says, as given", "the sun contradicts");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-6.0", "-4.0", "5.0", "0.0", "9.5", "12.0"})
    void wrongOffsetInTheHeader(String offset) throws IOException {
        Breakage.set(lines, 1, 9, offset);
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.WARNING, 1, "the UTC offset in the header is wrong", "UTC-5 is used");
        assertThat(read.site().utcOffsetHours()).isEqualTo(-5);
        assertThat(read.sun().zenithDeg(NOON)).isCloseTo(year.sun.zenithDeg(NOON), within(1e-9));
    }

    /** West of India keeps a time of half hours. */
    @Test
    void wrongOffsetWhereTimeIsOfHalfHours() throws IOException {
        Site site = new Site("Invented Place", 20, 75, 100, 5.5);
        List<String> epw = InventedYear.at(site).epw();
        Breakage.set(epw, 1, 9, "0.0");
        WeatherYear read = Breakage.read(folder, epw);
        expect(read, Kind.WARNING, 1, "it says UTC+0, but irradiance follows the sun with UTC+5.5", "UTC+5.5 is used");
        assertThat(read.site().utcOffsetHours()).isEqualTo(5.5);

        Breakage.set(epw, 1, 9, "5.0");
        expect(
                Breakage.read(folder, epw),
                Kind.REPAIR,
                0,
                "the file's sun is half an hour late",
                "unless it is the header's UTC offset that is wrong: UTC+5.5 would fit as well as UTC+5");
    }

    /** The sun cannot tell which of the two is wrong; a person can. */
    @Test
    void aLostSignOfLongitudeThatAnotherOffsetWouldExplain() throws IOException {
        List<String> epw =
                InventedYear.at(new Site("Invented Place", 36, -75, 250, -5)).epw();
        Breakage.set(epw, 1, 8, "75.0");
        expect(
                Breakage.read(folder, epw),
                Kind.WARNING,
                1,
                "the UTC offset in the header is wrong",
                "or its longitude -75 if that is where a sign was lost");
    }

    @Test
    void anOffsetGivenByTheUserIsNotReplaced() throws IOException {
        Path file = Breakage.write(folder, String.join("\n", lines));
        WeatherYear read = WeatherFiles.read(file, WeatherReadOptions.defaults().withUtcOffsetHours(-6));
        assertThat(read.site().utcOffsetHours()).isEqualTo(-6);
        expect(read, Kind.NOTE, 1, "UTC-6 is used, as given");
        assertThat(read.sun().zenithDeg(NOON - 1))
                .as("noon in the clock that was given")
                .isCloseTo(year.sun.zenithDeg(NOON), within(0.5));
        assertThat(read.globalHorizontalWm2(NOON - 1)).isEqualTo(year.global[NOON]);
    }

    @Test
    void aFileThatDoesNotTellItsTime() throws IOException {
        List<String> older = InventedYear.ofInstants().pvgis();
        older.remove(3);
        WeatherYear read = Breakage.read(folder, older);
        expect(read, Kind.NOTE, 1, "does not tell the time of its irradiance", "half an hour later than the label");
        assertThat(read.sun().offsetHours(NOON)).isEqualTo(0.5);
        assertThat(read.findings()).noneMatch(f -> f.kind() == Kind.WARNING);
    }

    @Test
    void monthsWithoutDirectIrradianceDoNotMoveTheSun() throws IOException {
        for (int h = HourOfYear.firstHourOf(2); h < HourOfYear.HOURS; h++) {
            Breakage.set(lines, FIRST + h, DIRECT, "0");
            Breakage.set(lines, FIRST + h, DIFFUSE, Breakage.get(lines, FIRST + h, GLOBAL));
        }
        WeatherYear read = Breakage.read(folder, lines);
        assertThat(read.sun().offsetHours(NOON)).isEqualTo(0.5);
        Closure closure = Objects.requireNonNull(read.closure());
        assertThat(closure.bestShiftHours()).isCloseTo(closure.statedShiftHours(), within(SHIFT_H));
    }

    @Test
    void oneMonthShifted() throws IOException {
        int first = FIRST + HourOfYear.firstHourOf(3);
        Breakage.shift(lines, first, first + 31 * 24 - 1, 1, GLOBAL, DIFFUSE);
        WeatherYear read = Breakage.read(folder, lines);
        expect(
                read,
                Kind.WARNING,
                first,
                "in March it is an hour early against the rest of the year, from line " + first);
        assertThat(read.findings()).hasSize(1);
        assertThat(Objects.requireNonNull(read.closure()).usedRmseWm2()).isLessThan(1);
        assertThat(read.sun().offsetHours(HourOfYear.of(3, 15, 12))).isCloseTo(0.5, within(SHIFT_H));
        int noonInMarch = HourOfYear.of(3, 15, 12);
        assertThat(read.globalHorizontalWm2(noonInMarch)).isEqualTo(year.global[noonInMarch]);
        assertThat(read.sun().offsetHours(NOON)).isEqualTo(0.5);
    }

    @Test
    void monthsAtTwoTimesAreToldInOneSentence() throws IOException {
        for (int month : new int[] {2, 3, 6}) {
            int first = FIRST + HourOfYear.firstHourOf(month);
            Breakage.shift(
                    lines, first, first + HourOfYear.daysIn(month) * 24 - 1, month == 6 ? -1 : 2, GLOBAL, DIFFUSE);
        }
        WeatherYear read = Breakage.read(folder, lines);
        expect(
                read,
                Kind.WARNING,
                FIRST + HourOfYear.firstHourOf(2),
                "the file's sun is not of one clock: in February and March it is 2 hours early and in June it is an hour"
                        + " late against the rest of the year");
        assertThat(read.findings()).hasSize(1);
    }

    @Test
    void daylightSavingTime() throws IOException {
        int first = FIRST + HourOfYear.firstHourOf(4);
        int last = FIRST + HourOfYear.firstHourOf(11) - 1;
        Breakage.shift(lines, first, last, -1, DRY_BULB, WIND);
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.WARNING, first, "in April to October it is an hour late", "daylight saving time");
        assertThat(read.findings()).hasSize(1);
        assertThat(read.airTemperatureC(NOON)).isEqualTo(year.air[NOON]);
        assertThat(read.globalHorizontalWm2(NOON)).isEqualTo(year.global[NOON]);
        assertThat(Objects.requireNonNull(read.closure()).usedRmseWm2()).isLessThan(1);
    }

    @Test
    void directIrradianceAtNight() throws IOException {
        Breakage.set(lines, FIRST + 2, DIRECT, "120");
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.REPAIR, FIRST + 2, "direct irradiance at night on line 11 (120 W/m² first): set to 0");
        assertThat(read.directNormalWm2(2)).isZero();
    }

    @Test
    void infraredAboveBlackBody() throws IOException {
        Breakage.set(lines, FIRST + NOON, INFRARED, "600");
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.REPAIR, FIRST + NOON, "infrared above that of a black body", "600 W/m²");
        assertThat(read.skyLongWaveWm2(NOON)).isLessThan(Constants.blackBody(year.air[NOON]));
        assertThat(read.longWaveOrigin()).isEqualTo(WeatherYear.LongWaveOrigin.FILE);
        assertThat(read.longWaveEstimatedHours()).isEqualTo(1);
    }

    @Test
    void infraredColderThanAnySky() throws IOException {
        Breakage.set(lines, FIRST + NOON, INFRARED, "90");
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.REPAIR, FIRST + NOON, "infrared below 0.4 of a black body", "90 W/m²");
        assertThat(read.skyLongWaveWm2(NOON)).isGreaterThan(0.5 * Constants.blackBody(year.air[NOON]));
    }

    @Test
    void infraredColderThanAnySkyAllYear() throws IOException {
        for (int line = FIRST; line < FIRST + HourOfYear.HOURS; line++) {
            Breakage.set(lines, line, INFRARED, line % 2 == 0 ? "1" : "2");
        }
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.WARNING, FIRST, "infrared below 0.4", "replaced by the sky model in the whole year");
        assertThat(read.longWaveOrigin()).isEqualTo(WeatherYear.LongWaveOrigin.CLOUD_COVER);
        assertThat(read.longWaveEstimatedHours()).isEqualTo(HourOfYear.HOURS);
    }

    @Test
    void longWaveIsTheFilesWhereThreeHoursAreNot() throws IOException {
        List<String> pvgis = InventedYear.ofInstants().pvgis();
        for (int line = 3000; line < 3003; line++) {
            Breakage.set(pvgis, line, 7, "700");
        }
        WeatherYear read = Breakage.read(folder, pvgis);
        assertThat(read.longWaveOrigin()).isEqualTo(WeatherYear.LongWaveOrigin.FILE);
        assertThat(read.longWaveEstimatedHours()).isEqualTo(3);
        expect(read, Kind.REPAIR, 3000, "infrared above that of a black body", "replaced by the sky model");
        assertThat(read.findings())
                .as("one finding for one cause")
                .filteredOn(f -> f.message().contains("infrared"))
                .hasSize(1);
    }

    @Test
    void infraredNotBelievedAtAll() throws IOException {
        for (int line = FIRST; line < FIRST + 1000; line++) {
            Breakage.set(lines, line, INFRARED, "600");
        }
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.WARNING, FIRST, "replaced by the sky model in the whole year");
        assertThat(read.skyLongWaveWm2(NOON)).isNotEqualTo(year.longWave[NOON]);
    }

    @Test
    void humidityAbove100AndDewPointAboveAir() throws IOException {
        Breakage.set(lines, FIRST + 50, HUMIDITY, "108");
        Breakage.set(lines, FIRST + 60, DEW_POINT, Double.toString(year.air[60] + 2));
        WeatherYear read = Breakage.read(folder, lines);
        assertThat(read.relativeHumidity(60)).isEqualTo(1);
        expect(
                read,
                Kind.REPAIR,
                FIRST + 50,
                "relative humidity above 100 % or dew point above air temperature on lines 59 and 69");
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            assertThat(read.dewPointC(hour)).isLessThanOrEqualTo(read.airTemperatureC(hour));
        }
    }

    @Test
    void humidityZeroWhereAValueWasLost() throws IOException {
        Breakage.set(lines, FIRST + NOON, HUMIDITY, "0");
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.REPAIR, FIRST + NOON, "relative humidity 0", "cannot be: a value was lost there");
        assertThat(read.dewPointC(NOON)).isEqualTo(year.dew[NOON]);

        List<String> withoutDewPoint = InventedYear.ofInstants().pvgis();
        Breakage.set(withoutDewPoint, 6 + NOON + 5, 3, "0");
        WeatherYear pvgis = Breakage.read(folder, withoutDewPoint);
        expect(pvgis, Kind.REPAIR, 6 + NOON + 5, "relative humidity 0");
        assertThat(pvgis.dewPointC(NOON)).isCloseTo(year.dew[NOON], within(1.0));
    }

    @Test
    void impossibleValuesAndJumps() throws IOException {
        Breakage.set(lines, FIRST + 100, WIND, "98.0");
        Breakage.set(lines, FIRST + 200, WIND, "35.0");
        Breakage.set(lines, FIRST + 300, DRY_BULB, "70.0");
        Breakage.set(lines, FIRST + 400, DRY_BULB, "35.0");
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.REPAIR, FIRST + 100, "impossible wind speed on line 109 (98 m/s first");
        expect(read, Kind.REPAIR, FIRST + 200, "impossible jump of wind speed on line 209");
        expect(read, Kind.REPAIR, FIRST + 300, "impossible air temperature on line 309 (70 °C first");
        expect(read, Kind.REPAIR, FIRST + 400, "impossible jump of air temperature on line 409");
        assertThat(read.findings()).as("one finding for one cause").hasSize(4);
        assertThat(read.airTemperatureC(300)).isCloseTo((year.air[299] + year.air[301]) / 2, within(1e-9));
    }

    @Test
    void aColumnThatCannotBeIsNotUsedWhereAnotherStandsIn() throws IOException {
        for (int line = FIRST; line < FIRST + HourOfYear.HOURS; line++) {
            Breakage.set(lines, line, HUMIDITY, "0.5");
            Breakage.set(lines, line, 10, "991.3");
        }
        WeatherYear read = Breakage.read(folder, lines);
        expect(
                read,
                Kind.WARNING,
                FIRST,
                "relative humidity has no value above 1.2, 0.5 first",
                "not used",
                "fraction");
        expect(read, Kind.WARNING, FIRST, "pressure has 8760 impossible values, 0.99 first", "another unit?");
        assertThat(read.dewPointC(NOON)).isEqualTo(year.dew[NOON]);
    }

    @Test
    void aStepThatStaysIsKeptAndTold() throws IOException {
        for (int h = 4000; h < 4100; h++) {
            Breakage.set(lines, FIRST + h, DRY_BULB, Double.toString(year.air[h] + 25));
        }
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.WARNING, FIRST + 4000, "air temperature jumps within an hour on lines 4009 and 4109");
    }

    @Test
    void missingValues() throws IOException {
        Breakage.set(lines, FIRST, WIND, "999");
        Breakage.set(lines, FIRST + 8759, WIND, "999");
        Breakage.set(lines, FIRST + NOON, GLOBAL, "9999");
        Breakage.set(lines, FIRST + 2, DIFFUSE, "9999");
        Breakage.set(lines, FIRST + 30, HUMIDITY, "999");
        Breakage.set(lines, FIRST + 31, DEW_POINT, "99.9");
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.REPAIR, FIRST + 8759, "missing wind speed on lines 8768 and 9");
        expect(read, Kind.REPAIR, FIRST + NOON, "missing global horizontal irradiance on line");
        expect(read, Kind.REPAIR, FIRST + 2, "missing diffuse horizontal irradiance on line 11: 0 at night");
        assertThat(read.globalHorizontalWm2(NOON)).isCloseTo(year.global[NOON], within(0.05 * year.global[NOON]));
        assertThat(read.diffuseHorizontalWm2(2)).isZero();
        assertThat(read.dewPointC(31)).isCloseTo(year.dew[31], within(0.5));
    }

    @Test
    void missingRows() throws IOException {
        lines.subList(FIRST + 99, FIRST + 102).clear();
        WeatherYear read = Breakage.read(folder, lines);
        expect(
                read,
                Kind.REPAIR,
                FIRST + 99,
                "3 rows are missing",
                "after line 108",
                "from 01-05 04:00 to 01-05 06:00",
                "filled from the hours before and after");
        assertThat(read.findings()).as("one finding for one cause").hasSize(1);
        assertThat(read.windSpeedMs(101)).isBetween(0.0, 7.0);
    }

    @Test
    void aMissingRowByDay() throws IOException {
        lines.remove(FIRST - 1 + NOON);
        WeatherYear read = Breakage.read(folder, lines);
        assertThat(read.findings()).singleElement().satisfies(f -> assertThat(f.message())
                .isEqualTo("a row is missing, after line " + (FIRST - 1 + NOON)
                        + ": missing is the hour 07-14 12:00; filled from the hours before and after"));
    }

    @Test
    void theGravestComesFirst() throws IOException {
        Breakage.set(lines, FIRST + 2, DIRECT, "120");
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            Breakage.set(lines, FIRST + h, WIND, "2.0");
            Breakage.set(lines, FIRST + h, 10, "990");
        }
        for (int h = 4000; h < 4040; h++) {
            Breakage.set(lines, FIRST + h, DEW_POINT, "5.0");
            Breakage.set(lines, FIRST + h, HUMIDITY, "999");
        }
        WeatherYear read = Breakage.read(folder, lines);
        assertThat(read.findings())
                .extracting(WeatherFinding::message)
                .first()
                .asString()
                .startsWith("the wind is 2 m/s in 8760 hours on end: it was not measured");
        assertThat(read.findings()).extracting(WeatherFinding::kind).isSortedAccordingTo(Comparator.reverseOrder());
    }

    @Test
    void negativeIrradiance() throws IOException {
        Breakage.set(lines, FIRST + 1, GLOBAL, "-3");
        Breakage.set(lines, FIRST + 3, GLOBAL, "-400");
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.REPAIR, FIRST + 1, "negative global horizontal irradiance on line 10 (-3 W/m² first)");
        expect(read, Kind.REPAIR, FIRST + 3, "impossible global horizontal irradiance on line 12 (-400 W/m² first");
        assertThat(read.globalHorizontalWm2(1)).isZero();
        assertThat(read.globalHorizontalWm2(3)).isZero();
    }

    @Test
    void aColumnThatStandsStill() throws IOException {
        for (int h = 2000; h < 2100; h++) {
            Breakage.set(lines, FIRST + h, WIND, "2.2");
        }
        expect(Breakage.read(folder, lines), Kind.WARNING, FIRST + 2000, "wind speed does not change for 100 hours");
    }

    @Test
    void aCalmThatLasts() throws IOException {
        for (int h = 2000; h < 2040; h++) {
            Breakage.set(lines, FIRST + h, WIND, "0");
        }
        expect(Breakage.read(folder, lines), Kind.WARNING, FIRST + 2000, "wind speed does not change for 40 hours");
    }

    @ParameterizedTest
    @CsvSource({"5, 'km/h, mph or knots?'", "0.05, was wind not measured?"})
    void aMeanWindThatHardlyIs(double factor, String guess) throws IOException {
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            Breakage.set(lines, FIRST + h, WIND, Double.toString(year.wind[h] * factor));
        }
        expect(Breakage.read(folder, lines), Kind.WARNING, 0, "mean wind speed of the year is", guess);
    }

    @Test
    void pressureThatBelongsToAnotherHeight() throws IOException {
        Breakage.set(lines, 1, 10, "1900");
        expect(Breakage.read(folder, lines), Kind.WARNING, 1, "mean pressure is", "the height is wrong");
    }

    @Test
    void partsFromDifferentSourcesAreToldAndUsed() throws IOException {
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            Breakage.set(
                    lines, FIRST + h, GLOBAL, Double.toString(Math.rint(year.global[h] * (h % 2 == 0 ? 1.05 : 0.95))));
        }
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.WARNING, 0, "the parts come from different sources or times");
    }

    @Test
    void aLostGlobalBesideStrongDirect() throws IOException {
        Breakage.set(lines, FIRST + NOON, GLOBAL, "0");
        WeatherYear read = Breakage.read(folder, lines);
        expect(
                read,
                Kind.REPAIR,
                FIRST + NOON,
                "global irradiance contradicts direct and diffuse on line " + (FIRST + NOON) + " (0 W/m² beside direct "
                        + Breakage.get(lines, FIRST + NOON, DIRECT),
                "all three taken as missing");
        assertThat(read.globalHorizontalWm2(NOON)).isCloseTo(year.global[NOON], within(0.05 * year.global[NOON]));
    }

    @Test
    void aJuneWithoutGlobal() {
        set(HourOfYear.firstHourOf(6), HourOfYear.firstHourOf(7), "0", GLOBAL);
        refused("global horizontal irradiance: found 0 W/m² beside direct 138 and diffuse 81", "in 411 hours");
    }

    @Test
    void aWeekOfDarkness() throws IOException {
        int from = HourOfYear.of(6, 10, 0);
        set(from, from + 7 * 24, "0", GLOBAL, DIRECT, DIFFUSE);
        expect(
                Breakage.read(folder, lines),
                Kind.WARNING,
                FIRST + from + 6,
                "no light for 91 hours of daylight on end from 06-10 06:00 (line " + (FIRST + from + 6)
                        + "): kept, but no cloud is so dark; values were lost");
    }

    @Test
    void aMonthOfDarkness() {
        set(HourOfYear.firstHourOf(6), HourOfYear.firstHourOf(7), "0", GLOBAL, DIRECT, DIFFUSE);
        refused("no light for 390 hours of daylight on end from 06-01 06:00", "some light under any cloud");
    }

    @Test
    void aWeekOfFogIsKept() throws IOException {
        int from = HourOfYear.of(1, 10, 0);
        for (int h = from; h < from + 7 * 24; h++) {
            String light = Double.toString(Math.rint(0.03 * year.global[h]));
            set(h, h + 1, "0", DIRECT);
            set(h, h + 1, light, GLOBAL, DIFFUSE);
        }
        assertThat(Breakage.read(folder, lines).findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "0.317, 0.222, Is irradiance in Btu/ft² or scaled?",
        "0.001, 0.001, Is irradiance in kW/m² or MJ/m²?",
        "1.45, 1.016, Is irradiance in kJ/m² or scaled?"
    })
    void irradianceInOtherUnits(double factor, String share, String guess) {
        scaleIrradiance(factor);
        refused("global horizontal irradiance: found " + share + " of the light outside", "0.45 to 0.85", guess);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.55, 1.3})
    void irradianceThatIsScaled(double factor) throws IOException {
        scaleIrradiance(factor);
        expect(
                Breakage.read(folder, lines),
                Kind.WARNING,
                FIRST + HourOfYear.of(12, 11, 0),
                "of the light outside the atmosphere on the brightest day",
                "is irradiance in another unit, or scaled?");
    }

    @ParameterizedTest
    @ValueSource(ints = {DIRECT, DIFFUSE})
    void aPartOfIrradianceThatIsNothingAllYear(int part) {
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            double beam = year.direct[h] * year.sun.cosZenith(h);
            set(h, h + 1, "0", part);
            set(h, h + 1, Double.toString(part == DIRECT ? year.global[h] : Math.rint(beam)), GLOBAL);
            if (part == DIRECT) {
                set(h, h + 1, Double.toString(year.global[h]), DIFFUSE);
            }
        }
        refused("found 0 W/m², the same value in the whole year", "global irradiance is split into direct and diffuse");
    }

    @Test
    void aMonthWithoutDirect() throws IOException {
        for (int h = HourOfYear.firstHourOf(6); h < HourOfYear.firstHourOf(7); h++) {
            set(h, h + 1, "0", DIRECT);
            set(h, h + 1, Double.toString(year.global[h]), DIFFUSE);
        }
        expect(
                Breakage.read(folder, lines),
                Kind.WARNING,
                0,
                "no direct irradiance in all of June",
                "tilted collectors");
    }

    @Test
    void lightThatStandsStill() throws IOException {
        int from = HourOfYear.of(6, 10, 8);
        set(from, from + 8, "0", DIRECT);
        set(from, from + 8, "300", GLOBAL, DIFFUSE);
        expect(
                Breakage.read(folder, lines),
                Kind.WARNING,
                FIRST + from,
                "global horizontal irradiance stands still while the sun moves on lines " + (FIRST + from),
                "(300 W/m² first)");
    }

    @ParameterizedTest
    @CsvSource({
        "8, 5.0, dew point is 5 °C in the whole year",
        "9, 60, relative humidity is 60 % in the whole year",
        "13, 300, horizontal infrared is 300 W/m² in the whole year"
    })
    void aColumnThatNeverChangesIsNotUsedWhereAnotherStandsIn(int cell, String value, String told) throws IOException {
        set(0, HourOfYear.HOURS, value, cell);
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.WARNING, FIRST, told + ": not measured, and not used");
        assertThat(read.dewPointC(NOON)).isCloseTo(year.dew[NOON], within(0.2));
        assertThat(read.skyLongWaveWm2(NOON)).isNotEqualTo(300);
    }

    @Test
    void humidityThatNeverChangesIsToldWhereNothingStandsIn() throws IOException {
        List<String> pvgis = InventedYear.ofInstants().pvgis();
        for (int line = 6; line < 6 + HourOfYear.HOURS; line++) {
            Breakage.set(pvgis, line, 3, "60");
        }
        expect(
                Breakage.read(folder, pvgis),
                Kind.WARNING,
                11,
                "relative humidity does not change for 8760 hours from line 11 (60 %): kept, but hardly measured");
    }

    @Test
    void dewPointAndAirExchanged() {
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            Breakage.set(lines, FIRST + h, DRY_BULB, Double.toString(year.dew[h]));
            Breakage.set(lines, FIRST + h, DEW_POINT, Double.toString(year.air[h]));
        }
        refused("dew point: found", "above the air temperature", "Are the two columns exchanged");
    }

    @Test
    void aRampOfWind() throws IOException {
        String[] ramp = {"18", "34", "40", "46", "53"};
        for (int i = 0; i < ramp.length; i++) {
            Breakage.set(lines, FIRST + 4000 + i, WIND, ramp[i]);
        }
        WeatherYear read = Breakage.read(folder, lines);
        expect(
                read,
                Kind.WARNING,
                FIRST + 4001,
                "wind of a hurricane, above 32.7 m/s, on lines 4010, 4011 and 4012 (34 m/s first): kept");
        expect(read, Kind.WARNING, FIRST + 4001, "wind speed changes within 3 hours on lines");
        expect(read, Kind.REPAIR, FIRST + 4004, "impossible wind speed on line 4013 (53 m/s first");
    }

    @ParameterizedTest
    @CsvSource({"9, 3", "6, 6"})
    void aRampOfTemperature(double step, int within) throws IOException {
        int from = HourOfYear.of(1, 20, 3);
        for (int i = 1; i < 12; i++) {
            set(from + i, from + i + 1, Double.toString(year.air[from] + step * Math.min(i, 12 - i)), DRY_BULB);
        }
        expect(
                Breakage.read(folder, lines),
                Kind.WARNING,
                FIRST + from + within,
                "air temperature changes within " + within + " hours on line",
                "hardly real");
    }

    private void scaleIrradiance(double factor) {
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            for (int cell : new int[] {GLOBAL, DIRECT, DIFFUSE}) {
                double value = Double.parseDouble(Breakage.get(lines, FIRST + h, cell));
                Breakage.set(lines, FIRST + h, cell, Double.toString(factor * value));
            }
        }
    }

    /** Sets cells of hours, counted from the start of the year. */
    private void set(int from, int to, String value, int... cells) {
        for (int h = from; h < to; h++) {
            for (int cell : cells) {
                Breakage.set(lines, FIRST + h, cell, value);
            }
        }
    }

    private void refused(String... words) {
        assertThatThrownBy(() -> Breakage.read(folder, lines))
                .isInstanceOf(WeatherFileException.class)
                .satisfies(e -> assertThat(e.getMessage()).contains(words));
    }

    private static void expect(WeatherYear read, Kind kind, int line, String... words) {
        assertThat(read.findings()).anySatisfy(finding -> {
            assertThat(finding.kind()).isEqualTo(kind);
            assertThat(finding.line()).isEqualTo(line);
            assertThat(finding.message()).contains(words);
        });
    }
}
