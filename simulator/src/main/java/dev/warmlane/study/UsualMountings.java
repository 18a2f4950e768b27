package dev.warmlane.study;

import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The mountings that are compared where nobody says which. */
public final class UsualMountings {

    /** What they are, save the installation's own. */
    public static final String WORDS =
            "flat, racks of 15, 30 and 45 degrees that face the equator, and tents of 15 degrees"
                    + " that face east and west";

    /** What is added where the installation's first collectors are mounted otherwise. */
    public static final String WORDS_OF_OWN =
            "the racks, tents or pitched roof of the installation's first collectors as"
                    + " planned, and of a pitched roof that is not drawn also one slope of a gable for both, or both for one";

    /** What the installation's own mounting is called among them. */
    static final String DESCRIBED = "as planned";

    private static final int[] RACKS_DEG = {15, 30, 45};

    /** Tents are built low, 10 to 15 degrees (common practice, no source): as steep as the flattest racks, to compare them. */
    private static final int TENTS_DEG = 15;

    private UsualMountings() {}

    /**
     * What people ask for first: flat, racks of 15, 30 and 45 degrees that face the equator, and tents that face east and west, on
     * a roof that is drawn square to its edges and as nearly so as that allows. Racks and tents are built like the first
     * racks of the installation if it has any, else with the usual chord and clearance and an open back.
     * Last, where the first collectors of the installation are mounted otherwise than flat, they as they are described:
     * racks with their own tilt, azimuth and pitch; a pitched roof also with collectors on both slopes where they lie on
     * one, or the other way round, unless it is drawn, where each slope is a surface of its own.
     */
    public static List<MountingOption> of(Installation installation, Site site) {
        double equator = site.southern() ? 0 : 180;
        List<MountingOption> options = new ArrayList<>();
        options.add(new MountingOption.Flat("flat", mats(installation)));
        for (int tilt : RACKS_DEG) {
            options.add(standing(tilt + "° racks", installation, tilt, equator));
        }
        options.add(standing(TENTS_DEG + "° tents", installation, TENTS_DEG, 90).withTents(true));
        installation.arrays().stream()
                .limit(1)
                .flatMap(first -> first.mounting()
                        .<Stream<MountingOption>>match(
                                flat -> Stream.empty(),
                                racks -> Stream.of(asDescribed(racks)),
                                pitched -> pitched(pitched, installation.plan().isPresent(), equator)))
                .forEach(options::add);
        return options;
    }

    private static Mounting.FlatOnRoof mats(Installation installation) {
        return installation.arrays().stream()
                .flatMap(array -> array.mounting()
                        .<Stream<Mounting.FlatOnRoof>>match(
                                Stream::of, racks -> Stream.empty(), pitched -> Stream.empty()))
                .findFirst()
                .orElse(Mounting.FlatOnRoof.USUAL);
    }

    private static MountingOption.Racks standing(
            String name, Installation installation, double tiltDeg, double facingDeg) {
        Mounting.OpenRack like = installation.arrays().stream()
                .flatMap(array -> array.mounting().racks().stream())
                .findFirst()
                .orElse(new Mounting.OpenRack(
                        0,
                        180,
                        MountingOption.USUAL_CHORD_M,
                        MountingOption.USUAL_CHORD_M,
                        1,
                        MountingOption.USUAL_CLEARANCE_M));
        double facing =
                installation.plan().map(plan -> plan.squareFacingDeg(facingDeg)).orElse(facingDeg);
        Rack rack = new Rack(tiltDeg, facing, like.chordM(), like.clearanceM());
        return new MountingOption.Racks(
                name,
                rack,
                like.back(),
                like.windRun().within(rack),
                like.innerWind(),
                MountingOption.USUAL_SPACING,
                MountingOption.RoofSide.LONG);
    }

    private static MountingOption.Racks asDescribed(Mounting.OpenRack racks) {
        // a row that stands alone may have any pitch
        double widestM = Mounting.OpenRack.MOST_PITCH_CHORDS * racks.chordM();
        return new MountingOption.Racks(
                DESCRIBED,
                racks.rack(),
                racks.layout().tents(),
                racks.back(),
                racks.windRun(),
                racks.innerWind(),
                new RowSpacing.FixedPitch(Math.min(racks.pitchM(), widestM)),
                MountingOption.RoofSide.LONG,
                OptionalDouble.empty());
    }

    private static Stream<MountingOption> pitched(Mounting.FlushOnPitchedRoof roof, boolean drawn, double equator) {
        MountingOption planned = new MountingOption.Pitched(DESCRIBED, roof, OptionalDouble.empty());
        return drawn
                ? Stream.of(planned)
                : Stream.of(
                        planned,
                        new MountingOption.Pitched(
                                roof.gable() ? "one slope" : "both slopes",
                                roof.gable() ? roof.onSlopeFacing(equator) : roof.onBothSlopes(),
                                OptionalDouble.empty()));
    }
}
