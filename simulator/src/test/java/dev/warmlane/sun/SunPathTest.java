package dev.warmlane.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import java.time.ZonedDateTime;
import java.util.Arrays;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SunPathTest {

    /** The report prints five decimals. */
    private static final double PRINTED_DEG = 1e-5;

    /**
     * The path takes the standard atmosphere and its own delta-T: refraction at 50 degrees differs by 0.0003 degrees,
     * three seconds of delta-T by 0.00003.
     */
    private static final double OWN_ATMOSPHERE_DEG = 1e-3;

    /** The series of Spencer departs from Kepler by up to 0.0009, most in January. */
    private static final double KEPLER = 1e-3;

    private static final Site GOLDEN = new Site("published example", 39.742476, -105.1786, 1830.14, -7);

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/sun/spa_example.csv", useHeadersInDisplayName = true)
    void agreesWithThePublishedExample(String quantity, double publishedDeg, String source, String mark) {
        SolarPosition position = SPA.calculateSolarPosition(
                ZonedDateTime.parse("2003-10-17T12:30:30-07:00"),
                GOLDEN.latitudeDeg(),
                GOLDEN.longitudeDeg(),
                GOLDEN.elevationM(),
                67,
                820,
                11);
        SunPath path = SunPath.ofInstants(GOLDEN, years(2003), 30.5 / 60);
        int hour = HourOfYear.of(10, 17, 12);
        boolean zenith = quantity.equals("zenith");

        assertThat(zenith ? position.zenithAngle() : position.azimuth()).isCloseTo(publishedDeg, within(PRINTED_DEG));
        assertThat(zenith ? path.zenithDeg(hour) : path.azimuthDeg(hour))
                .isCloseTo(publishedDeg, within(OWN_ATMOSPHERE_DEG));
    }

    @Test
    void takesTheMiddleOfTheSunlitPartOfSunriseAndSunset() {
        SunPath path = SunPath.ofHourlyMeans(GOLDEN, years(2001), 0.5);
        SunPath minutes = SunPath.ofInstants(GOLDEN, years(2001), 0.5);
        int edges = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double up = path.upFraction(hour);
            assertThat(up).isBetween(0.0, 1.0);
            if (up > 0 && up < 1) {
                edges++;
                // the middle of the lit part is up, and never higher than a quarter of an hour's 15 degrees
                assertThat(path.zenithDeg(hour)).isBetween(82.0, 90.0);
                assertThat(path.cosZenith(hour)).isPositive();
            } else {
                assertThat(path.zenithDeg(hour)).isEqualTo(minutes.zenithDeg(hour));
            }
            assertThat(path.isUp(hour)).isEqualTo(up > 0);
        }
        // a sunrise and a sunset each day, save where one falls on the full hour
        assertThat(edges).isBetween(700, 730);
    }

    @Test
    void dayLengthIsTwelveHoursOnAverage() {
        SunPath path = SunPath.ofHourlyMeans(GOLDEN, years(2001), 0.5);
        double hours = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            hours += path.upFraction(hour);
        }
        // the centre of the sun above a refracted horizon: half of the year plus some five minutes a day
        assertThat(hours / HourOfYear.DAYS).isBetween(12.0, 12.3);
    }

    @Test
    void knowsPolarDayAndPolarNight() {
        SunPath path = SunPath.ofHourlyMeans(new Site("polar", 80, 15, 0, 1), years(2001), 0.5);
        for (int hourOfDay = 0; hourOfDay < 24; hourOfDay++) {
            assertThat(path.upFraction(HourOfYear.of(6, 21, hourOfDay))).isEqualTo(1);
            assertThat(path.isUp(HourOfYear.of(12, 21, hourOfDay))).isFalse();
            assertThat(path.cosZenith(HourOfYear.of(12, 21, hourOfDay))).isZero();
        }
    }

    @Test
    void standsInTheNorthAtSouthernNoon() {
        SunPath path = SunPath.ofHourlyMeans(new Site("south", -37, 145, 0, 10), years(2001), 0.5);
        double azimuth = path.azimuthDeg(HourOfYear.of(6, 21, 11));
        assertThat(Math.cos(Math.toRadians(azimuth))).isGreaterThan(0.95);
        double morning = path.azimuthDeg(HourOfYear.of(6, 21, 8));
        assertThat(morning).as("the morning sun stands in the east").isBetween(0.0, 90.0);
    }

    @Test
    void mirrorsAtTheEquatorBetweenSolstices() {
        SunPath north = SunPath.ofHourlyMeans(new Site("north", 37, 0, 0, 0), years(2001), 0.5);
        SunPath south = SunPath.ofHourlyMeans(new Site("south", -37, 0, 0, 0), years(2001), 0.5);
        double northSum = 0;
        double southSum = 0;
        for (int hourOfDay = 0; hourOfDay < 24; hourOfDay++) {
            northSum += north.cosZenith(HourOfYear.of(6, 21, hourOfDay));
            southSum += south.cosZenith(HourOfYear.of(12, 21, hourOfDay));
        }
        // the same declination but for its sign; the equation of time differs by three minutes
        assertThat(northSum / southSum).isCloseTo(1, within(1e-3));
    }

    @Test
    void earthIsNearestInJanuary() {
        SunPath path = SunPath.ofHourlyMeans(GOLDEN, years(2001), 0.5);
        double january = path.extraterrestrialNormalWm2(HourOfYear.of(1, 3, 12));
        double july = path.extraterrestrialNormalWm2(HourOfYear.of(7, 4, 12));
        // eccentricity 0.0167: (1.0167/0.9833)^2
        assertThat(january / july).isCloseTo(1.069, within(0.002));
    }

    /** New Year of 2000 instead of 2001 would move the sun by 0.03 degrees, a leap day's share of its way. */
    @Test
    void newYearIsOneInstantOfTwoYears() {
        int last = HourOfYear.HOURS - 1;
        SunPath ending = SunPath.ofInstants(GOLDEN, years(2000), 1.25);
        SunPath beginning = SunPath.ofInstants(GOLDEN, years(2001), 0.25);
        assertThat(ending.zenithDeg(last)).isEqualTo(beginning.zenithDeg(0));
        assertThat(ending.azimuthDeg(last)).isEqualTo(beginning.azimuthDeg(0));

        SunPath before = SunPath.ofInstants(GOLDEN, years(2001), -0.25);
        SunPath evening = SunPath.ofInstants(GOLDEN, years(2000), 0.75);
        assertThat(before.zenithDeg(0)).isEqualTo(evening.zenithDeg(last));
        assertThat(before.azimuthDeg(0)).isEqualTo(evening.azimuthDeg(last));
    }

    @Test
    void needsAWholeYear() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SunPath.ofInstants(GOLDEN, new int[24], 0.5))
                .withMessageContaining("8760");
    }

    private static int[] years(int year) {
        int[] years = new int[HourOfYear.HOURS];
        Arrays.fill(years, year);
        return years;
    }

    /**
     * Kepler: (1 + e cos ν)²/(1 - e²)², with the true anomaly ν = M + 2e sin M and the anomaly M counted from the
     * perihelion, which wanders between 2 and 5 January.
     */
    @Test
    void earthsDistanceFollowsKepler() {
        SunPath path = SunPath.ofHourlyMeans(GOLDEN, years(2001), 0.5);
        double e = 0.0167;
        for (int day = 1; day <= HourOfYear.DAYS; day++) {
            double mean = 2 * Math.PI * (day - 3.5) / 365.25;
            double ratio = (1 + e * Math.cos(mean + 2 * e * Math.sin(mean))) / (1 - e * e);
            assertThat(path.extraterrestrialNormalWm2(24 * (day - 1)) / 1361)
                    .as("day %d", day)
                    .isCloseTo(ratio * ratio, within(KEPLER));
        }
    }

    @Test
    void remembersWhatItWasMadeFor() {
        double[] offsets = {0, 0.5, 0.5, 0.5, 1, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0};
        SunPath instants = SunPath.ofInstants(GOLDEN, years(1999), offsets);
        assertThat(instants.isHourlyMean()).isFalse();
        assertThat(instants.usualOffsetHours()).isEqualTo(0.5);
        assertThat(instants.calendarYear(4000)).isEqualTo(1999);
        assertThat(SunPath.ofHourlyMeans(GOLDEN, years(1999), 0.5).isHourlyMean())
                .isTrue();
    }

    /** The middle one of the year, however the months are ordered. */
    @Test
    void usualTimeIsThatOfMostMonths() {
        double[] offsets = {0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0, 0, 0, 0.5, 0.5, 0.5};
        assertThat(SunPath.ofInstants(GOLDEN, years(1999), offsets).usualOffsetHours())
                .isEqualTo(0.5);
    }
}
