package dev.warmlane.report;

import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.BreakEvenMap.Side;
import dev.warmlane.study.TurningVariable;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** How near the season lies to where the ranking of two mountings turns, in words. */
final class BreakEvenWords {

    private final Numbers numbers;
    private final BreakEvenMap map;

    BreakEvenWords(Numbers numbers, BreakEvenMap map) {
        this.numbers = numbers;
        this.map = map;
    }

    /** The conclusion. */
    String conclusion() {
        return place() + " " + water() + " " + wind() + " " + shares() + simulated();
    }

    /** What is compared. */
    static String compared() {
        return "At each place of the map the same area of both is given the whole season's sun, sky and air, its wind made"
                + " stronger or weaker in every hour alike to the mean of the place, and water held at the temperature of the"
                + " place, taken warm without any limit. Means of wind and water, of the season and of its days, are weighted"
                + " by the heat that the flat array gives.";
    }

    private String place() {
        double lead = map.season().heats().lead();
        return "The season, " + numbers.show(Measure.SPEED, map.season().windMs())
                + " of wind along the roof and water of "
                + numbers.show(Measure.TEMPERATURE, map.season().waterC()) + ", lies where " + leads(lead) + ".";
    }

    /** Who leads, by how much. */
    private String leads(double lead) {
        if (Math.abs(lead) < BreakEvenMap.NO_LEAD_BELOW) {
            return "none leads: " + flat() + " and " + racks() + " differ by less than "
                    + numbers.show(Measure.SHARE, BreakEvenMap.NO_LEAD_BELOW);
        }
        return (lead > 0 ? flat() : racks()) + " leads by " + numbers.show(Measure.SHARE, Math.abs(lead));
    }

    private String water() {
        double now = map.season().waterC();
        return nearest(map.evenWaterC(), even -> Math.abs(even - now)).stream()
                .map(even ->
                        "With its wind both would give the same to water of " + numbers.show(Measure.TEMPERATURE, even)
                                + ", " + numbers.degreesApart(even, now)
                                + (even < now ? " colder." : " warmer."))
                .findFirst()
                .orElse("With its wind no water of "
                        + numbers.range(
                                Measure.TEMPERATURE,
                                TurningVariable.POOL_TEMPERATURE.from(),
                                TurningVariable.POOL_TEMPERATURE.to())
                        + " turns the ranking.");
    }

    private String wind() {
        double now = map.season().windMs();
        return nearest(map.evenWindMs(), even -> Math.abs(even - now)).stream()
                .map(even -> "With its water both would give the same in a wind of " + numbers.show(Measure.SPEED, even)
                        + ", " + numbers.show(Measure.SPEED, Math.abs(even - now)) + (even < now ? " less." : " more."))
                .findFirst()
                .orElse("With its water no wind up to " + numbers.show(Measure.SPEED, map.windMs())
                        + " along the roof turns it.");
    }

    private static List<Double> nearest(List<Double> found, ToDoubleFunction<Double> away) {
        return found.stream().sorted(Comparator.comparingDouble(away)).toList();
    }

    private String shares() {
        List<String> parts = new ArrayList<>();
        parts.add(share(Side.FLAT) + " came on days that lie where " + flat() + " leads");
        parts.add(share(Side.RACKS) + " where " + racks() + " leads");
        parts.add(share(Side.NEITHER) + " where none does");
        if (map.shareOfHeat(Side.OFF_THE_MAP) > 0) {
            parts.add(share(Side.OFF_THE_MAP) + " in wind or water beyond the map");
        }
        return "Of the heat of " + flat() + " " + String.join(", ", parts) + ".";
    }

    /** The map leaves some things out: where that turns the ranking it is said. */
    private String simulated() {
        double mapped = side(map.season().heats().lead());
        double lead = map.simulated().lead();
        return side(lead) == mapped
                ? ""
                : " The season as simulated comes out otherwise: " + leads(lead)
                        + ". The map leaves out the pool's limit and how its temperature goes up and down: go by the simulated"
                        + " season.";
    }

    private static double side(double lead) {
        return Math.abs(lead) < BreakEvenMap.NO_LEAD_BELOW ? 0 : Math.signum(lead);
    }

    private String share(Side side) {
        return numbers.show(Measure.SHARE, map.shareOfHeat(side));
    }

    private String flat() {
        return "“" + map.pair().flat().name() + "”";
    }

    private String racks() {
        return "“" + map.pair().racks().name() + "”";
    }
}
