package dev.warmlane.units;

import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.Locale;

/**
 * How a place writes numbers, dates and money. What machines read, the csv files, is written with a decimal point
 * everywhere.
 *
 * @param numbers how numbers are written
 * @param dates what comes first in a date
 */
public record Notation(NumberStyle numbers, DateOrder dates) {

    /** The one that is taken where nobody says otherwise: {@code 1,234.5}, and {@code May 31} with US units alone. */
    public static Notation usual(UnitSystem units) {
        return new Notation(NumberStyle.COMMA_POINT, units.us() ? DateOrder.MONTH_FIRST : DateOrder.DAY_FIRST);
    }

    /** A plain number with some decimals. */
    public String show(double value, int decimals) {
        return numbers.show(value, decimals);
    }

    /** A date, day and month. */
    public String show(MonthDay date) {
        return show(date, TextStyle.FULL);
    }

    /** The same for a table, {@code 15 Sep}. */
    public String showShort(MonthDay date) {
        return show(date, TextStyle.SHORT);
    }

    private String show(MonthDay date, TextStyle month) {
        return dates.show(String.valueOf(date.getDayOfMonth()), date.getMonth().getDisplayName(month, Locale.ENGLISH));
    }

    /**
     * An amount of money: a sign such as {@code $} before a number with a decimal point, letters such as {@code EUR} and
     * whatever goes with a decimal comma after it. A minus is written as one, in front.
     *
     * @param amount the number as it is written
     * @param currency how the currency is written
     */
    public String money(String amount, String currency) {
        return leads(currency) ? lead(amount, currency) : (lead(amount, currency) + " " + currency).strip();
    }

    /** The same where another amount with the currency follows: a sign alone is repeated. */
    public String lead(String amount, String currency) {
        boolean negative = !amount.isEmpty() && (amount.charAt(0) == NumberStyle.MINUS || amount.charAt(0) == '-');
        return (negative ? NumberStyle.MINUS : "")
                + (leads(currency) ? currency : "")
                + amount.substring(negative ? 1 : 0);
    }

    private boolean leads(String currency) {
        return numbers.points()
                && !currency.isEmpty()
                && !Character.isLetter(currency.codePointBefore(currency.length()));
    }
}
