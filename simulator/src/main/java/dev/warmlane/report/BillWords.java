package dev.warmlane.report;

import dev.warmlane.heater.Bill;
import dev.warmlane.heater.Fuel;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.MoneySummary;
import java.util.Optional;

/** The owner's last bill beside what the model says of the same pool, today, without collectors. */
final class BillWords {

    private BillWords() {}

    /**
     * In a sentence or two.
     *
     * @param bill what was bought
     * @param gas what is simulated
     * @param money what that costs, where prices are given
     */
    static String of(Numbers numbers, Bill bill, GasSummary.Displaced gas, Optional<MoneySummary> money) {
        Fuel fuel = gas.fuel().soldIn(bill.unit());
        double simulated = fuel.unitsForKwh(gas.burnedWithoutKwh());
        double ratio = ratio(bill, gas);
        String costs = bill.cost().isPresent()
                ? ", "
                        + numbers.money(
                                bill.cost().getAsDouble(),
                                money.map(MoneySummary::currency).orElse(""))
                : "";
        String told = "The last bill was " + numbers.sold(fuel, bill.amount()) + " of " + fuel.name() + costs
                + "; without collectors this model has " + numbers.sold(fuel, simulated)
                + money.filter(m -> bill.cost().isPresent())
                        .map(m -> ", " + numbers.money(m.gasCostWithout(), m.currency()))
                        .orElse("")
                + ", " + numbers.show(ratio, 2) + " of it";
        return far(ratio)
                ? told + ". They differ by more than a third, and what follows is no better than that: check set point,"
                        + " dates, cover, shelter from wind and the heater, and whether the bill is for this pool alone and"
                        + " for one season"
                : told + "; the year of the bill had its own weather";
    }

    /** That the two are far apart, for whoever reads nothing else; nothing where they are not. */
    static Optional<String> far(Numbers numbers, Bill bill, GasSummary.Displaced gas) {
        double ratio = ratio(bill, gas);
        return far(ratio)
                ? Optional.of("Without collectors this model comes to " + numbers.show(ratio, 2)
                        + " of the last bill. Until that is explained, what it says of fuel and money is no surer than"
                        + " that")
                : Optional.empty();
    }

    private static double ratio(Bill bill, GasSummary.Displaced gas) {
        return gas.burnedWithoutKwh() / bill.kwh(gas.fuel());
    }

    private static boolean far(double ratio) {
        return Math.abs(ratio - 1) > Bill.FAR;
    }
}
