package dev.warmlane.report;

import dev.warmlane.season.FittedDoubt;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.WaterWind;
import dev.warmlane.season.WindAndSun;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.study.Sensitivity;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** How far the forecast is to be trusted: what is uncertain and what it moves, and what a typical year is. */
final class CertaintySection {

    private CertaintySection() {}

    static Section of(Subject subject, SeasonBand band) {
        Numbers numbers = subject.numbers();
        return Section.of("How sure this is", Place.PRINTED)
                .words(fitted(subject))
                .words(
                        "The season was computed again with each thing that nobody knows for certain at its two ends, the"
                                + " others as described. Together they leave:")
                .with(quantities(subject, band))
                .words(
                        "Deviations of the single things are put together as the root of the sum of their squares, up and"
                                + " down each by itself. They are judgements, not statistics, and one year's weather is not among"
                                + " them. Each alone:")
                .with(doubts(subject, band))
                .words("Month by month the pool's mean, with the same doubts together:")
                .with(ForecastTables.monthsInDoubt(subject.forecast(), band, numbers))
                .words(strongWind(numbers, subject.forecast()));
    }

    /** That wind and sun are known from a log, and how well; empty where they are not. */
    private static String fitted(Subject subject) {
        return subject.installation()
                .fitted()
                .map(doubt -> {
                    Numbers numbers = subject.numbers();
                    WindAndSun likely = WindAndSun.of(subject.installation());
                    return "Wind and sun at the pool, and what the sky sends to it beyond the weather's, were fitted to a log"
                            + " of its water (" + doubt.source()
                            + "): in those days a wind factor of "
                            + plusMinus(
                                    numbers, likely.windFactor(), doubt.wind().sd())
                            + ", "
                            + plusMinus(numbers, likely.sunShare(), doubt.sun().sd())
                            + " of the sun and "
                            + numbers.show(Measure.IRRADIANCE, doubt.skyWm2())
                            + " ± "
                            + numbers.show(
                                    Measure.IRRADIANCE,
                                    FittedDoubt.NINE_OF_TEN * doubt.sky().sd())
                            + ", nine of ten, in place of what is usual. In other months they return towards what was"
                            + " described before the log, and are as uncertain again as they were, the farther away the"
                            + " more. The range of each day's water holds"
                            + " the error that the fit left, "
                            + numbers.show(Measure.TEMPERATURE_DIFFERENCE, doubt.errorK())
                            + ", and evaporation is not varied, because the wind that was found makes up for it.";
                })
                .orElse("");
    }

    private static String plusMinus(Numbers numbers, double likely, double standardDeviation) {
        return numbers.show(likely, 2) + " ± " + numbers.show(FittedDoubt.NINE_OF_TEN * standardDeviation, 2);
    }

    /** Every number that is told with its doubt, and what leaves it least certain. */
    private static Table quantities(Subject subject, SeasonBand band) {
        BandWords words = new BandWords(subject, band);
        return new TableBuilder<BandQuantity>(subject.units())
                .words("", "quantity", BandQuantity::words)
                .words("likely", "likely", words::likely)
                .words("low to high", "range", words::range)
                .words("least certain", "least_certain", q -> words.leastCertain(q)
                        .map(DoubtWords::of)
                        .orElse(""))
                .build(said(subject, told(subject)));
    }

    /** Days at comfort that the heater holds say nothing of the collectors; the csv has them all the same. */
    private static List<BandQuantity> told(Subject subject) {
        boolean held = Telling.heldByHeater(subject.installation(), subject.season())
                && !subject.installation().arrays().isEmpty();
        return BandQuantity.of(subject).stream()
                .filter(q -> !(held && q.measure() == Measure.DAYS))
                .toList();
    }

    private static List<BandQuantity> said(Subject subject, List<BandQuantity> quantities) {
        return quantities.stream().map(q -> q.said(subject.season())).toList();
    }

    /** What each doubtful thing alone makes of the numbers, in the order of a sensitivity study. */
    private static Table doubts(Subject subject, SeasonBand band) {
        BandWords words = new BandWords(subject, band);
        TableBuilder<Sensitivity> table = new TableBuilder<Sensitivity>(subject.units())
                .words("", "parameter", Sensitivity::name)
                .words("tried", "tried", doubt -> SettingWords.range(doubt, subject.numbers()));
        said(subject, columns(subject))
                .forEach(quantity -> table.words(
                        header(quantity, subject), quantity.csvName(), doubt -> words.alone(quantity, doubt)));
        return table.build(band.doubts());
    }

    /** As many as a terminal has room for. */
    private static List<BandQuantity> columns(Subject subject) {
        boolean heated = PeriodColumn.displaces(subject.season());
        boolean collectors = !subject.installation().arrays().isEmpty();
        return BandQuantity.of(subject).stream()
                .filter(q -> q.equals(BandQuantity.MEAN)
                        || q.equals(BandQuantity.HEAT)
                        || q.equals(collectors ? BandQuantity.DISPLACED : BandQuantity.BURNED)
                        || (!heated && q.measure() == Measure.DAYS))
                .toList();
    }

    private static String header(BandQuantity quantity, Subject subject) {
        return quantity.words().replaceFirst(" (?=\\S+$)", "\n") + "\n"
                + quantity.measure().unit(subject.units());
    }

    /** All of it, for csv: bounds and likely value, then what each doubtful thing alone makes of them at either end. */
    static Table all(Subject subject, SeasonBand band) {
        List<Case> cases = new ArrayList<>(List.of(
                new Case("low", q -> q.in(band).low()),
                new Case("likely", q -> q.in(band).likely()),
                new Case("high", q -> q.in(band).high())));
        for (Sensitivity doubt : band.doubts()) {
            for (Sensitivity.End end : List.of(doubt.low(), doubt.high())) {
                cases.add(new Case(
                        doubt.name() + ": " + SettingWords.of(end.setting(), subject.numbers()),
                        q -> q.number().applyAsDouble(end.season())));
            }
        }
        TableBuilder<Case> table = new TableBuilder<Case>(subject.units()).words("case", Case::name);
        BandQuantity.of(subject)
                .forEach(q -> table.number(
                        FuelWords.of(subject.season()).csv(q.csvName()), q.measure(), one -> one.of.applyAsDouble(q)));
        return table.build(cases);
    }

    private record Case(String name, ToDoubleFunction<BandQuantity> of) {}

    /** How often the wind at the water is beyond what evaporation was measured in; empty where it never is. */
    static String strongWind(Numbers numbers, SeasonForecast forecast) {
        WaterWind wind = WaterWind.of(forecast);
        if (wind.hoursBeyond() == 0) {
            return "";
        }
        return "In " + numbers.show(wind.hoursBeyond(), 0) + " of the season's " + numbers.show(wind.hours(), 0)
                + " hours the wind at the water is stronger than the "
                + numbers.show(Measure.SPEED, wind.strongestMeasuredMs())
                + " up to which evaporation was measured, at most "
                + numbers.show(Measure.SPEED, wind.highestMs())
                + ". There the equation goes straight on, which is less certain.";
    }
}
