package dev.warmlane.study;

import java.util.List;
import java.util.function.Function;

/**
 * Where the ranking of two mountings with the same area turns as one thing changes and everything else stays.
 *
 * @param variable what changes
 * @param from low end of the range looked at
 * @param to high end of the range looked at
 * @param now where the installation is; for the pool the season's mean with the flat array
 * @param outcome what was found
 */
public record TurningPoint(TurningVariable variable, double from, double to, double now, Outcome outcome) {

    /** Either the ranking turns or it does not. */
    public sealed interface Outcome {

        /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
        <T> T match(Function<Crossings, T> turns, Function<NoneInRange, T> none);
    }

    /**
     * It turns, once or several times.
     *
     * @param crossings where, from low to high
     */
    public record Crossings(List<Crossing> crossings) implements Outcome {

        /** Keeps its own copy of the list. */
        public Crossings {
            crossings = List.copyOf(crossings);
        }

        @Override
        public <T> T match(Function<Crossings, T> turns, Function<NoneInRange, T> none) {
            return turns.apply(this);
        }
    }

    /**
     * Both mountings give the same heat here.
     *
     * @param value where
     * @param heatKwhM2 the heat of both, kWh per m² a season
     * @param aheadBelow the mounting that gives more below it
     * @param aheadAbove the mounting that gives more above it
     */
    public record Crossing(double value, double heatKwhM2, String aheadBelow, String aheadAbove) {}

    /**
     * One is ahead throughout the range, by the scan.
     *
     * @param ahead the mounting that gives more
     * @param smallestMarginKwhM2 by how much at least, kWh per m² a season
     * @param at where that is
     */
    public record NoneInRange(String ahead, double smallestMarginKwhM2, double at) implements Outcome {
        @Override
        public <T> T match(Function<Crossings, T> turns, Function<NoneInRange, T> none) {
            return none.apply(this);
        }
    }
}
