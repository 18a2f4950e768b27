package dev.warmlane.report;

import dev.warmlane.collector.Mounting;
import dev.warmlane.study.LeadMap;
import dev.warmlane.study.LeadMap.Line;
import dev.warmlane.study.LeadMap.Place;
import dev.warmlane.study.MountingDuel.Heats;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.TracedPair;
import dev.warmlane.study.TurningVariable;
import java.util.ArrayList;
import java.util.List;

/** A map of round numbers: flat gives 100, racks 100 where albedo is half, and a per cent more for each of albedo. */
public final class InventedRoofMap {

    private static final TracedPair PAIR = new TracedPair(
            new MountingOption.Flat("flat", Mounting.FlatOnRoof.USUAL), MountingOption.racks("racks", 30, 180));

    private InventedRoofMap() {}

    /** With its line, or with flat ahead everywhere. */
    public static LeadMap of(boolean turning) {
        double less = turning ? 0 : 50;
        List<Place> scanned = new ArrayList<>();
        for (double albedo : new double[] {0.05, 0.25, 0.45, 0.65, 0.85}) {
            for (double wind : new double[] {0.3, 0.6, 0.9, 1.2}) {
                scanned.add(place(albedo, wind, less));
            }
        }
        return new LeadMap(
                PAIR,
                TurningVariable.ROOF_ALBEDO.extent(),
                TurningVariable.INNER_WIND.extent(),
                turning ? upright(0.5) : List.of(),
                turning ? upright(0.48) : List.of(),
                turning ? upright(0.52) : List.of(),
                scanned,
                place(0.2, 1, less),
                turning ? List.of(0.5) : List.of(),
                List.of());
    }

    private static List<Line> upright(double albedo) {
        return List.of(new Line(List.of(place(albedo, 0.3, 0), place(albedo, 1.2, 0))));
    }

    private static Place place(double albedo, double wind, double less) {
        return new Place(albedo, wind, new Heats(100, 100 + 100 * (albedo - 0.5) - less));
    }
}
