package dev.warmlane.report;

import dev.warmlane.pool.Flow;
import dev.warmlane.season.ComfortSummary;
import dev.warmlane.season.Installation;
import dev.warmlane.season.OpeningSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.season.TemperatureSummary;
import dev.warmlane.season.WarmDays;
import dev.warmlane.units.Measure;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The pool in the season, with the collectors and without them, side by side. */
final class PoolSection {

    private static final List<Column> COLUMNS = List.of(
            Column.ofWords("", "what"),
            Column.ofWords("with collectors", "with"),
            Column.ofWords("without", "without"));

    private final Numbers numbers;
    private final Installation installation;
    private final SeasonSummary summary;
    private final OpeningSummary opening;
    private final WarmDays warm;
    private final boolean held;
    private final List<List<Cell>> rows = new ArrayList<>();

    private PoolSection(Subject subject) {
        this.numbers = subject.numbers();
        this.installation = subject.installation();
        this.summary = subject.summary();
        this.opening = subject.forecast().opening();
        this.warm = WarmDays.of(subject.forecast());
        this.held = Telling.heldByHeater(installation, summary.season())
                && !installation.arrays().isEmpty();
    }

    /** Without its pictures. */
    static Section of(Subject subject) {
        PoolSection pool = new PoolSection(subject);
        return Section.of("The pool", Place.DETAIL)
                .with(pool.table())
                .words(pool.gained(subject.season()), pool.rule())
                .words(pool.early().stream().toList());
    }

    private Table table() {
        PeriodSummary season = summary.season();
        temperatures(season.water(), season.waterWithout());
        comfort(season.comfort(), season.comfortWithout());
        if (opening.early()) {
            row("Pool temperature at opening", temperature(opening.waterC()), temperature(opening.waterWithoutC()));
        }
        // an hour of it comes long before the first whole day
        row(
                "First hour at " + temperature(installation.comfortC()) + ", after opening",
                warmUp(summary.warmUpHours()),
                warmUp(summary.warmUpHoursWithout()));
        FuelWords fuel = FuelWords.of(season);
        season.gas().displaced().ifPresent(gas -> {
            row(
                    "Heat of the heater",
                    numbers.show(Measure.HEAT, season.balance().kwh(Flow.HEATER)),
                    numbers.show(Measure.HEAT, season.balanceWithout().kwh(Flow.HEATER)));
            row(
                    FuelWords.capital(fuel.wordUsed()) + fuel.counted(),
                    numbers.show(Measure.HEAT, gas.burnedKwh()),
                    numbers.show(Measure.HEAT, gas.burnedWithoutKwh()));
            if (opening.early()) {
                row(
                        "  of it before opening",
                        numbers.show(Measure.HEAT, opening.boughtKwh()),
                        numbers.show(Measure.HEAT, opening.boughtWithoutKwh()));
            }
            row(
                    "Carbon dioxide of that " + fuel.word(),
                    numbers.show(Measure.MASS, gas.burnedCo2Kg()),
                    numbers.show(Measure.MASS, gas.burnedCo2Kg() + gas.replacedCo2Kg()));
        });
        return new Table(COLUMNS, rows, List.of());
    }

    private void temperatures(TemperatureSummary with, TemperatureSummary without) {
        row("Pool temperature, season mean", temperature(with.meanC()), temperature(without.meanC()));
        row("  lowest and highest hour", range(with), range(without));
        row("  coldest day", day(with.coldestDay()), day(without.coldestDay()));
        row("  warmest day", day(with.warmestDay()), day(without.warmestDay()));
    }

    /** Days at comfort where they are the collectors'; days without the heater where it holds comfort by itself. */
    private void comfort(ComfortSummary with, ComfortSummary without) {
        if (held) {
            row("Days without the heater", of(warm.withoutHeater()), of(warm.withoutHeaterBefore()));
        } else {
            row(
                    "Days at " + temperature(installation.comfortC()) + " or above",
                    with.daysAtComfort() + " of " + with.openDays(),
                    without.daysAtComfort() + " of " + without.openDays());
            row("  first and last of them", firstAndLast(with), firstAndLast(without));
            row("Open hours at " + temperature(installation.comfortC()) + " or above", hours(with), hours(without));
        }
        row(
                "Days above " + temperature(installation.comfortMaximumC()),
                String.valueOf(with.daysTooWarm()),
                String.valueOf(without.daysTooWarm()));
    }

    private String of(int days) {
        return days + " of " + warm.openDays();
    }

    private String gained(PeriodSummary season) {
        int days = season.daysGained();
        return "The collectors " + (season.gainedK() < 0 ? "cool" : "warm") + " the pool by "
                + numbers.degreesApart(
                        season.water().meanC(), season.waterWithout().meanC())
                + " in the season's mean"
                + (held
                        ? "."
                        : " and " + (days < 0 ? "lose " : "gain ") + Math.abs(days)
                                + (Math.abs(days) == 1 ? " day" : " days") + " at comfort.");
    }

    /** What is counted before opening; nothing where nothing runs then. */
    private Optional<String> early() {
        return opening.early()
                ? Optional.of(
                        "In the " + opening.days() + " days before opening collectors or heater run already, from "
                                + temperature(opening.startC())
                                + " in both pools. Heat, what is bought for it and money count those"
                                + " days too; temperatures and days are of the open season.")
                : Optional.empty();
    }

    private String rule() {
        return held
                ? ""
                : "A day is at comfort when the mean water temperature over its open hours is at or above "
                        + temperature(installation.comfortC()) + ".";
    }

    private void row(String what, String with, String without) {
        rows.add(List.of(Cell.of(what), Cell.of(with), Cell.of(without)));
    }

    private String temperature(double celsius) {
        return numbers.show(Measure.TEMPERATURE, celsius);
    }

    private String range(TemperatureSummary water) {
        return numbers.range(Measure.TEMPERATURE, water.lowestC(), water.highestC());
    }

    private String day(TemperatureSummary.DayMean day) {
        return temperature(day.meanC()) + ", " + numbers.show(day.date());
    }

    private String firstAndLast(ComfortSummary comfort) {
        Optional<MonthDay> last = comfort.lastDay();
        return comfort.firstDay()
                .flatMap(f -> last.map(l -> numbers.show(f) + ", " + numbers.show(l)))
                .orElse("none");
    }

    private String hours(ComfortSummary comfort) {
        return numbers.show(comfort.openHoursAtComfort(), 0) + " of " + numbers.show(comfort.openHours(), 0);
    }

    private String warmUp(OptionalInt hours) {
        if (hours.isEmpty()) {
            return "never";
        }
        int h = hours.getAsInt();
        return h < 48 ? h + " h" : numbers.show(h / 24.0, 1) + " days";
    }
}
