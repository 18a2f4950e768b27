package dev.warmlane.money;

import dev.warmlane.units.Checks;

/**
 * What is paid for something, in the currency of everything beside it.
 *
 * @param price what it costs, installed, at least 0
 * @param grant what somebody else pays of it, at least 0
 * @param upkeepPerYear upkeep, a year, at prices of today, at least 0
 * @param lastsYears after how many years it is bought again, without the grant; what is left of it in the last year counts
 *     for nothing
 */
public record Investment(double price, double grant, double upkeepPerYear, int lastsYears) {

    /** The most of any sum, far beyond what a pool costs. */
    private static final double MOST = 1e9;

    /** Checks every range. */
    public Investment {
        Checks.within("price", price, 0, MOST, "");
        Checks.within("grant", grant, 0, MOST, "");
        Checks.within("upkeep a year", upkeepPerYear, 0, MOST, "");
        Checks.within("years that it lasts", lastsYears, 1, 100, "");
    }

    /** Nothing is bought. */
    public static final Investment NONE = new Investment(0, 0, 0, 100);

    /** What the owner pays at the beginning: below 0 where the grant is more than the price. */
    public double paid() {
        return price - grant;
    }

    /** What it costs over the years, as money of today: paid, bought again, kept up. */
    public double presentCost(Terms terms) {
        return presentCost(terms, terms.years());
    }

    double presentCost(Terms terms, int upTo) {
        double cost = paid() + upkeepPerYear * terms.factor(upTo);
        for (int year = lastsYears; year < upTo; year += lastsYears) {
            cost += price * terms.today(year);
        }
        return cost;
    }
}
