package dev.warmlane.report;

import dev.warmlane.pool.Flow;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.units.Measure;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** What tables have of a season or a part of it: the name in csv files, the measure and the number, once for all tables. */
@SuppressWarnings("ImmutableEnumChecker") // method references and lambdas without state
enum PeriodColumn {
    LENGTH("length", Measure.HOURS, of(p -> p.period().hours())),

    AIR("air_mean", Measure.TEMPERATURE, of(PeriodSummary::airMeanC)),
    WATER_MEAN("water_mean", Measure.TEMPERATURE, of(p -> p.water().meanC())),
    WATER_LOWEST("water_lowest", Measure.TEMPERATURE, of(p -> p.water().lowestC())),
    WATER_HIGHEST("water_highest", Measure.TEMPERATURE, of(p -> p.water().highestC())),
    COLDEST_DAY("water_coldest_day", Measure.TEMPERATURE, of(p -> p.water()
            .coldestDay()
            .meanC())),
    WARMEST_DAY("water_warmest_day", Measure.TEMPERATURE, of(p -> p.water()
            .warmestDay()
            .meanC())),
    WITHOUT_MEAN(
            "water_without_mean", Measure.TEMPERATURE, of(p -> p.waterWithout().meanC())),
    WITHOUT_LOWEST("water_without_lowest", Measure.TEMPERATURE, of(p -> p.waterWithout()
            .lowestC())),
    WITHOUT_HIGHEST("water_without_highest", Measure.TEMPERATURE, of(p -> p.waterWithout()
            .highestC())),

    OPEN_DAYS("open", Measure.DAYS, of(p -> p.comfort().openDays())),
    AT_COMFORT("at_comfort", Measure.DAYS, of(p -> p.comfort().daysAtComfort())),
    AT_COMFORT_WITHOUT(
            "at_comfort_without", Measure.DAYS, of(p -> p.comfortWithout().daysAtComfort())),
    TOO_WARM("too_warm", Measure.DAYS, of(p -> p.comfort().daysTooWarm())),
    OPEN_HOURS("open", Measure.HOURS, of(p -> p.comfort().openHours())),
    HOURS_AT_COMFORT("open_at_comfort", Measure.HOURS, of(p -> p.comfort().openHoursAtComfort())),
    HOURS_AT_COMFORT_WITHOUT(
            "open_at_comfort_without", Measure.HOURS, of(p -> p.comfortWithout().openHoursAtComfort())),

    IRRADIATION(
            "irradiation_on_collectors", Measure.HEAT, of(p -> p.collectors().irradiationKwh())),
    DELIVERED("delivered", Measure.HEAT, of(p -> p.balance().deliveredKwh())),
    DELIVERED_PER_AREA("delivered", Measure.HEAT_PER_AREA, p -> p.collectors().deliveredKwhPerM2()),
    EFFICIENCY("collector_efficiency", Measure.SHARE, p -> p.collectors().efficiency()),
    PEAK("peak_delivered", Measure.POWER, of(p -> p.collectors().peakKw())),
    OUTLET_LOWEST("outlet_lowest", Measure.TEMPERATURE, p -> p.collectors().lowestOutletC()),
    OUTLET_HIGHEST("outlet_highest", Measure.TEMPERATURE, p -> p.collectors().highestOutletC()),
    REFUSED("refused", Measure.HEAT, of(p -> p.collectors().refusedKwh())),

    STORED("stored", Measure.HEAT, of(p -> p.balance().storedKwh())),
    HEATER("heater", Measure.HEAT, of(p -> p.balance().kwh(Flow.HEATER))),
    HEATER_WITHOUT("heater_without", Measure.HEAT, of(p -> p.balanceWithout().kwh(Flow.HEATER))),
    EVAPORATED("evaporated", Measure.MASS, of(p -> p.balance().evaporatedKg())),
    MAKE_UP("make_up", Measure.VOLUME, of(p -> p.balance().makeUpM3())),
    PUMP("pump", Measure.HOURS, of(p -> p.pump().hours())),
    ELECTRICITY("pump_electricity", Measure.ELECTRICITY, of(p -> p.pump().electricityKwh())),

    GAS_BURNED("gas_burned", Measure.HEAT, of(PeriodColumn::burnedKwh)),
    GAS_BURNED_WITHOUT(
            "gas_burned_without", Measure.HEAT, of(p -> burnedKwh(p) + p.gas().replacedKwh())),
    GAS_DISPLACED("gas_displaced", Measure.HEAT, of(p -> p.gas().replacedKwh())),
    CO2_AVOIDED("co2_avoided", Measure.MASS, of(p -> p.gas().replacedCo2Kg()));

    private final String csvName;
    private final Measure measure;
    private final Function<PeriodSummary, OptionalDouble> number;

    PeriodColumn(String csvName, Measure measure, Function<PeriodSummary, OptionalDouble> number) {
        this.csvName = csvName;
        this.measure = measure;
        this.number = number;
    }

    /** The name in a csv file, without its unit. */
    String csvName() {
        return csvName;
    }

    /** What it measures. */
    Measure measure() {
        return measure;
    }

    /** The number; nothing where there is none. */
    OptionalDouble of(PeriodSummary period) {
        return number.apply(period);
    }

    /** Whether gas is burned at all, so that collectors can displace some. */
    static boolean displaces(PeriodSummary period) {
        return period.gas().displaced().isPresent();
    }

    private static double burnedKwh(PeriodSummary period) {
        return period.gas().match(GasSummary.Displaced::burnedKwh, none -> 0.0);
    }

    private static Function<PeriodSummary, OptionalDouble> of(ToDoubleFunction<PeriodSummary> number) {
        return period -> OptionalDouble.of(number.applyAsDouble(period));
    }
}
