package dev.warmlane.report;

import dev.warmlane.report.Block.Figure;
import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.Report.Data;
import dev.warmlane.report.chart.YearsCharts;
import dev.warmlane.study.YearNumber;
import dev.warmlane.study.YearSeason;
import dev.warmlane.study.YearsSpread;
import dev.warmlane.study.YearsStudy;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.RealYear;
import dev.warmlane.weather.TypicalYear;
import dev.warmlane.weather.WeatherFinding;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.WeatherYears;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The report of what real years would have done. A section is a method here and a line in {@link #sections}. */
public final class YearsReport {

    private final YearsStudy study;
    private final WeatherYears weather;
    private final UnitSystem units;
    private final YearWords words;
    private final Subject described;
    private final CommonSections common;
    private final Optional<TypicalYear> own;

    private YearsReport(YearsStudy study, WeatherYears weather, Optional<TypicalYear> own, Subject described) {
        this.study = study;
        this.weather = weather;
        this.units = described.units();
        this.words = new YearWords(study, described.numbers());
        this.described = described;
        this.common = new CommonSections(described);
        this.own = own;
    }

    /**
     * The report of a study.
     *
     * @param study the study
     * @param weather the years it was made of
     * @param own a typical year chosen from the years, to be told among them; nothing where none was
     * @param described the season in the typical year that the installation is described with
     */
    public static Report of(YearsStudy study, WeatherYears weather, Optional<TypicalYear> own, Subject described) {
        YearsReport report = new YearsReport(study, weather, own, described);
        return new Report(
                "years",
                study.installation().name() + ": real years",
                report.common.place(),
                described.settings().letterhead(),
                described.settings().notation(),
                report.sections(),
                List.of(
                        new Data("years", () -> YearsTables.all(study, described.units())),
                        new Data("years-spread", () -> YearsTables.allSpreads(study, described.units()))));
    }

    private List<Section> sections() {
        return CommonSections.list(
                List.of(
                        CommonSections.answer(
                                described.numbers(),
                                study.seasons().stream().map(YearSeason::season),
                                sentences(),
                                figures()),
                        common.lookAt(),
                        common.job(),
                        yearByYear(),
                        differ(),
                        typicalAmong(),
                        reading(),
                        asRead()),
                common.last(
                        Cautions.Weather.REAL,
                        study.seasons().stream().map(YearSeason::season).toList()));
    }

    private YearsSpread spread(YearNumber number) {
        return study.spread(number).orElseThrow();
    }

    private boolean collectors() {
        return !study.installation().arrays().isEmpty();
    }

    private String sentences() {
        StringBuilder text = new StringBuilder("What this pool would have been in ")
                .append(words.years())
                .append('.');
        for (YearNumber number :
                words.telling(List.of(YearNumber.WATER_MEAN, YearNumber.DAYS_AT_COMFORT, YearNumber.GAS_BURNED))) {
            study.spread(number).ifPresent(spread -> text.append(' ').append(words.told(spread)));
        }
        if (collectors() && study.installation().heater().isEmpty()) {
            text.append(" Without collectors: ")
                    .append(words.show(
                            YearNumber.DAYS_AT_COMFORT_WITHOUT,
                            spread(YearNumber.DAYS_AT_COMFORT_WITHOUT).median()))
                    .append(" in the middle year, ")
                    .append(words.show(
                            YearNumber.DAYS_AT_COMFORT_WITHOUT,
                            spread(YearNumber.DAYS_AT_COMFORT_WITHOUT).worst().value()))
                    .append(" in the worst.");
        }
        YearsSpread water = spread(YearNumber.WATER_MEAN);
        if (water.meanChange().isPresent()) {
            text.append(" From one year to the next the mean temperature changed by ")
                    .append(words.difference(YearNumber.WATER_MEAN, water.meanChange()))
                    .append(" on average.");
        }
        return text.toString();
    }

    private List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        for (YearNumber number :
                words.telling(List.of(YearNumber.DAYS_AT_COMFORT, YearNumber.WATER_MEAN, YearNumber.GAS_BURNED))) {
            study.spread(number).ifPresent(spread -> figures.add(figure(spread)));
        }
        return figures;
    }

    private Figure figure(YearsSpread spread) {
        YearNumber number = spread.number();
        String beside = words.show(number, spread.median()) + " in the middle year, "
                + words.show(number, spread.worst().value()) + " in the worst" + without(number);
        return spread.nineOfTen().isPresent()
                ? new Figure(
                        words.show(number, spread.nineOfTen().getAsDouble()),
                        words.name(number)
                                + (number.moreIsBetter()
                                        ? ": nine of ten years have more"
                                        : ": nine of ten years have less"),
                        beside)
                : new Figure(
                        words.show(number, spread.worst().value()),
                        words.name(number) + " in the worst of " + spread.years() + " years",
                        words.show(number, spread.median()) + " in the middle year" + without(number));
    }

    /** What days the pool would have without collectors; of other numbers a tile tells nothing of it. */
    private String without(YearNumber number) {
        YearNumber days = YearNumber.DAYS_AT_COMFORT_WITHOUT;
        return number == YearNumber.DAYS_AT_COMFORT && collectors()
                ? "; " + words.show(days, spread(days).median()) + " without collectors"
                : "";
    }

    private Section yearByYear() {
        return Section.of("Year by year", Place.ANSWER)
                .words(
                        "Every season as that year's weather would have made it, with the same pool, collectors and prices"
                                + currency() + ".")
                .with(Set.of(Place.FIRST_SHEET), words.picture())
                // thirty rows would not leave the first sheet one sheet of paper
                .with(Place.PRINTED, YearsTables.years(study, units));
    }

    /** What the sums of the table are in; empty where it has none. */
    private String currency() {
        return study.spread(YearNumber.SAVED)
                .flatMap(saved -> study.installation().prices())
                .map(prices -> "; sums are in " + prices.currency())
                .orElse("");
    }

    private Section differ() {
        return Section.of("How far years differ", Place.PRINTED)
                .with(YearsTables.spread(study, described.numbers()))
                .with(
                        Set.of(Place.TECHNICAL),
                        new Picture("years-water", name -> YearsCharts.water(name, study, units)))
                .with(Place.DETAIL, YearsTables.certainty(study, described.numbers()));
    }

    /** Where the seasons in typical years fall: the one described with, where it is of the same place, and their own. */
    private Section typicalAmong() {
        Section section = Section.of("The typical year among the real ones", Place.PRINTED);
        WeatherYear described = this.described.forecast().weather();
        Optional<String> elsewhere = weather.elsewhere(described.site());
        section = elsewhere.isPresent()
                ? section.words("The weather that the installation is described with, " + described.source()
                        + ", is not of the same place as the years: " + elsewhere.get() + ".")
                : section.words("The weather that the installation is described with, " + described.source() + ":")
                        .points(among(YearSeason.of(
                                "described", described.sun().calendarYear(0), this.described.forecast())));
        return own.isEmpty()
                ? section
                : section.words("A typical year chosen from these years month by month (Finkelstein-Schafer statistics"
                                + " with the weights of TMY3, persistence, steps between months smoothed):")
                        .points(among(study.inWeather("typical", own.get().weather())));
    }

    private List<String> among(YearSeason typical) {
        List<String> points = new ArrayList<>();
        for (YearNumber number : words.telling(List.of(
                YearNumber.WATER_MEAN, YearNumber.DAYS_AT_COMFORT, YearNumber.DELIVERED, YearNumber.GAS_BURNED))) {
            study.spread(number)
                    .ifPresent(spread -> points.add(words.name(number) + ": "
                            + words.of(number, typical) + " in the typical year, " + words.show(number, spread.median())
                            + " in the middle of the real ones; " + count(study.yearsBelow(number, typical)) + " of "
                            + spread.years() + " have less"));
        }
        return points;
    }

    /** Years, of which one that has as much counts half. */
    private String count(double years) {
        return described.numbers().show(years, years == Math.rint(years) ? 0 : 1);
    }

    private Section reading() {
        int years = study.seasons().size();
        List<String> points = new ArrayList<>();
        points.add("Half of the years were better than the middle one. Nine of ten years: one year in ten is to be"
                + " expected to fall short of it. It is the value at place (n + 1) / 10 of the n years in their order,"
                + " from the unwelcome end (definition 6 of Hyndman and Fan 1996); fewer than nine years have none.");
        points.add("So few years know it only so well: the true value lies where the table says with at least 90 %"
                + " confidence, whatever the distribution (order statistics). "
                + (years < 29
                        ? "With " + years + (years == 1 ? " year" : " years")
                                + " it may be worse than the worst of them: 29 are needed to bound it."
                        : "With " + years + " years it is bounded on both sides."));
        points.add("Years of the past: a climate that grows warmer makes warm years likelier than here. The wind at the"
                + " pool and what was assumed are as uncertain as in any single forecast, in every year alike.");
        points.add(
                "Every season begins anew with the water it opens with, so that no year depends on the year before.");
        return Section.of("How to read it", Place.PRINTED).points(points);
    }

    private Section asRead() {
        List<String> points = new ArrayList<>();
        points.add(weather.years().size() + (weather.years().size() == 1 ? " year" : " years") + " of "
                + described.numbers().place(weather.site()));
        if (!weather.gaps().isEmpty()) {
            points.add("Not there: " + list(weather.gaps()));
        }
        if (!weather.leapYears().isEmpty()) {
            points.add("29 February has no place in seasons of the same days: it is left out of "
                    + list(weather.leapYears()));
        }
        weather.labelsDiffer().ifPresent(how -> points.add("To look at: " + how));
        for (WeatherYears.LeftOut out : study.leftOut()) {
            points.add("Left out: " + out.what() + ": " + out.reason());
        }
        for (RealYear year : weather.years()) {
            for (WeatherFinding finding : year.weather().findings()) {
                if (finding.kind() == WeatherFinding.Kind.WARNING) {
                    points.add(year.calendarYear() + ": " + finding.message());
                }
            }
        }
        int repaired = (int) weather.years().stream()
                .filter(year -> year.weather().findings().stream()
                        .anyMatch(finding -> finding.kind() == WeatherFinding.Kind.REPAIR))
                .count();
        if (repaired > 0) {
            points.add("Something was mended in " + repaired
                    + " of them; the command \"weather\" tells of each file what");
        }
        List<Integer> estimated = weather.years().stream()
                .filter(year -> year.weather().longWaveEstimatedHours() > 0)
                .map(RealYear::calendarYear)
                .toList();
        if (!estimated.isEmpty()) {
            points.add(
                    "The sky's long-wave irradiance, which warms or cools pool and collectors, was estimated in hours of "
                            + list(estimated));
        }
        return Section.of("The years, as they were read", Place.PRINTED).points(points);
    }

    private static String list(List<Integer> years) {
        return years.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
