package dev.warmlane.scenario;

import dev.warmlane.circuit.Control;
import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.pool.StartWater;
import dev.warmlane.scenario.EnergyPriceKind.EnergyPrice;
import dev.warmlane.season.Comfort;
import dev.warmlane.season.Prices;
import dev.warmlane.site.Schedule;
import java.time.MonthDay;

/** Keys of the sections prices, control, season and schedule. */
final class PlantKeys {

    private static final String ALL_DAY = "at any hour";

    static final Key<String> CURRENCY = Key.required(
            "currency",
            new CurrencyKind(),
            "how money is written: \"EUR\", \"kr\"; a sign alone, such as \"$\", stands before the number where the report's numbers"
                    + " have a decimal point");
    static final Key<EnergyPrice> GAS_PRICE = Key.optional(
            "gas",
            new EnergyPriceKind(),
            "price of gas on its higher heating value, or of a volume of it",
            "required for a heater that burns gas, not needed without a heater; not allowed for oil, electricity and heat");
    static final Key<EnergyPrice> FUEL_PRICE = Key.optional(
            "fuel",
            new EnergyPriceKind(),
            "price of what the heater is fed with, whatever it is, on its higher heating value or of a volume of it",
            "required for oil and heat of a network; electricity costs what electricity says; not with gas");
    static final Key<Double> ELECTRICITY_PRICE =
            Key.required("electricity", Prices.ELECTRICITY, "price of electricity");
    static final Key<Double> COLLECTOR_PRICE = Key.convention(
            "collectors", Prices.COLLECTOR, "cost of the installed collectors; 0 where it is not known", 0.0);
    static final SectionSchema PRICES = SectionSchema.optional(
            "prices",
            "what energy and collectors cost; without this section nothing is said of money",
            CURRENCY,
            GAS_PRICE,
            FUEL_PRICE,
            ELECTRICITY_PRICE,
            COLLECTOR_PRICE);

    static final Key<Double> ON_DIFFERENCE = Key.assumed(
            "on_difference",
            Control.USUAL_ON,
            "the pump starts when the dry plate would be this much warmer than the pool");
    static final Key<Double> OFF_DIFFERENCE = Key.assumed(
            "off_difference",
            Control.USUAL_OFF,
            "the pump stops when the water warms by less than this, about a tenth of on_difference");
    static final Key<Double> LIMIT =
            Key.assumed("limit", Control.USUAL_LIMIT, "pool temperature at which the collectors stop giving heat");
    static final Key<Double> COOL_ABOVE = Key.optional(
            "cool_above",
            Control.COOL_ABOVE,
            "pool temperature above which the circuit also runs to cool the water, as on clear nights",
            "never runs to cool");
    static final Key<WordKinds.Span> PUMPING = Key.assumed(
            "pumping",
            WordKinds.hours(),
            "hours in which the circuit may run every day; assumed only where no [[schedule]] is for it",
            new WordKinds.Span(0, 24),
            ALL_DAY);
    static final SectionSchema CONTROL = SectionSchema.optional(
            "control", "control of the collector circuits", ON_DIFFERENCE, OFF_DIFFERENCE, LIMIT, COOL_ABOVE, PUMPING);

    static final Key<MonthDay> FIRST_DAY = Key.assumed(
            "first_day",
            WordKinds.date(),
            "first day of the season",
            MonthDay.of(1, 1),
            "open all year; give both days or neither");
    static final Key<MonthDay> LAST_DAY = Key.assumed(
            "last_day",
            WordKinds.date(),
            "last day of the season, itself included; before first_day the season runs over New Year",
            MonthDay.of(12, 31),
            "open all year; give both days or neither");
    static final Key<WordKinds.Span> OPEN = Key.assumed(
            "open",
            WordKinds.hours(),
            "hours in which people may swim every day; assumed only where no [[schedule]] is for it",
            new WordKinds.Span(0, 24),
            ALL_DAY);
    static final Key<MonthDay> COLLECTORS_FROM = Key.optional(
            "collectors_from",
            WordKinds.date(),
            "day before first_day from which on the collectors may run",
            "from first_day; not with collectors_before");
    static final Key<Integer> COLLECTORS_BEFORE = Key.convention(
            "collectors_before",
            Kinds.count(BeforeOpening.DAYS),
            "days before first_day in which the collectors may run already",
            0);
    static final Key<Integer> HEATER_BEFORE = Key.convention(
            "heater_before",
            Kinds.count(BeforeOpening.DAYS),
            "days before first_day in which the heater may run already",
            0);
    static final Key<Double> START_TEMPERATURE = Key.optional(
            "start_temperature",
            StartWater.Given.TEMPERATURE,
            "temperature of the water on the first morning, or on that on which collectors or heater first may run",
            "from days_standing; not with days_standing");
    static final Key<Integer> DAYS_STANDING = Key.assumed(
            "days_standing",
            Kinds.count(StartWater.StandingFilled.DAYS),
            "days that the filled pool stands before opening, or before collectors or heater first may run, and takes its"
                    + " temperature by itself",
            StartWater.StandingFilled.USUAL.days(),
            StartWater.StandingFilled.USUAL_DAYS.source());
    static final Key<Double> COMFORT = Key.assumed(
            "comfort", Comfort.USUAL_WARM_ENOUGH, "temperature from which people find the pool warm enough");
    static final Key<Double> COMFORT_MAXIMUM = Key.assumed(
            "comfort_maximum",
            Comfort.USUAL_TOO_WARM,
            "temperature above which people find the pool too warm, at least comfort");
    static final SectionSchema SEASON = SectionSchema.optional(
            "season",
            "when the pool is open, how warm it starts and how warm it should be",
            FIRST_DAY,
            LAST_DAY,
            OPEN,
            COLLECTORS_FROM,
            COLLECTORS_BEFORE,
            HEATER_BEFORE,
            START_TEMPERATURE,
            DAYS_STANDING,
            COMFORT,
            COMFORT_MAXIMUM);

    static final Key<What> WHAT = Key.required("what", WordKinds.choice(What.class), "what the rule is for");
    static final Key<WordKinds.Span> MONTHS = Key.convention(
            "months", WordKinds.months(), "months of the rule, over New Year as \"11-3\"", new WordKinds.Span(1, 12));
    static final Key<WordKinds.Span> HOURS = Key.convention(
            "hours", WordKinds.hours(), "hours of the rule, over midnight as \"20-8\"", new WordKinds.Span(0, 24));
    static final Key<Double> SHARE = Key.convention(
            "share",
            Schedule.Rule.SHARE,
            "how far the cover is drawn, how full the pool is; for open, pumping and heating 1 yes or 0 no",
            1.0);
    static final SectionSchema SCHEDULE = SectionSchema.repeated(
            "schedule",
            "a rule by month and hour; 0 where no rule fits, else the last that fits counts, after cover.drawn,"
                    + " season.open, control.pumping or heater.hours",
            WHAT,
            MONTHS,
            HOURS,
            SHARE);

    private PlantKeys() {}

    /** What a rule of a schedule is for. */
    enum What {
        COVER,
        BATHERS,
        OPEN,
        PUMPING,
        HEATING;

        /** Whether shares between 0 and 1 make sense. */
        boolean gradual() {
            return this == COVER || this == BATHERS;
        }
    }
}
