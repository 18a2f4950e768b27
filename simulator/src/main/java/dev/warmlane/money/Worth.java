package dev.warmlane.money;

import java.util.OptionalDouble;

/**
 * What an investment is worth over the years. Sums of a year are counted at its end and brought to the beginning by the
 * interest; what energy saves grows with its price, upkeep stays. After NIST Handbook 135 and ISO 15686-5, from memory.
 *
 * @param investment what is paid
 * @param energySaved energy not bought in a year less energy bought for it, as money at the prices of today; below 0 where
 *     it costs more than it saves
 * @param terms how later years are counted
 */
public record Worth(Investment investment, double energySaved, Terms terms) {

    /** Saved over all the years as money of today, before anything is paid for. */
    public double savedOverYears() {
        return energySaved * terms.factorOfEnergy(terms.years());
    }

    /** Net present value: {@link #savedOverYears} less what is paid, bought again and kept up. Above 0 it is worth doing. */
    public double netPresentValue() {
        return after(terms.years());
    }

    /** What is saved in the first year: energy at the prices of today less upkeep. */
    public double savedPerYear() {
        return energySaved - investment.upkeepPerYear();
    }

    /**
     * What it has brought after some years, as money of today: {@link #netPresentValue} with another end.
     *
     * @param years whole years, 0 or more; 0 is the day on which it is paid
     */
    public double after(int years) {
        return energySaved * terms.factorOfEnergy(years) - investment.presentCost(terms, years);
    }

    /**
     * Discounted payback: when what was brought first reaches 0, within a year in proportion. What it is bought again for
     * later is not part of the question.
     */
    public Payback payback() {
        double before = -investment.paid();
        if (before >= 0) {
            return new Payback.After(0);
        }
        for (int year = 1; year <= Payback.LONGEST_YEARS; year++) {
            double now = after(year);
            if (now >= 0) {
                return new Payback.After(year - 1 + before / (before - now));
            }
            before = now;
        }
        return new Payback.NotWithin();
    }

    /**
     * Levelised cost of a kWh of heat: everything that is paid over the years, energy for running it too, over the heat of
     * the years, both as of today (the form of the levelised cost of heat of the IEA's solar heating programme, from memory).
     *
     * @param heatKwh heat of a year, kWh
     * @param runningCost energy that running it takes in a year, at the prices of today
     * @return nothing where there is no heat
     */
    public OptionalDouble costPerKwh(double heatKwh, double runningCost) {
        double paid = investment.presentCost(terms) + runningCost * terms.factorOfEnergy(terms.years());
        return heatKwh > 0 ? OptionalDouble.of(paid / (heatKwh * terms.factor(terms.years()))) : OptionalDouble.empty();
    }
}
