package dev.warmlane.examples;

import dev.warmlane.scenario.ScenarioAnswer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Whatever heats a pool, by the words of those who own one, and how a scenario file says it. */
enum Heaters {
    NOTHING("none", "no|nothing|without|not heated|unheated|no heater|the sun|solar", "", "", ""),
    GAS(
            "gas",
            "(natural|mains|town) gas|methane|gas (boiler|heater)|natural gas (boiler|heater)",
            "boiler",
            "natural-gas",
            "gas"),
    CONDENSING(
            "condensing gas",
            "(gas )?condensing( boiler| heater)?|condensing gas (boiler|heater)",
            "condensing",
            "natural-gas",
            "gas"),
    PROPANE(
            "propane",
            "lpg|(liquid|bottled|liquefied) gas|propane (boiler|heater|gas)",
            "boiler",
            "propane",
            "propane"),
    CONDENSING_PROPANE(
            "condensing propane", "propane condensing( boiler)?|condensing lpg", "condensing", "propane", "propane"),
    OIL(
            "oil",
            "(heating|fuel|gas) oil|diesel|(heating |fuel )?oil (boiler|heater)",
            "boiler",
            "heating-oil",
            "heating oil"),
    ELECTRIC(
            "electric",
            "electricity|electrical|(electric )?resistance|electric(al)? (heater|heating)",
            "electric",
            "",
            "electricity"),
    HEAT_PUMP("heat pump", "hp|heatpump|air (source )?heat pump|air source", "heat-pump", "", "electricity"),
    DISTRICT_HEAT(
            "district heat",
            "district( heating)?|heat(ing)? network|network|remote heat",
            "district-heat",
            "",
            "district heat");

    private static final Pattern OF_ITS_OWN =
            Pattern.compile(".*\\b(wood|pellets?|chips|biogas|coal|hydrogen|straw)\\b.*");

    private final String word;
    private final Pattern others;
    private final String kind;
    private final String fuel;
    private final String bought;

    Heaters(String word, String others, String kind, String fuel, String bought) {
        this.word = word;
        this.others = Pattern.compile(others);
        this.kind = kind;
        this.fuel = fuel;
        this.bought = bought;
    }

    /** All of them, as they are offered. */
    static String offered() {
        return Arrays.stream(values()).map(h -> h.word).collect(Collectors.joining(", "));
    }

    /** The one of an answer that was given; nothing before it was asked. */
    static Heaters of(Answers before) {
        return Arrays.stream(values())
                .filter(h -> before.is(Questions.HEATER, h.word))
                .findFirst()
                .orElse(NOTHING);
    }

    /**
     * The answer that somebody's words come to.
     *
     * @throws IllegalArgumentException if they come to none, with those that do
     */
    static Answer answer(String written) {
        String said = written.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
        Optional<Heaters> meant = Arrays.stream(values())
                .filter(h -> h.word.equals(said) || h.others.matcher(said).matches())
                .findFirst();
        if (meant.isPresent()) {
            return meant.get().answer();
        }
        if (OF_ITS_OWN.matcher(said).matches()) {
            throw new IllegalArgumentException(
                    "another fuel needs its heat and its carbon dioxide: answer gas, and write"
                            + " fuel = \"own\" into the file afterwards; docs/scenario.md, [heater]");
        }
        String which = said.matches("(pool )?(boiler|heater|burner)") ? "what does it burn? " : "";
        throw new IllegalArgumentException(
                "found \"" + written.strip() + "\"; " + which + "write one of: " + offered());
    }

    private Answer answer() {
        if (this == NOTHING) {
            return Answer.nothing(word);
        }
        ScenarioAnswer what = ScenarioAnswer.of("heater", "kind", kind, "");
        return fuel.isEmpty()
                ? Answer.of(word, List.of("heater.kind"), List.of(what))
                : Answer.of(
                        word,
                        List.of("heater.kind", "heater.fuel"),
                        List.of(what, ScenarioAnswer.of("heater", "fuel", fuel, "")));
    }

    /** Whether there is one. */
    boolean heats() {
        return this != NOTHING;
    }

    /** Whether it burns something. */
    boolean burns() {
        return !fuel.isEmpty();
    }

    /** Whether it takes electricity. */
    boolean electric() {
        return this == ELECTRIC || this == HEAT_PUMP;
    }

    /** Whether its efficiency depends on the temperature of the water. */
    boolean condenses() {
        return this == CONDENSING || this == CONDENSING_PROPANE;
    }

    /** What is bought for it. */
    String bought() {
        return bought;
    }
}
