package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Says which hours of a year have no row: the first, the last, and the months that are gone as a whole. */
final class MissingHours {

    private final int[] lineOfHour;

    /** From the line of each hour, 0 where there is none; at least one is 0. */
    MissingHours(int[] lineOfHour) {
        this.lineOfHour = lineOfHour;
    }

    int count() {
        return (int) hours().count();
    }

    int first() {
        return hours().min().orElse(0);
    }

    private int last() {
        return hours().max().orElse(0);
    }

    private IntStream hours() {
        return IntStream.range(0, lineOfHour.length).filter(hour -> lineOfHour[hour] == 0);
    }

    /** For example {@code missing are the hours from 02-01 00:00 to 02-28 23:00, all of February}. */
    String told() {
        boolean oneRun = last() - first() + 1 == count();
        StringBuilder text = new StringBuilder("missing are ");
        if (count() == lineOfHour.length) {
            return text.append("all hours").toString();
        }
        if (count() == 1) {
            return "missing is the hour " + HourOfYear.label(first());
        }
        text.append(oneRun ? "the hours from " : count() + " hours, the first ")
                .append(HourOfYear.label(first()))
                .append(oneRun ? " to " : ", the last ")
                .append(HourOfYear.label(last()));
        List<String> months = wholeMonths();
        if (!months.isEmpty()) {
            text.append(oneRun ? ", all of " : ", and all of ").append(String.join(", ", months));
        }
        return text.toString();
    }

    private List<String> wholeMonths() {
        List<String> months = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            boolean none = IntStream.range(HourOfYear.firstHourOf(month), HourOfYear.firstHourOf(month + 1))
                    .allMatch(hour -> lineOfHour[hour] == 0);
            if (none) {
                months.add(Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH));
            }
        }
        return months;
    }
}
