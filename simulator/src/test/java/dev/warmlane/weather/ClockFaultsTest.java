package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.weather.WeatherFinding.Kind;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Labels, UTC offsets and months that are of another clock than the sun: found, told and mended. */
class ClockFaultsTest extends EpwFaults {

    /** The shift is found from a quarter of the days, rounded to whole W/m². */
    private static final double SHIFT_H = 0.03;

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
    void partsFromDifferentSourcesAreToldAndUsed() throws IOException {
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            Breakage.set(
                    lines, FIRST + h, GLOBAL, Double.toString(Math.rint(year.global[h] * (h % 2 == 0 ? 1.05 : 0.95))));
        }
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.WARNING, 0, "the parts come from different sources or times");
    }
}
