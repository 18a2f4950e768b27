package dev.warmlane.report.chart;

import dev.warmlane.season.SeasonLedger;
import dev.warmlane.site.HourOfYear;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;

/**
 * The days of a season along a chart. A long season is counted in months of equal width, so that the first of every
 * month has its tick and ticks are even; a short one in days. New Year is a month like any other.
 */
final class SeasonAxis {

    /** Up to this many days a season is counted in days. */
    private static final int SHORT_DAYS = 45;

    private static final int MONTHS = 12;
    private static final int DAYS_BETWEEN_TICKS = 8;

    private final SeasonLedger ledger;
    private final boolean inMonths;

    SeasonAxis(SeasonLedger ledger) {
        this.ledger = ledger;
        this.inMonths = ledger.hours() > 24 * SHORT_DAYS;
    }

    /** Where a time lies, hours after opening. */
    double at(double hours) {
        if (!inMonths) {
            return hours / 24;
        }
        double time = ledger.hourOfYear(0) + hours;
        int year = (int) (time / HourOfYear.HOURS);
        double inYear = time - (double) year * HourOfYear.HOURS;
        int month = HourOfYear.monthOf((int) inYear);
        double inMonth = (inYear - HourOfYear.firstHourOf(month)) / (24.0 * HourOfYear.daysIn(month));
        return MONTHS * year + month - 1 + inMonth;
    }

    /** The range: whole months or days around the season. */
    Scale scale() {
        double low = Math.floor(at(0));
        double high = Math.ceil(at(ledger.hours()));
        double step = inMonths ? 1 : Math.max(1, Scale.roundStep((high - low) / DAYS_BETWEEN_TICKS));
        return new Scale(low, high, step);
    }

    /** What stands at a tick: the date that begins there. */
    String label(double position) {
        if (inMonths) {
            int month = Math.floorMod((int) Math.round(position), MONTHS) + 1;
            return "1 " + name(month);
        }
        int hour = ledger.hourOfYear((int) Math.round(24 * position));
        return HourOfYear.dayOfMonth(hour) + " " + name(HourOfYear.monthOf(hour));
    }

    private static String name(int month) {
        return Month.of(month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }
}
