package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.warmlane.site.HourOfYear;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file of several real years: each by itself, and as it would be alone. */
class SeveralYearsTest {

    private static final int HEADER = 8;

    @TempDir
    private Path folder;

    @Test
    void eachYearIsAsItWouldBeAlone() throws IOException {
        List<FileYear> years = read(epw(1999, 2000, 2001));
        assertThat(years).extracting(FileYear::year).containsExactly(1999, 2000, 2001);
        for (FileYear year : years) {
            WeatherYear alone = Breakage.read(folder, epw(year.year()));
            WeatherYear weather = sound(year);
            for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
                assertThat(weather.globalHorizontalWm2(hour)).isEqualTo(alone.globalHorizontalWm2(hour));
                assertThat(weather.airTemperatureC(hour)).isEqualTo(alone.airTemperatureC(hour));
                assertThat(weather.sun().zenithDeg(hour)).isEqualTo(alone.sun().zenithDeg(hour));
            }
            assertThat(weather.sun().calendarYear(4000)).isEqualTo(year.year());
            assertThat(weather.source()).endsWith(", " + year.year());
        }
    }

    @Test
    void orderOfTheYearsDoesNotMatter() throws IOException {
        List<FileYear> years = read(epw(2001, 1999, 2000));
        assertThat(years).extracting(FileYear::year).containsExactly(1999, 2000, 2001);
        assertThat(sound(years.get(0)).findings()).isEmpty();
    }

    @Test
    void leapDayIsToldInItsYearAlone() throws IOException {
        List<String> lines = epw(1999, 2000);
        int firstOfMarch = HEADER + HourOfYear.HOURS + HourOfYear.of(3, 1, 0);
        for (int hour = 0; hour < 24; hour++) {
            lines.add(firstOfMarch + hour, lines.get(firstOfMarch + hour - 24).replace("2000,2,28,", "2000,2,29,"));
        }
        List<FileYear> years = read(lines);
        assertThat(sound(years.get(0)).findings()).isEmpty();
        assertThat(sound(years.get(1)).findings()).singleElement().satisfies(f -> assertThat(f.message())
                .startsWith("24 hours of 29 February"));
    }

    @Test
    void aYearThatCannotBeTrustedIsLeftOutAndHarmsNoOther() throws IOException {
        List<String> lines = epw(1999, 2000, 2001);
        for (int line = HEADER + HourOfYear.HOURS + 1; line <= HEADER + 2 * HourOfYear.HOURS; line++) {
            Breakage.set(lines, line, 22, "999");
        }
        List<FileYear> years = read(lines.subList(0, lines.size() - 5000));
        assertThat(sound(years.get(0)).findings()).isEmpty();
        assertThat(reason(years.get(1))).contains("wind speed").contains("no value in the whole year");
        assertThat(reason(years.get(2))).contains("3760 hourly rows; missing are the hours from 06-06");
    }

    @Test
    void hoursThatTheClockRollsOutOfTheFileFillItsOtherEnd() throws IOException {
        List<String> one = InventedYear.ofInstants().pvgis();
        List<String> lines = new ArrayList<>(one.subList(0, 5));
        for (String year : List.of("2001", "2002")) {
            one.subList(5, 5 + HourOfYear.HOURS).forEach(line -> lines.add(line.replaceFirst("^1999", year)));
        }
        List<FileYear> years = read(lines);
        assertThat(years).extracting(FileYear::year).containsExactly(2001, 2002);
        for (FileYear year : years) {
            assertThat(sound(year).site().utcOffsetHours()).isEqualTo(-5);
            assertThat(sound(year).findings()).noneMatch(f -> f.message().contains("missing"));
        }
        assertThat(sound(years.get(0)).sun().calendarYear(HourOfYear.HOURS - 1)).isEqualTo(2001);
        assertThat(sound(years.get(1)).sun().calendarYear(HourOfYear.HOURS - 1)).isEqualTo(2000);
    }

    @Test
    void whereOneYearIsAskedForSeveralAreNamed() {
        assertThatThrownBy(() -> Breakage.read(folder, epw(1999, 2000)))
                .isInstanceOf(WeatherFileException.class)
                .hasMessageContaining(":" + (HEADER + HourOfYear.HOURS + 1) + ":")
                .hasMessageContaining("of the years 1999 and 2000")
                .hasMessageContaining("is read where years are asked for");
    }

    private static List<String> epw(int... years) {
        List<String> lines = new ArrayList<>(InventedYear.sound().epw().subList(0, HEADER));
        for (int year : years) {
            for (String line : InventedYear.in(year).epw().subList(HEADER, HEADER + HourOfYear.HOURS)) {
                lines.add(line.replaceFirst("^\\d+", Integer.toString(year)));
            }
        }
        return lines;
    }

    private List<FileYear> read(List<String> lines) throws IOException {
        return WeatherFiles.readYears(
                Breakage.write(folder, String.join("\n", lines) + "\n"), WeatherReadOptions.defaults());
    }

    private static WeatherYear sound(FileYear year) {
        return year.match(FileYear.Sound::weather, left -> {
            throw new AssertionError(left.reason());
        });
    }

    private static String reason(FileYear year) {
        return year.match(
                sound -> {
                    throw new AssertionError("the year " + sound.year() + " is sound");
                },
                left -> left.reason().getMessage());
    }
}
