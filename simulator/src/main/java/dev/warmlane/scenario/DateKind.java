package dev.warmlane.scenario;

import dev.warmlane.units.Notation;
import dev.warmlane.units.Spelling;
import dev.warmlane.units.UnitSystem;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** A day of the year: month and day as in ISO 8601, or with the month's name. */
record DateKind() implements Kind<MonthDay> {

    private static final Pattern ISO = Pattern.compile("(\\d{2})-(\\d{2})");
    private static final Pattern DAY_MONTH =
            Pattern.compile("(?:the\\s+)?(\\d{1,2})(?:st|nd|rd|th|er)?[./-]?\\s*(?:of\\s+|de\\s+)?(\\p{L}{3,})\\.?");
    private static final Pattern MONTH_DAY =
            Pattern.compile("(\\p{L}{3,})[.-]?\\s*(?:the\\s+)?(\\d{1,2})(?:st|nd|rd|th)?\\.?");
    private static final Pattern ABOUT = Pattern.compile(
            "(?i)(?:the\\s+)?(mid|middle|early|beginning|begin|start|late|end)[\\s-]+(?:of\\s+)?(\\p{L}{3,})\\.?");
    private static final Pattern WITH_YEAR = Pattern.compile("\\d{4}[-/.](.+)|(.*[^\\s,/.-])[\\s,/.-]+\\d{4}");
    private static final Pattern TWO_NUMBERS = Pattern.compile("(\\d{1,2})\\s*[-/.]\\s*(\\d{1,2})\\.?");

    private static final Pattern WEEKDAY =
            Pattern.compile("(?i)^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*\\.?,?\\s+(?=.*\\d)");

    private static final List<String> MONTHS =
            IntStream.rangeClosed(1, 12).mapToObj(DateKind::name).toList();

    @Override
    public MonthDay read(Object toml) throws BadValueException {
        if (toml instanceof LocalDate date) {
            throw new BadValueException(
                    "found " + toml + "; a typical year has no year of its own; write " + write(MonthDay.from(date)));
        }
        String text =
                toml instanceof String string ? WEEKDAY.matcher(string.strip()).replaceFirst("") : "";
        Matcher year = WITH_YEAR.matcher(text);
        if (year.matches()) {
            String day = year.group(1) == null ? year.group(2) : year.group(1);
            throw new BadValueException("found " + BadValueException.show(toml)
                    + "; a typical year has no year of its own; write " + write(read(day)));
        }
        Matcher iso = ISO.matcher(text);
        if (iso.matches()) {
            return iso(text, Integer.parseInt(iso.group(1)), Integer.parseInt(iso.group(2)));
        }
        Matcher dayFirst = DAY_MONTH.matcher(text);
        Matcher monthFirst = MONTH_DAY.matcher(text);
        if (dayFirst.matches()) {
            return named(text, dayFirst.group(2), dayFirst.group(1));
        }
        if (monthFirst.matches()) {
            return named(text, monthFirst.group(1), monthFirst.group(2));
        }
        if (month(text) > 0) {
            throw new BadValueException("found " + BadValueException.show(toml) + "; which day of the month? write "
                    + "one as in \"1 " + name(month(text)) + "\"");
        }
        Matcher about = ABOUT.matcher(text);
        if (about.matches() && month(about.group(2)) > 0) {
            throw about(text, about.group(1).toLowerCase(Locale.ROOT), Month.of(month(about.group(2))));
        }
        Matcher numbers = TWO_NUMBERS.matcher(text);
        throw numbers.matches()
                ? unclear(text, Integer.parseInt(numbers.group(1)), Integer.parseInt(numbers.group(2)))
                : BadValueException.of(toml, allowed());
    }

    /** A part of a month, and a day that may be meant by it. */
    private static BadValueException about(String text, String part, Month month) {
        int day =
                switch (part) {
                    case "mid", "middle" -> 15;
                    case "late", "end" -> month.minLength();
                    default -> 1;
                };
        return new BadValueException("found " + BadValueException.quote(text) + "; a season has a first and a last day;"
                + " did you mean \"" + day + " " + name(month.getValue()) + "\"?");
    }

    private MonthDay iso(String text, int month, int day) throws BadValueException {
        if (month > 12 && day <= 12) {
            throw unclear(text, month, day);
        }
        return day(text, month, day);
    }

    private MonthDay named(String text, String month, String day) throws BadValueException {
        int number = month(month);
        if (number == 0) {
            String meant = Spelling.nearest(month, MONTHS)
                    .map(m -> "; did you mean \"" + day + " " + m + "\"?")
                    .orElse("");
            throw new BadValueException("found " + BadValueException.quote(text) + "; allowed: " + allowed() + meant);
        }
        return day(text, number, Integer.parseInt(day));
    }

    private MonthDay day(String text, int month, int day) throws BadValueException {
        if (month == 2 && day == 29) {
            throw new BadValueException("found " + BadValueException.quote(text)
                    + "; a typical year has no 29 February; allowed: " + allowed());
        }
        try {
            return MonthDay.of(month, day);
        } catch (DateTimeException e) {
            throw new BadValueException(
                    "found " + BadValueException.quote(text) + ", which is no day of the year; allowed: " + allowed());
        }
    }

    /** Two numbers of which either may be the month: some write the day first, others the month. */
    private BadValueException unclear(String text, int first, int second) {
        String found = "found " + BadValueException.quote(text);
        if (first <= 12 && second <= 12 && first > 0 && second > 0 && first != second) {
            return new BadValueException(found + "; may be " + second + " " + name(first) + " or " + first + " "
                    + name(second) + "; write it so, with the month's name");
        }
        int month = first <= 12 ? first : second;
        int day = first <= 12 ? second : first;
        if (month == 0 || month > 12 || day == 0 || day > Month.of(month).maxLength()) {
            return new BadValueException(found + ", which is no day of the year; allowed: " + allowed());
        }
        return new BadValueException(found + "; did you mean \"" + day + " " + name(month) + "\"?");
    }

    /** The number of a month whose name begins so, 0 for none. */
    static int month(String word) {
        String lower = word.toLowerCase(Locale.ROOT).replaceFirst("\\.$", "");
        for (Month month : Month.values()) {
            String name = month.getDisplayName(TextStyle.FULL, Locale.ENGLISH).toLowerCase(Locale.ROOT);
            boolean abbreviated = lower.length() == 3 || lower.equals("sept");
            if (name.equals(lower) || (abbreviated && name.startsWith(lower))) {
                return month.getValue();
            }
        }
        return 0;
    }

    static String name(int month) {
        return Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    @Override
    public String write(MonthDay value) {
        return String.format(Locale.ROOT, "\"%02d-%02d\"", value.getMonthValue(), value.getDayOfMonth());
    }

    @Override
    public String show(MonthDay value, UnitSystem units) {
        return Notation.usual(units).show(value);
    }

    @Override
    public String allowed() {
        return "month and day as \"MM-DD\", such as \"05-15\", or in words, \"15 May\"";
    }

    @Override
    public MonthDay standIn() {
        return MonthDay.of(1, 1);
    }
}
