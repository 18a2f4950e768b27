package dev.warmlane.report;

import dev.warmlane.season.GasSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.WarmDays;
import dev.warmlane.study.LeadMap;
import dev.warmlane.study.MountingBands;
import dev.warmlane.study.MountingDuel;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.PairedBand;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;

/**
 * How far the mounting that gives most heat is ahead of the next: by heat, by fuel displaced and by days: those
 * at comfort, or those without the heater where it holds comfort with and without collectors. A lead is always a share of
 * what the lesser gives, in sentences, tables and the map, and its range is that of the difference: the same doubts are
 * tried under both.
 */
final class MountingLead {

    /** Less than this is no lead. */
    static final double NONE_BELOW = LeadMap.NO_LEAD_BELOW;

    /** Shown as one percent. */
    private static final double SEEN = 0.005;

    private final MountingResult best;
    private final MountingResult next;
    private final PairedBand band;
    private final String comfort;
    private final Numbers numbers;

    private MountingLead(MountingResult best, MountingResult next, PairedBand band, String comfort, Numbers numbers) {
        this.best = best;
        this.next = next;
        this.band = band;
        this.comfort = comfort;
        this.numbers = numbers;
    }

    /** Of mountings ranked by heat; nothing where there are not two. */
    static Optional<MountingLead> of(List<MountingResult> ranked, MountingBands bands, Numbers numbers) {
        if (ranked.size() < 2 || ranked.get(1).deliveredKwh() <= 0) {
            return Optional.empty();
        }
        MountingResult best = ranked.get(0);
        double comfortC = best.forecast().installation().comfortC();
        return Optional.of(new MountingLead(
                best,
                ranked.get(1),
                bands.of(best, ranked.get(1)),
                numbers.show(Measure.TEMPERATURE, comfortC),
                numbers));
    }

    /** By how much the one is ahead of the other, as a share of what the lesser gives. */
    static double share(double one, double other) {
        return new MountingDuel.Heats(one, other).lead();
    }

    /** In a sentence that goes on after where they are compared. */
    String words() {
        double heat = share(heatKwh(best.season()), heatKwh(next.season()));
        Optional<Double> gas = gas();
        FuelWords fuel = FuelWords.of(best.season());
        if (heat < NONE_BELOW && gas.map(lead -> Math.abs(lead) < NONE_BELOW).orElse(true)) {
            return "none leads: " + name(best) + " and " + name(next) + " differ by less than "
                    + numbers.show(Measure.SHARE, NONE_BELOW)
                    + (gas.isPresent() ? " in heat and in " + fuel.word() : " in heat") + dayWords(" and ") + "."
                    + uncertain(NONE_BELOW, "may put either ahead");
        }
        if (gas.map(lead -> lead <= -NONE_BELOW).orElse(false)) {
            return "it depends on what is wanted: " + name(best) + " gives " + percent(heat) + " more heat"
                    + range(MountingLead::heatKwh) + ", " + name(next) + " displaces "
                    + percent(-gas.orElseThrow()) + " more " + fuel.word() + dayWords("; ") + "."
                    + uncertain(SEEN, "may turn the lead in heat round");
        }
        List<String> by = new ArrayList<>();
        by.add(
                heat < NONE_BELOW
                        ? "hardly by heat"
                        : "by " + percent(heat) + " in heat" + range(MountingLead::heatKwh));
        gas.ifPresent(lead -> by.add(
                Math.abs(lead) < NONE_BELOW
                        ? "hardly in " + fuel.wordDisplaced()
                        : percent(lead) + " in " + fuel.wordDisplaced() + range(MountingLead::gasKwh)));
        return name(best) + " leads " + name(next) + ", the next, " + String.join(" and ", by) + dayWords("; ") + "."
                + uncertain(SEEN, "may turn that round");
    }

    /** By which share it displaces more gas; nothing where none is burned, or next to none. */
    private Optional<Double> gas() {
        Optional<GasSummary.Displaced> displaced = best.season().gas().displaced();
        return displaced.isPresent()
                        && !Telling.trivial(best.forecast().installation(), displaced.get())
                        && gasKwh(next.season()) > 0
                ? Optional.of(share(gasKwh(best.season()), gasKwh(next.season())))
                : Optional.empty();
    }

    /** In brackets: {@code  (15 to 34)}, {@code  (8 behind to 53 ahead)}; empty where nothing moves it. */
    private String range(ToDoubleFunction<PeriodSummary> number) {
        Optional<Estimate> lead = lead(number);
        if (lead.isEmpty()) {
            return "";
        }
        String low = bare(lead.get().low());
        String high = bare(lead.get().high());
        if (low.equals(high)) {
            return "";
        }
        return lead.get().low() < 0 && !low.equals("0")
                ? " (" + bare(-lead.get().low()) + " behind to " + high + " ahead)"
                : " (" + low + " to " + high + ")";
    }

    /** What may turn the lead in heat round, with a space before it; empty where nothing does by a share that is seen. */
    private String uncertain(double seen, String what) {
        return lead(MountingLead::heatKwh)
                .filter(lead -> lead.low() <= -seen && lead.high() >= seen)
                .flatMap(lead -> band.leastCertain(ratio(MountingLead::heatKwh)))
                .map(most -> " What is uncertain, most of all " + DoubtWords.of(most) + ", " + what + ".")
                .orElse("");
    }

    /** Nothing where one of them gives none at an end of a doubt, so that there is no share of it. */
    private Optional<Estimate> lead(ToDoubleFunction<PeriodSummary> number) {
        double least =
                Math.min(band.one().of(number).low(), band.other().of(number).low());
        return least > 0 ? Optional.of(band.of(ratio(number))) : Optional.empty();
    }

    private static ToDoubleBiFunction<PeriodSummary, PeriodSummary> ratio(ToDoubleFunction<PeriodSummary> number) {
        return (one, other) -> share(number.applyAsDouble(one), number.applyAsDouble(other));
    }

    private String dayWords(String before) {
        if (Telling.heldByHeater(best.forecast().installation(), best.season())) {
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

    private String bare(double share) {
        return numbers.show(100 * share, 0);
    }

    private static double heatKwh(PeriodSummary season) {
        return season.balance().deliveredKwh();
    }

    private static double gasKwh(PeriodSummary season) {
        return season.gas().replacedKwh();
    }

    private static String name(MountingResult result) {
        return "“" + result.option().name() + "”";
    }
}
