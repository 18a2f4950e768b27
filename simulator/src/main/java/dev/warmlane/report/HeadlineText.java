package dev.warmlane.report;

import dev.warmlane.season.GasSummary;
import dev.warmlane.season.Installation;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.season.TemperatureSummary;
import java.util.ArrayList;
import java.util.List;

/** What people ask first. */
final class HeadlineText {

    private final Numbers numbers;

    private HeadlineText(Numbers numbers) {
        this.numbers = numbers;
    }

    static TextSection of(Numbers numbers, Installation installation, SeasonSummary summary) {
        HeadlineText text = new HeadlineText(numbers);
        PeriodSummary season = summary.season();
        List<String> points = new ArrayList<>();
        points.add("Pool temperature: " + text.water(season.water()) + "; without collectors "
                + text.water(season.waterWithout()));
        points.add("Days at " + numbers.show(Measure.TEMPERATURE, installation.comfortC()) + " or above: "
                + season.comfort().daysAtComfort() + " of " + season.comfort().openDays() + "; without collectors "
                + season.comfortWithout().daysAtComfort());
        points.add("Heat delivered by the collectors: "
                + numbers.show(Measure.HEAT, season.collectors().deliveredKwh())
                + season.collectors().deliveredKwhPerM2().stream()
                        .mapToObj(perM2 -> ", " + numbers.show(Measure.HEAT_PER_AREA, perM2))
                        .findFirst()
                        .orElse(""));
        points.add(text.gas(season.gas()));
        summary.money().ifPresent(money -> points.add(text.money(money, season.gas())));
        return new TextSection("In short", TextSection.listed(points));
    }

    private String water(TemperatureSummary water) {
        return numbers.show(Measure.TEMPERATURE, water.meanC()) + " on average ("
                + numbers.range(Measure.TEMPERATURE, water.lowestC(), water.highestC()) + ")";
    }

    private String gas(GasSummary gas) {
        String replaced = numbers.show(Measure.HEAT, gas.replacedKwh());
        String co2 = numbers.show(Measure.MASS, gas.replacedCo2Kg());
        if (gas instanceof GasSummary.Displaced displaced) {
            return "Gas: " + numbers.show(Measure.HEAT, displaced.burnedKwh()) + " burned, " + replaced
                    + " displaced by the collectors, which saves " + co2 + " of carbon dioxide";
        }
        return "Gas: there is no heater; to give the same solar heat one would have burned " + replaced + ", with "
                + co2 + " of carbon dioxide";
    }

    private String money(MoneySummary money, GasSummary gas) {
        if (gas instanceof GasSummary.WouldHaveBurned) {
            return "Money: that gas is worth " + amount(money.replacedGasWorth(), money) + "; pumping costs "
                    + amount(money.pumpCost(), money) + " a season";
        }
        return "Money: " + amount(money.saved(), money) + " saved a season, pumping paid"
                + money.paybackSeasons().stream()
                        .mapToObj(seasons -> "; simple payback " + Numbers.show(seasons, 1) + " seasons")
                        .findFirst()
                        .orElse("");
    }

    private static String amount(double money, MoneySummary summary) {
        return Numbers.show(money, 0) + " " + summary.currency();
    }
}
