package dev.warmlane.report;

import dev.warmlane.season.CollectorHeat;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.season.TemperatureSummary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What people ask first. */
final class HeadlineText {

    private final Numbers numbers;

    private HeadlineText(Numbers numbers) {
        this.numbers = numbers;
    }

    static TextSection of(Numbers numbers, SeasonForecast forecast, SeasonSummary summary) {
        HeadlineText text = new HeadlineText(numbers);
        PeriodSummary season = summary.season();
        List<String> points = new ArrayList<>();
        CredibilityText.of(numbers, Stream.of(season)).ifPresent(points::add);
        points.add("Pool temperature: " + text.water(season.water()) + "; without collectors "
                + text.water(season.waterWithout())
                + StartText.of(numbers, forecast).map(start -> "; it " + start).orElse(""));
        points.add("Days at "
                + numbers.show(Measure.TEMPERATURE, forecast.installation().comfortC()) + " or above: "
                + season.comfort().daysAtComfort() + " of " + season.comfort().openDays() + "; without collectors "
                + season.comfortWithout().daysAtComfort());
        points.add(text.heat(season.collectors()));
        points.add(text.gas(season));
        summary.money().ifPresent(money -> points.add(text.money(money, season.gas())));
        return new TextSection("In short", TextSection.listed(points));
    }

    private String water(TemperatureSummary water) {
        return numbers.show(Measure.TEMPERATURE, water.meanC()) + " on average ("
                + numbers.range(Measure.TEMPERATURE, water.lowestC(), water.highestC()) + ")";
    }

    private String heat(CollectorHeat heat) {
        Optional<String> taken = SignText.heatTaken(heat);
        if (taken.isPresent()) {
            return "Heat from the collectors: none; " + taken.get() + ", "
                    + numbers.about(Measure.HEAT, -heat.deliveredKwh()) + " taken from the pool";
        }
        return "Heat delivered by the collectors: " + numbers.about(Measure.HEAT, heat.deliveredKwh())
                + heat.deliveredKwhPerM2().stream()
                        .mapToObj(perM2 -> ", " + numbers.show(Measure.HEAT_PER_AREA, perM2))
                        .findFirst()
                        .orElse("");
    }

    private String gas(PeriodSummary season) {
        GasSummary gas = season.gas();
        String replaced = numbers.about(Measure.HEAT, Math.abs(gas.replacedKwh()));
        String co2 = numbers.about(Measure.MASS, Math.abs(gas.replacedCo2Kg())) + " of carbon dioxide";
        if (gas instanceof GasSummary.Displaced displaced) {
            String burned = "Gas: " + numbers.about(Measure.HEAT, displaced.burnedKwh()) + " burned, " + replaced;
            return (gas.replacedKwh() < 0
                            ? burned + " more than without collectors, which adds " + co2
                            : burned + " displaced by the collectors, which saves " + co2)
                    + SignText.pumpNotCounted(season.pump());
        }
        return gas.replacedKwh() < 0
                ? "Gas: there is no heater, and no heat from the collectors that gas could have given"
                : "Gas: there is no heater; to give the same solar heat one would have burned " + replaced + ", with "
                        + co2;
    }

    private String money(MoneySummary money, GasSummary gas) {
        if (gas instanceof GasSummary.WouldHaveBurned) {
            return "Money: "
                    + (gas.replacedKwh() < 0
                            ? ""
                            : "that gas is worth " + about(money.replacedGasWorth(), money) + "; ")
                    + "pumping costs " + about(money.pumpCost(), money) + " a season";
        }
        return "Money: "
                + (money.saved() < 0
                        ? "costs " + about(-money.saved(), money) + " more a season"
                        : about(money.saved(), money) + " saved a season")
                + SignText.pumpPaid(money)
                + money.paybackSeasons().stream()
                        .mapToObj(seasons -> "; simple payback " + Numbers.show(seasons, 1) + " seasons")
                        .findFirst()
                        .orElse("");
    }

    private static String about(double money, MoneySummary summary) {
        return Numbers.aboutMoney(money, summary.currency());
    }
}
