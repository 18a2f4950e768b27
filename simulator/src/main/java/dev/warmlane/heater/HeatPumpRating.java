package dev.warmlane.heater;

import dev.warmlane.physics.Constants;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a heat pump does at any air and water temperature, from one or two certified points.
 *
 * <p>COP = &eta;·T<sub>hot</sub>/(T<sub>hot</sub> &minus; T<sub>cold</sub>), a share &eta; of what Carnot allows between the
 * temperatures at which the refrigerant condenses and evaporates. The first lies above the water, the second below the air,
 * each by half of a difference A (own choice of the halves: another split moves the share and hardly the COP): with air and
 * water equally warm the pump still works against A, where water and air themselves would promise any COP. Two points give
 * both &eta; and A; one gives &eta;, with A taken as {@value #USUAL_APPROACH_K} K.
 *
 * <p>Between and below its points the pump follows that curve. It is never taken to work against less than at its warmest
 * point, so that its COP does not rise above the certified one. Heat at full load runs straight with the air through two
 * points, level above the warmer and not below 0; from one point alone it is the same in any air.
 */
public final class HeatPumpRating {

    /** Condensing above evaporating with air and water equally warm, K, where one point alone is known; common practice, no source. */
    public static final double USUAL_APPROACH_K = 20;

    private static final double LEAST_APPROACH_K = 3;
    private static final double MOST_APPROACH_K = 80;
    private static final int HALVINGS = 60;

    private final RatedPoint warm;
    private final @Nullable RatedPoint cold;
    private final double approachK;
    private final double carnotShare;
    private final double leastLiftK;

    private HeatPumpRating(RatedPoint warm, @Nullable RatedPoint cold, double approachK) {
        this.warm = warm;
        this.cold = cold;
        this.approachK = approachK;
        this.carnotShare = carnotShare(warm, approachK);
        this.leastLiftK = warm.waterC() - warm.airC() + approachK;
        if (!(leastLiftK > 0) || carnotShare >= 1) {
            throw new IllegalArgumentException("a COP of " + warm.cop() + " in air of " + warm.airC() + " and water of "
                    + warm.waterC() + " degC is no less than nature allows; check the point");
        }
    }

    /** Of one certified point. */
    public static HeatPumpRating of(RatedPoint point) {
        return new HeatPumpRating(point, null, USUAL_APPROACH_K);
    }

    /**
     * Of two certified points.
     *
     * @param one a point
     * @param other one at another air temperature
     * @throws IllegalArgumentException if no curve goes through both
     */
    public static HeatPumpRating of(RatedPoint one, RatedPoint other) {
        RatedPoint warm = one.airC() >= other.airC() ? one : other;
        RatedPoint cold = one.airC() >= other.airC() ? other : one;
        if (!(warm.airC() > cold.airC())
                || excess(warm, cold, LEAST_APPROACH_K) > 0
                || excess(warm, cold, MOST_APPROACH_K) < 0) {
            throw new IllegalArgumentException("a COP of " + warm.cop() + " in air of " + warm.airC() + " and water of "
                    + warm.waterC() + " degC and one of " + cold.cop() + " in air of " + cold.airC()
                    + " and water of " + cold.waterC() + " degC cannot be of one heat pump; allowed: two air"
                    + " temperatures, of which the colder has the lower COP in proportion");
        }
        double low = LEAST_APPROACH_K;
        double high = MOST_APPROACH_K;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (excess(warm, cold, middle) > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return new HeatPumpRating(warm, cold, (low + high) / 2);
    }

    /** By how much the share of the warm point is above that of the cold one; rises with the approach. */
    private static double excess(RatedPoint warm, RatedPoint cold, double approachK) {
        return carnotShare(warm, approachK) - carnotShare(cold, approachK);
    }

    private static double carnotShare(RatedPoint point, double approachK) {
        return point.cop() * (point.waterC() - point.airC() + approachK) / hotK(point.waterC(), approachK);
    }

    private static double hotK(double waterC, double approachK) {
        return waterC + Constants.KELVIN + approachK / 2;
    }

    /** The certified point, the warmer of two. */
    public RatedPoint warm() {
        return warm;
    }

    /** The colder of two certified points; nothing where there is one. */
    public Optional<RatedPoint> cold() {
        return Optional.ofNullable(cold);
    }

    /** The share of Carnot's coefficient that it reaches, 0 to 1. */
    public double carnotShare() {
        return carnotShare;
    }

    /** By how much it condenses above the water and evaporates below the air, both together, K. */
    public double approachK() {
        return approachK;
    }

    /**
     * Coefficient of performance.
     *
     * @param airC outdoor air, °C
     * @param waterC water that comes from the pool, °C
     */
    public double cop(double airC, double waterC) {
        return carnotShare * hotK(waterC, approachK) / Math.max(leastLiftK, waterC - airC + approachK);
    }

    /**
     * Heat to the water at full load, kW.
     *
     * @param airC outdoor air, °C
     */
    public double capacityKw(double airC) {
        if (cold == null || airC >= warm.airC()) {
            return warm.capacityKw();
        }
        double rise = (warm.capacityKw() - cold.capacityKw()) / (warm.airC() - cold.airC());
        return Math.max(0, warm.capacityKw() + rise * (airC - warm.airC()));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof HeatPumpRating rating && warm.equals(rating.warm) && Objects.equals(cold, rating.cold);
    }

    @Override
    public int hashCode() {
        return Objects.hash(warm, cold);
    }

    @Override
    public String toString() {
        return cold == null ? warm.toString() : warm + " and " + cold;
    }
}
