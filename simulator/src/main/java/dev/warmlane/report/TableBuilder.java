package dev.warmlane.report;

import dev.warmlane.heater.Fuel;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/**
 * Builds tables of things of one kind: each column says how to take its cell from a thing.
 *
 * @param <T> what a row shows
 */
public final class TableBuilder<T> {

    private final UnitSystem units;
    private final List<Column> columns = new ArrayList<>();
    private final List<Function<T, Cell>> cells = new ArrayList<>();
    private FuelWords fuel = new FuelWords(Fuel.NATURAL_GAS);

    /** Starts without columns. */
    public TableBuilder(UnitSystem units) {
        this.units = units;
    }

    /** Names the columns of gas that follow by what the heater is fed with. */
    TableBuilder<T> fed(FuelWords words) {
        fuel = words;
        return this;
    }

    /** Adds a column of words. */
    public TableBuilder<T> words(String header, String csvName, Function<T, String> words) {
        return add(Column.ofWords(header, csvName), row -> Cell.of(words.apply(row)));
    }

    /** Adds a column of words whose heading is its csv name. */
    TableBuilder<T> words(String csvName, Function<T, String> words) {
        return words(csvName, csvName, words);
    }

    /** Adds a column of plain counts. */
    public TableBuilder<T> count(String header, String csvName, ToIntFunction<T> count) {
        return optionalCount(header, csvName, row -> OptionalInt.of(count.applyAsInt(row)));
    }

    /** Adds a column of plain counts that some rows may not have. */
    public TableBuilder<T> optionalCount(String header, String csvName, Function<T, OptionalInt> count) {
        return add(Column.ofCounts(header, csvName), row -> {
            OptionalInt value = count.apply(row);
            return value.isPresent() ? Cell.of(value.getAsInt()) : new Cell.Empty();
        });
    }

    /** Adds a column of numbers; {@code name} is the csv name without its unit. */
    public TableBuilder<T> number(String header, String name, Measure measure, ToDoubleFunction<T> number) {
        return optional(header, name, measure, row -> OptionalDouble.of(number.applyAsDouble(row)));
    }

    /** Adds a column of numbers whose heading is its csv name. */
    TableBuilder<T> number(String name, Measure measure, ToDoubleFunction<T> number) {
        return number(name, name, measure, number);
    }

    /** Adds a column of numbers that some rows may not have. */
    public TableBuilder<T> optional(String header, String name, Measure measure, Function<T, OptionalDouble> number) {
        return add(Column.of(header, name, measure, units), row -> {
            OptionalDouble value = number.apply(row);
            return value.isPresent() ? Cell.of(measure.in(units, value.getAsDouble())) : new Cell.Empty();
        });
    }

    /** Adds a column of what each row's season has of something. */
    TableBuilder<T> period(String header, Function<T, PeriodSummary> season, PeriodColumn column) {
        return optional(header, fuel.csv(column.csvName()), column.measure(), row -> column.of(season.apply(row)));
    }

    /** Adds columns of what each row's season has, for csv: their headings are their names. */
    TableBuilder<T> periods(Function<T, PeriodSummary> season, PeriodColumn... more) {
        for (PeriodColumn column : more) {
            period(fuel.csv(column.csvName()), season, column);
        }
        return this;
    }

    /** The table of some rows. */
    public Table build(List<T> rows) {
        return build(rows, List.of());
    }

    /** The table of some rows, and of some that sum them up. */
    public Table build(List<T> rows, List<T> totals) {
        return new Table(
                columns,
                rows.stream().map(this::row).toList(),
                totals.stream().map(this::row).toList());
    }

    private List<Cell> row(T thing) {
        return cells.stream().map(cell -> cell.apply(thing)).toList();
    }

    private TableBuilder<T> add(Column column, Function<T, Cell> cell) {
        columns.add(column);
        cells.add(cell);
        return this;
    }
}
