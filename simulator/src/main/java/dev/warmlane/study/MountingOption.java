package dev.warmlane.study;

import dev.warmlane.collector.Mounting;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Site;
import dev.warmlane.units.Checks;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A way to mount the collectors that a study compares with others; how many rows it takes follows from the area. */
public sealed interface MountingOption {

    /** Length of a usual rack up its slope, m; common practice, no source. */
    double USUAL_CHORD_M = 2;

    /** Height of the lower edge of a usual rack above the roof, m; common practice, no source. */
    double USUAL_CLEARANCE_M = 0.3;

    /** Rows free of each other's shade six hours around noon on the season's day with the lowest sun; no source. */
    RowSpacing.Unshaded USUAL_SPACING = new RowSpacing.Unshaded(9, 15, Optional.empty());

    /** What the installation's own mounting is called among the usual ones. */
    String DESCRIBED = "as described";

    /** What the designer calls it. */
    String name();

    /** Mats flat on the flat roof in the usual way. */
    static Flat flat(String name) {
        return new Flat(name, Mounting.FlatOnRoof.USUAL);
    }

    /**
     * Racks with the usual chord, clearance and spacing and an open back, in rows along the longer side of the roof.
     *
     * @param name what the designer calls them
     * @param tiltDeg tilt, degrees, 0 to 90
     * @param azimuthDeg direction the fronts face, degrees clockwise from north, 0 to 360
     */
    static Racks racks(String name, double tiltDeg, double azimuthDeg) {
        return new Racks(
                name,
                tiltDeg,
                azimuthDeg,
                USUAL_CHORD_M,
                USUAL_CLEARANCE_M,
                Mounting.Back.OPEN,
                Mounting.WindRun.CHORD,
                Mounting.OpenRack.USUAL_INNER_WIND,
                USUAL_SPACING,
                RoofSide.LONG);
    }

    /**
     * Mats flat on the flat roof.
     *
     * @param name what the designer calls it
     * @param mounting how they lie
     */
    record Flat(String name, Mounting.FlatOnRoof mounting) implements MountingOption {}

    /**
     * Rows of racks on the flat roof.
     *
     * @param name what the designer calls it
     * @param tiltDeg tilt, degrees, 0 to 90
     * @param azimuthDeg direction the fronts face, degrees clockwise from north, 0 to 360
     * @param chordM length of the collector up the slope, m, 0.2 to 20
     * @param clearanceM height of the lower edge above the roof, m, 0 to 5
     * @param back open to wind and roof, or closed by a board
     * @param windRun the surface the wind has run over
     * @param innerWind wind at every row but the first over that at the first, 0.1 to 1.5
     * @param spacing how far the rows stand apart
     * @param along the side of the roof that the rows run along, whatever way it lies by the compass
     */
    record Racks(
            String name,
            double tiltDeg,
            double azimuthDeg,
            double chordM,
            double clearanceM,
            Mounting.Back back,
            Mounting.WindRun windRun,
            double innerWind,
            RowSpacing spacing,
            RoofSide along)
            implements MountingOption {

        /** Checks every range. */
        public Racks {
            Checks.within("rack tilt", tiltDeg, 0, 90, "degrees");
            Checks.within("rack azimuth", azimuthDeg, 0, 360, "degrees");
            Checks.within("rack chord", chordM, 0.2, 20, "m");
            Checks.within("rack clearance", clearanceM, 0, 5, "m");
            Checks.within("wind at inner rows", innerWind, 0.1, 1.5, "");
            windRun.check(tiltDeg, chordM, clearanceM);
        }

        /** The same racks with another back. */
        public Racks withBack(Mounting.Back value) {
            return new Racks(name, tiltDeg, azimuthDeg, chordM, clearanceM, value, windRun, innerWind, spacing, along);
        }

        /** The same racks with another wind at their inner rows. */
        public Racks withInnerWind(double value) {
            return new Racks(name, tiltDeg, azimuthDeg, chordM, clearanceM, back, windRun, value, spacing, along);
        }

        /** The same racks at another tilt; too steep for a run over the roof, they have the film of their chord. */
        public Racks withTiltDeg(double value) {
            Mounting.WindRun run = windRun.within(value, chordM, clearanceM);
            return new Racks(name, value, azimuthDeg, chordM, clearanceM, back, run, innerWind, spacing, along);
        }
    }

    /**
     * Lying on a pitched roof.
     *
     * @param name what the designer calls it
     * @param mounting how they lie
     * @param roofAreaM2 area of that roof that collectors may cover, m²; without it the usable area of the installation's
     *     flat roof, so that the same area of building is compared
     */
    record Pitched(String name, Mounting.FlushOnPitchedRoof mounting, OptionalDouble roofAreaM2)
            implements MountingOption {}

    /** A side of the roof. */
    enum RoofSide {
        /** The longer one. */
        LONG,
        /** The shorter one. */
        SHORT
    }

    /**
     * What people ask for first: flat, and racks of 15, 30 and 45 degrees that face the equator. The racks are built
     * like the first ones of the installation if it has any, else with the usual chord and clearance and an open back.
     * Last, where the first collectors of the installation are mounted otherwise than flat, they as they are described:
     * racks with their own tilt, azimuth and pitch.
     */
    static List<MountingOption> usual(Installation installation, Site site) {
        Mounting.OpenRack like = installation.arrays().stream()
                .map(array -> array.mounting())
                .filter(Mounting.OpenRack.class::isInstance)
                .map(Mounting.OpenRack.class::cast)
                .findFirst()
                .orElse(new Mounting.OpenRack(0, 180, USUAL_CHORD_M, USUAL_CHORD_M, 1, USUAL_CLEARANCE_M));
        Mounting.FlatOnRoof mats = installation.arrays().stream()
                .map(array -> array.mounting())
                .filter(Mounting.FlatOnRoof.class::isInstance)
                .map(Mounting.FlatOnRoof.class::cast)
                .findFirst()
                .orElse(Mounting.FlatOnRoof.USUAL);
        List<MountingOption> options = new ArrayList<>();
        options.add(new Flat("flat", mats));
        for (int tilt : new int[] {15, 30, 45}) {
            options.add(new Racks(
                    "racks " + tilt + "°",
                    tilt,
                    site.southern() ? 0 : 180,
                    like.chordM(),
                    like.clearanceM(),
                    like.back(),
                    like.windRun().within(tilt, like.chordM(), like.clearanceM()),
                    like.innerWind(),
                    USUAL_SPACING,
                    RoofSide.LONG));
        }
        asDescribed(installation).ifPresent(options::add);
        return options;
    }

    private static Optional<MountingOption> asDescribed(Installation installation) {
        if (installation.arrays().isEmpty()) {
            return Optional.empty();
        }
        Mounting own = installation.arrays().get(0).mounting();
        if (own instanceof Mounting.OpenRack rack) {
            // a row that stands alone may have any pitch
            double widestM = Mounting.OpenRack.MOST_PITCH_CHORDS * rack.chordM();
            return Optional.of(new Racks(
                    DESCRIBED,
                    rack.tiltDeg(),
                    rack.azimuthDeg(),
                    rack.chordM(),
                    rack.clearanceM(),
                    rack.back(),
                    rack.windRun(),
                    rack.innerWind(),
                    new RowSpacing.FixedPitch(Math.min(rack.pitchM(), widestM)),
                    RoofSide.LONG));
        }
        return own instanceof Mounting.FlushOnPitchedRoof pitched
                ? Optional.of(new Pitched(DESCRIBED, pitched, OptionalDouble.empty()))
                : Optional.empty();
    }
}
