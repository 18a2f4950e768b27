package dev.warmlane.report;

import dev.warmlane.study.LeadMap;
import dev.warmlane.units.Measure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What every map of two mountings says of them. */
record LeadMapWords(Numbers numbers, LeadMap map) {

    /** Who leads, by how much. */
    String leads(double lead) {
        if (Math.abs(lead) < LeadMap.NO_LEAD_BELOW) {
            return "none leads: " + flat() + " and " + racks() + " differ by less than "
                    + numbers.show(Measure.SHARE, LeadMap.NO_LEAD_BELOW);
        }
        return (lead > 0 ? flat() : racks()) + " leads by " + numbers.show(Measure.SHARE, Math.abs(lead));
    }

    String flat() {
        return "“" + map.pair().flat().name() + "”";
    }

    String racks() {
        return "“" + map.pair().racks().name() + "”";
    }

    /** Of where both give the same what is nearest to where they are. */
    static Optional<Double> nearest(List<Double> even, double now) {
        return even.stream().min(Comparator.comparingDouble(found -> Math.abs(found - now)));
    }
}
