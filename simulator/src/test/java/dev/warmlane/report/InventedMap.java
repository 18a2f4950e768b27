package dev.warmlane.report;

import dev.warmlane.collector.Mounting;
import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.BreakEvenMap.Day;
import dev.warmlane.study.LeadMap;
import dev.warmlane.study.LeadMap.Line;
import dev.warmlane.study.LeadMap.Place;
import dev.warmlane.study.MountingDuel.Heats;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.TracedPair;
import dev.warmlane.study.TurningVariable;
import dev.warmlane.study.TurningVariable.Extent;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A map of round numbers: each kelvin above the line, at 22 °C in any wind, is a lead of 1 % for flat. */
public final class InventedMap {

    private static final TracedPair PAIR = new TracedPair(
            new MountingOption.Flat("flat", Mounting.FlatOnRoof.USUAL), MountingOption.racks("racks", 30, 180));

    private InventedMap() {}

    /** With its line, or with flat ahead everywhere. */
    public static BreakEvenMap of(boolean turning) {
        double shift = turning ? 0 : 20;
        List<Place> scanned = new ArrayList<>();
        for (double wind = 0; wind <= 6; wind++) {
            for (double water = 10; water <= 40; water += 3) {
                scanned.add(place(wind, water, shift));
            }
        }
        LeadMap map = new LeadMap(
                PAIR,
                new Extent(0, 6),
                TurningVariable.POOL_TEMPERATURE.extent(),
                turning ? level(22) : List.of(),
                turning ? level(24) : List.of(),
                turning ? level(20) : List.of(),
                scanned,
                place(3, 25, shift),
                List.of(),
                turning ? List.of(22.0) : List.of());
        return new BreakEvenMap(
                map,
                3,
                turning ? new Heats(300, 330) : new Heats(400, 300),
                new BreakEvenMap.Reach(turning ? OptionalDouble.of(23) : OptionalDouble.empty(), turning ? 30 : 40),
                List.of(
                        new Day("06-01", 600, place(2, 26, shift)),
                        new Day("06-02", 200, place(4, 21, shift)),
                        new Day("06-03", 100, place(1, 17, shift)),
                        new Day("06-04", 100, new Place(7, 25, new Heats(0, 0)))));
    }

    private static List<Line> level(double water) {
        return List.of(new Line(List.of(place(0, water, 0), place(6, water, 0))));
    }

    private static Place place(double windMs, double waterC, double shift) {
        double lead = (waterC + shift - 22) / 100;
        return new Place(
                windMs, waterC, lead > 0 ? new Heats(100 * (1 + lead), 100) : new Heats(100, 100 * (1 - lead)));
    }
}
