package dev.warmlane.report;

import dev.warmlane.season.WorkingRange;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Units;
import java.util.ArrayList;
import java.util.List;

/** The temperatures that collectors and pipes must stand. */
final class WorkingRangeSection {

    private final Numbers numbers;

    private WorkingRangeSection(Numbers numbers) {
        this.numbers = numbers;
    }

    /** Empty where there are no collectors. */
    static Section of(Subject subject) {
        Section section = Section.of("What collectors and pipes must stand, over the whole year", Place.DETAIL);
        WorkingRangeSection text = new WorkingRangeSection(subject.numbers());
        int openDays = subject.installation().season().days();
        return subject.summary()
                .workingRange()
                .map(range -> section.points(text.points(range, openDays)))
                .orElse(section);
    }

    private List<String> points(WorkingRange range, int openDays) {
        List<String> points = new ArrayList<>();
        points.add("Dry collector standing in the sun: up to " + temperature(range.highestPlateC()) + "; "
                + numbers.show(range.hoursAbove60C(), 0) + " hours a year above "
                + temperature(WorkingRange.RIGID_PIPE_LIMIT_C) + ", where rigid plastic pipe softens");
        range.hottestFirstSlugC()
                .ifPresent(slug -> points.add("First water pushed out of a collector that stood in the sun: up to "
                        + temperature(slug) + ", as much as the collectors hold"));
        points.add("Frost: " + numbers.show(range.frostHoursByAir(), 0) + " hours a year by the air, "
                + numbers.show(range.frostHoursByPlate(), 0)
                + " by the lower of air and dry collector (below " + temperature(WorkingRange.FROST_C)
                + "), of which " + numbers.show(range.frostHoursInUse(), 0)
                + " while the collectors are in use. The count by the collector is an upper bound: dew and frost that settle on it in"
                + " clear calm nights would hold it warmer, and are not modelled");
        points.add(drainDown(range, openDays));
        points.add("Rigid PVC pipe moves by " + movement(range) + " between fixed points, from "
                + temperature(range.lowestPlateC()) + " to " + temperature(range.highestPlateC()));
        if (range.hoursOutsideTest() > 0) {
            points.add("In " + numbers.show(range.hoursOutsideTest(), 0)
                    + " daylight hours of the year the wind lay outside the range that the collector was tested in");
        }
        return points;
    }

    private String drainDown(WorkingRange range, int openDays) {
        if (openDays == HourOfYear.DAYS) {
            return range.frostHoursInUse() == 0
                    ? "The pool never closes and this typical year has no frost; a real year may have some"
                    : "The pool never closes: the circuit must stand that frost, or be drained for the winter";
        }
        return frostInUse(range)
                + range.drainDown()
                        .map(
                                date -> "Drain rigid pipe before " + numbers.show(date)
                                        + ", when this typical year first freezes after closing; a real year may freeze earlier")
                        .orElse("No frost between closing and opening in this typical year; a real year may have some");
    }

    /** Draining after closing is no help against frost before it. */
    private String frostInUse(WorkingRange range) {
        return range.firstFrostInUse()
                .flatMap(first -> range.lastFrostInUse()
                        .map(last -> "It freezes while the collectors are in use, "
                                + (first.equals(last)
                                        ? "on " + numbers.show(first)
                                        : "first on " + numbers.show(first) + " and last on " + numbers.show(last))
                                + ": the circuit must stand that, or drain itself whenever the pump stops. "))
                .orElse("");
    }

    private String movement(WorkingRange range) {
        boolean us = numbers.units().us();
        double bayM = us ? 100 * Units.FOOT : 1;
        double perShown = us ? 1000 * Units.INCH : 1;
        return numbers.show(range.pipeMovementMm(bayM, WorkingRange.PVC_EXPANSION_LOW) / perShown, 1) + " to "
                + numbers.show(range.pipeMovementMm(bayM, WorkingRange.PVC_EXPANSION_HIGH) / perShown, 1)
                + (us ? " inches for each 100 ft" : " mm for each metre");
    }

    private String temperature(double celsius) {
        return numbers.show(Measure.TEMPERATURE, celsius);
    }
}
