package dev.warmlane.scenario;

import dev.warmlane.irradiance.Rack;
import dev.warmlane.roof.LaidRoof;
import dev.warmlane.roof.Laying;
import dev.warmlane.roof.PanelRules;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.Surface;
import dev.warmlane.roof.Wanted;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a drawn roof says about collectors: how many fit, in how many rows, of what panels, and whether racks stand square
 * to its edges. Without a drawing it says nothing.
 */
final class DrawnCollectors {

    /** Racks farther off the lines of the roof than this stand askew, degrees; own choice. */
    private static final double ASKEW_DEG = 1;

    /** Areas of panels that differ by less are the same, as a share; own choice. */
    private static final double SAME_AREA = 0.01;

    private final @Nullable RoofPlan plan;
    private final UnitSystem units;
    private final boolean broken;

    /** The roof with the collectors that were read before, and what those are called. */
    private @Nullable LaidRoof laid;

    private final List<String> names = new ArrayList<>();

    /** The last of them, which is laid only once others follow. */
    private @Nullable Wanted last;

    /**
     * What a drawing says.
     *
     * @param drawn whether there is one
     * @param plan the drawing, where it is sound
     * @param units of the report
     */
    DrawnCollectors(boolean drawn, @Nullable RoofPlan plan, UnitSystem units) {
        this.broken = drawn && plan == null;
        this.plan = plan;
        this.units = units;
    }

    /** Whether a drawing that would say it is not sound, which has been told already. */
    boolean isBroken() {
        return broken;
    }

    /** Slopes that are drawn differ in what fits on them, so that there is no half of one layout for each. */
    void refuseGable(Section s) {
        if (plan != null) {
            s.error(
                    CollectorKeys.MOUNTING,
                    "on a roof that is drawn each slope is a surface of its own: give each its own [[collectors]] with"
                            + " mounting = \"pitched\"; one surface takes several [[collectors]] too");
        }
    }

    /**
     * What is left for the collectors of a section; nothing without a drawing, or where the section is not sound.
     *
     * @see #lay
     */
    Optional<Fit> fit(Section s) {
        if (plan == null || !s.has(CollectorKeys.MOUNTING) || !s.sound(CollectorKeys.MOUNTING)) {
            return Optional.empty();
        }
        CollectorKeys.MountingKind kind = s.get(CollectorKeys.MOUNTING);
        if (kind == CollectorKeys.MountingKind.GABLE) {
            refuseGable(s);
            return Optional.empty();
        }
        if (kind != CollectorKeys.MountingKind.FLAT && !isGiven(s, CollectorKeys.TILT, CollectorKeys.AZIMUTH)) {
            return Optional.empty();
        }
        List<Surface> surfaces = kind == CollectorKeys.MountingKind.PITCHED
                ? plan.pitched(s.get(CollectorKeys.TILT), s.get(CollectorKeys.AZIMUTH))
                : plan.flat();
        if (surfaces.isEmpty()) {
            s.error(
                    CollectorKeys.MOUNTING,
                    "no surface of the drawn roof is for it: flat, rack and tent ask for one of at most 5 deg, pitched for one"
                            + " with the tilt and azimuth of the collectors; draw it or mount them otherwise");
            return Optional.empty();
        }
        if (kind == CollectorKeys.MountingKind.FLAT || kind == CollectorKeys.MountingKind.PITCHED) {
            return Optional.of(fit(plan, surfaces, new Laying.Mats()));
        }
        if (!isGiven(s, CollectorKeys.CHORD, CollectorKeys.PITCH)) {
            return Optional.empty();
        }
        askew(s);
        Laying.Racks racks = new Laying.Racks(
                s.get(CollectorKeys.TILT),
                s.get(CollectorKeys.AZIMUTH),
                s.get(CollectorKeys.CHORD),
                s.get(CollectorKeys.PITCH),
                kind == CollectorKeys.MountingKind.TENT);
        return leaves(s, CollectorKeys.PITCH, racks) ? Optional.of(fit(plan, surfaces, racks)) : Optional.empty();
    }

