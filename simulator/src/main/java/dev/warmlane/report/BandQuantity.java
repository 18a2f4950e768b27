package dev.warmlane.report;

import dev.warmlane.money.Worth;
import dev.warmlane.season.CollectorsWorth;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.Installation;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.study.Sensitivity;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A number of a season that is told with its doubt.
 *
 * @param words what it is
 * @param turned what it is called where it is below zero and told without its sign; empty where the sign stays
 * @param csvName its name in csv files
 * @param measure how it is shown
 * @param lowest where it ends: it is told of nothing lower
 * @param highest nor of anything higher
 * @param number the number
 */
record BandQuantity(
        String words,
        String turned,
        String csvName,
        Measure measure,
        double lowest,
        double highest,
        ToDoubleFunction<PeriodSummary> number) {

    /** Mean water temperature. */
    static final BandQuantity MEAN = free("mean pool temperature", "", "water_mean", Measure.TEMPERATURE, p -> p.water()
            .meanC());

    /** What the collectors do to it. */
    static final BandQuantity GAINED = free(
            "warmer by the collectors",
            "colder by the collectors",
            "gained",
            Measure.TEMPERATURE_DIFFERENCE,
            PeriodSummary::gainedK);

    /** Heat from the collectors. */
    static final BandQuantity HEAT =
            free("heat from the collectors", "heat taken from the pool", "delivered", Measure.HEAT, p -> p.collectors()
                    .deliveredKwh());

    /** The same from a unit of the collectors' area. */
    static final BandQuantity HEAT_PER_AREA = free(
            "heat from a unit of area",
            "",
            "delivered_per_area",
            Measure.HEAT_PER_AREA,
            p -> p.collectors().deliveredKwh() / p.collectors().areaM2());

    /** Gas displaced, or what a heater would have burned for the same heat. */
    static final BandQuantity DISPLACED =
            free("gas displaced", "more gas burned", "gas_displaced", Measure.HEAT, p -> p.gas()
                    .replacedKwh());

    /** Carbon dioxide of that gas. */
    static final BandQuantity CARBON =
            free("carbon dioxide avoided", "more carbon dioxide", "co2_avoided", Measure.MASS, p -> p.gas()
                    .replacedCo2Kg());

    /** Gas that the heater burns with the collectors. */
    static final BandQuantity BURNED =
            atLeastNothing("gas burned", "gas_burned", Measure.HEAT, BandQuantity::burnedKwh);

    /** Share of the gas that the collectors displace. */
    static final BandQuantity SHARE = new BandQuantity(
            "share of the gas displaced",
            "",
            "gas_displaced",
            Measure.SHARE,
            Double.NEGATIVE_INFINITY,
            1,
            p -> p.gas().replacedKwh() / (burnedKwh(p) + p.gas().replacedKwh()));

    /** Days warm enough; a season has only so many. */
    static BandQuantity days(PeriodSummary season) {
        return new BandQuantity(
                "days at comfort",
                "",
                "at_comfort",
                Measure.DAYS,
                0,
                season.comfort().openDays(),
                p -> p.comfort().daysAtComfort());
    }

    /** Money saved in the season, of an installation whose prices are known. */
    static BandQuantity saved(Installation built) {
        return money("saved in the season", "more spent in the season", "saved", built, MoneySummary::saved);
    }

    /** What the collectors of an installation are worth over the years, with its sign; of one whose worth is known. */
    static BandQuantity netPresentValue(Installation built) {
        return worth(built, "net present value", "", "net_present_value", Worth::netPresentValue);
    }

    /** Money that the worth of an installation comes to. */
    static BandQuantity worth(
            Installation built, String words, String turned, String csvName, ToDoubleFunction<Worth> number) {
        return free(
                words,
                turned,
                csvName,
                Measure.MONEY,
                p -> number.applyAsDouble(CollectorsWorth.of(built, p).orElseThrow()));
    }

    /** Money that something comes to. */
    static BandQuantity money(
            String words, String turned, String csvName, Installation built, ToDoubleFunction<MoneySummary> of) {
        return free(
                words,
                turned,
                csvName,
                Measure.MONEY,
                p -> of.applyAsDouble(MoneySummary.of(built, p).orElseThrow()));
    }

    /** What of a forecast is told with its doubt, in its order. */
    static List<BandQuantity> of(Subject subject) {
        Installation built = subject.installation();
        PeriodSummary season = subject.season();
        List<BandQuantity> told = new ArrayList<>(List.of(MEAN, days(season)));
        boolean heated = PeriodColumn.displaces(season);
        if (!built.arrays().isEmpty()) {
            told.add(GAINED);
            told.add(HEAT);
        }
        if (heated) {
            told.add(BURNED);
        }
        if (heated && !built.arrays().isEmpty()) {
            told.add(DISPLACED);
            told.add(CARBON);
            built.prices().ifPresent(prices -> told.add(saved(built)));
        }
        return told;
    }

    /** The same as a season has it: of what the heater is fed with, and under its other name where it is below zero. */
    BandQuantity said(PeriodSummary season) {
        boolean negative = !turned.isEmpty() && number.applyAsDouble(season) < 0;
        FuelWords fuel = FuelWords.of(season);
        String told = (negative ? turned : words)
                .replace("gas burned", fuel.wordUsed())
                .replace("gas", fuel.word());
        if (negative) {
            return new BandQuantity(told, "", csvName, measure, -highest, -lowest, p -> -number.applyAsDouble(p));
        }
        return told.equals(words) ? this : new BandQuantity(told, "", csvName, measure, lowest, highest, number);
    }

    /** The number of a band, within what it can be. */
    Estimate in(SeasonBand band) {
        return band.of(number).within(lowest, highest);
    }

    /** What it may be for one input's sake. */
    Estimate of(SeasonBand band, Sensitivity doubt) {
        return band.alone(doubt, number).within(lowest, highest);
    }

    private static double burnedKwh(PeriodSummary season) {
        return season.gas().match(GasSummary.Displaced::burnedKwh, none -> 0.0);
    }

    private static BandQuantity free(
            String words, String turned, String csvName, Measure measure, ToDoubleFunction<PeriodSummary> number) {
        return new BandQuantity(
                words, turned, csvName, measure, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, number);
    }

    private static BandQuantity atLeastNothing(
            String words, String csvName, Measure measure, ToDoubleFunction<PeriodSummary> number) {
        return new BandQuantity(words, "", csvName, measure, 0, Double.POSITIVE_INFINITY, number);
    }
}
