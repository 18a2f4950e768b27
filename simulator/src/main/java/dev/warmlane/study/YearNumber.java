package dev.warmlane.study;

import dev.warmlane.season.GasSummary;
import dev.warmlane.season.MoneySummary;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * What is asked of every year's season; gas is whatever the heater is fed with. Temperatures in °C, heat and gas in kWh of the season, money in
 * the prices' currency.
 */
@SuppressWarnings("ImmutableEnumChecker") // method references and lambdas without state
public enum YearNumber {
    /** Mean water temperature with the collectors. */
    WATER_MEAN(true, of(y -> y.season().water().meanC())),
    /** Mean water temperature without. */
    WATER_MEAN_WITHOUT(true, of(y -> y.season().waterWithout().meanC())),
    /** Days at comfort with the collectors. */
    DAYS_AT_COMFORT(true, of(y -> y.season().comfort().daysAtComfort())),
    /** Days at comfort without. */
    DAYS_AT_COMFORT_WITHOUT(true, of(y -> y.season().comfortWithout().daysAtComfort())),
    /** Mean water temperature of the first day open, with the collectors. */
    OPENING(true, of(YearSeason::openingC)),
    /** Mean water temperature of the first day open, without. */
    OPENING_WITHOUT(true, of(YearSeason::openingWithoutC)),
    /** Heat delivered by the collectors. */
    DELIVERED(
            true,
            y -> y.installation().arrays().isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(y.season().balance().deliveredKwh())),
    /** Gas burned with the collectors. */
    GAS_BURNED(false, gas(GasSummary.Displaced::burnedKwh)),
    /** Gas burned without. */
    GAS_BURNED_WITHOUT(false, gas(GasSummary.Displaced::burnedWithoutKwh)),
    /** Gas displaced by the collectors. */
    GAS_DISPLACED(true, gas(GasSummary.Displaced::replacedKwh)),
    /** Money saved: gas, or what is in its place, less electricity for pumping. */
    SAVED(true, y -> y.money()
            .filter(money -> y.season().gas().displaced().isPresent())
            .map(MoneySummary::saved)
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty())),
    /** Irradiation of the horizontal in the season, kWh/m². */
    IRRADIATION(true, of(YearSeason::irradiationKwhM2)),
    /** Mean air temperature of the season. */
    AIR_MEAN(true, of(y -> y.season().airMeanC()));

    private final boolean moreIsBetter;
    private final Function<YearSeason, OptionalDouble> number;

    YearNumber(boolean moreIsBetter, Function<YearSeason, OptionalDouble> number) {
        this.moreIsBetter = moreIsBetter;
        this.number = number;
    }

    /** Whether a season with more of it is the better one for who owns the pool. */
    public boolean moreIsBetter() {
        return moreIsBetter;
    }

    /** That of a season; nothing where it has none, such as gas without a heater. */
    public OptionalDouble of(YearSeason season) {
        return number.apply(season);
    }

    private static Function<YearSeason, OptionalDouble> of(ToDoubleFunction<YearSeason> number) {
        return season -> OptionalDouble.of(number.applyAsDouble(season));
    }

    private static Function<YearSeason, OptionalDouble> gas(ToDoubleFunction<GasSummary.Displaced> number) {
        return season -> season.season()
                .gas()
                .displaced()
                .map(gas -> OptionalDouble.of(number.applyAsDouble(gas)))
                .orElse(OptionalDouble.empty());
    }
}
