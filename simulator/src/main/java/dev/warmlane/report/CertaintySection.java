package dev.warmlane.report;

import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.WaterWind;
import dev.warmlane.study.PoolWindBand;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far the forecast is to be trusted: the wind at the pool, and what a typical year is. */
final class CertaintySection {

    private CertaintySection() {}

    /** Empty for a pool in a hall, which has no wind. */
    static Section of(Subject subject, Optional<PoolWindBand> wind) {
        Section section = Section.of("How sure this is", Place.PRINTED);
        Numbers numbers = subject.numbers();
        return wind.map(band -> section.words(
                                "How sheltered the pool lies is the largest uncertainty of an outdoor pool. The same"
                                        + " season with the wind at the water as a share of the weather station's, from"
                                        + " little to much:")
                        .with(table(numbers, band))
                        .words(missing(band), strongWind(numbers, subject.forecast())))
                .orElse(section);
    }

    private static Table table(Numbers numbers, PoolWindBand band) {
        return new TableBuilder<Row>(numbers.units())
                .words("the pool lies", "pool", Row::label)
                .words("wind", "wind", row -> Numbers.show(row.windFactor, 2))
                .period("season\nmean", Row::season, PeriodColumn.WATER_MEAN)
                .period("\nwithout", Row::season, PeriodColumn.WITHOUT_MEAN)
                .count("days at\ncomfort", "days_at_comfort", r -> r.season
                        .comfort()
                        .daysAtComfort())
                .count("\nwithout", "days_at_comfort_without", r -> r.season
                        .comfortWithout()
                        .daysAtComfort())
                .period("heat\ndelivered", Row::season, PeriodColumn.DELIVERED)
                .build(rows(band));
    }

    /** From little wind to much, none twice. */
    private static List<Row> rows(PoolWindBand band) {
        List<Row> rows = new ArrayList<>();
        if (band.hasSheltered()) {
            rows.add(Row.of("sheltered", band.sheltered()));
        }
        rows.add(Row.of("as planned (likely)", band.likely()));
        if (band.hasExposed()) {
            rows.add(Row.of("exposed", band.exposed()));
        }
        return rows;
    }

    /** Why a row is missing; empty where none is. */
    private static String missing(PoolWindBand band) {
        if (!band.hasSheltered()) {
            return "The pool is described as sheltered as any: what is uncertain is how much more wind it gets.";
        }
        return band.hasExposed()
                ? ""
                : "The pool is described as exposed as any: what is uncertain is how much less wind it gets.";
    }

    /** How often the wind at the water is beyond what evaporation was measured in; empty where it never is. */
    static String strongWind(Numbers numbers, SeasonForecast forecast) {
        WaterWind wind = WaterWind.of(forecast);
        if (wind.hoursBeyond() == 0) {
            return "";
        }
        return "In " + wind.hoursBeyond() + " of the season's " + wind.hours()
                + " hours the wind at the water is stronger than the "
                + numbers.show(Measure.SPEED, wind.strongestMeasuredMs())
                + " up to which evaporation was measured, at most "
                + numbers.show(Measure.SPEED, wind.highestMs())
                + ". There the equation goes straight on, which is less certain.";
    }

    private record Row(String label, double windFactor, PeriodSummary season) {
        static Row of(String label, PoolWindBand.Case one) {
            return new Row(label, one.windFactor(), one.season());
        }
    }
}
