package dev.warmlane.collector;

import java.util.ArrayList;
import java.util.List;

/**
 * Tells where the light on an absorber goes, hour by hour, solved directly: for looking into a season afterwards. Keeps
 * state between calls, so use one for a thread.
 */
public final class PlateAccount {

    private final List<PlateBalance> plates = new ArrayList<>();
    private final List<Double> weights = new ArrayList<>();

    PlateAccount(CollectorSurroundings around, Absorber absorber, double flowKgSM2, List<CollectorForcing.Part> parts) {
        for (CollectorForcing.Part part : parts) {
            plates.add(new PlateBalance(part.exposure(), absorber, around.air(), flowKgSM2));
            weights.add(part.weight());
        }
    }

    /** Finds the flows, mean over the array's rows, with water entering at a temperature. */
    public void at(int hour, double inletC, PlateFlows out) {
        out.clear();
        for (int i = 0; i < plates.size(); i++) {
            plates.get(i).addFlows(hour, inletC, weights.get(i), out);
        }
    }
}
