package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A typical year of one's own: each month is the one of the real years that is most like all of them, by the method of Hall
 * et al. 1978 (Sandia, SAND78-1601) as TMY2 and TMY3 use it (Marion and Urban 1995, appendix A; read in part, weights and details
 * from memory):
 *
 * <ol>
 *   <li>For every daily index the statistic of Finkelstein and Schafer (1971, Biometrika 58:641-645): how far the
 *       distribution of a month's days is, on average over its days, from that of the same month of all years. The five
 *       months with the least weighted sum are candidates.
 *   <li>Candidates are put in the order of how close their mean and median of air temperature and irradiation are to
 *       those of all years. How the four are put together is our own choice: the greatest of them counts, each over the
 *       standard deviation of all days.
 *   <li>Persistence: out go the candidate with the longest run of days, the one with the most runs and those with none. Runs
 *       are of days warmer than two thirds of all days, colder than one third, or with less sun than one third.
 *   <li>The first that is left is taken; the first of all, where none is.
 *   <li>Where months of different years meet, steps are spread over six hours on either side.
 * </ol>
 *
 * @param weather the year
 * @param months what was chosen, from January on
 */
public record TypicalYear(WeatherYear weather, List<Month> months) {

    /** Fewer years are no choice; those who made the method wanted 15 to 30. */
    public static final int FEWEST_YEARS = 3;

    private static final int CANDIDATES = 5;

    /**
     * A month that was chosen.
     *
     * @param month 1 to 12
     * @param calendarYear the year it was taken from
     * @param statistic its weighted sum of Finkelstein-Schafer statistics, 0 to 1, 0 the most like all years
     */
    public record Month(int month, int calendarYear, double statistic) {}

    /** Keeps its own copy of the list. */
    public TypicalYear {
        months = List.copyOf(months);
    }

    /** With the weights of TMY3. */
    public static TypicalYear of(WeatherYears years) {
        return of(years, TypicalWeights.TMY3);
    }

