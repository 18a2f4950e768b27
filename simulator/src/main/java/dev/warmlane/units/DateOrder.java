package dev.warmlane.units;

/** What comes first in a date. */
public enum DateOrder {
    /** {@code 31 May}. */
    DAY_FIRST,
    /** {@code May 31}. */
    MONTH_FIRST;

    /** A date of which the day may be more than one, such as {@code 5-31}. */
    public String show(String day, String month) {
        return this == DAY_FIRST ? day + " " + month : month + " " + day;
    }

    /** A date in this order as one writes it by hand. */
    public String sample() {
        return show("31", "May");
    }
}
