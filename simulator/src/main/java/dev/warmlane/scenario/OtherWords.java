package dev.warmlane.scenario;

import static java.util.Map.entry;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Words that people use for the choices and keys of a scenario file, each with what the file calls it. */
final class OtherWords {

    private static final Map<String, List<String>> CHOICES = Map.ofEntries(
            entry("outdoor", List.of("outside", "open air", "open-air", "open", "lido")),
            entry("indoor", List.of("inside", "hall", "in a hall", "covered", "enclosed")),
            entry("natural-gas", List.of("gas", "nat. gas", "methane", "mains gas", "boiler", "gas boiler")),
            entry("propane", List.of("lpg", "liquid gas", "bottled gas")),
            entry("heating-oil", List.of("oil", "fuel oil", "diesel", "gas oil")),
            entry("heat-pump", List.of("heatpump", "hp", "air source heat pump", "air-source")),
            entry("electric", List.of("electricity", "resistance", "power")),
            entry("district-heat", List.of("district heating", "heat network", "network")),
            entry("condensing", List.of("condensing boiler", "condenser")),
            entry(
                    "bubble",
                    List.of("solar blanket", "solar cover", "bubble wrap", "bubble foil", "blanket", "plastic")),
            entry("solid-track", List.of("automatic", "slatted", "roller shutter", "slats", "safety cover", "lamella")),
            entry("liquid-film", List.of("liquid", "chemical")),
            entry("us", List.of("imperial", "american", "usa", "english", "ip", "fahrenheit", "us customary", "feet")),
            entry("metric", List.of("si", "celsius", "european", "metric system", "m", "metres", "meters")),
            entry("rack", List.of("tilted", "racks", "frames", "frame", "stand", "elevated")),
            entry(
                    "pitched",
                    List.of(
                            "sloped",
                            "slope",
                            "sloping",
                            "sloping roof",
                            "tiles",
                            "pitched roof",
                            "pitch roof",
                            "on roof",
                            "flush")),
            entry(
                    "gable",
                    List.of(
                            "both",
                            "both sides",
                            "both slopes",
                            "two sides",
                            "two slopes",
                            "saddle",
                            "saddle roof",
                            "gable roof",
                            "east-west roof")),
            entry("flat", List.of("horizontal", "flat roof", "lying")),
            entry("city", List.of("urban", "town", "centre")),
            entry("open", List.of("rural", "country", "village", "fields", "farmland", "flat")),
            entry("water", List.of("sea", "lake", "coast", "shore")),
            entry(
                    "suburban",
                    List.of("suburb", "houses", "trees", "garden", "gardens", "normal", "average", "medium", "middle")),
            entry("sheltered", List.of("protected", "calm", "walled", "walls", "hedge", "hedges")),
            entry("exposed", List.of("windy", "unsheltered", "open", "in the open", "hill", "coast", "seaside")),
            entry("light", List.of("white", "light blue", "pale")),
            entry("dark", List.of("black", "dark blue")),
            entry("full", List.of("siphon", "syphon", "closed", "flooded")),
            entry("direct", List.of("direct return")),
            entry("reversed", List.of("reverse", "reverse return", "reversed return", "balanced", "tichelmann")),
            entry("diagonal", List.of("opposite", "across", "crosswise")),
            entry("boarded", List.of("closed", "insulated")));

