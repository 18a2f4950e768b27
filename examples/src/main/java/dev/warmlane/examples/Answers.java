package dev.warmlane.examples;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import dev.warmlane.weather.WeatherYear;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was answered so far, and what is known from it. */
final class Answers {

    private final Map<String, Answer> given = new HashMap<>();
    private final Path file;
    private @Nullable WeatherYear weather;

    /** Nothing answered yet for a scenario file that is to be. */
    Answers(Path file) {
        this.file = file;
    }

    /** The same answers, to try others with. */
    Answers copy() {
        Answers copy = new Answers(file);
        copy.given.putAll(given);
        copy.weather = weather;
        return copy;
    }

    /** The scenario file that is to be. */
    Path file() {
        return file;
    }

    void put(String id, Answer answer) {
        given.put(id, answer);
    }

    void forget(String id) {
        given.remove(id);
    }

    /** The answer to a question; nothing where it was not answered. */
    Optional<Answer> to(String id) {
        return Optional.ofNullable(given.get(id));
    }

    boolean has(String id) {
        return given.containsKey(id);
    }

    /** What a question was answered with, or empty. */
    String text(String id) {
        return to(id).map(Answer::text).orElse("");
    }

    boolean is(String id, String text) {
        return text(id).equals(text);
    }

    /** The answer that a key of the file has its value from. */
    Optional<Answer> of(String key) {
        return given.values().stream().filter(a -> a.values().containsKey(key)).findFirst();
    }

    /** How the value of a key is written into the file, or empty. */
    String toml(String key) {
        return of(key).map(a -> String.valueOf(a.values().get(key))).orElse("");
    }

    /** A quantity of the file in the base unit of its dimension; 0 where there is none. */
    double number(String key, Dimension dimension) {
        return quantity(toml(key), dimension);
    }

    /** The quantity that a value of the file is, in its basic unit; 0 where it is none. */
    static double quantity(String toml, Dimension dimension) {
        try {
            return Quantity.parse(toml.replace("\"", ""), dimension);
        } catch (QuantityException none) {
            return 0;
        }
    }

    /** Whether numbers without a unit are in US units. */
    boolean us() {
        return is(Questions.UNITS, "us");
    }

    /** One of two, by the units that were chosen. */
    String by(String metric, String us) {
        return us() ? us : metric;
    }

    void look(WeatherYear year) {
        weather = year;
    }

    /** Whether the place lies south of the equator, as far as the weather file says. */
    boolean south() {
        return weather != null && weather.site().latitudeDeg() < 0;
    }
}
