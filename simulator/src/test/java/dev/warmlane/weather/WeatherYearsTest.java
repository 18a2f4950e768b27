package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real years of one place: which are kept, which are left out and why. */
class WeatherYearsTest {

    private static final WeatherYear SAMPLE = Demo.weather("cool-coast");

    @TempDir
    private Path folder;

    private static WeatherYear year(int calendarYear, double warmerK) {
        return RealYears.like(SAMPLE, calendarYear, warmerK, 1);
    }

    private static WeatherYear at(int calendarYear, Site site) {
        return RealYears.like(SAMPLE, site, calendarYear, 0, 1);
    }

    private static Site moved(double northDeg, double upM) {
        Site here = SAMPLE.site();
        return new Site(
                "elsewhere",
                here.latitudeDeg() + northDeg,
                here.longitudeDeg(),
                here.elevationM() + upM,
                here.utcOffsetHours());
    }

    @Test
    void yearsStandInTheOrderOfTheCalendarAndGapsAreTold() {
        WeatherYears years = WeatherYears.of(List.of(year(2004, 1), year(1999, 0), year(2001, 2)));

        assertThat(years.years()).extracting(RealYear::calendarYear).containsExactly(1999, 2001, 2004);
        assertThat(years.gaps()).containsExactly(2000, 2002, 2003);
        assertThat(years.leapYears()).containsExactly(2004);
        assertThat(years.leftOut()).isEmpty();
    }

    @Test
    void theOrderTheyAreGivenInDoesNotMatter() {
        List<WeatherYear> given = new ArrayList<>(List.of(
                at(2001, moved(0.5, 0)),
                year(2006, 0),
                year(2003, 0),
                at(2004, moved(0, 300)),
                Demo.weather("hot-dry")));
        WeatherYears one = WeatherYears.of(given);
        Collections.reverse(given);
        WeatherYears other = WeatherYears.of(given);

        assertThat(one.years()).isEqualTo(other.years());
        assertThat(one.leftOut()).isEqualTo(other.leftOut());
        assertThat(one.site()).isEqualTo(SAMPLE.site());
    }

    @Test
    void aYearFromElsewhereIsLeftOutWithTheReason() {
        WeatherYears years = WeatherYears.of(List.of(
                at(2001, moved(0.5, 0)),
                year(2002, 0),
                year(2003, 0),
                at(2004, moved(0, 101)),
                at(2005, moved(0.05, -50))));

        assertThat(years.years()).extracting(RealYear::calendarYear).containsExactly(2002, 2003, 2005);
        assertThat(years.leftOut())
                .extracting(WeatherYears.LeftOut::reason)
                .anySatisfy(reason -> assertThat(reason).contains("56 km"))
                .anySatisfy(reason -> assertThat(reason).contains("101 m"))
                .hasSize(2);
    }

    @Test
    void anotherClockIsLeftOut() {
        Site here = SAMPLE.site();
        Site other = new Site(
                here.name(), here.latitudeDeg(), here.longitudeDeg(), here.elevationM(), here.utcOffsetHours() + 1);
        WeatherYears years = WeatherYears.of(List.of(year(2002, 0), year(2003, 0), at(2004, other)));

        assertThat(years.leftOut()).singleElement().satisfies(out -> assertThat(out.reason())
                .contains("UTC"));
    }

    private static SunPath sun(int calendarYear, boolean instants, double offsetHours) {
        int[] years = new int[HourOfYear.HOURS];
        Arrays.fill(years, calendarYear);
        return instants
                ? SunPath.ofInstants(SAMPLE.site(), years, offsetHours)
                : SunPath.ofHourlyMeans(SAMPLE.site(), years, offsetHours);
    }

    private static WeatherYear year(SunPath sun) {
        return RealYears.with(SAMPLE, sun, SAMPLE.site(), 0, 1);
    }

    @Test
    void whatLabelsMeanIsToldWhereItDiffers() {
        WeatherYears alike = WeatherYears.of(List.of(year(2001, 0), year(sun(2002, false, 0.5))));
        WeatherYears apart = WeatherYears.of(List.of(year(2001, 0), year(sun(2002, false, 0)), year(2003, 0)));

        assertThat(alike.labelsDiffer()).isEmpty();
        assertThat(apart.labelsDiffer().orElseThrow())
                .contains("0.5 h after the hour's start in 2001, 2003", "0 h after the hour's start in 2002");
    }

