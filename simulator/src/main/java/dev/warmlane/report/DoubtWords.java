package dev.warmlane.report;

import static java.util.Map.entry;

import dev.warmlane.study.Sensitivity;
import java.util.Map;

/** What is uncertain, in words that a pool's owner has for it. */
final class DoubtWords {

    private static final Map<String, String> WORDS = Map.ofEntries(
            entry("wind at pool over the station's", "the wind at the water"),
            entry("wind at pool as fitted, sun and sky with it", "the wind at the water, as fitted"),
            entry("sun that warms the pool as fitted, sky with it", "the sun on the water, as fitted"),
            entry("sky over the pool as fitted", "the warmth of the sky, as fitted"),
            entry(
                    "wind at pool in other seasons than the log's",
                    "the wind at the water in other months than the log's"),
            entry(
                    "sun that warms the pool in other seasons than the log's",
                    "the sun on the water in other months than the log's"),
            entry(
                    "sky over the pool in other seasons than the log's",
                    "the warmth of the sky in other months than the log's"),
            entry("evaporation correlation", "how fast water evaporates"),
            entry("absorptance of the basin", "how much sun the basin keeps"),
            entry("cover, hours a day", "how long the cover lies on the water"),
            entry("terrain around the roof", "the wind at the roof"),
            entry("wind along the roof, ratio", "the wind along the roof"),
            entry("wind along the roof behind its parapet, ratio", "the wind behind the parapet"),
            entry("wind at inner rows over the first", "the wind between the rows"),
            entry("albedo of the roof", "how light the roof is"),
            entry("wind's cooling of the collector", "how much wind cools the collectors"),
            entry("absorptance of the collector", "how much sun the collectors take in"),
            entry("emittance of the collector", "how much heat the collectors radiate"),
            entry("plate-to-fluid conductance", "how well heat passes into the water"),
            entry("conductivity of the tubes", "the plastic of the tubes"),
            entry("flow per collector area", "the flow through the collectors"),
            entry("back on the test stand", "how the collectors were tested"),
            entry("stop difference", "when the control stops the pump"));

    private DoubtWords() {}

    /** Whether there are words of its own for something uncertain. */
    static boolean has(String name) {
        return WORDS.containsKey(name);
    }

    /** In words after "is". */
    static String of(Sensitivity doubt) {
        return WORDS.getOrDefault(doubt.name(), "the " + doubt.name());
    }

    /** With what it is varied between, as the label of a row: {@code wind at the water, 0.15 to 0.4}. */
    static String varied(Sensitivity doubt, Numbers numbers) {
        return of(doubt).replaceFirst("^the ", "") + ", "
                + SettingWords.range(doubt, numbers).replaceFirst(" K$", " degrees");
    }
}
