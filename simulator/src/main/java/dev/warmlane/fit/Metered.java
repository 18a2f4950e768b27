package dev.warmlane.fit;

import dev.warmlane.units.Checks;
import java.time.LocalDate;

/**
 * What a meter ran up between two readings.
 *
 * @param from the day at whose beginning it was read first
 * @param to the day at whose beginning it was read again, later than {@code from}
 * @param amount what it ran up: kWh bought for the heater, a fuel by its higher heating value, or litres of make-up water
 */
public record Metered(LocalDate from, LocalDate to, double amount) {

    /** Checks order and amount. */
    public Metered {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("a meter is read again later: from " + from + " to " + to);
        }
        Checks.within("amount of " + from + " to " + to, amount, 0, 1e12, "");
    }
}
