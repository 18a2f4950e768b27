package dev.warmlane.report;

import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.WaterWind;
import dev.warmlane.study.PoolWindBand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far the forecast is to be trusted: the wind at the pool, and what a typical year is. */
final class CertaintyText {

    static final String TYPICAL_YEAR = "A typical year is stitched together from months that were neither"
            + " unusually warm nor unusually cold. It does not show how much warmer or colder real years are.";

    private CertaintyText() {}

    static TextSection of(Numbers numbers, ForecastReport report) {
        List<String> lines = new ArrayList<>();
        report.wind().ifPresent(b -> {
            lines.addAll(TextSection.broken(
                    "",
                    "How sheltered the pool lies is the largest uncertainty of an outdoor pool. The same season with"
                            + " the wind at the water as a share of the weather station's, from little to much:"));
            lines.add("");
            lines.addAll(TextSection.linesOf(table(numbers, b)));
            lines.add("");
            missing(b).ifPresent(why -> lines.addAll(TextSection.broken("", why)));
            strongWind(numbers, report.forecast()).ifPresent(why -> {
                lines.addAll(TextSection.broken("", why));
                lines.add("");
            });
        });
        lines.addAll(TextSection.broken("", TYPICAL_YEAR));
        return new TextSection("How sure this is", lines);
    }

    static Table table(Numbers numbers, PoolWindBand band) {
        return new TableBuilder<Row>(numbers.units())
                .words("the pool lies", "pool", Row::label)
                .words("wind", "wind", row -> Numbers.show(row.windFactor, 2))
                .number("season\nmean", "water_mean", Measure.TEMPERATURE, r -> r.season
                        .water()
                        .meanC())
                .number("\nwithout", "water_without_mean", Measure.TEMPERATURE, r -> r.season
                        .waterWithout()
                        .meanC())
                .count("days at\ncomfort", "days_at_comfort", r -> r.season
                        .comfort()
                        .daysAtComfort())
                .count("\nwithout", "days_at_comfort_without", r -> r.season
                        .comfortWithout()
                        .daysAtComfort())
                .number("heat\ndelivered", "delivered", Measure.HEAT, r -> r.season
                        .balance()
                        .deliveredKwh())
                .build(rows(band), List.of());
    }

    /** From little wind to much, none twice. */
    private static List<Row> rows(PoolWindBand band) {
        List<Row> rows = new ArrayList<>();
        if (band.hasSheltered()) {
            rows.add(Row.of("sheltered", band.sheltered()));
        }
        rows.add(Row.of("as described (likely)", band.likely()));
        if (band.hasExposed()) {
            rows.add(Row.of("exposed", band.exposed()));
        }
        return rows;
    }

    /** Why a row is missing; nothing where none is. */
    static Optional<String> missing(PoolWindBand band) {
        if (!band.hasSheltered()) {
            return Optional.of(
                    "The pool is described as sheltered as any: what is uncertain is how much more wind it gets.");
        }
        return band.hasExposed()
                ? Optional.empty()
                : Optional.of(
                        "The pool is described as exposed as any: what is uncertain is how much less wind it gets.");
    }

    /** How often the wind at the water is beyond what evaporation was measured in; nothing where it never is. */
    static Optional<String> strongWind(Numbers numbers, SeasonForecast forecast) {
        WaterWind wind = WaterWind.of(forecast);
        if (wind.hoursBeyond() == 0) {
            return Optional.empty();
        }
        return Optional.of("In " + wind.hoursBeyond() + " of the season's " + wind.hours()
                + " hours the wind at the water is stronger than the "
                + numbers.show(Measure.SPEED, wind.strongestMeasuredMs())
                + " up to which evaporation was measured, at most "
                + numbers.show(Measure.SPEED, wind.highestMs())
                + ". There the equation goes straight on, which is less certain.");
    }

    private record Row(String label, double windFactor, PeriodSummary season) {
        static Row of(String label, PoolWindBand.Case one) {
            return new Row(label, one.windFactor(), one.season());
        }
    }
}