    private Fit fit(RoofPlan drawn, List<Surface> surfaces, Laying laying) {
        LaidRoof roof = laid == null ? LaidRoof.bare(drawn.rules()) : laid;
        if (last != null) {
            roof = roof.with(last);
            laid = roof;
            last = null;
        }
        Wanted wanted = new Wanted(surfaces, laying, 0);
        List<String> beside = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            if (roof.laid().get(i).wanted().sharesWith(wanted)) {
                beside.add("\"" + names.get(i) + "\"");
            }
        }
        return new Fit(roof, surfaces, laying, beside, units);
    }

    /** Lays the collectors of a section, so that those that are read next have what is left. */
    void lay(Fit fit, String name, double areaM2) {
        last = new Wanted(fit.surfaces, fit.laying, areaM2);
        names.add(name);
    }

    private static boolean isGiven(Section s, Key<?>... keys) {
        for (Key<?> key : keys) {
            if (!s.has(key) || !s.sound(key)) {
                return false;
            }
        }
        return true;
    }

    /** Warns of racks that do not stand square to the edges of the drawn roof. */
    void askew(Section s) {
        if (plan == null || !isGiven(s, CollectorKeys.AZIMUTH)) {
            return;
        }
        double facing = s.get(CollectorKeys.AZIMUTH);
        double square = plan.squareFacingDeg(facing);
        double off = RoofPlan.apartDeg(facing, square);
        if (off > ASKEW_DEG) {
            s.warning(
                    CollectorKeys.AZIMUTH,
                    String.format(
                            Locale.ROOT,
                            "rows would stand %.0f deg askew to the edges of the drawn roof, which costs room; square to"
                                    + " them is %.0f deg",
                            off,
                            square));
        }
    }

    /** Refuses a pitch that does not leave the walkway of the layout between rows. */
    boolean leaves(Section s, Key<Double> key, Rack rack, double pitchM, boolean tents) {
        return plan == null
                || s.hasFailed()
                || leaves(s, key, new Laying.Racks(rack.tiltDeg(), rack.azimuthDeg(), rack.chordM(), pitchM, tents));
    }

    private boolean leaves(Section s, Key<Double> key, Laying.Racks racks) {
        if (plan == null || racks.leaves(plan.rules())) {
            return true;
        }
        PanelRules rules = plan.rules();
        s.error(
                key,
                String.format(
                        Locale.ROOT,
                        "found %s, but a row with its headers covers %.2f m of roof and layout.walkway is %.2f m; allowed:"
                                + " at least %.2f m, or a narrower walkway",
                        key.kind().show(racks.pitchM()),
                        racks.depthM(rules),
                        rules.walkwayM(),
                        racks.depthM(rules) + rules.walkwayM()));
        return false;
    }

    /**
     * What fits.
     *
     * @param roof the roof with what was laid before
     * @param surfaces the surfaces that may be used
     * @param laying how they are laid
     * @param beside the names of those before that share a surface with them, in quotes
     * @param units of the report
     */
    record Fit(LaidRoof roof, List<Surface> surfaces, Laying laying, List<String> beside, UnitSystem units) {

        /** The most, m²; reports where there is no room for a panel. */
        double mostM2(Section s) {
            double most = mostM2();
            if (most == 0) {
                s.error(noneFits());
            }
            return most;
        }

        private double mostM2() {
            return roof.most(surfaces, laying).areaM2();
        }

        private String noneFits() {
            return beside.isEmpty()
                    ? "no panel fits on the drawn roof; look at edge_distance, clearance and panel_lengths"
                    : "no panel fits on the drawn roof beside " + others()
                            + "; they are laid in the order in which the file names them: give those before less area, or"
                            + " these a surface of their own";
        }

        private String others() {
            return String.join(", ", beside);
        }

        /** Where an area that may be left out comes from. */
        String why() {
            return "the most that fits the drawn roof" + (beside.isEmpty() ? "" : " beside " + others());
        }

        /** Warns of an area that does not fit. */
        void check(Section s, Key<?> key, double areaM2) {
            if (s.hasFailed() || laid(areaM2).fits()) {
                return;
            }
            double most = mostM2();
            if (most == 0 && !beside.isEmpty()) {
                s.error(key, noneFits());
                return;
            }
            s.warning(
                    key,
                    show(areaM2) + " of collectors do not fit on the drawn roof, which holds " + show(most)
                            + (beside.isEmpty() ? "" : " beside " + others()));
        }

        private LaidRoof.Laid laid(double areaM2) {
            return roof.with(new Wanted(surfaces, laying, areaM2)).last();
        }

        private String show(double areaM2) {
            return ReportUnits.show(Math.round(10 * areaM2) / 10.0, "m2", Dimension.AREA, units);
        }

        /** Rows, one behind the other, of an area of racks, or of the most. */
        int rows(double areaM2) {
            return laid(areaM2).layout().rowsDeep();
        }

        /** Area of a panel where all are alike; 0 where they are not. */
        double panelM2() {
            PanelRules rules = roof.rules();
            return laying.match(
                    mats -> rules.lengths()
                            .match(
                                    fixed -> fixed.lengthsM().size() == 1
                                            ? fixed.lengthsM().get(0) * rules.widthM()
                                            : 0,
                                    cut -> 0.0),
                    racks -> racks.chordM() * rules.widthM());
        }

        /** Warns of panels that are not those of the layout. */
        void checkPanel(Section s, double panelM2) {
            double ours = panelM2();
            if (ours > 0 && Math.abs(panelM2 - ours) > SAME_AREA * ours) {
                s.warning(
                        CollectorKeys.PANEL_AREA,
                        "the panels of the layout have " + show(ours) + " each; leave it out on a drawn roof");
            }
        }
    }
}
