package dev.warmlane.study;

import dev.warmlane.study.MountingDuel.Heats;
import dev.warmlane.study.TurningVariable.Extent;
import java.util.List;
import java.util.function.DoubleBinaryOperator;

/**
 * Which of two mountings leads over any two variables, and how near the line on which both give the same lies to where
 * they are.
 *
 * @param pair the two mountings
 * @param x the range of the map along the one variable
 * @param y that along the other
 * @param even where both give the same, in branches; none where one is ahead everywhere
 * @param flatLeads where the flat array leads by {@link #NO_LEAD_BELOW}
 * @param racksLead where the racks lead by as much
 * @param scanned places all over the map
 * @param here where they are
 * @param evenX with the y of here, where along x both give the same
 * @param evenY with the x of here, where along y they do
 */
public record LeadMap(
        TracedPair pair,
        Extent x,
        Extent y,
        List<Line> even,
        List<Line> flatLeads,
        List<Line> racksLead,
        List<Place> scanned,
        Place here,
        List<Double> evenX,
        List<Double> evenY) {

    /**
     * Less than this is no lead: what is assumed of roof and wind moves mountings against each other by more (own choice,
     * after docs/mountings.md).
     */
    public static final double NO_LEAD_BELOW = 0.02;

    /** Keeps its own copies. */
    public LeadMap {
        even = List.copyOf(even);
        flatLeads = List.copyOf(flatLeads);
        racksLead = List.copyOf(racksLead);
        scanned = List.copyOf(scanned);
        evenX = List.copyOf(evenX);
        evenY = List.copyOf(evenY);
    }

    /**
     * A place of the map.
     *
     * @param x the one variable
     * @param y the other
     * @param heats season's heat of both there
     */
    public record Place(double x, double y, Heats heats) {}

    /**
     * A branch of a line.
     *
     * @param places places on it, in their order
     */
    public record Line(List<Place> places) {

        /** Keeps its own copy. */
        public Line {
            places = List.copyOf(places);
        }
    }

    /** On which side of the line something lies. */
    public enum Side {
        /** The flat array leads. */
        FLAT,
        /** The racks lead. */
        RACKS,
        /** Neither does, by less than {@link #NO_LEAD_BELOW}. */
        NEITHER,
        /** Beyond what the map shows. */
        OFF_THE_MAP
    }

    /** On which side a place lies. */
    public Side side(Place place) {
        if (!x.holds(place.x) || !y.holds(place.y)) {
            return Side.OFF_THE_MAP;
        }
        double lead = place.heats.lead();
        return lead >= NO_LEAD_BELOW ? Side.FLAT : lead <= -NO_LEAD_BELOW ? Side.RACKS : Side.NEITHER;
    }

    /** What both give over the two variables. */
    @FunctionalInterface
    interface Field {

        /** At a place. */
        Heats at(double x, double y);

        /** By how much the flat array is ahead of a lead by a share, below 0 of the racks; 0 where neither gives anything. */
        default DoubleBinaryOperator beyond(double lead) {
            return (x, y) -> {
                Heats heats = at(x, y);
                return lead < 0 ? (1 - lead) * heats.flat() - heats.racks() : heats.flat() - (1 + lead) * heats.racks();
            };
        }

        /** Places on lines. */
        default List<Line> lines(List<List<LineTracer.Vertex>> branches) {
            return branches.stream()
                    .map(branch -> new Line(branch.stream()
                            .map(vertex -> place(vertex.x(), vertex.y()))
                            .toList()))
                    .toList();
        }

        /** A place. */
        default Place place(double x, double y) {
            return new Place(x, y, at(x, y));
        }
    }
}
