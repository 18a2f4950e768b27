package dev.warmlane.weather;

import dev.warmlane.units.Checks;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How much each index of a day counts when a typical month is chosen.
 *
 * @param weights of the indices that count, each 0 to 1; their sum is 1
 */
public record TypicalWeights(Map<DailyIndex, Double> weights) {

    private static final double ROUNDING = 1e-9;

    /**
     * Those of the United States' TMY2 and TMY3: half for the sun, in equal parts global and direct, a fifth each for air and
     * dew point, whose means count twice, a tenth for the wind (Marion and Urban 1995, User's manual for TMY2s, NREL/TP-463-7668,
     * appendix A; Wilcox and Marion 2008, NREL/TP-581-43156; from memory).
     */
    public static final TypicalWeights TMY3 = new TypicalWeights(Map.of(
            DailyIndex.AIR_HIGHEST, 0.05,
            DailyIndex.AIR_LOWEST, 0.05,
            DailyIndex.AIR_MEAN, 0.10,
            DailyIndex.DEW_HIGHEST, 0.05,
            DailyIndex.DEW_LOWEST, 0.05,
            DailyIndex.DEW_MEAN, 0.10,
            DailyIndex.WIND_HIGHEST, 0.05,
            DailyIndex.WIND_MEAN, 0.05,
            DailyIndex.GLOBAL, 0.25,
            DailyIndex.DIRECT, 0.25));

    /** Checks each weight and their sum. */
    public TypicalWeights {
        double sum = 0;
        for (double weight : weights.values()) {
            sum += Checks.within("weight of an index", weight, 0, 1, "");
        }
        Checks.within("sum of the weights of all indices", sum, 1 - ROUNDING, 1 + ROUNDING, "");
        weights = Collections.unmodifiableMap(new EnumMap<>(weights));
    }
}
