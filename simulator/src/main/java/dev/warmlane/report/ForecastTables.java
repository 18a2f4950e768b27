package dev.warmlane.report;

import dev.warmlane.pool.Flow;
import dev.warmlane.season.ComfortSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.WaterCourse;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** Weeks and months of a forecast: for people, narrow enough for a page, and all of it for csv. */
public final class ForecastTables {

    private static final Function<PeriodSummary, PeriodSummary> ITSELF = Function.identity();

    private ForecastTables() {}

    /** Month by month with the lowest and highest hour, the season below. */
    public static Table months(SeasonForecast forecast, Numbers numbers) {
        return table(forecast, numbers, "month", forecast.months(), Optional.empty());
    }

    /**
     * Week by week from opening, the season below, and how far the pool's mean is to be trusted.
     *
     * @throws java.util.concurrent.CancellationException if the runs of its doubt were cancelled
     */
    public static Table weeks(Subject subject) {
        SeasonForecast forecast = subject.forecast();
        SeasonBand band = subject.bands().of(subject.installation());
        WaterCourse water = WaterCourse.of(forecast.with());
        return table(
                forecast, subject.numbers(), "week", forecast.weeks(), Optional.of(week -> waterC(band, water, week)));
    }

    private static Table table(
            SeasonForecast forecast,
            Numbers numbers,
            String name,
            List<PeriodSummary> rows,
            Optional<Function<PeriodSummary, Estimate>> doubt) {
        PeriodSummary season = PeriodSummary.of(forecast, Periods.season(forecast.with()));
        TableBuilder<PeriodSummary> table = new TableBuilder<>(numbers.units());
        if (name.equals("week")) {
            table.words(name, p -> p.period().label().replace(Periods.BEFORE, "before"))
                    .words("from", "first_day", p -> numbers.notation().showShort(HourOfYear.dateOf(p.firstHour())));
        } else {
            table.words(name, p -> numbers.label(p.period()));
        }
        boolean indoor = forecast.installation().pool().setting().outdoor().isEmpty();
        table.period(indoor ? "outdoor\nair" : "air", ITSELF, PeriodColumn.AIR)
                .period("pool", ITSELF, PeriodColumn.WATER_MEAN);
        // both would be wider than a terminal; the csv files have all
        doubt.ifPresentOrElse(
                of -> table.words(
                        "low to\nhigh", "water_mean_range", p -> numbers.bounds(Measure.TEMPERATURE, of.apply(p))),
                () -> table.period("lowest", ITSELF, PeriodColumn.WATER_LOWEST)
                        .period("highest", ITSELF, PeriodColumn.WATER_HIGHEST));
        table.period("pool\nwithout", ITSELF, PeriodColumn.WITHOUT_MEAN);
        if (!Telling.heldByHeater(forecast.installation(), season)) {
            table.optionalCount("days at\ncomfort", "days_at_comfort", p -> daysAtComfort(p.comfort()))
                    .optionalCount("days\nwithout", "days_at_comfort_without", p -> daysAtComfort(p.comfortWithout()));
        }
        table.period("solar\nheat", ITSELF, PeriodColumn.DELIVERED);
        if (PeriodColumn.displaces(season)) {
            FuelWords fuel = FuelWords.of(season);
            table.fed(fuel)
                    .period(fuel.heading() + "\n" + fuel.used(), ITSELF, PeriodColumn.GAS_BURNED)
                    .number(
                            fuel.heading() + "\ndisplaced",
                            fuel.csv(PeriodColumn.GAS_DISPLACED.csvName()),
                            PeriodColumn.GAS_DISPLACED.measure(),
                            p -> GasSection.displacedKwh(numbers, p));
        }
        return table.build(rows, List.of(season));
    }

    /** Nothing where the pool was closed all the time. */
    private static OptionalInt daysAtComfort(ComfortSummary comfort) {
        return comfort.openDays() > 0 ? OptionalInt.of(comfort.daysAtComfort()) : OptionalInt.empty();
    }

