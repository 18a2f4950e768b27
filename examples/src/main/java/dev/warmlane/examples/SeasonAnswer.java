package dev.warmlane.examples;

import dev.warmlane.scenario.ScenarioAnswer;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes an answer of both days of a season, or none for a pool that is always open. */
final class SeasonAnswer {

    static final String ALL_YEAR = "all year";

    private static final Pattern ALWAYS =
            Pattern.compile("(?i)all(-| )year(( |-)round)?|always|whole year|12 months|year(-| )round");

    private static final Pattern FROM_TO = Pattern.compile(
            "(?i)(?:from\\s+)?(.+?)(?:\\s+(?:to|till|until|through|thru|bis|au|al)\\s+|\\s*[\u2013\u2014]\\s*|\\s+-\\s+)(.+)");

    /** A hyphen without blanks parts two days only where it can part nothing else. */
    private static final Pattern TIGHT =
            Pattern.compile("(\\d{1,2}\\.? ?\\p{L}{3,}\\.?|\\p{L}{3,} ?\\d{1,2}|\\d{1,2}[./]\\d{1,2}\\.?)-(.*\\d.*)");

    private SeasonAnswer() {}

    static Answer of(String written) {
        String said = written.strip();
        if (ALWAYS.matcher(said).matches()) {
            return Answer.nothing(ALL_YEAR);
        }
        Matcher loose = FROM_TO.matcher(said);
        Matcher days = loose.matches() ? loose : TIGHT.matcher(said);
        if (!days.matches()) {
            throw new IllegalArgumentException(
                    "found \"" + said + "\"; write both days, \"15 May to 30 September\", or \"all year\"");
        }
        Optional<Month> first = month(days.group(1));
        Optional<Month> last = month(days.group(2));
        if (first.isPresent() && last.isPresent()) {
            throw new IllegalArgumentException("found \"" + said + "\"; which day of each month? did you mean \"1 "
                    + name(first.get()) + " to " + last.get().minLength() + " " + name(last.get()) + "\"?");
        }
        String from = meant(days.group(1), "first_day");
        String to = meant(days.group(2), "last_day");
        if (!from.equals(days.group(1)) || !to.equals(days.group(2))) {
            throw new IllegalArgumentException("found \"" + said + "\"; did you mean \"" + from + " to " + to + "\"?");
        }
        return Answer.of(
                said,
                List.of("season.first_day", "season.last_day"),
                List.of(
                        ScenarioAnswer.of("season", "first_day", from, ""),
                        ScenarioAnswer.of("season", "last_day", to, "")));
    }

    /** A day as it stands, or what was meant by it where that can be one thing only. */
    private static String meant(String day, String key) {
        try {
            ScenarioAnswer.of("season", key, day, "");
            return day;
        } catch (IllegalArgumentException e) {
            String offered = Interview.offer(String.valueOf(e.getMessage()));
            if (offered.isEmpty()) {
                throw e;
            }
            return offered;
        }
    }

    private static Optional<Month> month(String text) {
        String lower = text.strip().toLowerCase(Locale.ROOT).replaceFirst("\\.$", "");
        return Arrays.stream(Month.values())
                .filter(m ->
                        lower.length() >= 3 && name(m).toLowerCase(Locale.ROOT).startsWith(lower))
                .findFirst();
    }

    private static String name(Month month) {
        return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }
}
