package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.NextSquareMetre;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.units.Units;
import java.util.ArrayList;
import java.util.List;

/** Gas, carbon dioxide, money and the worth of more area. */
final class GasText {

    private final Numbers numbers;

    private GasText(Numbers numbers) {
        this.numbers = numbers;
    }

    static TextSection of(Numbers numbers, SeasonSummary summary) {
        GasText text = new GasText(numbers);
        List<String> points = new ArrayList<>();
        points.add(text.gas(summary.season().gas()));
        boolean heated = summary.season().gas() instanceof GasSummary.Displaced;
        summary.money().ifPresent(money -> points.addAll(text.money(money, heated)));
        summary.nextSquareMetre().ifPresent(next -> points.add(text.next(next, summary)));
        return new TextSection(summary.money().isPresent() ? "Gas and money" : "Gas", TextSection.listed(points));
    }

    private String gas(GasSummary gas) {
        String amount = numbers.heat(gas.replacedKwh()) + " of " + gas.fuel().name() + ", "
                + numbers.fuel(gas.fuel(), gas.replacedUnits()) + ", which gives "
                + numbers.show(Measure.MASS, gas.replacedCo2Kg()) + " of carbon dioxide";
        if (gas instanceof GasSummary.WouldHaveBurned would) {
            return "This pool has no heater, so no gas was displaced. A gas heater of efficiency "
                    + Numbers.show(would.efficiency(), 2) + " would have burned, to give the same solar heat: "
                    + amount;
        }
        return "Gas displaced: " + amount;
    }

    private List<String> money(MoneySummary money, boolean heated) {
        String currency = " " + money.currency();
        List<String> points = new ArrayList<>();
        if (heated) {
            points.add("Gas costs " + Numbers.show(money.gasCost(), 0) + currency + " a season, without collectors "
                    + Numbers.show(money.gasCostWithout(), 0) + currency + "; pumping costs "
                    + Numbers.show(money.pumpCost(), 0) + currency + "; saved: " + Numbers.show(money.saved(), 0)
                    + currency);
        } else {
            points.add("The gas that a heater would have burned is worth " + Numbers.show(money.replacedGasWorth(), 0)
                    + currency + "; pumping costs " + Numbers.show(money.pumpCost(), 0) + currency + " a season");
        }
        money.collectorCost()
                .ifPresent(cost -> points.add("The installed collectors cost " + Numbers.show(cost, 0)
                        + currency
                        + money.paybackSeasons().stream()
                                .mapToObj(seasons -> "; simple payback " + Numbers.show(seasons, 1)
                                        + " seasons, without interest, upkeep or change of prices")
                                .findFirst()
                                .orElse("")));
        return points;
    }

    private String next(NextSquareMetre next, SeasonSummary summary) {
        boolean us = numbers.units() == ReportSettings.Units.US;
        String text = "More area would add " + numbers.show(Measure.HEAT_PER_AREA, next.deliveredKwhPerM2())
                + " of heat a season"
                + next.displacedKwhPerM2().stream()
                        .mapToObj(gas -> " and displace " + numbers.show(Measure.HEAT_PER_AREA, gas) + " of gas")
                        .findFirst()
                        .orElse("");
        String currency = summary.money().map(MoneySummary::currency).orElse("");
        return text
                + next.costPerKwh().stream()
                        .mapToObj(cost -> us
                                ? "; each further therm a season costs "
                                        + Numbers.show(cost * Units.THERM / Units.KWH, 2) + " " + currency + " once"
                                : "; each further kWh a season costs " + Numbers.show(cost, 2) + " " + currency
                                        + " once")
                        .findFirst()
                        .orElse("");
    }
}
