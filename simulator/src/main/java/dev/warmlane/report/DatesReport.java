package dev.warmlane.report;

import dev.warmlane.report.Block.Figure;
import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.Report.Data;
import dev.warmlane.report.chart.DatesChart;
import dev.warmlane.study.DatesBand;
import dev.warmlane.study.DatesStudy;
import dev.warmlane.study.DatesStudy.Dates;
import dev.warmlane.study.DatesStudy.Way;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

/** The report of a dates study. A section is a method here and a line in {@link #sections}. */
public final class DatesReport {

    private final DatesStudy study;
    private final Numbers numbers;
    private final CommonSections common;
    private final FuelWords fuel;
    private final DatesBand band;
    private final Map<Way, Estimate> gained = new EnumMap<>(Way.class);

    private DatesReport(DatesStudy study, Subject described) {
        this.study = study;
        this.numbers = described.numbers();
        this.common = new CommonSections(described);
        this.fuel = FuelWords.of(study.today().season());
        this.band = new DatesBand(study, described.bands());
        for (Way way : Way.values()) {
            band.weeksGained(way).ifPresent(weeks -> gained.put(way, weeks));
        }
    }

    /**
     * The report of a study.
     *
     * @param study the study
     * @param described what it started from
     */
    public static Report of(DatesStudy study, Subject described) {
        DatesReport report = new DatesReport(study, described);
        return new Report(
                "dates",
                study.installation().name() + ": opening dates",
                report.common.place(),
                described.settings().letterhead(),
                described.settings().notation(),
                report.sections(),
                List.of(new Data("dates", () -> report.table(DatesReport::machine, true))));
    }

    private List<Section> sections() {
        return CommonSections.list(
                List.of(
                        CommonSections.answer(
                                numbers, study.dates().stream().map(Dates::season), sentences(), figures()),
                        common.lookAt(),
                        common.job(),
                        dates(),
                        reading()),
                common.last(study.dates().stream().map(Dates::season).toList()));
    }

    private Section dates() {
        return Section.of("Week by week", Place.ANSWER)
                .with(
                        Set.of(Place.FIRST_SHEET, Place.TECHNICAL),
                        new Picture("dates", name -> DatesChart.of(name, study, numbers.units())))
                .with(Place.PRINTED, table(numbers::show, false));
    }

    private Section reading() {
        List<String> points = new ArrayList<>();
        points.add(
                "Each row is a season of its own, simulated with the collectors and without. Its days before opening, if"
                        + " there are any, move with the opening");
        points.add("What stands in brackets, and low to high, is what all that is uncertain leaves together");
        if (heated() && !study.today().opening().early()) {
            points.add("The temperature at opening is that at its very beginning; the mean of the first hour, which the"
                    + " forecast tells, is some tenths higher where the heater runs");
        }
        if (heated()) {
            points.add(
                    "For the range of the weeks each uncertain thing is varied in today's season and in the longer ones"
                            + " alike");
            points.add(
                    "Weeks gained are those by which the season with collectors may be longer until it takes as much "
                            + fuel.word() + " as today's season without them");
        }
        points.add("Staff, water and chemicals of the longer season are not counted");
        return Section.of("How to read it", Place.PRINTED).points(points);
    }

    /** The answer in a few sentences. */
    private String sentences() {
        Dates today = study.today();
        String water = temperature(today.opening().waterC());
        String without = temperature(today.opening().waterWithoutC());
        StringBuilder text = new StringBuilder("Today the pool is open from ")
                .append(numbers.show(today.dates().first()))
                .append(" to ")
                .append(numbers.show(today.dates().last()))
                .append(" and opens at ")
                .append(water)
                .append(inBrackets(openingRange(today)))
                .append(water.equals(without) ? ", with collectors and without" : ", without collectors at " + without)
                .append('.');
        if (heated()) {
            text.append(" For the ")
                    .append(fuel.word())
                    .append(" of today's season without collectors it may, with them, ");
            List<String> ways = new ArrayList<>();
            for (Way way : Way.values()) {
                ways.add(way.label().replace("both", "do both") + " by " + gained(way)
                        + (way == Way.BOTH ? " in all" : "") + inBrackets(range(way)));
            }
            text.append(String.join(", ", ways.subList(0, 2)))
                    .append(", or ")
                    .append(ways.get(2))
                    .append('.');
        } else {
            Dates last = longest(Way.EARLIER);
            text.append(" It has no heater: opened ")
                    .append(weeks(last.weeks()))
                    .append(" earlier it is at ")
                    .append(temperature(last.opening().waterC()))
                    .append(" that day and averages ")
                    .append(means(last))
                    .append(" over the season; today ")
                    .append(means(today))
                    .append(". It is at ")
                    .append(temperature(study.installation().comfortC()))
                    .append(" or above on ")
                    .append(last.season().comfort().daysAtComfort())
                    .append(" days of the season, today on ")
                    .append(today.season().comfort().daysAtComfort())
                    .append('.');
        }
        text.append(Telling.hardlyNeeded(study.installation(), today.season()));
        return text.toString();
    }

