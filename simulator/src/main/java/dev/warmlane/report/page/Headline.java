package dev.warmlane.report.page;

import dev.warmlane.report.ForecastParts;
import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.Measure;
import dev.warmlane.report.Numbers;
import dev.warmlane.report.SignText;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.PoolWindBand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a pool owner wants to know first, in sentences and in a few large numbers. */
final class Headline {

    private final ForecastReport report;
    private final Numbers numbers;
    private final PeriodSummary season;
    private final boolean collectors;

    Headline(ForecastReport report) {
        this.report = report;
        this.numbers = new Numbers(report.units());
        this.season = report.summary().season();
        this.collectors = !report.forecast().installation().arrays().isEmpty();
    }

    /**
     * A large number.
     *
     * @param value the number with its unit
     * @param meaning what it is
     * @param beside what it is to be seen against
     */
    record KeyNumber(String value, String meaning, String beside) {}

    /** The answer in two or three sentences. */
    String sentences() {
        StringBuilder text = new StringBuilder();
        new ForecastParts(report).notCredible().ifPresent(why -> text.append(why)
                .append(". "));
        text.append("Over the season the pool averages ")
                .append(temperature(season.water().meanC()));
        if (collectors) {
            text.append(", ")
                    .append(Numbers.show(
                            Measure.TEMPERATURE_DIFFERENCE.in(report.units(), Math.abs(season.gainedK())), 1))
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
        new ForecastParts(report)
                .start()
                .ifPresent(start -> text.append(" It ").append(start).append('.'));
        if (collectors && season.gas() instanceof GasSummary.Displaced gas && gas.burnedWithoutKwh() > 0) {
            text.append(
                            gas.replacedKwh() < 0
                                    ? " With the collectors more gas is burned, by "
                                    : " The collectors displace ")
                    .append(numbers.show(Measure.SHARE, Math.abs(gas.replacedKwh()) / gas.burnedWithoutKwh()))
                    .append(gas.replacedKwh() < 0 ? "." : " of the gas.");
        }
        report.wind().ifPresent(band -> text.append(' ').append(wind(band)));
        return text.toString();
    }

    /** The heat from the collectors in every unit, nothing where there are none. */
    Optional<String> heat() {
        if (!collectors) {
            return Optional.empty();
        }
        Optional<String> taken = SignText.heatTaken(season.collectors());
        if (taken.isPresent()) {
            return Optional.of("No heat from the collectors: " + taken.get() + ", "
                    + numbers.heat(-season.collectors().deliveredKwh()) + " taken from the pool");
        }
        return Optional.of("Heat from the collectors: "
                + numbers.heat(season.collectors().deliveredKwh())
                + season.solarShareOfHeating().stream()
                        .mapToObj(share ->
                                ", " + numbers.show(Measure.SHARE, share) + " of all heat from collectors and heater")
                        .findFirst()
                        .orElse(""));
    }

    /** The large numbers, four or five. */
    List<KeyNumber> keyNumbers() {
        List<KeyNumber> keys = new ArrayList<>();
        keys.add(new KeyNumber(
                temperature(season.water().meanC()),
                "mean pool temperature",
                collectors ? temperature(season.waterWithout().meanC()) + " without collectors" : ""));
        keys.add(new KeyNumber(
                days(season.comfort().daysAtComfort()),
                "at " + comfort() + " or above",
                collectors ? season.comfortWithout().daysAtComfort() + " without collectors" : ""));
        if (collectors) {
            keys.add(new KeyNumber(
                    numbers.about(Measure.HEAT, Math.abs(season.collectors().deliveredKwh())),
                    SignText.heatTaken(season.collectors())
                            .map(why -> "taken from the pool: " + why)
                            .orElse("heat from the collectors"),
                    season.collectors().deliveredKwhPerM2().stream()
                            .map(Math::abs)
                            .mapToObj(perM2 -> numbers.show(Measure.HEAT_PER_AREA, perM2))
                            .findFirst()
                            .orElse("")));
        }
        gas(season.gas(), keys);
        report.summary().money().filter(money -> collectors).ifPresent(money -> keys.add(money(money)));
        return keys;
    }

    private void gas(GasSummary gas, List<KeyNumber> keys) {
        String replaced = numbers.about(Measure.HEAT, Math.abs(gas.replacedKwh()));
        if (gas instanceof GasSummary.Displaced displaced) {
            keys.add(
                    collectors
                            ? new KeyNumber(
                                    replaced,
                                    gas.replacedKwh() < 0 ? "more gas burned" : "gas displaced",
                                    carbonDioxide(Math.abs(gas.replacedCo2Kg()))
                                            + (season.pump().electricityKwh() > 0
                                                    ? ", pump's electricity not counted"
                                                    : ""))
                            : new KeyNumber(
                                    numbers.about(Measure.HEAT, displaced.burnedKwh()),
                                    "gas burned",
                                    carbonDioxide(displaced.burnedCo2Kg())));
        } else if (collectors && gas.replacedKwh() >= 0) {
            keys.add(new KeyNumber(
                    replaced, "gas that a heater would have burned", "there is none, so no gas is displaced"));
        }
    }

    private String carbonDioxide(double kg) {
        return numbers.about(Measure.MASS, kg) + " of carbon dioxide";
    }

    private KeyNumber money(MoneySummary money) {
        if (season.gas() instanceof GasSummary.WouldHaveBurned gas) {
            return gas.replacedKwh() < 0
                    ? new KeyNumber(amount(money, money.pumpCost()), "for pumping in the season", "")
                    : new KeyNumber(amount(money, money.replacedGasWorth()), "worth of that gas", "");
        }
        String pump = SignText.pumpPaid(money).replaceFirst("^, ", "");
        return new KeyNumber(
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
        return temperature(report.forecast().installation().comfortC());
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
