package dev.warmlane.report;

import dev.warmlane.season.CollectorHeat;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.PumpSummary;
import java.util.Optional;

/** Words for numbers that may be below zero, so that nobody has to read a minus, and for what a number leaves out. */
final class Signs {

    private Signs() {}

    /** Why the circuit took heat from the pool over the season; nothing where it gave some. */
    static Optional<String> heatTaken(CollectorHeat heat) {
        if (heat.deliveredKwh() >= 0) {
            return Optional.empty();
        }
        return Optional.of(
                heat.usefulKwh() < 0
                        ? "the circuit ran more to cool the water than to warm it"
                        : "the pipes lose more than the collectors give");
    }

    /** That carbon dioxide is of gas alone, where there is electricity too. */
    static String pumpNotCounted(PumpSummary pump) {
        return pump.electricityKwh() > 0 ? " (the pump's electricity not counted)" : "";
    }

    /** That money saved is what is left, where there is electricity to pay for. */
    static String pumpPaid(MoneySummary money) {
        return money.pumpCost() > 0 ? ", after paying for the pump's electricity" : "";
    }
}
