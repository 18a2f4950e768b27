package dev.warmlane.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a number differed from year to year.
 *
 * @param number what of
 * @param years how many years have it, 1 or more
 * @param median the middle year's
 * @param medianInterval what encloses the true median with {@link SampleQuantile#CONFIDENCE}
 * @param nineOfTen what nine of ten years reach: exceed where more is better, stay below where less is; nothing of fewer
 *     than nine years
 * @param nineOfTenInterval what encloses its true value
 * @param worst the worst year, the earliest of equals
 * @param best the best year, the earliest of equals
 * @param standardDeviation from year to year, of the sample; nothing of one year
 * @param meanChange mean of the change from one calendar year to the next, whichever way; nothing where none follow each other
 */
public record YearsSpread(
        YearNumber number,
        int years,
        double median,
        SampleQuantile.Interval medianInterval,
        OptionalDouble nineOfTen,
        SampleQuantile.Interval nineOfTenInterval,
        Extreme worst,
        Extreme best,
        OptionalDouble standardDeviation,
        OptionalDouble meanChange) {

    /** One year in ten falls short. */
    private static final double ONE_IN_TEN = 0.1;

    /**
     * A year that stands out.
     *
     * @param label the year
     * @param value its number
     */
    public record Extreme(String label, double value) {}

    /** Of seasons in the order of their years; nothing where none has the number. */
    static Optional<YearsSpread> of(YearNumber number, List<YearSeason> seasons) {
        List<YearSeason> with =
                seasons.stream().filter(season -> number.of(season).isPresent()).toList();
        if (with.isEmpty()) {
            return Optional.empty();
        }
        double[] values =
                with.stream().mapToDouble(season -> value(number, season)).toArray();
        SampleQuantile quantile = new SampleQuantile(values);
        double below = number.moreIsBetter() ? ONE_IN_TEN : 1 - ONE_IN_TEN;
        Comparator<YearSeason> byValue = Comparator.comparingDouble(season -> value(number, season));
        YearSeason lowest = with.stream().min(byValue).orElseThrow();
        YearSeason highest = with.stream().min(byValue.reversed()).orElseThrow();
        return Optional.of(new YearsSpread(
                number,
                values.length,
                quantile.median(),
                quantile.interval(0.5),
                quantile.at(below),
                quantile.interval(below),
                extreme(number, number.moreIsBetter() ? lowest : highest),
                extreme(number, number.moreIsBetter() ? highest : lowest),
                standardDeviation(values),
                meanChange(number, with)));
    }

    private static Extreme extreme(YearNumber number, YearSeason season) {
        return new Extreme(season.label(), value(number, season));
    }

    private static double value(YearNumber number, YearSeason season) {
        return number.of(season).orElseThrow();
    }

    private static OptionalDouble standardDeviation(double[] values) {
        if (values.length < 2) {
            return OptionalDouble.empty();
        }
        double mean = 0;
        for (double value : values) {
            mean += value / values.length;
        }
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return OptionalDouble.of(Math.sqrt(squares / (values.length - 1)));
    }

    private static OptionalDouble meanChange(YearNumber number, List<YearSeason> seasons) {
        double sum = 0;
        int changes = 0;
        for (int i = 1; i < seasons.size(); i++) {
            if (seasons.get(i).calendarYear() == seasons.get(i - 1).calendarYear() + 1) {
                sum += Math.abs(value(number, seasons.get(i)) - value(number, seasons.get(i - 1)));
                changes++;
            }
        }
        return changes == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / changes);
    }
}
