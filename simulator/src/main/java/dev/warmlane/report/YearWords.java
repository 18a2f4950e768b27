package dev.warmlane.report;

import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.chart.YearsCharts;
import dev.warmlane.season.Prices;
import dev.warmlane.study.YearNumber;
import dev.warmlane.study.YearSeason;
import dev.warmlane.study.YearsSpread;
import dev.warmlane.study.YearsStudy;
import dev.warmlane.units.Measure;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** What the numbers of a years study are called, in which units they are shown, and which of them a study has. */
final class YearWords {

    private static final Set<YearNumber> DAYS =
            EnumSet.of(YearNumber.DAYS_AT_COMFORT, YearNumber.DAYS_AT_COMFORT_WITHOUT);

    private final YearsStudy study;
    private final Numbers numbers;
    private final FuelWords fuel;

    YearWords(YearsStudy study, Numbers numbers) {
        this.study = study;
        this.numbers = numbers;
        this.fuel = FuelWords.of(study.seasons().get(0).season());
    }

    /** What an owner asks for, as far as the study has it. */
    List<YearNumber> asked() {
        return List.of(YearNumber.values()).stream()
                .filter(number -> study.spread(number).isPresent())
                .toList();
    }

    /** Of these, what says something of the collectors and stands in a sentence or a table for people. */
    List<YearNumber> telling(List<YearNumber> numbers) {
        boolean held = held();
        return numbers.stream()
                .filter(number -> !held || !DAYS.contains(number))
                .toList();
    }

    private boolean held() {
        return study.seasons().stream().allMatch(year -> Telling.heldByHeater(study.installation(), year.season()));
    }

    /** Every year's days at comfort, or where the heater holds comfort what it is fed with. */
    Picture picture() {
        return held()
                ? new Picture("years-" + fuel.slug(), name -> YearsCharts.fuel(name, study, fuel, numbers.units()))
                : new Picture("years-comfort", name -> YearsCharts.comfort(name, study, numbers));
    }

    /** What it is called. */
    String name(YearNumber number) {
        return switch (number) {
            case WATER_MEAN -> "mean pool temperature";
            case WATER_MEAN_WITHOUT -> "mean pool temperature without collectors";
            case DAYS_AT_COMFORT -> "days at comfort";
            case DAYS_AT_COMFORT_WITHOUT -> "days at comfort without collectors";
            case OPENING -> "pool temperature on the first day";
            case OPENING_WITHOUT -> "pool temperature on the first day without collectors";
            case DELIVERED -> "heat delivered by the collectors";
            case GAS_BURNED -> fuel.wordUsed();
            case GAS_BURNED_WITHOUT -> fuel.wordUsed() + " without collectors";
            case GAS_DISPLACED -> fuel.wordDisplaced();
            case SAVED -> "saved, " + fuel.word() + " less pumping";
            case IRRADIATION -> "sun on the horizontal";
            case AIR_MEAN -> "mean air temperature";
        };
    }

    /** Its name in csv files, without the unit. */
    String csvName(YearNumber number) {
        return switch (number) {
            case WATER_MEAN -> PeriodColumn.WATER_MEAN.csvName();
            case WATER_MEAN_WITHOUT -> PeriodColumn.WITHOUT_MEAN.csvName();
            case DAYS_AT_COMFORT -> PeriodColumn.AT_COMFORT.csvName();
            case DAYS_AT_COMFORT_WITHOUT -> PeriodColumn.AT_COMFORT_WITHOUT.csvName();
            case OPENING -> "water_first_day";
            case OPENING_WITHOUT -> "water_without_first_day";
            case DELIVERED -> PeriodColumn.DELIVERED.csvName();
            case GAS_BURNED -> fuel.csv(PeriodColumn.GAS_BURNED.csvName());
            case GAS_BURNED_WITHOUT -> fuel.csv(PeriodColumn.GAS_BURNED_WITHOUT.csvName());
            case GAS_DISPLACED -> fuel.csv(PeriodColumn.GAS_DISPLACED.csvName());
            case SAVED -> "saved";
            case IRRADIATION -> "global_horizontal";
            case AIR_MEAN -> PeriodColumn.AIR.csvName();
        };
    }

    /** What it measures. */
    static Measure measure(YearNumber number) {
        return switch (number) {
            case WATER_MEAN, WATER_MEAN_WITHOUT, OPENING, OPENING_WITHOUT, AIR_MEAN -> Measure.TEMPERATURE;
            case DAYS_AT_COMFORT, DAYS_AT_COMFORT_WITHOUT -> Measure.DAYS;
            case DELIVERED, GAS_BURNED, GAS_BURNED_WITHOUT, GAS_DISPLACED -> Measure.HEAT;
            case SAVED -> Measure.MONEY;
            case IRRADIATION -> Measure.HEAT_PER_AREA;
        };
    }

    /** A value with its unit. */
    String show(YearNumber number, double value) {
        return number == YearNumber.SAVED
                ? numbers.money(
                        value,
                        study.installation().prices().map(Prices::currency).orElse(""))
                : numbers.show(measure(number), value);
    }

    /** A value with its unit, or a word where there is none. */
    String show(YearNumber number, OptionalDouble value, String otherwise) {
        return value.isPresent() ? show(number, value.getAsDouble()) : otherwise;
    }

    /** A difference of two values with its unit. */
    String difference(YearNumber number, OptionalDouble value) {
        if (value.isEmpty()) {
            return "-";
        }
        if (measure(number) == Measure.DAYS) {
            return numbers.show(value.getAsDouble(), 1) + " days";
        }
        return measure(number) == Measure.TEMPERATURE
                ? numbers.degrees(value.getAsDouble())
                : show(number, value.getAsDouble());
    }

    /** A season's number with its unit. */
    String of(YearNumber number, YearSeason season) {
        return show(number, number.of(season), "-");
    }

    /** {@code 14 real years, 1996 to 2009}; of a season over New Year {@code 13 real seasons, 1996/97 to 2008/09}. */
    String years() {
        int years = study.seasons().size();
        YearSeason first = study.seasons().get(0);
        String one = first.label().equals(String.valueOf(first.calendarYear())) ? "year" : "season";
        return years == 1
                ? "a real " + one + ", " + first.label()
                : years + " real " + one + "s, " + first.label() + " to "
                        + study.seasons().get(years - 1).label();
    }

    /** A number of all years in a sentence. */
    String told(YearsSpread spread) {
        YearNumber number = spread.number();
        String text = FuelWords.capital(name(number)) + ": " + show(number, spread.median()) + " in the middle year, ";
        if (spread.nineOfTen().isPresent()) {
            text += (number.moreIsBetter() ? "more than " : "less than ")
                    + show(number, spread.nineOfTen().getAsDouble()) + " in nine of ten, ";
        }
        return text + show(number, spread.worst().value()) + " in the worst ("
                + spread.worst().label() + ").";
    }
}
