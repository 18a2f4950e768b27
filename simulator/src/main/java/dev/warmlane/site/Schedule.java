package dev.warmlane.site;

import dev.warmlane.units.Checks;
import dev.warmlane.units.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A share from 0 to 1 for every hour of the year: how far a cover is drawn, how full a pool is, whether it is open.
 * Immutable. Made from rules by month and hour of day, of which the last that fits an hour counts.
 */
public final class Schedule {

    /** 1 in every hour. */
    public static final Schedule ALWAYS = constant(1);

    /** 0 in every hour. */
    public static final Schedule NEVER = constant(0);

    private final double otherwise;
    private final List<Rule> rules;
    private final double[] share;

    private Schedule(double otherwise, List<Rule> rules) {
        this.otherwise = otherwise;
        this.rules = List.copyOf(rules);
        this.share = new double[HourOfYear.HOURS];
        double[][] days = new double[12][24];
        for (int month = 1; month <= 12; month++) {
            for (int hour = 0; hour < 24; hour++) {
                days[month - 1][hour] = inMonth(month, hour);
            }
        }
        Arrays.setAll(share, hour -> days[HourOfYear.monthOf(hour) - 1][HourOfYear.hourOfDay(hour)]);
    }

    private double inMonth(int month, int hourOfDay) {
        double found = otherwise;
        for (Rule rule : rules) {
            if (rule.fits(month, hourOfDay)) {
                found = rule.share;
            }
        }
        return found;
    }

    /** The same share, 0 to 1, in every hour. */
    public static Schedule constant(double share) {
        return builder(share).build();
    }

    /** The share 1 from one hour of the day to another, every day; see {@link Builder#daily}. */
    public static Schedule daily(int fromHour, int toHour) {
        return builder(0).daily(fromHour, toHour, 1).build();
    }

    /** Starts a schedule that is {@code otherwise}, 0 to 1, wherever no rule fits. */
    public static Builder builder(double otherwise) {
        return new Builder(otherwise);
    }

    /** The share in an hour, 0 to 1. */
    public double at(int hour) {
        return share[hour];
    }

    /** The share, 0 to 1, of hours that no rule fits. */
    public double otherwise() {
        return otherwise;
    }

    /** The rules it was made from, in their order. */
    public List<Rule> rules() {
        return rules;
    }

    /** Sum of the shares over the hours of the year, h. */
    public double hoursPerYear() {
        double sum = 0;
        for (double s : share) {
            sum += s;
        }
        return sum;
    }

    /** Whether the other has the same share in every hour, whatever the rules. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Schedule schedule && Arrays.equals(share, schedule.share);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(share);
    }

    @Override
    public String toString() {
        return otherwise + " otherwise " + rules;
    }

    /** Collects the rules. */
    public static final class Builder {
        private final double otherwise;
        private final List<Rule> rules = new ArrayList<>();

        private Builder(double otherwise) {
            this.otherwise = Checks.within("share", otherwise, 0, 1, "");
        }

        /**
         * A rule for all months.
         *
         * @param fromHour first hour of day, 0 to 23
         * @param toHour hour of day it ends at, 0 to 24; at or before {@code fromHour} the rule runs over midnight
         * @param share the share it sets, 0 to 1
         */
        public Builder daily(int fromHour, int toHour, double share) {
            return monthly(1, 12, fromHour, toHour, share);
        }

        /**
         * A rule for some months.
         *
         * @param fromMonth first month, 1 to 12
         * @param toMonth last month, 1 to 12; before {@code fromMonth} the rule runs over New Year
         * @param fromHour first hour of day, 0 to 23
         * @param toHour hour of day it ends at, 0 to 24; at or before {@code fromHour} the rule runs over midnight
         * @param share the share it sets, 0 to 1
         */
        public Builder monthly(int fromMonth, int toMonth, int fromHour, int toHour, double share) {
            rules.add(new Rule(fromMonth, toMonth, fromHour, toHour, share));
            return this;
        }

        /** The finished schedule. */
        public Schedule build() {
            return new Schedule(otherwise, rules);
        }
    }

    /**
     * A share for some hours of some months.
     *
     * @param fromMonth first month, 1 to 12
     * @param toMonth last month, 1 to 12; before {@code fromMonth} the rule runs over New Year
     * @param fromHour first hour of day, 0 to 23
     * @param toHour hour of day it ends at, 0 to 24; at or before {@code fromHour} the rule runs over midnight
     * @param share the share it sets
     */
    public record Rule(int fromMonth, int toMonth, int fromHour, int toHour, double share) {

        /** Range of {@link #share}. */
        public static final Range SHARE = Range.share("share", 0, 1);

        /** Checks every range. */
        public Rule {
            Checks.within("first month", fromMonth, 1, 12, "");
            Checks.within("last month", toMonth, 1, 12, "");
            Checks.within("first hour", fromHour, 0, 23, "");
            Checks.within("last hour", toHour, 0, 24, "");
            SHARE.check(share);
        }

        private boolean fits(int month, int hour) {
            boolean inMonths = fromMonth <= toMonth
                    ? month >= fromMonth && month <= toMonth
                    : month >= fromMonth || month <= toMonth;
            boolean inHours = fromHour < toHour ? hour >= fromHour && hour < toHour : hour >= fromHour || hour < toHour;
            return inMonths && inHours;
        }
    }
}
