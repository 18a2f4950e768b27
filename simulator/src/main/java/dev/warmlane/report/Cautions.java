package dev.warmlane.report;

import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.WorkingRange;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to be careful of. */
final class Cautions {

    /** Highest temperature for bathing water, °C: US CPSC; WHO 2006. */
    private static final double BATHING_LIMIT_C = 40;

    private static final String STITCHED = "A typical year is stitched together from months that were neither unusually"
            + " warm nor unusually cold. ";

    /** What weather a report shows seasons of. */
    enum Weather {
        TYPICAL(STITCHED + "It does not show how much warmer or colder real years are.", "this year"),
        TYPICAL_BESIDE_REAL(
                STITCHED + "How much warmer or colder real years were stands beside it; years to come may be"
                        + " warmer or colder than all of them.",
                "this year"),
        REAL(
                "Real years are of the past: years to come may be warmer or colder than all of them.",
                "in the typical year, and more in a colder one");

        private final String caution;

        /** The year whose hours of frost are counted. */
        private final String counted;

        Weather(String caution, String counted) {
            this.caution = caution;
            this.counted = counted;
        }
    }

    private Cautions() {}

    /**
     * The cautions.
     *
     * @param numbers the units
     * @param weather what weather they are in
     * @param shown the seasons that the report shows: the warmest and the coldest of them count
     * @param range what the collectors must stand; nothing where there are none
     */
    static List<String> of(Numbers numbers, Weather weather, List<PeriodSummary> shown, Optional<WorkingRange> range) {
        List<String> points = new ArrayList<>();
        points.add(weather.caution);
        points.add(bathing(
                numbers,
                shown.stream().mapToDouble(s -> s.water().highestC()).max().orElseThrow()));
        if (range.isPresent()) {
            points.add(
                    "Scalding: water that has stood in a collector in the sun can scald. Keep it from people when the"
                            + " pump starts.");
        }
        if (shown.stream().anyMatch(Cautions::freezes)) {
            points.add("Ice: the pool freezes over. Its water is held at " + numbers.show(Measure.TEMPERATURE, 0)
                    + " until the ice has melted; snow on it is not modelled. Ice can break basin, pipes and pump.");
        }
        if (range.isPresent()) {
            points.add((range.get().frostHoursInUse() > 0
                            ? "Frost may come while the collectors are in use: "
                                    + numbers.show(range.get().frostHoursInUse(), 0)
                                    + " hours " + weather.counted
                                    + ". Rigid pipe must drain itself or stand it, and must be drained"
                                    + " after closing."
                            : "Frost: rigid pipe must be drained before the first frost.")
                    + " A collector under a clear sky freezes when the air does not.");
            points.add("The roof must carry the collectors full of water, and the collectors must be held against the"
                    + " wind's uplift.");
        }
        points.add((range.isPresent() ? "Roof load, wind uplift, gas" : "Gas")
                + " and electrical work: the local code and a licensed professional decide.");
        return points;
    }

    static String bathing(Numbers numbers, double highestC) {
        String limit = numbers.show(Measure.TEMPERATURE, BATHING_LIMIT_C);
        String reached = numbers.show(Measure.TEMPERATURE, highestC);
        double excessK = highestC - BATHING_LIMIT_C;
        if (numbers.rounded(Measure.TEMPERATURE_DIFFERENCE, excessK) > 0) {
            return "TOO HOT TO BATHE: this forecast reaches " + reached
                    + " and EXCEEDS the upper limit for bathing water, " + limit + ", by "
                    + numbers.degrees(excessK)
                    + ". People must not bathe in water that warm.";
        }
        return "Bathing water must not be warmer than " + limit + "; this forecast reaches " + reached + ".";
    }

    private static boolean freezes(PeriodSummary season) {
        return Math.min(season.water().lowestC(), season.waterWithout().lowestC()) <= 0;
    }
}
