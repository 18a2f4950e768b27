package dev.warmlane.report;

import dev.warmlane.season.WarmDays;
import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far the mounting that gives most heat is ahead of the next: by heat, by fuel displaced and by days: those
 * at comfort, or those without the heater where it holds comfort with and without collectors.
 */
final class MountingLead {

    /** Less than this is no lead. */
    static final double NONE_BELOW = BreakEvenMap.NO_LEAD_BELOW;

    private final MountingResult best;
    private final MountingResult next;
    private final String comfort;
    private final Numbers numbers;

    private MountingLead(MountingResult best, MountingResult next, String comfort, Numbers numbers) {
        this.best = best;
        this.next = next;
        this.comfort = comfort;
        this.numbers = numbers;
    }

    /** Of mountings ranked by heat; nothing where there are not two. */
    static Optional<MountingLead> of(List<MountingResult> ranked, MountingStudy study, Numbers numbers) {
        return ranked.size() < 2 || ranked.get(1).deliveredKwh() <= 0
                ? Optional.empty()
                : Optional.of(new MountingLead(
                        ranked.get(0),
                        ranked.get(1),
                        numbers.show(Measure.TEMPERATURE, study.template().comfortC()),
                        numbers));
    }

    /** In a sentence that goes on after where they are compared. */
    String words() {
        double heat = ahead(best.deliveredKwh(), next.deliveredKwh());
        Optional<Double> gas = gas();
        FuelWords fuel = FuelWords.of(best.season());
        if (heat < NONE_BELOW && gas.map(lead -> Math.abs(lead) < NONE_BELOW).orElse(true)) {
            return "none leads: " + name(best) + " and " + name(next) + " differ by less than "
                    + numbers.show(Measure.SHARE, NONE_BELOW)
                    + (gas.isPresent() ? " in heat and in " + fuel.word() : " in heat")
                    + dayWords(" and ") + ".";
        }
        if (gas.map(lead -> lead <= -NONE_BELOW).orElse(false)) {
            return "it depends on what is wanted: " + name(best) + " gives " + percent(heat) + " more heat, "
                    + name(next) + " displaces " + percent(-gas.orElseThrow()) + " more " + fuel.word() + dayWords("; ")
                    + ".";
        }
        List<String> by = new ArrayList<>();
        by.add(heat < NONE_BELOW ? "hardly by heat" : "by " + percent(heat) + " in heat");
        gas.ifPresent(lead -> by.add(
                Math.abs(lead) < NONE_BELOW
                        ? "hardly in " + fuel.wordDisplaced()
                        : percent(lead) + " in " + fuel.wordDisplaced()));
        return name(best) + " leads " + name(next) + ", the next, " + String.join(" and ", by) + dayWords("; ") + ".";
    }

    /** By which share it displaces more gas; nothing where none is burned. */
    private Optional<Double> gas() {
        return best.season().gas().displaced().isPresent()
                        && next.season().gas().replacedKwh() > 0
                ? Optional.of(ahead(
                        best.season().gas().replacedKwh(), next.season().gas().replacedKwh()))
                : Optional.empty();
    }

    private String dayWords(String before) {
        if (Telling.heldByHeater(best.forecast().installation())) {
            int free = WarmDays.of(best.forecast()).withoutHeater();
            int others = WarmDays.of(next.forecast()).withoutHeater();
            return before + "the heater gives nothing on " + free + " days with "
                    + (free == others ? "either" : name(best) + ", on " + others + " with " + name(next));
        }
        int days = best.season().comfort().daysAtComfort();
        int others = next.season().comfort().daysAtComfort();
        return before
                + (days == others
                        ? "both are at " + comfort + " on " + days + " days"
                        : name(best) + " is at " + comfort + " on " + days + " days, " + name(next) + " on " + others);
    }

    private String percent(double share) {
        return numbers.show(Measure.SHARE, share);
    }

    private static double ahead(double one, double other) {
        return one / other - 1;
    }

    private static String name(MountingResult result) {
        return "“" + result.option().name() + "”";
    }
}