    /** How warm the pool is month by month, and how far that is to be trusted. */
    static Table monthsInDoubt(SeasonForecast forecast, SeasonBand band, Numbers numbers) {
        WaterCourse water = WaterCourse.of(forecast.with());
        return new TableBuilder<PeriodSummary>(numbers.units())
                .words("month", p -> numbers.label(p.period()))
                .period("pool,\nlikely", ITSELF, PeriodColumn.WATER_MEAN)
                .words("low to high", "range", p -> numbers.bounds(Measure.TEMPERATURE, waterC(band, water, p)))
                .build(forecast.months());
    }

    private static Estimate waterC(SeasonBand band, WaterCourse water, PeriodSummary of) {
        return band.waterC(water, of.period().from(), of.period().to());
    }

    /** Everything of the months, for csv. */
    static Table allOfMonths(SeasonForecast forecast, SeasonBand band, UnitSystem units) {
        return all("month", forecast.months(), forecast, band, units);
    }

    /** Everything of the weeks, for csv. */
    static Table allOfWeeks(SeasonForecast forecast, SeasonBand band, UnitSystem units) {
        return all("week", forecast.weeks(), forecast, band, units);
    }

    private static List<Flow> flows(SeasonForecast forecast) {
        return forecast.installation().pool().flows();
    }

    private static Table all(
            String name, List<PeriodSummary> rows, SeasonForecast forecast, SeasonBand band, UnitSystem units) {
        WaterCourse water = WaterCourse.of(forecast.with());
        TableBuilder<PeriodSummary> table = new TableBuilder<PeriodSummary>(units)
                .words(name, p -> p.period().label())
                .words("first_day", ForecastTables::firstDay)
                .periods(ITSELF, PeriodColumn.LENGTH, PeriodColumn.AIR, PeriodColumn.WATER_MEAN)
                .number("water_mean_low", Measure.TEMPERATURE, p -> waterC(band, water, p)
                        .low())
                .number("water_mean_high", Measure.TEMPERATURE, p -> waterC(band, water, p)
                        .high())
                .periods(
                        ITSELF,
                        PeriodColumn.WATER_LOWEST,
                        PeriodColumn.WATER_HIGHEST,
                        PeriodColumn.COLDEST_DAY,
                        PeriodColumn.WARMEST_DAY,
                        PeriodColumn.WITHOUT_MEAN,
                        PeriodColumn.WITHOUT_LOWEST,
                        PeriodColumn.WITHOUT_HIGHEST,
                        PeriodColumn.OPEN_DAYS,
                        PeriodColumn.AT_COMFORT,
                        PeriodColumn.AT_COMFORT_WITHOUT,
                        PeriodColumn.TOO_WARM,
                        PeriodColumn.OPEN_HOURS,
                        PeriodColumn.HOURS_AT_COMFORT,
                        PeriodColumn.HOURS_AT_COMFORT_WITHOUT,
                        PeriodColumn.IRRADIATION,
                        PeriodColumn.DELIVERED,
                        PeriodColumn.DELIVERED_PER_AREA,
                        PeriodColumn.EFFICIENCY,
                        PeriodColumn.PEAK,
                        PeriodColumn.OUTLET_LOWEST,
                        PeriodColumn.OUTLET_HIGHEST,
                        PeriodColumn.REFUSED);
        for (Flow flow : flows(forecast)) {
            table.number(csvName(flow), Measure.HEAT, p -> p.balance().kwh(flow));
        }
        table.periods(
                ITSELF,
                PeriodColumn.STORED,
                PeriodColumn.HEATER_WITHOUT,
                PeriodColumn.EVAPORATED,
                PeriodColumn.MAKE_UP,
                PeriodColumn.PUMP,
                PeriodColumn.ELECTRICITY);
        if (PeriodColumn.displaces(rows.get(0))) {
            table.fed(FuelWords.of(rows.get(0)))
                    .periods(
                            ITSELF,
                            PeriodColumn.GAS_BURNED,
                            PeriodColumn.GAS_BURNED_WITHOUT,
                            PeriodColumn.GAS_DISPLACED,
                            PeriodColumn.CO2_AVOIDED);
        }
        return table.build(rows);
    }

    /** The month and day on which it begins. */
    static String firstDay(PeriodSummary period) {
        return HourOfYear.label(period.firstHour()).substring(0, "MM-dd".length());
    }

    /** The csv name of a kind of heat without its unit. */
    static String csvName(Flow flow) {
        return flow.name().toLowerCase(Locale.ROOT);
    }
}
