package dev.warmlane.scenario;

import dev.warmlane.files.Printable;
import dev.warmlane.units.LoneMark;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One value of a scenario file on its own: what somebody answers when asked for it, checked as the reader of the file
 * checks it.
 *
 * @param text the answer, in units where it has any, as it can be shown again
 * @param toml what stands behind {@code =} in the file; it keeps the units of the answer
 */
public record ScenarioAnswer(String text, String toml) {

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(?:\\.\\d+)?");
    /** Degrees of what was asked for, Celsius or Fahrenheit. */
    private static final Pattern DEGREES = Pattern.compile("(?i)[+-]?\\d+(?:\\.\\d+)?\\s*(?:\u00b0|deg(?:rees?)?)");

    private static final Pattern BARE = Pattern.compile("[+-]?[\\d.,]*\\d(?:\\s*(?:x|\u00d7|by)\\s*\\d[\\d.,]*)?");

    /**
     * Checks an answer.
     *
     * @param section a section of the file, such as {@code pool}
     * @param key one of its keys, such as {@code depth}
     * @param answer what was answered, without quotes
     * @param unit the unit that a number without one is in; empty where there is none
     * @throws IllegalArgumentException if it is not allowed, with what was found, what is allowed and how to mend it
     */
    public static ScenarioAnswer of(String section, String key, String answer, String unit) {
        Kind<?> kind = key(section, key).kind();
        List<String> texts = new ArrayList<>();
        String text = answer.strip();
        if (BARE.matcher(text).matches() && !unit.isEmpty()) {
            boolean two = !NUMBER.matcher(text).matches() && text.matches(".*[xby\u00d7].*");
            texts.add(text + " " + (two ? unit.replaceFirst("2$", "") : unit));
        }
        if (DEGREES.matcher(text).matches() && unit.startsWith("deg")) {
            texts.add(text.replaceAll("[^\\d.+-]", "") + " " + unit);
        }
        texts.add(text);
        String why = "";
        for (String each : texts) {
            try {
                return read(kind, each);
            } catch (BadValueException e) {
                why = why.isEmpty() ? e.getMessage() : why;
            }
        }
        throw new IllegalArgumentException(why);
    }

    private static <T> ScenarioAnswer read(Kind<T> kind, String text) throws BadValueException {
        if (kind.takesNumbers() && LoneMark.of(text).isPresent()) {
            kind.read(text);
        }
        if (NUMBER.matcher(text).matches()) {
            Object number = text.contains(".") ? (Object) Double.valueOf(text) : (Object) Long.valueOf(text);
            try {
                kind.read(number);
                return new ScenarioAnswer(text, text.replaceFirst("^\\+", ""));
            } catch (BadValueException e) {
                if (kind.takesNumbers()) {
                    throw e;
                }
            }
        }
        T value = kind.read(text);
        return kind.isChoice()
                ? new ScenarioAnswer(kind.show(value), kind.write(value))
                : new ScenarioAnswer(text, BadValueException.quote(text));
    }

    /** What a key means, in one line. */
    public static String meaning(String section, String key) {
        return key(section, key).meaning();
    }

    /** What is allowed for a key, in one line. */
    public static String allowed(String section, String key) {
        return key(section, key).kind().allowed();
    }

    private static Key<?> key(String section, String key) {
        return Schema.section(section)
                .flatMap(s -> s.key(key))
                .orElseThrow(() -> new IllegalArgumentException(
                        "there is no key " + Printable.quote(section) + "." + Printable.quote(key)));
    }
}
