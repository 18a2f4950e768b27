package dev.warmlane.examples;

import dev.warmlane.scenario.ScenarioAnswer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What one question was answered with.
 *
 * @param text the answer as it can be shown again
 * @param values what comes of it for the file: section and key, such as {@code pool.depth}, and what stands behind
 *     {@code =}
 * @param assumed whether nobody said it: an empty line, or not asked at all
 */
record Answer(String text, Map<String, String> values, boolean assumed) {

    /** Keeps its own copy. */
    Answer {
        values = Map.copyOf(values);
    }

    /** An answer of which nothing comes for the file. */
    static Answer nothing(String text) {
        return new Answer(text, Map.of(), false);
    }

    static Answer of(String id, ScenarioAnswer value) {
        return new Answer(value.text(), Map.of(id, value.toml()), false);
    }

    /** One answer for several keys. */
    static Answer of(String text, List<String> ids, List<ScenarioAnswer> each) {
        Map<String, String> values = new LinkedHashMap<>();
        for (int i = 0; i < ids.size(); i++) {
            values.put(ids.get(i), each.get(i).toml());
        }
        return new Answer(text, values, false);
    }

    /** The same with one more value. */
    Answer with(String id, ScenarioAnswer value) {
        Map<String, String> more = new LinkedHashMap<>(values);
        more.put(id, value.toml());
        return new Answer(text, more, assumed);
    }

    /** The same, as nobody said it. */
    Answer taken() {
        return new Answer(text, values, true);
    }
}
