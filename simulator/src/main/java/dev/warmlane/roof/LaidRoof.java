package dev.warmlane.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The collectors of a drawn roof, laid one after the other in the order in which they are named, each on what those before
 * it leave: the only place that knows how several of them share a surface. Those before are not moved to make room.
 *
 * @param rules how panels are made and put together
 * @param laid what has been laid, in its order
 */
public record LaidRoof(PanelRules rules, List<Laid> laid) {

    /**
     * Collectors as they were laid.
     *
     * @param wanted what was to be laid
     * @param layout its area in the fewest banks; where it does not fit, the most that does
     * @param fits whether all of it has room
     */
    public record Laid(Wanted wanted, RoofLayout layout, boolean fits) {}

    /** Keeps its own copy of the list. */
    public LaidRoof {
        laid = List.copyOf(laid);
    }

    /** The roof with nothing on it. */
    public static LaidRoof bare(PanelRules rules) {
        return new LaidRoof(rules, List.of());
    }

    /** The roof with all of it laid in its order. */
    public static LaidRoof of(PanelRules rules, List<Wanted> wanted) {
        LaidRoof roof = bare(rules);
        for (Wanted next : wanted) {
            roof = roof.with(next);
        }
        return roof;
    }

    /** The same roof with the next collectors on what is left of it. */
    public LaidRoof with(Wanted next) {
        Optional<RoofLayout> all = RoofLayout.ofArea(next.surfaces(), rules, next.laying(), next.areaM2(), layouts());
        RoofLayout layout = numbered(all.orElseGet(() -> most(next.surfaces(), next.laying())));
        List<Laid> more = new ArrayList<>(laid);
        more.add(new Laid(next, layout, all.isPresent()));
        return new LaidRoof(rules, more);
    }

    /** The most of the next collectors that what is left of the roof holds. */
    public RoofLayout most(List<Surface> surfaces, Laying laying) {
        return RoofLayout.most(surfaces, rules, laying, layouts());
    }

    /** Whether all of it has room. */
    public boolean fits() {
        return laid.stream().allMatch(Laid::fits);
    }

    /** What was laid last. */
    public Laid last() {
        return laid.get(laid.size() - 1);
    }

    /**
     * Of collectors in their order, those that have a say in where the last of them lie, and these: what shares no surface
     * with them, nor with any that does, has none.
     */
    public static List<Wanted> bearingOnLast(List<Wanted> wanted) {
        List<Wanted> bearing = new ArrayList<>();
        for (int i = wanted.size() - 1; i >= 0; i--) {
            Wanted one = wanted.get(i);
            if (bearing.isEmpty() || bearing.stream().anyMatch(one::sharesWith)) {
                bearing.add(0, one);
            }
        }
        return List.copyOf(bearing);
    }

    private List<RoofLayout> layouts() {
        return laid.stream().map(Laid::layout).toList();
    }

    /** Banks are counted through on a surface, whosever they are, so that a number on a plan is one bank's. */
    private RoofLayout numbered(RoofLayout layout) {
        return new RoofLayout(
                layout.surfaces().stream()
                        .map(on -> on.withFirstBank(1 + banksOn(on.surface())))
                        .toList(),
                rules,
                layout.laying());
    }

    private int banksOn(Surface surface) {
        return layouts().stream()
                .flatMap(layout -> layout.surfaces().stream())
                .filter(on -> on.surface().name().equals(surface.name()))
                .mapToInt(on -> on.banks().size())
                .sum();
    }
}
