package dev.warmlane.report;

import dev.warmlane.heater.Fuel;
import dev.warmlane.money.Worth;
import dev.warmlane.report.Block.Figure;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.WarmDays;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a pool owner wants to know first, in sentences and in a few large numbers. */
final class ForecastAnswer {

    /** Heat not taken that is told, as a share of that delivered; own choice. */
    private static final double WORTH_TELLING = 0.1;

    private final Subject subject;
    private final BandWords band;
    private final BandQuantity days;
    private final MoneyWords worth;
    private final boolean heldByHeater;
    private final WarmDays warm;
    private final Numbers numbers;
    private final PeriodSummary season;
    private final boolean collectors;
    private final FuelWords fuel;

    ForecastAnswer(Subject subject, SeasonBand band) {
        this.subject = subject;
        this.numbers = subject.numbers();
        this.season = subject.season();
        this.fuel = FuelWords.of(season);
        this.band = new BandWords(subject, band);
        this.worth = new MoneyWords(subject, band);
        this.heldByHeater = Telling.heldByHeater(subject.installation(), season);
        this.warm = WarmDays.of(subject.forecast());
        this.days = BandQuantity.days(season);
        this.collectors = !subject.installation().arrays().isEmpty();
    }

    Section section() {
        return CommonSections.answer(numbers, Stream.of(season), sentences(), figures());
    }

    /** The answer in two or three sentences. */
    private String sentences() {
        StringBuilder text = new StringBuilder("Over the season the pool averages ")
                .append(temperature(season.water().meanC()))
                .append(band.inBrackets(BandQuantity.MEAN));
        if (collectors) {
            text.append(", ")
                    .append(numbers.degreesApart(
                            season.water().meanC(), season.waterWithout().meanC()))
                    .append(season.gainedK() < 0 ? " colder" : " warmer")
                    .append(band.inBrackets(BandQuantity.GAINED.said(season)))
                    .append(" than without collectors");
        }
        text.append(". ")
                .append(collectors && heldByHeater ? held() : atComfortSaid())
                .append(tooWarm())
                .append(notTaken());
        Start.of(numbers, subject.forecast(), fuel)
                .ifPresent(start -> text.append(" It ").append(start).append('.'));
        season.gas()
                .displaced()
                .filter(gas -> collectors && !Telling.trivial(subject.installation(), gas))
                .ifPresent(gas -> text.append(
                                gas.replacedKwh() < 0
                                        ? " With the collectors more " + fuel.word() + " is " + fuel.used() + ", by "
                                        : " The collectors displace ")
                        .append(numbers.show(Measure.SHARE, Math.abs(gas.replacedKwh()) / gas.burnedWithoutKwh()))
                        .append(
                                gas.replacedKwh() < 0
                                        ? "."
                                        : band.inBrackets(BandQuantity.SHARE) + " of the " + fuel.word() + "."));
        if (collectors) {
            text.append(Telling.hardlyNeeded(subject.installation(), season));
        }
        return text.append(leastCertain()).toString();
    }

    private String atComfortSaid() {
        return "It is at " + comfort() + " or above on "
                + season.comfort().daysAtComfort() + band.inBrackets(days) + " of "
                + days(season.comfort().openDays())
                + (collectors
                        ? ", without collectors on "
                                + orNone(season.comfortWithout().daysAtComfort())
                        : "")
                + ".";
    }

    /** Days at comfort say nothing there. */
    private String held() {
        return Telling.held(numbers, subject.installation()) + "; with them it gives nothing on "
                + days(warm.withoutHeater()) + " of " + warm.openDays() + ", without them on "
                + orNone(warm.withoutHeaterBefore())
                + (warm.twoWarmer() > 0
                        ? ", and on " + days(warm.twoWarmer()) + " they make the water two degrees warmer."
                        : ".");
    }

    private static String orNone(int days) {
        return days == 0 ? "none" : String.valueOf(days);
    }

    /** The other side of warm water, which an owner should not find out in July. */
    private String tooWarm() {
        int tooWarm = season.comfort().daysTooWarm();
        return tooWarm == 0
                ? ""
                : " Warmer than " + temperature(subject.installation().comfortMaximumC())
                        + ", which many find too warm, it is on "
                        + days(tooWarm)
                        + (collectors
                                ? ", without collectors on "
                                        + orNone(season.comfortWithout().daysTooWarm())
                                : "")
                        + ".";
    }

    /** Heat that the roof could give and the pool's limit refuses: more collectors would not be more heat. */
    private String notTaken() {
        double refused = season.collectors().refusedKwh();
        return refused < WORTH_TELLING * season.collectors().deliveredKwh()
                ? ""
                : " On warm days the collectors could give " + numbers.roughly(Measure.HEAT, refused)
                        + " more, but the pool is at its limit of "
                        + temperature(subject.installation().control().limitC()) + " then.";
    }

