package dev.warmlane.report;

import dev.warmlane.study.SampleQuantile;
import dev.warmlane.study.YearNumber;
import dev.warmlane.study.YearSeason;
import dev.warmlane.study.YearsSpread;
import dev.warmlane.study.YearsStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A years study as tables: a year a row, and how far they differ. */
public final class YearsTables {

    private YearsTables() {}

    /** For people: the season of every year. */
    public static Table years(YearsStudy study, UnitSystem units) {
        YearWords words = new YearWords(study, new Numbers(units));
        FuelWords fuel = FuelWords.of(study.seasons().get(0).season());
        TableBuilder<YearSeason> table = new TableBuilder<YearSeason>(units).words("year", "year", YearSeason::label);
        number(table, words, "pool\nmean", YearNumber.WATER_MEAN);
        number(table, words, "without\ncollectors", YearNumber.WATER_MEAN_WITHOUT);
        number(table, words, "at\ncomfort", YearNumber.DAYS_AT_COMFORT);
        number(table, words, "without\ncollectors", YearNumber.DAYS_AT_COMFORT_WITHOUT);
        number(table, words, "first\nday", YearNumber.OPENING);
        number(table, words, "heat\ndelivered", YearNumber.DELIVERED);
        number(table, words, fuel.heading() + "\n" + fuel.used(), YearNumber.GAS_BURNED);
        number(table, words, fuel.heading() + "\ndisplaced", YearNumber.GAS_DISPLACED);
        number(table, words, "saved", YearNumber.SAVED);
        return table.build(study.seasons());
    }

    private static void number(TableBuilder<YearSeason> table, YearWords words, String header, YearNumber number) {
        if (words.telling(words.asked()).contains(number)) {
            table.optional(header, words.csvName(number), YearWords.measure(number), number::of);
        }
    }

    /** For people: median, nine of ten, worst and best of each number. */
    public static Table spread(YearsStudy study, Numbers numbers) {
        YearWords words = new YearWords(study, numbers);
        List<YearsSpread> rows = words.telling(words.asked()).stream()
                .flatMap(number -> study.spread(number).stream())
                .toList();
        return new TableBuilder<YearsSpread>(numbers.units())
                .words("of the season", "number", s -> words.name(s.number()))
                .words("middle\nyear", "median", s -> words.show(s.number(), s.median()))
                .words("nine of ten\nyears", "nine_of_ten", s -> nineOfTen(words, s))
                .words("worst\nyear", "worst", s -> extreme(words, s, s.worst()))
                .words("best\nyear", "best", s -> extreme(words, s, s.best()))
                .words("from year\nto year", "change", s -> words.difference(s.number(), s.meanChange()))
                .build(rows);
    }

    /** For people: how well so few years know median and nine of ten. */
    static Table certainty(YearsStudy study, Numbers numbers) {
        YearWords words = new YearWords(study, numbers);
        List<YearsSpread> rows = words.telling(words.asked()).stream()
                .flatMap(number -> study.spread(number).stream())
                .toList();
        return new TableBuilder<YearsSpread>(numbers.units())
                .words("of the season", "number", s -> words.name(s.number()))
                .words("middle year:\nthe true value lies", "median", s -> interval(words, s, s.medianInterval()))
                .words(
                        "nine of ten years:\nthe true value lies",
                        "nine_of_ten",
                        s -> interval(words, s, s.nineOfTenInterval()))
                .words(
                        "standard\ndeviation",
                        "standard_deviation",
                        s -> words.difference(s.number(), s.standardDeviation()))
                .build(rows);
    }

    private static String nineOfTen(YearWords words, YearsSpread spread) {
        return spread.nineOfTen().isEmpty()
                ? "-"
                : (spread.number().moreIsBetter() ? "more than " : "less than ")
                        + words.show(spread.number(), spread.nineOfTen().getAsDouble());
    }

    private static String extreme(YearWords words, YearsSpread spread, YearsSpread.Extreme extreme) {
        return words.show(spread.number(), extreme.value()) + " (" + extreme.label() + ")";
    }

    private static String interval(YearWords words, YearsSpread spread, SampleQuantile.Interval interval) {
        YearNumber number = spread.number();
        boolean low = interval.low().isPresent();
        boolean high = interval.high().isPresent();
        if (low && high) {
            return words.show(number, interval.low().getAsDouble()) + " to "
                    + words.show(number, interval.high().getAsDouble());
        }
        return low
                ? "above " + words.show(number, interval.low().getAsDouble())
                : high ? "below " + words.show(number, interval.high().getAsDouble()) : "anywhere";
    }

    /** Every number of every year, for csv. */
    static Table all(YearsStudy study, UnitSystem units) {
        YearWords words = new YearWords(study, new Numbers(units));
        TableBuilder<YearSeason> table = new TableBuilder<YearSeason>(units)
                .words("year", YearSeason::label)
                .count("begins_in", "begins_in", YearSeason::calendarYear);
        for (YearNumber number : YearNumber.values()) {
            table.optional(words.csvName(number), words.csvName(number), YearWords.measure(number), number::of);
        }
        return table.build(study.seasons());
    }

    /** How far years differ, for csv: a row for each number, whose unit stands at the end of its name. */
    static Table allSpreads(YearsStudy study, UnitSystem units) {
        YearWords words = new YearWords(study, new Numbers(units));
        List<YearsSpread> rows = words.asked().stream()
                .flatMap(number -> study.spread(number).stream())
                .toList();
        List<Column> columns = List.of(
                Column.ofWords("number", "number"),
                Column.ofCounts("years", "years"),
                value("median"),
                value("median_from"),
                value("median_to"),
                value("nine_of_ten"),
                value("nine_of_ten_from"),
                value("nine_of_ten_to"),
                value("worst"),
                Column.ofWords("worst_year", "worst_year"),
                value("best"),
                Column.ofWords("best_year", "best_year"));
        return new Table(
                columns, rows.stream().map(spread -> row(words, spread, units)).toList(), List.of());
    }

    private static Column value(String name) {
        return new Column(name, "", name, 4, false);
    }

    private static List<Cell> row(YearWords words, YearsSpread spread, UnitSystem units) {
        YearNumber number = spread.number();
        Measure measure = YearWords.measure(number);
        Function<OptionalDouble, Cell> shown =
                value -> value.isPresent() ? Cell.of(measure.in(units, value.getAsDouble())) : new Cell.Empty();
        return List.of(
                Cell.of(Column.of("", words.csvName(number), measure, units).csvName()),
                Cell.of(spread.years()),
                Cell.of(measure.in(units, spread.median())),
                shown.apply(spread.medianInterval().low()),
                shown.apply(spread.medianInterval().high()),
                shown.apply(spread.nineOfTen()),
                shown.apply(spread.nineOfTenInterval().low()),
                shown.apply(spread.nineOfTenInterval().high()),
                Cell.of(measure.in(units, spread.worst().value())),
                Cell.of(spread.worst().label()),
                Cell.of(measure.in(units, spread.best().value())),
                Cell.of(spread.best().label()));
    }
}
