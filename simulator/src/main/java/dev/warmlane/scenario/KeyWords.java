package dev.warmlane.scenario;

import static java.util.Map.entry;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What keys are called in a report, whose reader has not seen the file. */
final class KeyWords {

    private static final Map<String, String> WORDS = Map.ofEntries(
            entry("site.terrain", "ground that the wind crosses"),
            entry("pool.finish", "finish of the basin"),
            entry("pool.wind_shelter", "shelter of the pool from wind"),
            entry("pool.shaded_share", "shade on the pool"),
            entry("pool.sky_share", "share of the sky that the pool sees"),
            entry("pool.air_speed", "air speed over the water"),
            entry("pool.evaporation", "method for evaporation"),
            entry("pool.water_emittance", "long-wave emittance of the water"),
            entry("pool.ground_conductance", "heat loss to the ground"),
            entry("pool.wall_absorptance", "share of the sun that the pool's walls absorb"),
            entry("pool.freeboard_reflectance", "light that the walls above the water reflect"),
            entry("pool.through_flow_air_days", "days of air that the through-flow follows"),
            entry("pool.bathers", "number of bathers"),
            entry("pool.bather_heat", "heat of a bather"),
            entry("pool.bather_evaporation_rise", "rise of evaporation by bathers"),
            entry("pool.circulation_power", "heat of the circulation pump"),
            entry("pool.circulation_head", "head of the circulation pump"),
            entry("pool.make_up", "fresh water a day"),
            entry("water.mains", "temperature of the mains water"),
            entry("cover.drawn", "hours of the cover"),
            entry("cover.evaporation_cut", "share of evaporation that the cover stops"),
            entry("cover.resistance", "insulation of the cover"),
            entry("cover.solar_loss", "share of the sun that the cover keeps out"),
            entry("roof.length", "length of the roof"),
            entry("roof.width", "width of the roof"),
            entry("roof.albedo", "share of light that the roof reflects"),
            entry("roof.emittance", "long-wave emittance of the roof"),
            entry("roof.u_value", "insulation of the roof"),
            entry("roof.room_temperature", "temperature of the room below the roof"),
            entry("roof.roughness", "roughness of the roof to the wind"),
            entry("roof.wind_speed_ratio", "wind along the roof over undisturbed wind"),
            entry("roof.usable_share", "usable share of the roof"),
            entry("surface.slope", "slope of the drawn surface"),
            entry("surface.parapet", "parapet of the drawn surface"),
            entry("surface.edge_distance", "distance of panels from the roof's edges"),
            entry("obstacle.height", "height of the obstacle"),
            entry("obstacle.clearance", "distance of panels from the obstacle"),
            entry("layout.headers", "ends of a panel that have headers"),
            entry("layout.header_room", "room for the headers of a panel"),
            entry("layout.panels_per_bank", "most panels in a bank"),
            entry("layout.walkway", "way between banks"),
            entry("layout.splits_around", "obstacle that a mat is split around"),
            entry("collectors.area", "area of the collectors"),
            entry("collectors.rows", "rows of racks"),
            entry("collectors.water_content", "water in the collectors"),
            entry("collectors.flow", "flow through the collectors"),
            entry("collectors.gap", "gap below the collectors"),
            entry("collectors.back", "backs of the racks"),
            entry("collectors.board_u_value", "insulation of the board behind the racks"),
            entry("collectors.wind_run", "run of the wind over the racks"),
            entry("collectors.inner_wind", "wind at inner rows of racks"),
            entry("collectors.absorber.absorptance", "share of light that the collectors absorb"),
            entry("collectors.absorber.emittance", "long-wave emittance of the collectors"),
            entry("collectors.absorber.roughness", "roughness of the collectors to the wind"),
            entry("collectors.absorber.conductance", "heat conductance from plate to water"),
            entry("collectors.absorber.inner_film", "heat transfer inside the tubes"),
            entry("collectors.incidence.surface", "reflection of slanting light by the collectors"),
            entry("collectors.certificate.a2", "temperature dependence of the certificate's loss"),
            entry("collectors.certificate.a7", "wind dependence of the certificate's sky term"),
            entry("collectors.certificate.a8", "radiation loss of the certificate"),
            entry("mountings.gap", "gap below the mats"),
            entry("mountings.chord", "length of the racks up the slope"),
            entry("mountings.clearance", "height of the racks above the roof"),
            entry("mountings.back", "backs of the racks"),
            entry("mountings.board_u_value", "insulation of the board behind the racks"),
            entry("mountings.wind_run", "run of the wind over the racks"),
            entry("mountings.inner_wind", "wind at inner rows of racks"),
            entry("mountings.spacing", "hours without shade from row to row"),
            entry("mountings.rows_along", "side of the roof that the rows run along"),
            entry("mountings.name", "mountings compared"),
            entry("pipes.heat_loss", "heat loss of the pipes"),
            entry("pipes.pump_power", "power of the pump"),
            entry("pipes.roughness", "roughness of the pipe"),
            entry("pipes.fittings", "bends and valves of the pipe"),
            entry("pipes.lift", "height of the collectors above the pool's water"),
            entry("pipes.return", "what the return pipe is full of"),
            entry("pipes.banks", "return of the banks"),
            entry("pipes.wall_conductivity", "conductivity of the pipe's wall"),
            entry("pipes.insulation_conductivity", "conductivity of the pipe's insulation"),
            entry("pipes.depth", "depth of the pipe in the ground"),
            entry("panel.tube_end_losses", "ends of the tubes"),
            entry("panel.connection", "ends at which a bank is connected"),
            entry("pump.efficiency", "efficiency of the pump"),
            entry("heater.efficiency", "efficiency of the heater"),
            entry("heater.dry_efficiency", "efficiency of the boiler while nothing condenses"),
            entry("heater.rated_air", "air of the heat pump's certificate"),
            entry("heater.rated_water", "water of the heat pump's certificate"),
            entry("heater.cold_air", "colder air of the heat pump's certificate"),
            entry("heater.frost_limit", "air below which the heat pump stands"),
            entry("heater.set_point", "temperature that the heater keeps"),
            entry("money.upkeep", "upkeep of the collectors a year"),
            entry("money.interest", "real interest"),
            entry("money.price_growth", "growth of energy prices beyond that of all prices"),
            entry("money.years", "years that money is looked at over"),
            entry("money.cover_kind", "cover that the collectors are compared with"),
            entry("money.cover_years", "years that the cover lasts"),
            entry("control.on_difference", "temperature difference that starts the pump"),
            entry("control.off_difference", "temperature difference that stops the pump"),
            entry("control.limit", "temperature up to which the collectors warm"),
            entry("control.pumping", "hours in which the pump may run"),
            entry("season.first_day", "first day of the season"),
            entry("season.last_day", "last day of the season"),
            entry("season.open", "opening hours"),
            entry("season.days_standing", "days that the pool stands filled before opening"),
            entry("season.comfort", "temperature that people find warm enough"),
            entry("season.comfort_maximum", "temperature that people find too warm"));