    /** The large numbers, four or five. */
    List<Figure> figures() {
        List<Figure> keys = new ArrayList<>();
        keys.add(new Figure(
                temperature(season.water().meanC()),
                "mean pool temperature",
                band.beside(BandQuantity.MEAN),
                collectors ? temperature(season.waterWithout().meanC()) + " without collectors" : ""));
        keys.add(collectors && heldByHeater ? withoutHeater() : atComfort());
        if (collectors) {
            BandQuantity heat = BandQuantity.HEAT.said(season);
            keys.add(new Figure(
                    band.likely(heat),
                    Signs.heatTaken(season.collectors())
                            .map(why -> "taken from the pool: " + why)
                            .orElse("heat from the collectors"),
                    band.beside(heat),
                    season.collectors().deliveredKwhPerM2().stream()
                            .map(Math::abs)
                            .mapToObj(perM2 -> numbers.show(Measure.HEAT_PER_AREA, perM2))
                            .findFirst()
                            .orElse("")));
        }
        season.gas()
                .match(
                        gas -> Optional.of(collectors ? displaced() : burned(gas)),
                        none -> collectors ? Optional.of(gained()) : Optional.<Figure>empty())
                .ifPresent(keys::add);
        subject.summary()
                .money()
                .filter(money -> collectors && PeriodColumn.displaces(season))
                .ifPresent(money -> keys.add(saved(money)));
        return keys;
    }

    private Figure atComfort() {
        return new Figure(
                days(season.comfort().daysAtComfort()),
                "at " + comfort() + " or above",
                band.beside(days),
                collectors ? season.comfortWithout().daysAtComfort() + " without collectors" : "");
    }

    private Figure withoutHeater() {
        return new Figure(
                days(warm.withoutHeater()),
                "in which the heater gives nothing",
                warm.withoutHeaterBefore() + " without collectors, of " + warm.openDays());
    }

    /** Degrees, and days at comfort that they are worth to a pool that has no heater. */
    private Figure gained() {
        BandQuantity gained = BandQuantity.GAINED.said(season);
        return new Figure(
                band.likely(gained),
                gained.words(),
                band.beside(gained),
                season.daysGained() > 0 ? days(season.daysGained()) + " more at " + comfort() : "");
    }

    private Figure displaced() {
        BandQuantity displaced = BandQuantity.DISPLACED.said(season);
        return bought(
                displaced,
                carbonDioxide(band.likely(BandQuantity.CARBON.said(season))
                                + band.inBrackets(BandQuantity.CARBON.said(season)))
                        + (season.pump().electricityKwh() > 0 ? ", pump's electricity not counted" : ""));
    }

    private Figure burned(GasSummary.Displaced gas) {
        return bought(BandQuantity.BURNED, carbonDioxide(numbers.about(Measure.MASS, gas.burnedCo2Kg())));
    }

    /**
     * An amount of what the heater is fed with. Oil and propane come in a lorry and are counted by the litre or the gallon,
     * so that this is the large number; of a gas that a meter counts by its volume it stands beside the heat.
     */
    private Figure bought(BandQuantity quantity, String beside) {
        Fuel sold = season.gas().fuel();
        Estimate kwh = band.of(quantity);
        double perKwh = sold.unitsForKwh(1);
        String volume = numbers.roundedFuel(sold, kwh.likely() * perKwh);
        if (!sold.unit().isLiquid()) {
            return new Figure(
                    band.likely(quantity),
                    quantity.words(),
                    band.beside(quantity),
                    (sold.unit().isVolume() ? "about " + volume + "; " : "") + beside);
        }
        return new Figure(
                volume,
                quantity.words(),
                band.beside(quantity).isEmpty()
                        ? ""
                        : withoutUnit(numbers.roundedFuel(sold, kwh.low() * perKwh)) + " to "
                                + withoutUnit(numbers.roundedFuel(sold, kwh.high() * perKwh)),
                "about " + band.likely(quantity) + "; " + beside);
    }

    private static String withoutUnit(String amount) {
        return amount.substring(0, amount.indexOf(' '));
    }

    private static String carbonDioxide(String amount) {
        return amount + " of carbon dioxide";
    }

    private Figure saved(MoneySummary money) {
        String pump = season.pump().electricityKwh() == 0
                ? "no electricity counted for pumping"
                : money.pumpCost() > 0
                        ? "after paying for the pump's electricity"
                        : "the pump's electricity costs nothing";
        BandQuantity saved = BandQuantity.saved(subject.installation()).said(season);
        return new Figure(
                band.likely(saved),
                saved.words(),
                band.beside(saved),
                worth.worth().map(over -> paidBack(over) + ", " + pump).orElse(pump));
    }

    /** Its range stands with the money over the years. */
    private String paidBack(Worth over) {
        String years = worth.payback(over);
        return years.startsWith("not")
                ? "paid back " + years
                : "paid back in " + years + MoneyWords.withInterest(numbers, over.terms());
    }

    /** What leaves the two numbers that an owner looks at least certain, one sentence for both where it is the same. */
    private String leastCertain() {
        BandQuantity bought = collectors ? BandQuantity.DISPLACED : BandQuantity.BURNED;
        BandQuantity other = (PeriodColumn.displaces(season)
                        ? bought
                        : collectors ? BandQuantity.HEAT : BandQuantity.MEAN)
                .said(season);
        Optional<String> mean = band.leastCertain(BandQuantity.MEAN).map(DoubtWords::of);
        Optional<String> second = band.leastCertain(other).map(DoubtWords::of);
        if (mean.isEmpty() && second.isEmpty()) {
            return "";
        }
        if (mean.isEmpty() || second.isEmpty() || mean.equals(second)) {
            return " Least certain is " + mean.or(() -> second).orElse("") + ".";
        }
        return " Least certain for the temperature is " + mean.get() + ", for the " + other.words() + " " + second.get()
                + ".";
    }

    private String comfort() {
        return temperature(subject.installation().comfortC());
    }

    private String temperature(double celsius) {
        return numbers.show(Measure.TEMPERATURE, celsius);
    }

    private static String days(int count) {
        return count + (count == 1 ? " day" : " days");
    }
}
