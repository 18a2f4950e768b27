package dev.warmlane.weather.generate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.physics.DiffuseFraction;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.WeatherYear;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The generator's parts against the publications they come from. */
class PublishedMethodsTest {

    /** The source's formula for λ is a fit; it meets the mean of its own distribution within this. */
    private static final double FIT_OF_LAMBDA = 5e-4;

    /**
     * Probability between a generated day and the published distribution of the same mean: days cut at a cloudless sky
     * must be made up for by the others, and longer days weigh more in the month's irradiation.
     */
    private static final double DISTRIBUTION = 0.05;

    /** Three standard errors of a correlation over thirty years of 365 days. */
    private static final double CORRELATION = 0.03;

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.4, 0.5, 0.6, 0.7})
    void distributionHasTheMeanThatHollandsAndHugetFitted(double mean) {
        // Hollands and Huget 1983, Solar Energy 30:195-209, from memory
        double gamma = DailyClearness.HIGHEST / (DailyClearness.HIGHEST - mean);
        double lambda = (2 * gamma - 17.519 * Math.exp(-1.3118 * gamma) - 1062 * Math.exp(-5.0426 * gamma))
                / DailyClearness.HIGHEST;
        DailyClearness distribution = new DailyClearness(lambda);
        int steps = 2000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double quantile = distribution.quantile((i + 0.5) / steps);
            assertThat(distribution.probability(quantile)).isCloseTo((i + 0.5) / steps, within(1e-9));
            sum += quantile;
        }
        assertThat(sum / steps).isCloseTo(mean, within(FIT_OF_LAMBDA));
    }

    @Test
    void distributionIsSmoothWhereLambdaIsZero() {
        for (double p : new double[] {0.01, 0.3, 0.7, 0.99}) {
            assertThat(new DailyClearness(1.001e-4).quantile(p))
                    .isCloseTo(new DailyClearness(0.999e-4).quantile(p), within(1e-6));
        }
    }

    @Test
    void generatedDaysFollowTheDistributionAndItsPersistence() {
        double sum = 0;
        double squares = 0;
        int years = 30;
        for (int seed = 0; seed < years; seed++) {
            WeatherYear year = TypicalYearGenerator.generate(Climates.NORTH, Climates.of(Climates.NORTH), seed);
            double[] score = new double[HourOfYear.DAYS];
            for (int month = 1; month <= 12; month++) {
                scores(year, month, score);
            }
            for (int day = 1; day < score.length; day++) {
                sum += score[day] * score[day - 1];
                squares += score[day] * score[day];
            }
        }
        // Giving every month the same set of ranks takes the differences between months away. That lowers a correlation
        // of 0.29 within N = 30.4 days by (1 + 3·0.29)/N = 0.062 (Kendall 1954, Biometrika 41:403-404, from memory).
        // Four real typical years, their month means taken off as well, have 0.30, 0.29, 0.15 and 0.22.
        double expected = Irradiance.DAILY_PERSISTENCE - (1 + 3 * Irradiance.DAILY_PERSISTENCE) / 30.4;
        assertThat(sum / squares).isCloseTo(expected, within(CORRELATION));
    }

    @Test
    void seriesBehindTheDaysHasThePublishedPersistence() {
        int days = 20_000;
        double[] series = Noise.firstOrder(3, Noise.Stream.DAILY_CLEARNESS, days, Irradiance.DAILY_PERSISTENCE);
        double sum = 0;
        double squares = 0;
        for (int day = 1; day < days; day++) {
            sum += series[day] * series[day - 1];
            squares += series[day] * series[day];
        }
        // Graham, Hollands and Huget 1988, from memory; three standard errors are 0.021
        assertThat(sum / squares).isCloseTo(0.29, within(0.021));
        assertThat(squares / days).as("variance").isCloseTo(1, within(0.04));
    }

    /** Normal scores of a month's days by rank; also holds the days against the distribution of their mean. */
    private static void scores(WeatherYear year, int month, double[] score) {
        int first = HourOfYear.firstHourOf(month) / 24;
        int days = HourOfYear.daysIn(month);
        double[] clearness = new double[days];
        for (int d = 0; d < days; d++) {
            clearness[d] = clearness(year, first + d);
        }
        double[] sorted = clearness.clone();
        Arrays.sort(sorted);
        for (int d = 0; d < days; d++) {
            int rank = Arrays.binarySearch(sorted, clearness[d]);
            score[first + d] = Noise.deviate((rank + 0.5) / days);
        }
        double mean = Arrays.stream(clearness).average().orElseThrow();
        double gamma = DailyClearness.HIGHEST / (DailyClearness.HIGHEST - mean);
        double lambda = (2 * gamma - 17.519 * Math.exp(-1.3118 * gamma) - 1062 * Math.exp(-5.0426 * gamma))
                / DailyClearness.HIGHEST;
        DailyClearness published = new DailyClearness(lambda);
        double cloudless = Double.POSITIVE_INFINITY;
        for (int d = 0; d < days; d++) {
            cloudless = Math.min(cloudless, cloudless(year, first + d));
        }
        int compared = 0;
        for (int rank = 0; rank < days; rank++) {
            // the published distribution runs on to 0.864 in every month; here a cloudless sky ends it
            if (sorted[rank] < cloudless - 0.001) {
                compared++;
                assertThat(published.probability(sorted[rank]))
                        .as("month %d rank %d", month, rank)
                        .isCloseTo((rank + 0.5) / days, within(DISTRIBUTION));
            }
        }
        assertThat(compared).isGreaterThan(days * 2 / 3);
    }

    private static double cloudless(WeatherYear year, int day) {
        double found = 0;
        double outside = 0;
        SunPath sun = year.sun();
        for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
            if (sun.isUp(hour)) {
                double top = sun.extraterrestrialNormalWm2(hour) * sun.cosZenith(hour) * sun.upFraction(hour);
                outside += top;
                found += top
                        * HourlyClearness.clearSky(
                                sun.zenithDeg(hour), year.site().elevationM());
            }
        }
        return found / outside;
    }

    private static double clearness(WeatherYear year, int day) {
        double found = 0;
        double outside = 0;
        SunPath sun = year.sun();
        for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
            found += year.globalHorizontalWm2(hour);
            outside += sun.extraterrestrialNormalWm2(hour) * sun.cosZenith(hour) * sun.upFraction(hour);
        }
        return found / outside;
    }

    @Test
    void diffuseFractionsAreThePublishedOnes() throws IOException {
        isAsPublished("erbs", DiffuseFraction::erbs);
        isAsPublished("orgill-hollands", DiffuseFraction::orgillHollands);
    }

    private static void isAsPublished(String correlation, DoubleUnaryOperator fraction) throws IOException {
        List<String> rows = reference("diffuse-fraction/" + correlation + ".csv");
        assertThat(rows).hasSize(3);
        for (String row : rows) {
            String[] cells = row.split(",", -1);
            assertThat(fraction.applyAsDouble(Double.parseDouble(cells[0])))
                    .as(cells[2])
                    .isCloseTo(Double.parseDouble(cells[1]), within(1e-6));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.22, 0.80})
    void branchesOfTheDiffuseFractionMeet(double clearness) {
        // coefficients have four digits, so the branches of the paper meet within a few 1e-4
        assertThat(DiffuseFraction.erbs(Math.nextUp(clearness)))
                .isCloseTo(DiffuseFraction.erbs(Math.nextDown(clearness)), within(5e-4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.45, 0.6})
    void meanHoursAgreeWithCollaresPereiraAndRabl(double day) {
        // Two independent publications on one thing: the hour's share of the day in the middle of April at 40 N
        // (declination 9.4 degrees). Collares-Pereira and Rabl 1979, Solar Energy 22:155-164, from memory:
        // r = π/24 (a + b cos ω)(cos ω - cos ωs)/(sin ωs - ωs cos ωs).
        double latitude = Math.toRadians(40);
        double declination = Math.toRadians(9.4);
        double sunset = Math.acos(-Math.tan(latitude) * Math.tan(declination));
        double a = 0.409 + 0.5016 * Math.sin(sunset - Math.toRadians(60));
        double b = 0.6609 - 0.4767 * Math.sin(sunset - Math.toRadians(60));
        double[] hours = {0.5, 1.5, 2.5, 3.5, 4.5, 5.5};
        double total = 0;
        double[] energy = new double[hours.length];
        for (int i = 0; i < hours.length; i++) {
            double sinHeight = Math.sin(latitude) * Math.sin(declination)
                    + Math.cos(latitude) * Math.cos(declination) * Math.cos(Math.toRadians(15 * hours[i]));
            energy[i] = HourlyClearness.mean(day, sinHeight) * sinHeight;
            total += 2 * energy[i];
        }
        for (int i = 0; i < hours.length; i++) {
            double omega = Math.toRadians(15 * hours[i]);
            double share = Math.PI
                    / 24
                    * (a + b * Math.cos(omega))
                    * (Math.cos(omega) - Math.cos(sunset))
                    / (Math.sin(sunset) - sunset * Math.cos(sunset));
            // 0.01 of the day: the older profile does not depend on the day's clearness, the newer one does
            assertThat(energy[i] / total).as("hour angle %s h", hours[i]).isCloseTo(share, within(0.01));
        }
    }

    @Test
    void temperatureProfileHasMeanZeroAndRangeOne() {
        double sum = 0;
        double lowest = 1;
        double highest = -1;
        double warmest = 0;
        for (int i = 0; i < 240; i++) {
            double value = AirTemperature.profile(i / 10.0);
            sum += value;
            lowest = Math.min(lowest, value);
            if (value > highest) {
                highest = value;
                warmest = i / 10.0;
            }
        }
        assertThat(sum / 240).isCloseTo(0, within(1e-12));
        // fitted to the mean profile of many places, whose extremes fall on different hours: 0.980, not 1
        assertThat(highest - lowest).isCloseTo(1, within(0.025));
        assertThat(warmest).as("solar hour of the highest temperature").isBetween(14.0, 16.0);
    }

    @Test
    void windIsWeibullAndPersistent() {
        MonthlyNormals normals = Climates.temperateBuilder()
                .windSpeedMs(4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4)
                .build();
        double[] lags = new double[2];
        double spread = 0;
        int years = 10;
        for (int seed = 0; seed < years; seed++) {
            double[] wind = Wind.speeds(normals, 0, seed);
            double squares = 0;
            double next = 0;
            double nextDay = 0;
            for (int hour = 0; hour < wind.length; hour++) {
                double departure = wind[hour] - 4;
                squares += departure * departure;
                next += departure * (wind[(hour + 1) % wind.length] - 4);
                nextDay += departure * (wind[(hour + 24) % wind.length] - 4);
            }
            spread += Math.sqrt(squares / wind.length) / 4 / years;
            lags[0] += next / squares / years;
            lags[1] += nextDay / squares / years;
        }
        // k = 0.94·√4 = 1.88 has the coefficient of variation sqrt(Γ(1+2/k)/Γ(1+1/k)² - 1) = 0.553; the daily wave of
        // amplitude 0.3 adds sqrt((1 + 0.553²)(1 + 0.3²/2) - 1) = 0.603; months scaled to their mean take a little off
        assertThat(spread).isCloseTo(0.603, within(0.03));
        // measured on typical years in open formats, speeds as they are: 0.73 to 0.86 after an hour, 0.27 to 0.53 after
        // 24
        assertThat(lags[0]).isBetween(0.68, 0.86);
        assertThat(lags[1]).isBetween(0.1, 0.53);
    }

    @Test
    void smoothCourseKeepsTheMonthsAndHasNoSteps() {
        double[] months = {2, 4, 8, 12, 17, 21, 23, 22.5, 18.5, 13, 7, 3};
        double[] days = SmoothYear.days(months);
        for (int month = 1; month <= 12; month++) {
            int from = HourOfYear.firstHourOf(month) / 24;
            int to = HourOfYear.firstHourOf(month + 1) / 24;
            assertThat(Arrays.stream(days, from, to).average().orElseThrow())
                    .isCloseTo(months[month - 1], within(1e-9));
        }
        for (int day = 0; day < days.length; day++) {
            // 6 K from month to month is 0.2 K a day between their middles; half more at the steepest
            assertThat(Math.abs(days[(day + 1) % days.length] - days[day])).isLessThan(0.3);
        }
    }

    private static List<String> reference(String name) throws IOException {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(PublishedMethodsTest.class.getResourceAsStream("/reference/" + name)),
                StandardCharsets.UTF_8))) {
            return lines.lines().filter(line -> !line.startsWith("#")).skip(1).toList();
        }
    }
}
