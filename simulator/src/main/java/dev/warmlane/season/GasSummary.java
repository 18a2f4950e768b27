package dev.warmlane.season;

import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import java.util.Optional;
import java.util.function.Function;

/**
 * The gas that the collectors' heat stands for, or whatever else the heater is fed with: oil, electricity, heat of a network.
 * All of it in kWh, a fuel by its higher heating value. {@link Fuel#word} says what it is.
 */
public sealed interface GasSummary {

    /** The gas, or what is in its place. */
    Fuel fuel();

    /** The gas that the collectors' heat stands for, kWh. */
    double replacedKwh();

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<Displaced, T> displaced, Function<WouldHaveBurned, T> wouldHaveBurned);

    /** The gas burned with collectors and without; nothing for a pool without a heater. */
    default Optional<Displaced> displaced() {
        return match(Optional::of, would -> Optional.empty());
    }

    /** The same in the units the fuel is sold in. */
    default double replacedUnits() {
        return fuel().unitsForKwh(replacedKwh());
    }

    /** Carbon dioxide of burning {@link #replacedKwh}, kg. */
    default double replacedCo2Kg() {
        return fuel().co2KgForKwh(replacedKwh());
    }

    /**
     * A pool with a heater: the same pool was simulated with and without collectors.
     *
     * @param fuel what the heater is fed with
     * @param burnedKwh what was bought for it with the collectors, kWh
     * @param burnedWithoutKwh what was bought for it without collectors, kWh
     */
    record Displaced(Fuel fuel, double burnedKwh, double burnedWithoutKwh) implements GasSummary {

        /** Displaced: what was bought for the pool without collectors and not for the pool with them. */
        @Override
        public double replacedKwh() {
            return burnedWithoutKwh - burnedKwh;
        }

        /** Carbon dioxide of what was bought with the collectors, kg. */
        public double burnedCo2Kg() {
            return fuel.co2KgForKwh(burnedKwh);
        }

        @Override
        public <T> T match(Function<Displaced, T> displaced, Function<WouldHaveBurned, T> wouldHaveBurned) {
            return displaced.apply(this);
        }
    }

    /**
     * A pool without a heater: the gas a heater would have burned to give the same solar heat. No gas was displaced.
     *
     * @param fuel what it would have burned
     * @param efficiency of that heater, 0 to 1
     * @param replacedKwh the gas, kWh
     */
    record WouldHaveBurned(Fuel fuel, double efficiency, double replacedKwh) implements GasSummary {
        @Override
        public <T> T match(Function<Displaced, T> displaced, Function<WouldHaveBurned, T> wouldHaveBurned) {
            return wouldHaveBurned.apply(this);
        }
    }

    /** Compares the heat of an installation's pool with that of the same pool without collectors. */
    static GasSummary of(Installation installation, PoolSummary with, PoolSummary without) {
        if (installation.heater().isEmpty()) {
            double efficiency = Boiler.USUAL_EFFICIENCY;
            return new WouldHaveBurned(
                    Fuel.NATURAL_GAS, efficiency, with.balance().deliveredKwh() / efficiency);
        }
        return new Displaced(installation.heater().get().fuel(), with.boughtKwh(), without.boughtKwh());
    }
}