    /** Years of either kind cannot be spliced into a typical year or a season over New Year. */
    @Test
    void yearsOfInstantsAreLeftOutAmongYearsOfMeansAndTheOtherWayRound() {
        WeatherYears means = WeatherYears.of(List.of(year(2001, 0), year(sun(2002, true, 0)), year(2003, 0)));
        assertThat(means.years()).extracting(RealYear::calendarYear).containsExactly(2001, 2003);
        assertThat(means.leftOut()).singleElement().satisfies(out -> assertThat(out.reason())
                .startsWith("its irradiance is of an instant"));
        WeatherYears instants =
                WeatherYears.of(List.of(year(2001, 0), year(sun(2002, true, 0)), year(sun(2003, true, 0))));
        assertThat(instants.years()).extracting(RealYear::calendarYear).containsExactly(2002, 2003);
        assertThat(instants.leftOut()).singleElement().satisfies(out -> assertThat(out.reason())
                .startsWith("its irradiance is a mean"));
    }

    @Test
    void withoutContentNothingIsToldOfWhatWasLeftOut() {
        WeatherYears years = WeatherYears.of(List.of(year(2002, 0), year(2003, 0), at(2004, moved(3, 0))));

        assertThat(years.withoutContent().years()).isEqualTo(years.years());
        assertThat(years.withoutContent().leftOut()).singleElement().satisfies(out -> assertThat(
                        out.what() + out.reason())
                .startsWith("1 file or year")
                .doesNotContain("2004", "elsewhere"));
        assertThat(alone().withoutContent().leftOut()).isEmpty();
    }

    private static WeatherYears alone() {
        return WeatherYears.of(List.of(year(2002, 0)));
    }

