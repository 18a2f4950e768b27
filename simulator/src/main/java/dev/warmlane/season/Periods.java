package dev.warmlane.season;

import dev.warmlane.site.HourOfYear;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Cuts a season into hours, days, weeks and months, in the order they come, also where it runs over New Year. */
public final class Periods {

    /** What the days before opening are called among months and weeks. */
    public static final String BEFORE = "before opening";

    private static final int DAY = 24;
    private static final int WEEK = 7 * DAY;

    private Periods() {}

    /** The whole open season, with the heat and the fuel of the days before it. */
    public static Period season(SeasonLedger ledger) {
        return new Period("season", ledger.opening(), ledger.hours(), 0);
    }

    /** The days before opening in which collectors or heater may run; nothing where there are none. */
    public static Optional<Period> beforeOpening(SeasonLedger ledger) {
        return ledger.opening() > 0 ? Optional.of(new Period(BEFORE, 0, ledger.opening())) : Optional.empty();
    }

    /** Every hour, labelled by date and time at its start: {@code 07-14 13:00}. */
    public static List<Period> hours(SeasonLedger ledger) {
        List<Period> hours = new ArrayList<>(ledger.hours());
        for (int index = 0; index < ledger.hours(); index++) {
            hours.add(new Period(HourOfYear.label(ledger.hourOfYear(index)), index, index + 1));
        }
        return hours;
    }

    /** Every day, those before opening too, labelled by its date: {@code 07-14}. */
    public static List<Period> days(SeasonLedger ledger) {
        List<Period> days = new ArrayList<>(ledger.hours() / DAY);
        for (int from = 0; from < ledger.hours(); from += DAY) {
            days.add(new Period(date(ledger, from), from, from + DAY));
        }
        return days;
    }

    /** Weeks counted from the opening day, the first is {@code week 1}; the last one may be shorter. The days before opening come first. */
    public static List<Period> weeks(SeasonLedger ledger) {
        List<Period> weeks = new ArrayList<>();
        beforeOpening(ledger).ifPresent(weeks::add);
        for (int from = ledger.opening(); from < ledger.hours(); from += WEEK) {
            weeks.add(new Period(
                    "week " + ((from - ledger.opening()) / WEEK + 1), from, Math.min(from + WEEK, ledger.hours())));
        }
        return weeks;
    }

    /**
     * Calendar months, from the one the season opens in. A month that is open only in part names its days: {@code May
     * 15-31}. The days before opening come first, as one. A season of a whole year that opens within a month has that month twice, at its start and its end.
     */
    public static List<Period> months(SeasonLedger ledger) {
        List<Period> months = new ArrayList<>();
        beforeOpening(ledger).ifPresent(months::add);
        int from = ledger.opening();
        while (from < ledger.hours()) {
            int hour = ledger.hourOfYear(from);
            int month = HourOfYear.monthOf(hour);
            int to = Math.min(from + HourOfYear.firstHourOf(month + 1) - hour, ledger.hours());
            String name = Month.of(month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
            int firstDay = HourOfYear.dayOfMonth(hour);
            int lastDay = HourOfYear.dayOfMonth(ledger.hourOfYear(to - 1));
            boolean whole = firstDay == 1 && lastDay == HourOfYear.daysIn(month);
            months.add(new Period(whole ? name : name + " " + firstDay + "-" + lastDay, from, to));
            from = to;
        }
        return months;
    }

    private static String date(SeasonLedger ledger, int index) {
        return HourOfYear.label(ledger.hourOfYear(index)).substring(0, "MM-dd".length());
    }
}
