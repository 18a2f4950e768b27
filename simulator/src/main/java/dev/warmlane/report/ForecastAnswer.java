package dev.warmlane.report;

import dev.warmlane.report.Block.Figure;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.PoolWindBand;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a pool owner wants to know first, in sentences and in a few large numbers. */
final class ForecastAnswer {

    private final Subject subject;
    private final Optional<PoolWindBand> wind;
    private final Numbers numbers;
    private final PeriodSummary season;
    private final boolean collectors;
    private final FuelWords fuel;

    ForecastAnswer(Subject subject, Optional<PoolWindBand> wind) {
        this.subject = subject;
        this.wind = wind;
        this.numbers = subject.numbers();
        this.season = subject.season();
        this.fuel = FuelWords.of(season);
        this.collectors = !subject.installation().arrays().isEmpty();
    }

    Section section() {
        return CommonSections.answer(numbers, Stream.of(season), sentences(), figures());
    }

    /** The answer in two or three sentences. */
    private String sentences() {
        StringBuilder text = new StringBuilder("Over the season the pool averages ")
                .append(temperature(season.water().meanC()));
        if (collectors) {
            text.append(", ")
                    .append(Numbers.show(
                            Measure.TEMPERATURE_DIFFERENCE.in(subject.units(), Math.abs(season.gainedK())), 1))
                    .append(season.gainedK() < 0 ? " degrees colder" : " degrees warmer")
                    .append(" than without collectors");
        }
        text.append(". It is at ")
                .append(comfort())
                .append(" or above on ")
                .append(season.comfort().daysAtComfort())
                .append(" of ")
                .append(days(season.comfort().openDays()));
        if (collectors) {
            text.append(", without collectors on ")
                    .append(season.comfortWithout().daysAtComfort());
        }
        text.append('.');
        Start.of(numbers, subject.forecast())
                .ifPresent(start -> text.append(" It ").append(start).append('.'));
        season.gas()
                .displaced()
                .filter(gas -> collectors && gas.burnedWithoutKwh() > 0)
                .ifPresent(gas -> text.append(
                                gas.replacedKwh() < 0
                                        ? " With the collectors more " + fuel.word() + " is " + fuel.used() + ", by "
                                        : " The collectors displace ")
                        .append(numbers.show(Measure.SHARE, Math.abs(gas.replacedKwh()) / gas.burnedWithoutKwh()))
                        .append(gas.replacedKwh() < 0 ? "." : " of the " + fuel.word() + "."));
        wind.ifPresent(band -> text.append(' ').append(wind(band)));
        return text.toString();
    }

    /** The large numbers, four or five. */
    List<Figure> figures() {
        List<Figure> keys = new ArrayList<>();
        keys.add(new Figure(
                temperature(season.water().meanC()),
                "mean pool temperature",
                collectors ? temperature(season.waterWithout().meanC()) + " without collectors" : ""));
        keys.add(new Figure(
                days(season.comfort().daysAtComfort()),
                "at " + comfort() + " or above",
                collectors ? season.comfortWithout().daysAtComfort() + " without collectors" : ""));
        if (collectors) {
            keys.add(new Figure(
                    numbers.about(Measure.HEAT, Math.abs(season.collectors().deliveredKwh())),
                    Signs.heatTaken(season.collectors())
                            .map(why -> "taken from the pool: " + why)
                            .orElse("heat from the collectors"),
                    season.collectors().deliveredKwhPerM2().stream()
                            .map(Math::abs)
                            .mapToObj(perM2 -> numbers.show(Measure.HEAT_PER_AREA, perM2))
                            .findFirst()
                            .orElse("")));
        }
        season.gas().match(this::displaced, this::wouldHaveBurned).ifPresent(keys::add);
        subject.summary().money().filter(money -> collectors).ifPresent(money -> keys.add(money(money)));
        return keys;
    }

    private Optional<Figure> displaced(GasSummary.Displaced gas) {
        return Optional.of(
                collectors
                        ? new Figure(
                                replaced(gas),
                                gas.replacedKwh() < 0 ? "more " + fuel.wordUsed() : fuel.wordDisplaced(),
                                carbonDioxide(Math.abs(gas.replacedCo2Kg()))
                                        + (season.pump().electricityKwh() > 0
                                                ? ", pump's electricity not counted"
                                                : ""))
                        : new Figure(
                                numbers.about(Measure.HEAT, gas.burnedKwh()),
                                fuel.wordUsed(),
                                carbonDioxide(gas.burnedCo2Kg())));
    }

    private Optional<Figure> wouldHaveBurned(GasSummary gas) {
        return collectors && gas.replacedKwh() >= 0
                ? Optional.of(new Figure(
                        replaced(gas), "gas that a heater would have burned", "there is none, so no gas is displaced"))
                : Optional.empty();
    }

    private String replaced(GasSummary gas) {
        return numbers.about(Measure.HEAT, Math.abs(gas.replacedKwh()));
    }

    private String carbonDioxide(double kg) {
        return numbers.about(Measure.MASS, kg) + " of carbon dioxide";
    }

    private Figure money(MoneySummary money) {
        return season.gas()
                .match(
                        displaced -> saved(money),
                        would -> would.replacedKwh() < 0
                                ? new Figure(amount(money, money.pumpCost()), "for pumping in the season", "")
                                : new Figure(amount(money, money.replacedGasWorth()), "worth of that gas", ""));
    }

    private Figure saved(MoneySummary money) {
        String pump = Signs.pumpPaid(money).replaceFirst("^, ", "");
        return new Figure(
                amount(money, Math.abs(money.saved())),
                money.saved() < 0 ? "more spent in the season" : "saved in the season",
                money.paybackSeasons().stream()
                        .mapToObj(seasons -> "simple payback " + Numbers.show(seasons, 1) + " seasons"
                                + (pump.isEmpty() ? "" : ", " + pump))
                        .findFirst()
                        .orElse(pump));
    }

    private String wind(PoolWindBand band) {
        List<String> cases = new ArrayList<>();
        if (band.hasSheltered()) {
            cases.add("in a well sheltered place the pool would average "
                    + temperature(band.sheltered().season().water().meanC()));
        }
        if (band.hasExposed()) {
            cases.add((cases.isEmpty() ? "on open ground the pool would average " : "on open ground ")
                    + temperature(band.exposed().season().water().meanC()));
        }
        return "Least certain is the wind at the water: " + String.join(", ", cases) + ".";
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

    private static String amount(MoneySummary money, double value) {
        return Numbers.aboutMoney(value, money.currency());
    }
}
