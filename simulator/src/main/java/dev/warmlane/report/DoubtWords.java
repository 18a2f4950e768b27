package dev.warmlane.report;

import dev.warmlane.study.Sensitivity;
import java.util.Map;

/** What is uncertain, in words that a pool's owner has for it. */
final class DoubtWords {

    private static final Map<String, String> WORDS = Map.of(
            "wind at pool over the station's", "the wind at the water",
            "evaporation correlation", "how fast water evaporates",
            "absorptance of the basin", "how much sun the basin keeps",
            "cover, hours a day", "how long the cover lies on the water",
            "terrain around the roof", "the wind at the roof",
            "roughness of the collector", "how rough the collectors are to the wind",
            "back on the test stand", "how the collectors were tested",
            "stop difference", "when the control stops the pump");

    private DoubtWords() {}

    /** Whether there are words of its own for something uncertain. */
    static boolean has(String name) {
        return WORDS.containsKey(name);
    }

    /** In words after "is". */
    static String of(Sensitivity doubt) {
        return WORDS.getOrDefault(doubt.name(), "the " + doubt.name());
    }
}