    @Test
    void aTypicalYearAndAYearGivenTwiceAreRefused() {
        assertThatThrownBy(() -> WeatherYears.of(List.of(year(2002, 0), year(2002, 1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2002")
                .hasMessageContaining("again");
        List<WeatherYear> two = List.of(year(2002, 0), year(2003, 0));
        int[] halves =
                IntStream.range(0, HourOfYear.HOURS).map(h -> h < 4000 ? 0 : 1).toArray();
        WeatherYear typical = new WeatherSplice(two, halves, "halves", List.of()).year();
        WeatherYears years = WeatherYears.of(List.of(year(2001, 0), typical));
        assertThat(years.years()).hasSize(1);
        assertThat(years.leftOut().get(0).reason()).contains("typical year");
    }

    /** A degree along a meridian of a sphere of the earth's mean radius is 111.195 km, whatever the program. */
    @Test
    void distancesAreThoseOfASphere() {
        Site pole = new Site("pole", 90, 0, 0, 0);
        assertThat(Distance.km(new Site("a", 40, 0, 0, 0), new Site("b", 41, 0, 0, 0)))
                .isCloseTo(111.195, within(0.001));
        assertThat(Distance.km(new Site("a", 60, 10, 0, 0), new Site("b", 60, 10.001, 0, 0)))
                .isCloseTo(0.0556, within(0.0001));
        assertThat(Distance.km(pole, new Site("south", -90, 0, 0, 0))).isCloseTo(20015.1, within(0.1));
    }

    @Test
    void aSeasonOverNewYearTakesTwoYearsThatFollowEachOther() {
        WeatherYears years = WeatherYears.of(List.of(year(2001, 0), year(2002, 1), year(2004, 2), year(2005, 4)));
        int october = HourOfYear.of(10, 1, 0);

        List<SeasonYear> cut = years.startingAt(october);

        assertThat(cut).extracting(SeasonYear::label).containsExactly("2001/02", "2004/05");
        WeatherYear second = cut.get(1).weather();
        WeatherYear begins = years.years().get(2).weather();
        WeatherYear ends = years.years().get(3).weather();
        for (int hour : new int[] {october, HourOfYear.HOURS - 1}) {
            assertThat(second.airTemperatureC(hour)).isEqualTo(begins.airTemperatureC(hour));
            assertThat(second.sun().calendarYear(hour)).isEqualTo(2004);
        }
        for (int hour : new int[] {0, october - 1}) {
            assertThat(second.airTemperatureC(hour)).isEqualTo(ends.airTemperatureC(hour));
            assertThat(second.sun().calendarYear(hour)).isEqualTo(2005);
            assertThat(second.sun().zenithDeg(hour)).isEqualTo(ends.sun().zenithDeg(hour));
        }
        assertThat(years.startingAt(0)).extracting(SeasonYear::label).containsExactly("2001", "2002", "2004", "2005");
        assertThat(years.startingAt(0).get(1).weather())
                .isSameAs(years.years().get(1).weather());
    }

    @Test
    void aFolderIsReadAndWhatCannotBeUsedIsLeftOutWithTheReason() throws IOException {
        for (int calendarYear = 2001; calendarYear <= 2003; calendarYear++) {
            PlainWeatherWriter.write(year(calendarYear, 0), folder.resolve("b" + (2010 - calendarYear) + ".csv"));
        }
        Files.writeString(folder.resolve("notes.txt"), "bought in May\n");
        List<String> lines = Files.readAllLines(folder.resolve("b7.csv"));
        // half a year
        Files.write(folder.resolve("half.csv"), lines.subList(0, 5000));

        WeatherYears years = WeatherYears.read(folder);

        assertThat(years.years()).extracting(RealYear::calendarYear).containsExactly(2001, 2002, 2003);
        assertThat(years.leftOut())
                .extracting(WeatherYears.LeftOut::what)
                .containsExactly("half.csv, 2003", "notes.txt");
        assertThat(years.leftOut().get(0).reason()).contains("hourly rows", "8760");
        assertThat(years.years().get(1).weather().globalHorizontalWm2(4000))
                .isCloseTo(SAMPLE.globalHorizontalWm2(4000), within(0.001));
    }

    /** Six hours before New Year in UTC are still the old year west of Greenwich. */
    @Test
    void aFewHoursOfANeighbouringYearMakeNoTypicalYear() {
        List<WeatherYear> two = List.of(year(2002, 0), year(2003, 0));
        int[] rolled = IntStream.range(0, HourOfYear.HOURS)
                .map(h -> h >= HourOfYear.HOURS - 6 ? 0 : 1)
                .toArray();
        assertThat(RealYear.calendarYearOf(new WeatherSplice(two, rolled, "rolled", List.of()).year()))
                .contains(2003);
    }

    @Test
    void whatIsNotThereOrHoldsNoYearIsSaid() throws IOException {
        assertThatThrownBy(() -> WeatherYears.read(folder.resolve("nowhere"))).isInstanceOf(NoSuchFileException.class);
        assertThatThrownBy(() -> WeatherYears.read(folder))
                .isInstanceOf(WeatherFileException.class)
                .hasMessageContaining("no files");
        PlainWeatherWriter.write(year(2001, 0), folder.resolve("a.csv"));
        PlainWeatherWriter.write(year(2001, 1), folder.resolve("b.csv"));
        assertThatThrownBy(() -> WeatherYears.read(folder))
                .isInstanceOf(WeatherFileException.class)
                .hasMessageContaining("2001")
                .hasMessageContaining("a.csv")
                .hasMessageContaining("b.csv");
    }

    @Test
    void aLeapDayInAFileIsDroppedAndTold() throws IOException {
        Path file = folder.resolve("leap.csv");
        PlainWeatherWriter.write(year(2004, 0), file);
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        int march = IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).startsWith("2004,3,1,0,"))
                .findFirst()
                .orElseThrow();
        List<String> leap = lines.subList(march - 24, march).stream()
                .map(line -> line.replace("2004,2,28,", "2004,2,29,"))
                .toList();
        List<String> whole = new ArrayList<>(lines);
        whole.addAll(march, leap);
        Files.write(file, whole);

        WeatherYears years = WeatherYears.read(file);

        assertThat(years.leapYears()).containsExactly(2004);
        WeatherYear read = years.years().get(0).weather();
        assertThat(read.findings())
                .anySatisfy(finding -> assertThat(finding.message()).contains("29 February"));
        int first = HourOfYear.of(3, 1, 12);
        assertThat(read.globalHorizontalWm2(first)).isCloseTo(SAMPLE.globalHorizontalWm2(first), within(0.001));
    }

    @Test
    void aFileOfSeveralYearsGivesThemAllAndATypicalYearNone() throws IOException {
        Path file = folder.resolve("three.csv");
        PlainWeatherWriter.write(year(2001, 0), file);
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        for (int calendarYear = 2002; calendarYear <= 2003; calendarYear++) {
            Path other = folder.resolve("other.csv");
            PlainWeatherWriter.write(year(calendarYear, calendarYear - 2001), other);
            Files.readAllLines(other).stream()
                    .filter(line -> line.startsWith("200"))
                    .forEach(lines::add);
            Files.delete(other);
        }
        Files.write(file, lines);
        int[] halves =
                IntStream.range(0, HourOfYear.HOURS).map(h -> h < 4000 ? 0 : 1).toArray();
        WeatherYear typical =
                new WeatherSplice(List.of(year(2006, 0), year(2007, 0)), halves, "halves", List.of()).year();
        PlainWeatherWriter.write(typical, folder.resolve("typical.csv"));

        WeatherYears years = WeatherYears.read(folder);

        assertThat(years.years()).extracting(RealYear::calendarYear).containsExactly(2001, 2002, 2003);
        assertThat(years.years().get(2).weather().airTemperatureC(5000))
                .isCloseTo(SAMPLE.airTemperatureC(5000) + 2, within(0.001));
        assertThat(years.leftOut()).singleElement().satisfies(out -> {
            assertThat(out.what()).isEqualTo("typical.csv");
            assertThat(out.reason()).contains("2 calendar years", "typical year");
        });
    }
}