    /** A key behind its section and a point, or one whose name no word of the language is. */
    private static final Pattern NAMED = Pattern.compile("\\b([a-z]+)\\.([a-z_]{3,})\\b|\\b([a-z]+(?:_[a-z]+)+)\\b");

    private static final Pattern BRACKETS = Pattern.compile("\\[{1,2}([a-z. ]+)]{1,2}");

    private KeyWords() {}

    /** A message with what keys are called in the place of their names. */
    static String told(String section, String message) {
        return NAMED.matcher(BRACKETS.matcher(message).replaceAll("$1")).replaceAll(named -> {
            boolean bare = named.group(3) != null;
            String kind = bare ? section : named.group(1);
            String key = bare ? named.group(3) : named.group(2);
            String without = named.group().replace('_', ' ');
            return Matcher.quoteReplacement(knows(kind, key) ? "the " + of(kind, key) : without);
        });
    }

    /**
     * The words for a key, else its name without underscores.
     *
     * @param section the section as findings call it; where there are several of a kind, numbered: {@code collectors 2}
     */
    static String of(String section, String key) {
        String kind = section.replaceAll(" [0-9]+", "");
        return WORDS.getOrDefault(
                kind + "." + key, (kind + " " + key).replace('.', ' ').replace('_', ' '));
    }

    /** Whether there are words for a key. */
    static boolean knows(String section, String key) {
        return WORDS.containsKey(section + "." + key);
    }
}
