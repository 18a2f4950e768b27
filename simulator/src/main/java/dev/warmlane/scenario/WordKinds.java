package dev.warmlane.scenario;

import dev.warmlane.files.Printable;
import dev.warmlane.units.UnitSystem;
import java.time.MonthDay;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Kinds of words: free text, one of some names, dates, spans of months or hours. */
final class WordKinds {

    /** More than a name, a title or a path needs, characters. */
    private static final int TEXT_AT_MOST = 500;

    private WordKinds() {}

    /** Any text that is not empty and can be printed on a line. */
    static Kind<String> text() {
        return new Text();
    }

    /** One of the constants of an enumeration by its name in lower case, words joined by hyphens. */
    static <E extends Enum<E>> Kind<E> choice(Class<E> type) {
        return choice(EnumSet.allOf(type));
    }

    /** The same of some of them. */
    static <E extends Enum<E>> Kind<E> choice(Set<E> constants) {
        return choice(
                constants, constant -> constant.name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    /** The same, each in words of its own where a report tells it. */
    static <E extends Enum<E>> Kind<E> choice(Class<E> type, Function<E, String> words) {
        return choice(EnumSet.allOf(type), words);
    }

    private static <E extends Enum<E>> Kind<E> choice(Set<E> constants, Function<E, String> words) {
        Map<String, E> names = new LinkedHashMap<>();
        for (E constant : constants) {
            names.put(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), constant);
        }
        return new Choice<>(names, words);
    }

    /** A day of the year, month and day. */
    static Kind<MonthDay> date() {
        return new DateKind();
    }

    /** From one month to another, both included; over New Year where the first is the later one. */
    static Kind<Span> months() {
        return new SpanKind(false);
    }

    /** From one hour of the day to another; over midnight where the first is not the earlier one. */
    static Kind<Span> hours() {
        return new SpanKind(true);
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

    private record Choice<E extends Enum<E>>(Map<String, E> names, Function<E, String> words) implements Kind<E> {

        @Override
        public E read(Object toml) throws BadValueException {
            E found = toml instanceof String text ? names.get(joined(text)) : null;
            if (found != null) {
                return found;
            }
            String hint = toml instanceof String text
                    ? OtherWords.elsewhere(joined(text), names.keySet())
                            .map(other -> "; write " + other)
                            .orElseGet(() -> near(text))
                    : "";
            throw new BadValueException("found " + BadValueException.show(toml) + "; allowed: " + allowed() + hint);
        }

        private String near(String text) {
            return Nearest.choice(text, names.keySet())
                    .map(n -> "; did you mean \"" + n + "\"?")
                    .orElse("");
        }

        @Override
        public boolean isChoice() {
            return true;
        }

        /** As names are written: in small letters, words joined by hyphens. */
        private static String joined(String text) {
            return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
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
        public String show(E value, UnitSystem units) {
            return words.apply(value);
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
}
