package dev.warmlane.report.chart;

import dev.warmlane.report.FuelWords;
import dev.warmlane.report.Numbers;
import dev.warmlane.study.YearNumber;
import dev.warmlane.study.YearSeason;
import dev.warmlane.study.YearsSpread;
import dev.warmlane.study.YearsStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** The charts of a years study: every year a pair of bars, or of dots where there is no zero that bars could begin at. */
public final class YearsCharts {

    static final String WITH = "with collectors";
    static final String WITHOUT = "without collectors";
    static final String POOL = "pool";
    static final String MIDDLE = "half of the years have more";
    static final String MIDDLE_LESS = "half of the years have less";
    static final String NINE_OF_TEN = "nine of ten years have more";
    static final String NINE_OF_TEN_LESS = "nine of ten years have less";

    private static final int STEPS = 6;

    /** Above this many years their whole numbers have no room. */
    private static final int WHOLE_LABELS = 12;

    /** Width of a bar, where a year has 1. */
    private static final double BAR = 0.36;

    /** Radius of a dot, pixels. */
    private static final double DOT = 5;

    private YearsCharts() {}

    /** Days at comfort of every year; nothing for a single one, which has nothing beside it. */
    public static Optional<Chart> comfort(String name, YearsStudy study, Numbers numbers) {
        String title = "Days at "
                + numbers.show(Measure.TEMPERATURE, study.installation().comfortC())
                + " or above in every year";
        int open = study.seasons().get(0).season().comfort().openDays();
        return of(
                name,
                title,
                "days, of " + open + " open",
                study,
                numbers.units(),
                Measure.DAYS,
                YearNumber.DAYS_AT_COMFORT,
                YearNumber.DAYS_AT_COMFORT_WITHOUT);
    }

    /** What the heater is fed with in every year; nothing for a single one. */
    public static Optional<Chart> fuel(String name, YearsStudy study, FuelWords fuel, UnitSystem units) {
        return of(
                name,
                "How much " + fuel.word() + " is " + fuel.used() + " in every year?",
                Measure.HEAT.unit(units) + " in the season",
                study,
                units,
                Measure.HEAT,
                YearNumber.GAS_BURNED,
                YearNumber.GAS_BURNED_WITHOUT);
    }

    /**
     * Mean water temperature of every year, nothing for a single one: dots, since zero of a temperature is where a scale was
     * once laid and not none of it. The line between two of them is as long as what the collectors add.
     */
    public static Optional<Chart> water(String name, YearsStudy study, UnitSystem units) {
        return of(
                name,
                "Mean pool temperature of every year's season",
                Measure.TEMPERATURE.unit(units),
                study,
                units,
                Measure.TEMPERATURE,
                YearNumber.WATER_MEAN,
                YearNumber.WATER_MEAN_WITHOUT);
    }

    private static Optional<Chart> of(
            String name,
            String title,
            String yTitle,
            YearsStudy study,
            UnitSystem units,
            Measure measure,
            YearNumber with,
            YearNumber without) {
        if (study.seasons().size() < 2) {
            return Optional.empty();
        }
        double[] high = shown(study, measure, units, with);
        double[] low = shown(study, measure, units, without);
        List<String> labels = labels(study.seasons());
        int years = labels.size();
        Scale y = scale(measure, high, low);
        LinePlot plot = new LinePlot(
                "",
                new Scale(0, years + 1, 1),
                (at, notation) -> at < 0.5 || at > years + 0.5 ? "" : labels.get((int) Math.round(at) - 1),
                yTitle,
                y);
        boolean collectors = !study.installation().arrays().isEmpty();
        if (measure == Measure.TEMPERATURE) {
            dots(plot, collectors, high, low);
        } else {
            if (collectors) {
                bars(plot, WITHOUT, low, -BAR, Palette.PALE);
            }
            bars(plot, collectors ? WITH : POOL, high, 0, Palette.BLUE);
        }
        YearsSpread spread = study.spread(with).orElseThrow();
        plot.level(
                with.moreIsBetter() ? MIDDLE : MIDDLE_LESS,
                measure.in(units, spread.median()),
                Palette.INK,
                Pen.DASHED);
        OptionalDouble nine = spread.nineOfTen();
        if (nine.isPresent()) {
            plot.level(
                    with.moreIsBetter() ? NINE_OF_TEN : NINE_OF_TEN_LESS,
                    measure.in(units, nine.getAsDouble()),
                    Palette.VERMILLION,
                    Pen.THICK);
        }
        return Optional.of(new Chart(name, title, study.installation().name(), plot));
    }

    /** A bar for each year: a level line over all of them wants a plot of lines, in which bars are one outline. */
    private static void bars(LinePlot plot, String name, double[] heights, double left, Color colour) {
        int n = heights.length;
        double[] x = new double[4 * n];
        double[] low = new double[4 * n];
        double[] high = new double[4 * n];
        for (int i = 0; i < n; i++) {
            x[4 * i] = i + 1 + left;
            x[4 * i + 1] = x[4 * i];
            x[4 * i + 2] = x[4 * i] + BAR;
            x[4 * i + 3] = x[4 * i + 2];
            high[4 * i + 1] = heights[i];
            high[4 * i + 2] = heights[i];
        }
        plot.band(name, x, low, high, colour);
    }

    private static void dots(LinePlot plot, boolean collectors, double[] high, double[] low) {
        if (collectors) {
            for (int i = 0; i < high.length; i++) {
                plot.branch(
                        "", new double[] {i + 1, i + 1}, new double[] {low[i], high[i]}, Palette.FAINT_INK, Pen.HAIR);
            }
            plot.dots(WITHOUT, Palette.PALE, at(low));
        }
        plot.dots(collectors ? WITH : POOL, Palette.BLUE, at(high));
    }

    private static List<Plot.Dot> at(double[] values) {
        return IntStream.range(0, values.length)
                .mapToObj(i -> new Plot.Dot(i + 1, values[i], DOT))
                .toList();
    }

    /** Bars begin at none; temperatures are drawn from a little below the lowest to a little above the highest. */
    private static Scale scale(Measure measure, double[] high, double[] low) {
        if (measure != Measure.TEMPERATURE) {
            return Scale.withZero(STEPS, high, low);
        }
        double[] all =
                DoubleStream.concat(Arrays.stream(high), Arrays.stream(low)).toArray();
        double lowest = Arrays.stream(all).min().orElse(0);
        double highest = Arrays.stream(all).max().orElse(1);
        double room = (highest - lowest) / (2 * STEPS);
        return Scale.holding(lowest - room, highest + room, STEPS);
    }

    private static List<String> labels(List<YearSeason> seasons) {
        return seasons.stream()
                .map(season -> seasons.size() <= WHOLE_LABELS
                        ? season.label()
                        : String.format(Locale.ROOT, "%02d", season.calendarYear() % 100))
                .toList();
    }

    private static double[] shown(YearsStudy study, Measure measure, UnitSystem units, YearNumber number) {
        return study.seasons().stream()
                .mapToDouble(season -> measure.in(units, number.of(season).orElse(0)))
                .toArray();
    }
}
