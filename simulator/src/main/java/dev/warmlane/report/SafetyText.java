package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.season.WorkingRange;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The temperatures that the system must stand, and what to be careful of. */
final class SafetyText {

    /** Highest temperature for bathing water, °C: US CPSC; WHO 2006. */
    private static final double BATHING_LIMIT_C = 40;

    private final Numbers numbers;

    private SafetyText(Numbers numbers) {
        this.numbers = numbers;
    }

    static TextSection workingRange(Numbers numbers, WorkingRange range, int openDays) {
        SafetyText text = new SafetyText(numbers);
        List<String> points = new ArrayList<>();
        points.add("Dry collector standing in the sun: up to " + text.temperature(range.highestPlateC()) + "; "
                + Numbers.show(range.hoursAbove60C(), 0) + " hours a year above "
                + text.temperature(WorkingRange.RIGID_PIPE_LIMIT_C) + ", where rigid plastic pipe softens");
        range.hottestFirstSlugC()
                .ifPresent(slug -> points.add("First water pushed out of a collector that stood in the sun: up to "
                        + text.temperature(slug) + ", as much as the collectors hold"));
        points.add("Frost: " + Numbers.show(range.frostHoursByAir(), 0) + " hours a year by the air, "
                + Numbers.show(range.frostHoursByPlate(), 0)
                + " by the lower of air and dry collector (below " + text.temperature(WorkingRange.FROST_C)
                + "), of which " + Numbers.show(range.frostHoursInSeason(), 0)
                + " in the open season. The count by the collector is an upper bound: dew and frost that settle on it in"
                + " clear calm nights would hold it warmer, and are not modelled");
        points.add(drainDown(range, openDays));
        points.add("Rigid PVC pipe moves by " + text.movement(range) + " between fixed points, from "
                + text.temperature(range.lowestPlateC()) + " to " + text.temperature(range.highestPlateC()));
        if (range.hoursOutsideTest() > 0) {
            points.add("In " + Numbers.show(range.hoursOutsideTest(), 0)
                    + " daylight hours of the year the wind lay outside the range that the collector was tested in");
        }
        return new TextSection("Working range over the whole year", TextSection.listed(points));
    }

    static TextSection cautions(Numbers numbers, SeasonSummary summary) {
        List<String> points = new ArrayList<>();
        Optional<WorkingRange> range = summary.workingRange();
        points.add(bathing(numbers, summary.season().water().highestC()));
        if (range.isPresent()) {
            points.add(
                    "Scalding: water that has stood in a collector in the sun can scald. Keep it from people when the"
                            + " pump starts.");
        }
        if (Math.min(
                        summary.season().water().lowestC(),
                        summary.season().waterWithout().lowestC())
                <= 0) {
            points.add("Ice: the pool freezes over. Its water is held at " + numbers.show(Measure.TEMPERATURE, 0)
                    + " until the ice has melted; snow on it is not modelled. Ice can break basin, pipes and pump.");
        }
        if (range.isPresent()) {
            points.add((range.get().frostHoursInSeason() > 0
                            ? "Frost: it falls in the open season too. Rigid pipe must drain itself or stand it,"
                                    + " and must be drained after closing."
                            : "Frost: rigid pipe must be drained before the first frost.")
                    + " A collector under a clear sky freezes when the air does not.");
            points.add("The roof must carry the collectors full of water, and the collectors must be held against the"
                    + " wind's uplift.");
        }
        points.add(
                "Roof load, wind uplift, gas and electrical work: the local code and a licensed professional decide.");
        return new TextSection("Cautions", TextSection.listed(points));
    }

    static String bathing(Numbers numbers, double highestC) {
        String limit = numbers.show(Measure.TEMPERATURE, BATHING_LIMIT_C);
        String reached = numbers.show(Measure.TEMPERATURE, highestC);
        double excessK = highestC - BATHING_LIMIT_C;
        if (numbers.rounded(Measure.TEMPERATURE_DIFFERENCE, excessK) > 0) {
            return "TOO HOT TO BATHE: this forecast reaches " + reached
                    + " and EXCEEDS the upper limit for bathing water, " + limit + ", by "
                    + numbers.show(Measure.TEMPERATURE_DIFFERENCE, excessK)
                    + ". People must not bathe in water that warm.";
        }
        return "Bathing water must not be warmer than " + limit + "; this forecast reaches " + reached + ".";
    }

    private static String drainDown(WorkingRange range, int openDays) {
        if (openDays == HourOfYear.DAYS) {
            return range.frostHoursInSeason() == 0
                    ? "The pool never closes and this typical year has no frost; a real year may have some"
                    : "The pool never closes: the circuit must stand that frost, or be drained for the winter";
        }
        return frostInSeason(range)
                + range.drainDown()
                        .map(
                                date -> "Drain rigid pipe before " + Numbers.show(date)
                                        + ", when this typical year first freezes after closing; a real year may freeze earlier")
                        .orElse("No frost between closing and opening in this typical year; a real year may have some");
    }

    /** Draining after closing is no help against frost before it. */
    private static String frostInSeason(WorkingRange range) {
        return range.firstFrostInSeason()
                .flatMap(first -> range.lastFrostInSeason()
                        .map(last -> "It freezes in the open season too, "
                                + (first.equals(last)
                                        ? "on " + Numbers.show(first)
                                        : "first on " + Numbers.show(first) + " and last on " + Numbers.show(last))
                                + ": the circuit must stand that, or drain itself whenever the pump stops. "))
                .orElse("");
    }

    private String movement(WorkingRange range) {
        boolean us = numbers.units() == ReportSettings.Units.US;
        double bayM = us ? 100 * Units.FOOT : 1;
        double perShown = us ? 1000 * Units.INCH : 1;
        return Numbers.show(range.pipeMovementMm(bayM, WorkingRange.PVC_EXPANSION_LOW) / perShown, 1) + " to "
                + Numbers.show(range.pipeMovementMm(bayM, WorkingRange.PVC_EXPANSION_HIGH) / perShown, 1)
                + (us ? " inches for each 100 ft" : " mm for each metre");
    }

    private String temperature(double celsius) {
        return numbers.show(Measure.TEMPERATURE, celsius);
    }
}
