package dev.warmlane.report;

import dev.warmlane.study.LeadMap;
import dev.warmlane.study.LeadMap.Place;
import dev.warmlane.study.TurningVariable.Extent;
import dev.warmlane.units.Measure;
import java.util.List;

/** How near the roof as described lies to where the ranking of two mountings turns, in words. */
final class RoofMapWords {

    private final Numbers numbers;
    private final LeadMap map;

    RoofMapWords(Numbers numbers, LeadMap map) {
        this.numbers = numbers;
        this.map = map;
    }

    /** The conclusion. */
    String conclusion() {
        Place here = map.here();
        return "On the roof as described, which reflects " + share(here.x())
                + " of the sun and whose inner rows have "
                + share(here.y()) + " of the wind at the first, "
                + new LeadMapWords(numbers, map).leads(here.heats().lead()) + ". "
                + turn("With its roof", "wind at the inner rows", map.evenY(), here.y(), map.y())
                + " "
                + turn("With its wind", "share of the sun reflected", map.evenX(), here.x(), map.x());
    }

    /** What is compared. */
    static String compared() {
        return "At each place of this map a whole season is simulated with the same area of both. Neither says anything of flat"
                + " mats: what changes is the racks. A season is one point here, because a roof is the same all through it; both"
                + " numbers are seldom known, so that the distance to the line tells how far they may be wrong.";
    }

    private String turn(String with, String what, List<Double> even, double now, Extent range) {
        return LeadMapWords.nearest(even, now)
                .map(found -> with + " both would give the same at a " + what + " of " + share(found) + ", "
                        + numbers.show(100 * Math.abs(found - now), 0) + " points " + (found < now ? "less." : "more."))
                .orElse(with + " no " + what + " from " + share(range.from()) + " to " + share(range.to())
                        + " turns it.");
    }

    private String share(double share) {
        return numbers.show(Measure.SHARE, share);
    }
}
