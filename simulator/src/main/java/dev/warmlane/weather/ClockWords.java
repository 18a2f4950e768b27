package dev.warmlane.weather;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Times and months as a person says them. */
final class ClockWords {

    private ClockWords() {}

    /** For example {@code half an hour}, {@code 2 hours} or {@code 19 minutes}; without a sign. */
    static String length(double hours) {
        long minutes = Math.round(Math.abs(hours) * 60);
        if (minutes == 30) {
            return "half an hour";
        }
        if (minutes == 60) {
            return "an hour";
        }
        if (minutes == 90) {
            return "an hour and a half";
        }
        if (minutes < 60) {
            return minutes + (minutes == 1 ? " minute" : " minutes");
        }
        return minutes % 60 == 0 ? minutes / 60 + " hours" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    /**
     * What the sun of a file is whose irradiance belongs to a later time than its labels say: early, because its noon
     * stands at an earlier label.
     */
    static String sunIs(double irradianceLaterByHours) {
        return length(irradianceLaterByHours) + (irradianceLaterByHours > 0 ? " early" : " late");
    }

    /** For example {@code half an hour later}. */
    static String later(double hours) {
        return length(hours) + (hours > 0 ? " later" : " earlier");
    }

    static String utc(double offsetHours) {
        return "UTC" + (offsetHours < 0 ? "-" : "+") + Occurrences.number(Math.abs(offsetHours));
    }

    static String month(int month) {
        return Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** Months 1 to 12 in order, for example {@code February, April to October and December}. */
    static String months(List<Integer> months) {
        List<String> runs = new ArrayList<>();
        for (int i = 0; i < months.size(); i++) {
            int from = i;
            while (i + 1 < months.size() && months.get(i + 1) == months.get(i) + 1) {
                i++;
            }
            if (i == from + 1) {
                runs.add(month(months.get(from)));
                runs.add(month(months.get(i)));
            } else {
                runs.add(month(months.get(from)) + (i > from ? " to " + month(months.get(i)) : ""));
            }
        }
        return joined(runs);
    }

    /** For example {@code a, b and c}. */
    static String joined(List<String> parts) {
        int last = parts.size() - 1;
        return last < 1
                ? String.join("", parts)
                : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }
}
