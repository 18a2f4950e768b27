package dev.warmlane.scenario;

import dev.warmlane.units.UnitSystem;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * From one hour of the day to another, or from one month to another: as numbers, hours also as on a clock with or without
 * am and pm, months also by name.
 *
 * @param hours hours if true, else months
 */
record SpanKind(boolean hours) implements Kind<WordKinds.Span> {

    /** Both sides of a dash or of "to"; an hour may have a dash only within words. */
    private static final Pattern SIDES =
            Pattern.compile("(.+?)\\s*(?:[-\u2013\u2014]|\\b(?:to|till|until|through|thru|bis)\\b)\\s*(.+)");

    private static final Pattern SUMMER = Pattern.compile("\\b(?:summer|daylight|dst|bst|cest|[ecmp]dt)\\b");

    private static final Pattern HOUR =
            Pattern.compile("(\\d{1,2}?)(?:[:.h]?(\\d{2}))?\\s*(?:(a\\.?m?\\.?|p\\.?m?\\.?)|h|hrs|uhr|o'clock)?");

    private static final WordKinds.Span ALL_DAY = new WordKinds.Span(0, 24);

    @Override
    public WordKinds.Span read(Object toml) throws BadValueException {
        String text = toml instanceof String string ? string.strip().toLowerCase(Locale.ROOT) : "";
        if (hours && text.matches("all day|24 ?h(?:ours)?|always|24/7")) {
            return ALL_DAY;
        }
        if (hours && SUMMER.matcher(text).find()) {
            throw new BadValueException("found " + BadValueException.show(toml) + "; write hours of standard time:"
                    + " 9 by a clock put forward for summer is 8");
        }
        Matcher sides = SIDES.matcher(text.replaceFirst("^from ", ""));
        if (!sides.matches()) {
            throw BadValueException.of(toml, allowed());
        }
        OptionalInt from = hours ? hour(toml, sides.group(1), false) : month(sides.group(1));
        OptionalInt to = hours ? hour(toml, sides.group(2), true) : month(sides.group(2));
        if (from.isEmpty() || to.isEmpty()) {
            throw BadValueException.of(toml, allowed());
        }
        if (hours && (unclear(sides.group(1), sides.group(2)) || unclear(sides.group(2), sides.group(1)))) {
            throw new BadValueException("found " + BadValueException.show(toml)
                    + "; which half of the day is each? write am or pm behind both, or hours up to 24");
        }
        if (hours && twelve(sides.group(1)) && twelve(sides.group(2)) && from.getAsInt() > to.getAsInt()) {
            throw overNight(toml, from.getAsInt(), to.getAsInt());
        }
        return new WordKinds.Span(from.getAsInt(), to.getAsInt());
    }

    /** "9 to 6" is from morning to evening to those who open, and from evening to morning to those who cover. */
    private static BadValueException overNight(Object toml, int from, int to) {
        return new BadValueException("found " + BadValueException.show(toml) + "; which half of the day is each? write "
                + "\"" + from + "-" + (to + 12) + "\" for the day, \"" + (from + 12) % 24 + "-" + to
                + "\" for the night, or am and pm behind both");
    }

    /** An hour as those write it who count to twelve. */
    private static boolean twelve(String side) {
        return side.matches("(?:[1-9]|1[0-2])(?:[:.h]?00)?");
    }

    /** An hour up to twelve beside one with am or pm. */
    private static boolean unclear(String side, String other) {
        return twelve(side) && other.matches(".*[ap]\\.?(?:m\\.?)?");
    }

    private static OptionalInt month(String side) {
        int number = side.matches("\\d{1,2}") ? Integer.parseInt(side) : DateKind.month(side);
        return number >= 1 && number <= 12 ? OptionalInt.of(number) : OptionalInt.empty();
    }

    private static OptionalInt hour(Object toml, String side, boolean last) throws BadValueException {
        if (side.matches("noon|midday")) {
            return OptionalInt.of(12);
        }
        if (side.equals("midnight")) {
            return OptionalInt.of(last ? 24 : 0);
        }
        Matcher clock = HOUR.matcher(side);
        if (!clock.matches()) {
            return OptionalInt.empty();
        }
        if (clock.group(2) != null && !clock.group(2).equals("00")) {
            throw new BadValueException("found " + BadValueException.show(toml) + "; only whole hours are simulated;"
                    + " write the nearest, such as \"8-19\"");
        }
        int hour = Integer.parseInt(clock.group(1));
        String half = clock.group(3) == null ? "" : clock.group(3).substring(0, 1);
        if (!half.isEmpty()) {
            if (hour < 1 || hour > 12) {
                return OptionalInt.empty();
            }
            int twelve = hour % 12 + (half.equals("p") ? 12 : 0);
            return OptionalInt.of(last && twelve == 0 ? 24 : twelve);
        }
        return hour <= (last ? 24 : 23) ? OptionalInt.of(hour) : OptionalInt.empty();
    }

    @Override
    public String write(WordKinds.Span value) {
        return "\"" + value.from() + "-" + value.to() + "\"";
    }

    /** Hours as a clock shows them, months by their names. */
    @Override
    public String show(WordKinds.Span value, UnitSystem units) {
        if (!hours) {
            return DateKind.name(value.from()) + " to " + DateKind.name(value.to());
        }
        return value.equals(ALL_DAY) ? "all day" : value.from() + ":00 to " + value.to() + ":00";
    }

    @Override
    public String allowed() {
        return hours
                ? "hours of the day, from 0-23 to 0-24, such as \"20-8\" or \"8 pm to 8 am\""
                : "first and last month 1 to 12, such as \"5-9\" or \"May to September\"";
    }

    @Override
    public WordKinds.Span standIn() {
        return hours ? new WordKinds.Span(0, 23) : new WordKinds.Span(1, 12);
    }
}
