package dev.warmlane.scenario;

import dev.warmlane.files.Printable;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Kinds of words: free text, one of some names, dates, spans of months or hours. */
final class WordKinds {

    private static final Pattern DATE = Pattern.compile("(\\d{2})-(\\d{2})");
    private static final Pattern SPAN = Pattern.compile("(\\d{1,2})\\s*-\\s*(\\d{1,2})");

    /** More than a name, a title or a path needs, characters. */
    private static final int TEXT_AT_MOST = 500;

    private WordKinds() {}

    /** Any text that is not empty and can be printed on a line. */
    static Kind<String> text() {
        return new Text();
    }

    /** One of the constants of an enumeration by its name in lower case, words joined by hyphens. */
    static <E extends Enum<E>> Kind<E> choice(Class<E> type) {
        Map<String, E> names = new LinkedHashMap<>();
        for (E constant : type.getEnumConstants()) {
            names.put(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), constant);
        }
        return new Choice<>(names);
    }

    /** A day of the year, month and day. */
    static Kind<MonthDay> date() {
        return new Date();
    }

    /** From one month to another, both included; over New Year where the first is the later one. */
    static Kind<Span> months() {
        return new Spans("first and last month 1 to 12, such as \"5-9\"", 1, 12, 1);
    }

    /** From one hour of the day to another; over midnight where the first is not the earlier one. */
    static Kind<Span> hours() {
        return new Spans("hours of the day, from 0-23 to 0-24, such as \"20-8\"", 0, 23, 0);
    }

    /** From one number to another. */
    record Span(int from, int to) {}

    private record Text() implements Kind<String> {

        @Override
        public String read(Object toml) throws BadValueException {
            if (toml instanceof String text && text.isBlank()) {
                throw new BadValueException("is empty; allowed: a text in quotes");
            }
            if (toml instanceof String text && !Printable.isPrintable(text)) {
                throw new BadValueException("found " + BadValueException.show(toml) + ", which has characters that"
                        + " cannot be printed; a backslash stands for one: write / in paths");
            }
            if (toml instanceof String text && text.length() > TEXT_AT_MOST) {
                throw new BadValueException("found " + BadValueException.show(toml) + ", " + text.length()
                        + " characters; allowed: at most " + TEXT_AT_MOST);
            }
            if (toml instanceof String text) {
                return text;
            }
            throw BadValueException.of(toml, allowed());
        }

        @Override
        public String write(String value) {
            return BadValueException.quote(value);
        }

        @Override
        public String show(String value) {
            return value;
        }

        @Override
        public String allowed() {
            return "a text in quotes";
        }

        @Override
        public String standIn() {
            return "";
        }
    }

    private record Choice<E extends Enum<E>>(Map<String, E> names) implements Kind<E> {

        @Override
        public E read(Object toml) throws BadValueException {
            E found = toml instanceof String text ? names.get(text) : null;
            if (found != null) {
                return found;
            }
            String hint = toml instanceof String text
                    ? Nearest.choice(text, names.keySet())
                            .map(n -> "; did you mean \"" + n + "\"?")
                            .orElse("")
                    : "";
            throw new BadValueException("found " + BadValueException.show(toml) + "; allowed: " + allowed() + hint);
        }

        @Override
        public String write(E value) {
            return names.entrySet().stream()
                    .filter(e -> e.getValue() == value)
                    .map(e -> "\"" + e.getKey() + "\"")
                    .findFirst()
                    .orElseThrow();
        }

        @Override
        public String allowed() {
            return "\"" + String.join("\", \"", names.keySet()) + "\"";
        }

        @Override
        public E standIn() {
            return names.values().iterator().next();
        }
    }

    private record Date() implements Kind<MonthDay> {

        @Override
        public MonthDay read(Object toml) throws BadValueException {
            Matcher matcher = DATE.matcher(toml instanceof String text ? text : "");
            if (!matcher.matches()) {
                throw BadValueException.of(toml, allowed());
            }
            if ("02-29".equals(toml)) {
                throw new BadValueException(
                        "found \"02-29\"; a typical year has no 29 February; allowed: " + allowed());
            }
            try {
                return MonthDay.of(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
            } catch (DateTimeException e) {
                throw new BadValueException("found " + BadValueException.show(toml) + ", which is no day of the year;"
                        + " allowed: " + allowed());
            }
        }

        @Override
        public String write(MonthDay value) {
            return String.format(Locale.ROOT, "\"%02d-%02d\"", value.getMonthValue(), value.getDayOfMonth());
        }

        @Override
        public String allowed() {
            return "month and day as \"MM-DD\", such as \"05-15\" for 15 May";
        }

        @Override
        public MonthDay standIn() {
            return MonthDay.of(1, 1);
        }
    }

    private record Spans(String allowed, int lowest, int highestFrom, int lowestTo) implements Kind<Span> {

        @Override
        public Span read(Object toml) throws BadValueException {
            Matcher matcher = SPAN.matcher(toml instanceof String text ? text.strip() : "");
            if (!matcher.matches()) {
                throw BadValueException.of(toml, allowed());
            }
            int from = Integer.parseInt(matcher.group(1));
            int to = Integer.parseInt(matcher.group(2));
            int highestTo = lowestTo == 0 ? 24 : 12;
            if (from < lowest || from > highestFrom || to < lowestTo || to > highestTo) {
                throw BadValueException.of(toml, allowed());
            }
            return new Span(from, to);
        }

        @Override
        public String write(Span value) {
            return "\"" + value.from() + "-" + value.to() + "\"";
        }

        @Override
        public Span standIn() {
            return new Span(lowest, highestFrom);
        }
    }
}