    /**
     * Chooses the months.
     *
     * @param years at least {@link #FEWEST_YEARS}
     * @param weights what counts how much
     * @throws IllegalArgumentException if there are fewer years, or irradiance is of hours in some and of instants in others
     */
    public static TypicalYear of(WeatherYears years, TypicalWeights weights) {
        List<RealYear> all = years.years();
        if (all.size() < FEWEST_YEARS) {
            throw new IllegalArgumentException(
                    "a typical year is chosen from at least " + FEWEST_YEARS + " real ones, there are " + all.size());
        }
        List<Month> months = new ArrayList<>();
        int[] yearOfHour = new int[HourOfYear.HOURS];
        for (int month = 1; month <= 12; month++) {
            Candidate chosen = choose(all, month, weights);
            months.add(new Month(month, all.get(chosen.year).calendarYear(), chosen.statistic));
            Arrays.fill(yearOfHour, HourOfYear.firstHourOf(month), HourOfYear.firstHourOf(month + 1), chosen.year);
        }
        String told = months.stream()
                .map(month -> java.time.Month.of(month.month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " "
                        + month.calendarYear)
                .collect(Collectors.joining(", "));
        String source = "typical year of " + all.size() + " real years, "
                + all.get(0).calendarYear() + " to " + all.get(all.size() - 1).calendarYear();
        WeatherFinding note = new WeatherFinding(
                WeatherFinding.Kind.NOTE,
                0,
                0,
                "chosen by Finkelstein-Schafer statistics, persistence and closeness to mean and median: " + told
                        + "; steps between months spread over " + WeatherSplice.SMOOTHED_HOURS
                        + " hours on either side");
        WeatherYear weather = new WeatherSplice(
                        all.stream().map(RealYear::weather).toList(), yearOfHour, source, List.of(note))
                .smoothed()
                .year();
        return new TypicalYear(weather, months);
    }

    private static Candidate choose(List<RealYear> years, int month, TypicalWeights weights) {
        LongTerm all = new LongTerm(years, month, weights);
        List<Candidate> candidates = new ArrayList<>();
        for (int year = 0; year < years.size(); year++) {
            candidates.add(all.candidate(year));
        }
        // sorting keeps the order of equals: the earlier year comes first
        List<Candidate> closest = candidates.stream()
                .sorted(Comparator.comparingDouble((Candidate c) -> c.statistic))
                .limit(CANDIDATES)
                .sorted(Comparator.comparingDouble((Candidate c) -> c.distance))
                .toList();
        int longest = closest.stream().mapToInt(c -> c.longestRun).max().orElse(0);
        int most = closest.stream().mapToInt(c -> c.runs).max().orElse(0);
        return closest.stream()
                .filter(c -> c.longestRun < longest && c.runs < most && c.runs > 0)
                .findFirst()
                .orElse(closest.get(0));
    }

    private record Candidate(int year, double statistic, double distance, int longestRun, int runs) {}

    /** The days of one month of all years. */
    private static final class LongTerm {
        private final List<RealYear> years;
        private final int month;
        private final TypicalWeights weights;
        private final double[] air;
        private final double[] global;
        private final Map<DailyIndex, double[]> sorted;

        LongTerm(List<RealYear> years, int month, TypicalWeights weights) {
            this.years = years;
            this.month = month;
            this.weights = weights;
            this.air = days(DailyIndex.AIR_MEAN);
            this.global = days(DailyIndex.GLOBAL);
            this.sorted = weights.weights().keySet().stream().collect(Collectors.toMap(index -> index, this::days));
        }

        /** Of all years, sorted. */
        private double[] days(DailyIndex index) {
            return years.stream()
                    .flatMapToDouble(year -> Arrays.stream(index.ofMonth(year.weather(), month)))
                    .sorted()
                    .toArray();
        }

        Candidate candidate(int year) {
            WeatherYear weather = years.get(year).weather();
            double statistic = 0;
            for (Map.Entry<DailyIndex, Double> weight : weights.weights().entrySet()) {
                statistic += weight.getValue()
                        * FinkelsteinSchafer.statistic(
                                weight.getKey().ofMonth(weather, month),
                                sorted.getOrDefault(weight.getKey(), new double[0]));
            }
            double[] ownAir = DailyIndex.AIR_MEAN.ofMonth(weather, month);
            double[] ownGlobal = DailyIndex.GLOBAL.ofMonth(weather, month);
            DayRuns runs = new DayRuns();
            runs.add(ownAir, day -> day > third(air, 2));
            runs.add(ownAir, day -> day < third(air, 1));
            runs.add(ownGlobal, day -> day < third(global, 1));
            return new Candidate(
                    year,
                    statistic,
                    Math.max(distance(ownAir, air), distance(ownGlobal, global)),
                    runs.longest(),
                    runs.count());
        }

        /** The value that one or two thirds of all days are below. */
        private static double third(double[] sorted, int thirds) {
            return sorted[Math.min(sorted.length - 1, sorted.length * thirds / 3)];
        }

        /** How far mean and median are, in standard deviations of all days. */
        private static double distance(double[] own, double[] all) {
            double mean = mean(all);
            double squares = 0;
            for (double day : all) {
                squares += (day - mean) * (day - mean);
            }
            double deviation = Math.sqrt(squares / all.length);
            double[] ordered = own.clone();
            Arrays.sort(ordered);
            double far = Math.max(Math.abs(mean(own) - mean), Math.abs(middle(ordered) - middle(all)));
            return deviation > 0 ? far / deviation : 0;
        }

        private static double mean(double[] values) {
            double sum = 0;
            for (double value : values) {
                sum += value;
            }
            return sum / values.length;
        }

        private static double middle(double[] sorted) {
            int half = sorted.length / 2;
            return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
        }
    }
}
