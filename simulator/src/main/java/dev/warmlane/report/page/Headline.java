package dev.warmlane.report.page;

import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.Measure;
import dev.warmlane.report.Numbers;
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
        StringBuilder text = new StringBuilder("Over the season the pool averages ")
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
        if (collectors && season.gas() instanceof GasSummary.Displaced gas && gas.burnedWithoutKwh() > 0) {
            text.append(" The collectors displace ")
                    .append(numbers.show(Measure.SHARE, gas.replacedKwh() / gas.burnedWithoutKwh()))
                    .append(" of the gas.");
        }
        report.wind().ifPresent(band -> text.append(' ').append(wind(band)));
        return text.toString();
    }

    /** The heat from the collectors in every unit, nothing where there are none. */
    Optional<String> heat() {
        if (!collectors) {
            return Optional.empty();
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
                    numbers.show(Measure.HEAT, season.collectors().deliveredKwh()),
                    "heat from the collectors",
                    season.collectors().deliveredKwhPerM2().stream()
                            .mapToObj(perM2 -> numbers.show(Measure.HEAT_PER_AREA, perM2))
                            .findFirst()
                            .orElse("")));
        }
        gas(season.gas(), keys);
        report.summary().money().filter(money -> collectors).ifPresent(money -> keys.add(money(money)));
        return keys;
    }

    private void gas(GasSummary gas, List<KeyNumber> keys) {
        if (gas instanceof GasSummary.Displaced displaced) {
            keys.add(
                    collectors
                            ? new KeyNumber(
                                    numbers.show(Measure.HEAT, gas.replacedKwh()),
                                    "gas displaced",
                                    numbers.show(Measure.MASS, gas.replacedCo2Kg()) + " of carbon dioxide")
                            : new KeyNumber(
                                    numbers.show(Measure.HEAT, displaced.burnedKwh()),
                                    "gas burned",
                                    numbers.show(Measure.MASS, displaced.burnedCo2Kg()) + " of carbon dioxide"));
        } else if (collectors) {
            keys.add(new KeyNumber(
                    numbers.show(Measure.HEAT, gas.replacedKwh()),
                    "gas that a heater would have burned",
                    "there is none, so no gas is displaced"));
        }
    }

    private KeyNumber money(MoneySummary money) {
        if (season.gas() instanceof GasSummary.WouldHaveBurned) {
            return new KeyNumber(amount(money, money.replacedGasWorth()), "worth of that gas", "");
        }
        return new KeyNumber(
                amount(money, money.saved()),
                "saved in the season",
                money.paybackSeasons().stream()
                        .mapToObj(seasons -> "simple payback " + Numbers.show(seasons, 1) + " seasons")
                        .findFirst()
                        .orElse("pumping paid"));
    }

    private String wind(PoolWindBand band) {
        return "Least certain is the wind at the water: in a well sheltered place the pool would average "
                + temperature(band.sheltered().season().water().meanC()) + ", on open ground "
                + temperature(band.exposed().season().water().meanC()) + ".";
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
        return Numbers.show(value, 0) + " " + money.currency();
    }
}
