package dev.warmlane.report.chart;

import dev.warmlane.season.SeasonLedger;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Notation;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;

/**
 * The time of a season along a chart. A long season is counted in months of equal width, so that the first of every
 * month has its tick and ticks are even; a short one in days, and one of a few days in hours. New Year is a month like
 * any other.
 */
final class SeasonAxis {

    /** Up to this many days a season is counted in days. */
    private static final int SHORT_DAYS = 45;

    /** Up to this many days a season is counted in hours. */
    private static final int FEW_DAYS = 3;

    private static final int MONTHS = 12;
    private static final int TICKS = 8;

    private final SeasonLedger ledger;
    private final Unit unit;

    private enum Unit {
        MONTH,
        DAY,
        HOUR
    }

    SeasonAxis(SeasonLedger ledger) {
        this.ledger = ledger;
        int days = ledger.hours() / 24;
        this.unit = days > SHORT_DAYS ? Unit.MONTH : days > FEW_DAYS ? Unit.DAY : Unit.HOUR;
    }

    /** Where a time lies, hours after opening. */
    double at(double hours) {
        return switch (unit) {
            case MONTH -> inMonths(hours);
            case DAY -> hours / 24;
            case HOUR -> hours;
        };
    }

    /** The range: from the first hour of the season to its last, with ticks where months, days or hours begin. */
    Scale scale() {
        double low = at(0);
        double high = at(ledger.hours());
        double step = unit == Unit.MONTH ? 1 : Math.max(1, Scale.roundStep((high - low) / TICKS));
        return new Scale(low, high, step);
    }

    /** What stands at a tick: the date that begins there, the time too where it is counted in hours. */
    String label(double position, Notation notation) {
        return switch (unit) {
            case MONTH -> notation.dates().show("1", name(Math.floorMod((int) Math.round(position), MONTHS) + 1));
            case DAY -> date(ledger.hourOfYear((int) Math.round(24 * position)), notation);
            case HOUR -> {
                int hour = ledger.hourOfYear((int) Math.round(position));
                yield date(hour, notation) + " " + HourOfYear.hourOfDay(hour) + ":00";
            }
        };
    }

    private double inMonths(double hours) {
        double time = ledger.hourOfYear(0) + hours;
        int year = (int) (time / HourOfYear.HOURS);
        double inYear = time - (double) year * HourOfYear.HOURS;
        int month = HourOfYear.monthOf((int) inYear);
        double inMonth = (inYear - HourOfYear.firstHourOf(month)) / (24.0 * HourOfYear.daysIn(month));
        return MONTHS * year + month - 1 + inMonth;
    }

    private static String date(int hour, Notation notation) {
        return notation.dates().show(String.valueOf(HourOfYear.dayOfMonth(hour)), name(HourOfYear.monthOf(hour)));
    }

    private static String name(int month) {
        return Month.of(month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }
}
