package dev.warmlane.report;

import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.LeadMap;
import dev.warmlane.study.LeadMap.Side;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How near the season lies to where the ranking of two mountings turns, in words. */
final class BreakEvenWords {

    private final Numbers numbers;
    private final BreakEvenMap season;
    private final LeadMap map;
    private final LeadMapWords words;

    BreakEvenWords(Numbers numbers, BreakEvenMap season) {
        this.numbers = numbers;
        this.season = season;
        this.map = season.map();
        this.words = new LeadMapWords(numbers, map);
    }

    /** The conclusion. */
    String conclusion() {
        return place() + " " + water() + " " + wind() + " " + shares() + simulated();
    }

    /** What is compared. */
    static String compared() {
        return "At each place of the map the same area of both is given the whole season's sun, sky and air, its wind made"
                + " stronger or weaker in every hour alike to the mean of the place, and water held at the temperature of the"
                + " place, whatever that takes: the map knows neither heater nor limit, which are drawn in. Means of wind and water, of the season and of its days, are weighted"
                + " by the heat that the flat array gives.";
    }

    private String place() {
        double lead = map.here().heats().lead();
        return "The season, " + numbers.show(Measure.SPEED, map.here().x())
                + " of wind along the roof and water of "
                + numbers.show(Measure.TEMPERATURE, map.here().y()) + ", lies where " + words.leads(lead) + ".";
    }

    private String water() {
        double now = map.here().y();
        return LeadMapWords.nearest(map.evenY(), now)
                .map(even ->
                        "With its wind both would give the same to water of " + numbers.show(Measure.TEMPERATURE, even)
                                + ", " + numbers.degreesApart(even, now)
                                + (even < now ? " colder" : " warmer") + beyond(even) + ".")
                .orElse("With its wind no water of "
                        + numbers.range(
                                Measure.TEMPERATURE, map.y().from(), map.y().to())
                        + " turns the ranking.");
    }

    /** Water that heater and limit keep the pool from; empty where it may be that warm. */
    private String beyond(double waterC) {
        OptionalDouble setPoint = season.reach().setPointC();
        if (waterC > season.reach().limitC()) {
            return ", above the "
                    + numbers.show(Measure.TEMPERATURE, season.reach().limitC()) + " at which its collectors stop";
        }
        return setPoint.isPresent() && waterC < setPoint.getAsDouble()
                ? ", below the " + numbers.show(Measure.TEMPERATURE, setPoint.getAsDouble()) + " that its heater keeps"
                : "";
    }

    private String wind() {
        double now = map.here().x();
        return LeadMapWords.nearest(map.evenX(), now)
                .map(even -> "With its water both would give the same in a wind of " + numbers.show(Measure.SPEED, even)
                        + ", " + numbers.show(Measure.SPEED, Math.abs(even - now)) + (even < now ? " less." : " more."))
                .orElse("With its water no wind up to "
                        + numbers.show(Measure.SPEED, map.x().to()) + " along the roof turns it.");
    }

    private String shares() {
        List<String> parts = new ArrayList<>();
        parts.add(share(Side.FLAT) + " came on days that lie where " + words.flat() + " leads");
        parts.add(share(Side.RACKS) + " where " + words.racks() + " leads");
        parts.add(share(Side.NEITHER) + " where none does");
        if (season.shareOfHeat(Side.OFF_THE_MAP) > 0) {
            parts.add(share(Side.OFF_THE_MAP) + " in wind or water beyond the map");
        }
        return "Of the heat of " + words.flat() + " " + String.join(", ", parts) + ".";
    }

    /** The map leaves some things out: where that turns the ranking it is said. */
    private String simulated() {
        double mapped = side(map.here().heats().lead());
        double lead = season.simulated().lead();
        return side(lead) == mapped
                ? ""
                : " The season as simulated comes out otherwise: " + words.leads(lead)
                        + ". The map leaves out the pool's limit and how its temperature goes up and down: go by the simulated"
                        + " season.";
    }

    private static double side(double lead) {
        return Math.abs(lead) < LeadMap.NO_LEAD_BELOW ? 0 : Math.signum(lead);
    }

    private String share(Side side) {
        return numbers.show(Measure.SHARE, season.shareOfHeat(side));
    }
}