    private List<Figure> figures() {
        List<Figure> keys = new ArrayList<>();
        Dates today = study.today();
        keys.add(new Figure(
                temperature(today.opening().waterC()),
                "at opening on " + numbers.show(today.dates().first()),
                openingRange(today),
                temperature(today.opening().waterWithoutC()) + " without collectors"));
        if (heated()) {
            for (Way way : List.of(Way.EARLIER, Way.LATER)) {
                keys.add(new Figure(
                        gained(way),
                        way == Way.EARLIER ? "earlier opening" : "later closing",
                        range(way),
                        "for the " + fuel.word() + " of today without collectors"));
            }
        } else {
            keys.add(new Figure(
                    temperature(today.season().water().meanC()),
                    "mean pool temperature of today's season",
                    temperature(today.season().waterWithout().meanC()) + " without collectors"));
        }
        return keys;
    }

    private boolean heated() {
        return study.today().boughtKwh().isPresent();
    }

    private Dates longest(Way way) {
        List<Dates> seasons = study.of(way);
        return seasons.get(seasons.size() - 1);
    }

    private String gained(Way way) {
        double likely = weeks(way).likely();
        return study.endsOpen(way) ? "at least " + weeks((int) Math.round(likely)) : aboutWeeks(likely);
    }

    private String aboutWeeks(double gained) {
        double halves = Math.rint(2 * gained);
        if (halves == 0) {
            return gained > 0 ? "less than half a week" : weeks(0);
        }
        return "about " + (halves == 2 ? "1 week" : halfWeeks(gained) + " weeks");
    }

    /** To half a week: the fuel that they rest on is not known better. */
    private String halfWeeks(double gained) {
        double halves = Math.rint(2 * gained);
        return numbers.show(halves / 2, (int) (halves % 2));
    }

    private static String inBrackets(String range) {
        return range.isEmpty() ? "" : " (" + range + ")";
    }

    /** Between what they may be, open above where the study has no more weeks; empty where nothing moves them as shown. */
    private String range(Way way) {
        Estimate gained = weeks(way);
        String low = halfWeeks(gained.low());
        String high = halfWeeks(gained.high());
        if (low.equals(high)) {
            return "";
        }
        return gained.high() < study.mostWeeks(way) ? low + " to " + high : low + " or more";
    }

    private Estimate weeks(Way way) {
        return Objects.requireNonNull(gained.get(way), "weeks gained without a heater");
    }

    /** Empty where nothing moves it as shown, as where the heater has done its work before. */
    private String openingRange(Dates dates) {
        return numbers.bounds(Measure.TEMPERATURE, band.openingC(dates));
    }

    private String means(Dates dates) {
        return temperature(dates.season().water().meanC()) + " ("
                + temperature(dates.season().waterWithout().meanC()) + " without collectors)";
    }

    private static String weeks(int count) {
        return count + (count == 1 ? " week" : " weeks");
    }

    private String temperature(double celsius) {
        return numbers.show(Measure.TEMPERATURE, celsius);
    }

    /** As ISO 8601 has it, without a year. */
    private static String machine(MonthDay date) {
        return date.toString().substring(2);
    }

    /**
     * Every season a row, for people and for csv, each with its own way of writing a date, and a machine all of it: a page
     * has no room for more than what says something of the collectors.
     */
    private Table table(Function<MonthDay, String> date, boolean machine) {
        boolean held = Telling.heldByHeater(study.installation(), study.today().season());
        List<Dates> rows = study.dates().stream()
                .filter(d -> d.weeks() > 0 || d.way() == Way.EARLIER)
                .toList();
        TableBuilder<Dates> table = new TableBuilder<Dates>(numbers.units())
                .fed(fuel)
                .words("way", "way", d -> d.weeks() == 0 ? "today" : d.way().label())
                .count("weeks", "weeks", Dates::weeks)
                .words("opens", "opens", d -> date.apply(d.dates().first()))
                .words("closes", "closes", d -> date.apply(d.dates().last()))
                .number("pool at\nopening", "water_at_opening", Measure.TEMPERATURE, d -> d.opening()
                        .waterC());
        if (machine) {
            table.number("low", "water_at_opening_low", Measure.TEMPERATURE, d -> band.openingC(d)
                            .low())
                    .number("high", "water_at_opening_high", Measure.TEMPERATURE, d -> band.openingC(d)
                            .high());
        } else if (rows.stream().anyMatch(d -> !openingRange(d).isEmpty())) {
            table.words("low to\nhigh", "water_at_opening_range", this::openingRange);
        }
        table.number("\nwithout", "water_at_opening_without", Measure.TEMPERATURE, d -> d.opening()
                .waterWithoutC());
        if (machine || held || !heated()) {
            table.period("pool\nmean", Dates::season, PeriodColumn.WATER_MEAN)
                    .period("\nwithout", Dates::season, PeriodColumn.WITHOUT_MEAN);
        }
        if (machine || !held) {
            table.count("days at\ncomfort", "days_at_comfort", d -> d.season()
                            .comfort()
                            .daysAtComfort())
                    .count("\nwithout", "days_at_comfort_without", d -> d.season()
                            .comfortWithout()
                            .daysAtComfort());
        }
        if (heated()) {
            table.period(fuel.heading() + "\n" + fuel.used(), Dates::season, PeriodColumn.GAS_BURNED)
                    .period("\nwithout", Dates::season, PeriodColumn.GAS_BURNED_WITHOUT);
        }
        return table.build(rows);
    }

    /** What is drawn: fuel with collectors, or the pool's mean where there is no heater. */
    public static double drawn(Dates dates) {
        return dates.boughtKwh().orElseGet(() -> dates.season().water().meanC());
    }
}
