package dev.warmlane.examples;

import dev.warmlane.scenario.ScenarioAnswer;
import dev.warmlane.weather.WeatherYear;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What was answered so far, and what is known from it. */
final class Answers {

    private final Map<String, ScenarioAnswer> given = new HashMap<>();
    private final Path file;
    private @Nullable WeatherYear weather;

    /** Nothing answered yet for a scenario file that is to be. */
    Answers(Path file) {
        this.file = file;
    }

    /** The scenario file that is to be. */
    Path file() {
        return file;
    }

    void put(String id, ScenarioAnswer answer) {
        given.put(id, answer);
    }

    void forget(String id) {
        given.remove(id);
    }

    boolean has(String id) {
        return given.containsKey(id);
    }

    /** What was answered, or empty. */
    String text(String id) {
        ScenarioAnswer answer = given.get(id);
        return answer == null ? "" : answer.text();
    }

    /** How it is written into the file. */
    String toml(String id) {
        ScenarioAnswer answer = given.get(id);
        return answer == null ? "" : answer.toml();
    }

    boolean is(String id, String text) {
        return text(id).equals(text);
    }

    /** Whether numbers without a unit are in US units. */
    boolean us() {
        return is("report.units", "us");
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
