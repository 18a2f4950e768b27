package dev.warmlane.season;

import dev.warmlane.pool.Flow;
import dev.warmlane.pool.GroundStore;
import dev.warmlane.pool.PoolFlows;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.units.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The stores of a {@link GroundStore} from hour to hour. Over an hour each moves towards the mean of the water, in closed
 * form, so that what the water loses to them within the hour is straight in its temperature, and all of it arrives in them.
 * Mutable, for one thread; without a store in the ground it has none, and does nothing.
 */
final class GroundHeat {

    /** By what part of the difference each store moves in an hour. */
    private final double[] moves;
    /** What passes into each on the mean of an hour, for a kelvin at its beginning, W per m² of water. */
    private final double[] passes;

    private final double passing;
    private final double[] storesC;

    // of the hour that runs
    private double back;
    private double kelvinSeconds;
    private double seconds;

    GroundHeat(PoolForcing pool, Optional<GroundStore> ground) {
        double[] rates = ground.map(GroundStore::rates).orElse(new double[0]);
        double[] conductances = ground.map(GroundStore::conductancesWm2K).orElse(new double[0]);
        moves = Arrays.stream(rates)
                .map(rate -> -Math.expm1(-rate * Units.HOUR))
                .toArray();
        passes = IntStream.range(0, rates.length)
                .mapToDouble(k -> pool.groundFace() * conductances[k] * moves[k] / (rates[k] * Units.HOUR))
                .toArray();
        passing = Arrays.stream(passes).sum();
        storesC = new double[rates.length];
    }

    /** All as warm as the water. */
    void settle(double waterC) {
        Arrays.fill(storesC, waterC);
    }

    /** Takes up a state; an empty one is all as warm as the water. */
    void resume(List<Double> stores, double waterC) {
        settle(waterC);
        for (int k = 0; k < stores.size(); k++) {
            storesC[k] = stores.get(k);
        }
    }

    /** Temperatures of the stores, °C. */
    List<Double> storesC() {
        return Arrays.stream(storesC).boxed().toList();
    }

    void startHour() {
        back = 0;
        for (int k = 0; k < passes.length; k++) {
            back += passes[k] * storesC[k];
        }
        kelvinSeconds = 0;
        seconds = 0;
    }

    /** Adds what flows at a water temperature. */
    void addTo(PoolFlows flows, double waterC) {
        if (passing > 0) {
            flows.add(Flow.GROUND, back - passing * waterC, -passing);
        }
    }

    /** Enters some seconds at a water temperature. */
    void took(double waterC, double lasting) {
        kelvinSeconds += waterC * lasting;
        seconds += lasting;
    }

    void endHour() {
        for (int k = 0; k < storesC.length; k++) {
            storesC[k] += moves[k] * (kelvinSeconds - seconds * storesC[k]) / Units.HOUR;
        }
    }
}