    private static final Map<String, String> KEYS = Map.ofEntries(
            entry("pool.size", "give area, or length and width"),
            entry("pool.dimensions", "give area, or length and width"),
            entry("pool.surface", "the water surface is called area"),
            entry("pool.volume", "give area and depth"),
            entry("pool.temperature", "the temperature that a heater keeps is set_point of [heater]"),
            entry("pool.indoor", "write setting = \"indoor\" or \"outdoor\""),
            entry("pool.outdoor", "write setting = \"indoor\" or \"outdoor\""),
            entry("site.location", "the place is that of the weather file"),
            entry("site.latitude", "the place is that of the weather file"),
            entry("site.longitude", "the place is that of the weather file"),
            entry("site.file", "the weather file is called weather"),
            entry("roof.pitch", "the tilt of collectors is tilt of [[collectors]]"),
            entry("roof.tilt", "the tilt of collectors is tilt of [[collectors]]"),
            entry("roof.slope", "the tilt of collectors is tilt of [[collectors]]"),
            entry("roof.size", "give area, or length and width"),
            entry("collectors.orientation", "the direction that the front faces is called azimuth"),
            entry("collectors.direction", "the direction that the front faces is called azimuth"),
            entry("collectors.facing", "the direction that the front faces is called azimuth"),
            entry("collectors.angle", "the tilt is called tilt"),
            entry("collectors.pitch_angle", "the tilt is called tilt"),
            entry("collectors.slope", "the tilt is called tilt"),
            entry("collectors.inclination", "the tilt is called tilt"),
            entry("collectors.count", "the number of panels is called panels"),
            entry("collectors.number", "the number of panels is called panels"),
            entry("heater.power", "the heat to the water at full load is called capacity"),
            entry("heater.output", "the heat to the water at full load is called capacity"),
            entry("heater.size", "the heat to the water at full load is called capacity"),
            entry("heater.temperature", "the pool temperature that it keeps is called set_point"),
            entry("heater.type", "what it burns is called fuel"),
            entry("season.start", "the first day is called first_day"),
            entry("season.opening", "the first day is called first_day"),
            entry("season.from", "the first day is called first_day"),
            entry("season.end", "the last day is called last_day"),
            entry("season.closing", "the last day is called last_day"),
            entry("season.to", "the last day is called last_day"),
            entry("season.hours", "the opening hours are called open"),
            entry("pipes.diameter", "give inner_diameter, and outer_diameter for the heat loss"),
            entry("pipes.height", "the height above the pool's water is called lift"),
            entry("pipes.static_head", "the height above the pool's water is called lift"),
            entry("pipes.power", "the pump's power is called pump_power"),
            entry("pump.power", "the pump's power is pump_power of [pipes]; with [panel] it is computed"),
            entry("pump.head", "give the head over the flow as curve"),
            entry("panel.tube_bore", "the inner diameter of a tube is called tube_diameter"),
            entry("cover.hours", "the hours on the water are called drawn"),
            entry("cover.type", "the kind of cover is called kind"));

    /** Keys that take what was written for another. */
    private static final Map<String, String> BESIDE =
            Map.of("prices.collectors", "; what all of them cost together is collectors_total of [money]");

    /** What is no choice of its key because another key says it. */
    private static final Map<String, String> ELSEWHERE = Map.ofEntries(
            entry("heat-pump", "kind = \"heat-pump\" and its cop"),
            entry("heatpump", "kind = \"heat-pump\" and its cop"),
            entry("electric", "kind = \"electric\""),
            entry("electricity", "kind = \"electric\""),
            entry("district-heat", "kind = \"district-heat\""),
            entry("district-heating", "kind = \"district-heat\""),
            entry("wood", "fuel = \"own\" with fuel_name, fuel_heat and fuel_co2"),
            entry("pellets", "fuel = \"own\" with fuel_name, fuel_heat and fuel_co2"),
            entry("biogas", "fuel = \"own\" with fuel_name, fuel_heat and fuel_co2"));

    private OtherWords() {}

    /** What to write instead of a word that says what another key says; only where the choices are those of a fuel. */
    static Optional<String> elsewhere(String joined, Collection<String> known) {
        return known.contains("natural-gas") ? Optional.ofNullable(ELSEWHERE.get(joined)) : Optional.empty();
    }

    /** The known choice that somebody has another word for. */
    static Optional<String> choice(String word, Collection<String> known) {
        String lower = word.strip().toLowerCase(Locale.ROOT);
        return known.stream()
                .filter(name -> CHOICES.getOrDefault(name, List.of()).contains(lower))
                .findFirst();
    }

    /** What to say behind a value that a key cannot have, but another may. */
    static String beside(String section, String name) {
        return BESIDE.getOrDefault(section + "." + name, "");
    }

    /** What to say of a key that has another name, or of one that follows from others. */
    static Optional<String> key(String section, String name) {
        return Optional.ofNullable(KEYS.get(section + "." + name.toLowerCase(Locale.ROOT)));
    }
}
