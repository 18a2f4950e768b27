package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.physics.Constants;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherFinding.Kind;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faults that real files have, put into a sound file on purpose: each is found, told with its line, and mended. */
class FaultsTest extends EpwFaults {

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
}
