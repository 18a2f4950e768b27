package dev.warmlane.collector;

import dev.warmlane.irradiance.Plane;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.roof.Laying;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.Surface;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** How collectors are mounted: which way they face, what the wind and the sky can reach, and what is behind them. */
public sealed interface Mounting {

    /** Range of the mean gap between a collector and the roof that it lies on. */
    Range GAP =
            Range.of("gap below the collector", Dimension.LENGTH, 0.0005, 0.1).writtenIn("mm");

    /** Usual gap. */
    Usual USUAL_GAP = GAP.usually(0.005, "corrugations and welds, common practice, no source");

    /** Tilt from the horizontal, degrees. */
    double tiltDeg();

    /** Direction the front faces, degrees clockwise from north; without meaning at tilt 0. */
    double azimuthDeg();

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<FlatOnRoof, T> flat, Function<OpenRack, T> rack, Function<FlushOnPitchedRoof, T> pitched);

    /** Rows of racks; nothing for what does not stand in rows. */
    default Optional<OpenRack> racks() {
        return match(flat -> Optional.empty(), Optional::of, pitched -> Optional.empty());
    }

    /** How panels mounted so are laid on a roof that is drawn. */
    default Laying laying() {
        return match(
                flat -> new Laying.Mats(),
                racks -> new Laying.Racks(
                        racks.tiltDeg(),
                        racks.azimuthDeg(),
                        racks.chordM(),
                        racks.pitchM(),
                        racks.layout().tents()),
                pitched -> new Laying.Mats());
    }

    /** The surfaces of a drawn roof that it may be on: mats and racks on the flat ones. */
    default List<Surface> surfaces(RoofPlan plan) {
        return match(
                flat -> plan.flat(),
                racks -> plan.flat(),
                pitched -> plan.pitched(pitched.tiltDeg(), pitched.azimuthDeg()));
    }

    /**
     * Mats laid flat on a flat roof. Only the top meets wind and sky; the back loses heat through a thin gap and the
     * roof to the room below. The wind has run over the whole roof before it leaves.
     *
     * @param gapM mean gap between mat and roof, m
     */
    record FlatOnRoof(double gapM) implements Mounting {

        /** Mats with the usual gap. */
        public static final FlatOnRoof USUAL = new FlatOnRoof(USUAL_GAP.value());

        /** Checks the range. */
        public FlatOnRoof {
            GAP.check(gapM);
        }

        @Override
        public double tiltDeg() {
            return 0;
        }

        @Override
        public double azimuthDeg() {
            return 180;
        }

        @Override
        public <T> T match(
                Function<FlatOnRoof, T> flat, Function<OpenRack, T> rack, Function<FlushOnPitchedRoof, T> pitched) {
            return flat.apply(this);
        }
    }

    /**
     * Racks standing on a flat roof in parallel rows. Front and back meet the wind, the sky and the roof strips below. Tents
     * are two of them back to back, see {@link RackRows}: behind both the air goes through as it goes behind a rack, and there
     * is no sky and no sun.
     *
     * @param layout the racks and how their rows stand; for more than one row at most 40 chords apart, beyond which rows
     *     no longer feel each other
     * @param back open to wind and roof, or closed by a board
     * @param windRun the surface the wind has run over: the rack's own chord, or the whole roof for a rack lying so low
     *     that it is part of it, see {@link #roofShare}
     * @param innerWind wind at every row but the first over that at the first
     */
    record OpenRack(RackRows layout, Back back, WindRun windRun, double innerWind) implements Mounting {

        /** Range of {@link #innerWind}. */
        public static final Range INNER_WIND = Range.number("wind at inner rows", 0.1, 1.5);

        /** Range of the distance from row to row, as far as it does not depend on the rack. */
        public static final Range PITCH = Range.of("rack row pitch", Dimension.LENGTH, 0.2, 1000);

        /**
         * The widest pitch of rows, in chords. There an interior row gives within 1 % of what a row alone gives; give
         * rows that stand farther apart as arrays of one row each.
         */
        public static final double MOST_PITCH_CHORDS = 40;

        /** Height of the middle of a rack, in chords, from which on it has nothing of the roof's film; own choice. */
        public static final double ROOF_RUN_CHORDS = 0.1;

        /** Usual {@link #innerWind}. */
        public static final Usual USUAL_INNER =
                INNER_WIND.usually(1, "no shelter by the rows before; how much there is for heat is not known");

        /** {@link #USUAL_INNER}. */
        public static final double USUAL_INNER_WIND = USUAL_INNER.value();

        /** Checks wind and pitch. */
        public OpenRack {
            INNER_WIND.check(innerWind);
            windRun.check(layout.rack());
            double widest = layout.rows() == 1 ? PITCH.highest() : MOST_PITCH_CHORDS * layout.chordM();
            PITCH.from(layout.coveredM()).upTo(widest).check(layout.pitchM());
        }

        /** A rack with an open back whose film is that of its own chord. */
        public OpenRack(double tiltDeg, double azimuthDeg, double chordM, double pitchM, int rows, double clearanceM) {
            this(tiltDeg, azimuthDeg, chordM, pitchM, rows, clearanceM, Back.OPEN, WindRun.CHORD);
        }

        /** A rack whose inner rows have the wind of the first. */
        public OpenRack(
                double tiltDeg,
                double azimuthDeg,
                double chordM,
                double pitchM,
                int rows,
                double clearanceM,
                Back back,
                WindRun windRun) {
            this(
                    new RackRows(new Rack(tiltDeg, azimuthDeg, chordM, clearanceM), pitchM, rows),
                    back,
                    windRun,
                    USUAL_INNER_WIND);
        }

        /** Starts racks of a tilt, a direction and a chord, with the defaults of {@link RackBuilder}. */
        public static RackBuilder builder(double tiltDeg, double azimuthDeg, double chordM) {
            return new RackBuilder(tiltDeg, azimuthDeg, chordM);
        }

        /** One of the equal racks. */
        public Rack rack() {
            return layout.rack();
        }

        @Override
        public double tiltDeg() {
            return rack().tiltDeg();
        }

        @Override
        public double azimuthDeg() {
            return rack().azimuthDeg();
        }

        /** Length of the collector up the slope, m. */
        public double chordM() {
            return rack().chordM();
        }

        /** Length of the collectors of a row up their slopes, m: a chord, or two of a tent. */
        public double collectorPerRowM() {
            return layout.tents() ? 2 * chordM() : chordM();
        }

        /** Height of the lower edge above the roof, m. */
        public double clearanceM() {
            return rack().clearanceM();
        }

        /** Distance from row to row on the roof, m. */
        public double pitchM() {
            return layout.pitchM();
        }

        /** Number of rows. */
        public int rows() {
            return layout.rows();
        }

        /**
         * How much of a face's film is the roof's: 1 for a rack lying on it, falling with the height of the middle of its
         * slope to 0 at {@link #ROOF_RUN_CHORDS}; 0 at any height where the wind runs over the chord.
         */
        public double roofShare() {
            return windRun == WindRun.CHORD ? 0 : Math.max(0, 1 - rack().middleM() / (ROOF_RUN_CHORDS * chordM()));
        }

        /**
         * The same rack at another height of its lower edge above the roof, m; too high for a run over the roof, it has
         * the film of its chord, which it has just there anyway.
         */
        public OpenRack withClearanceM(double value) {
            Rack moved = rack().withClearanceM(value);
            return new OpenRack(
                    new RackRows(moved, pitchM(), rows(), layout.tents()), back, windRun.within(moved), innerWind);
        }

        /** The same tents seen from their other side. */
        public OpenRack fromOtherSide() {
            return new OpenRack(layout.fromOtherSide(), back, windRun, innerWind);
        }

        /** The same rack with another back. */
        public OpenRack withBack(Back value) {
            return new OpenRack(layout, value, windRun, innerWind);
        }

        /** The same rack with another wind at its inner rows. */
        public OpenRack withInnerWind(double value) {
            return new OpenRack(layout, back, windRun, value);
        }

        @Override
        public <T> T match(
                Function<FlatOnRoof, T> flat, Function<OpenRack, T> rack, Function<FlushOnPitchedRoof, T> pitched) {
            return rack.apply(this);
        }
    }

    /**
     * Collectors lying on a pitched roof, nothing but a thin gap below them.
     *
     * @param tiltDeg tilt of the roof, degrees
     * @param azimuthDeg direction the roof faces, degrees clockwise from north; of a gable one of its two slopes
     * @param slopeLengthM length of the roof up the slope, m
     * @param gapM mean gap between collector and roof, m
     * @param gable whether half of them lie on the other slope of a gable roof, which is as steep and faces the other way
     */
    record FlushOnPitchedRoof(double tiltDeg, double azimuthDeg, double slopeLengthM, double gapM, boolean gable)
            implements Mounting {

        /** All of them on one slope. */
        public FlushOnPitchedRoof(double tiltDeg, double azimuthDeg, double slopeLengthM, double gapM) {
            this(tiltDeg, azimuthDeg, slopeLengthM, gapM, false);
        }

        /** Range of {@link #slopeLengthM}. */
        public static final Range SLOPE_LENGTH = Range.of("slope length", Dimension.LENGTH, 0.5, 50);

        /** Checks every range. */
        public FlushOnPitchedRoof {
            Plane.TILT.check(tiltDeg);
            Plane.AZIMUTH.check(azimuthDeg);
            SLOPE_LENGTH.check(slopeLengthM);
            GAP.check(gapM);
        }

        /** The same roof with another gap below the collector, m. */
        public FlushOnPitchedRoof withGapM(double value) {
            return new FlushOnPitchedRoof(tiltDeg, azimuthDeg, slopeLengthM, value, gable);
        }

        /** The slopes that they lie on, each by itself: one, or both of a gable. */
        List<FlushOnPitchedRoof> slopes() {
            FlushOnPitchedRoof one = new FlushOnPitchedRoof(tiltDeg, azimuthDeg, slopeLengthM, gapM);
            return gable
                    ? List.of(one, new FlushOnPitchedRoof(tiltDeg, otherAzimuthDeg(), slopeLengthM, gapM))
                    : List.of(one);
        }

        /** The same on both slopes of a gable, half on each. */
        public FlushOnPitchedRoof onBothSlopes() {
            return new FlushOnPitchedRoof(tiltDeg, azimuthDeg, slopeLengthM, gapM, true);
        }

        /** All of them on that slope of a gable that is turned less away from a direction, degrees. */
        public FlushOnPitchedRoof onSlopeFacing(double directionDeg) {
            boolean other = Math.cos(Math.toRadians(azimuthDeg - directionDeg)) < 0;
            return new FlushOnPitchedRoof(tiltDeg, other ? otherAzimuthDeg() : azimuthDeg, slopeLengthM, gapM);
        }

        /** Direction that the other slope of a gable faces, degrees clockwise from north. */
        public double otherAzimuthDeg() {
            return Plane.opposite(azimuthDeg);
        }

        @Override
        public <T> T match(
                Function<FlatOnRoof, T> flat, Function<OpenRack, T> rack, Function<FlushOnPitchedRoof, T> pitched) {
            return pitched.apply(this);
        }
    }

    /**
     * What closes the back of a rack.
     *
     * @param open whether nothing does: wind, roof and sky reach the back
     * @param boardWm2K conductance of the board that closes it, from face to face, W/m²K; 0 lets no heat through,
     *     and stands for no board where the back is open
     */
    record Back(boolean open, double boardWm2K) {

        /** Range of {@link #boardWm2K}. */
        public static final Range BOARD =
                Range.of("conductance of the board", Dimension.HEAT_TRANSFER_COEFFICIENT, 0, 50);

        /**
         * Usual {@link #boardWm2K}: foam of 0.035 W/mK (handbook tables, from memory). 50 mm of it have 0.7 W/m²K; plywood is
         * taken at 0.13 W/mK (derived).
         */
        public static final Usual USUAL_BOARD =
                BOARD.usually(1.5, "23 mm of foam, own choice; 12 mm of plywood have 11 W/m2K");

        /** {@link #USUAL_BOARD}, W/m²K. */
        public static final double USUAL_BOARD_WM2K = USUAL_BOARD.value();

        /** No board. */
        public static final Back OPEN = new Back(true, 0);

        /** A board as it is assumed to be. */
        public static final Back BOARDED = boarded(USUAL_BOARD_WM2K);

        /** Checks the range. */
        public Back {
            (open ? BOARD.upTo(0) : BOARD).check(boardWm2K);
        }

        /** Closed by a board of a conductance from face to face, W/m²K. */
        public static Back boarded(double boardWm2K) {
            return new Back(false, boardWm2K);
        }
    }

    /** The surface over which the wind's boundary layer has grown. */
    enum WindRun {
        /** The rack's own chord. */
        CHORD,
        /** The roof from its edge. */
        ROOF;

        /** Why a rack cannot have this run; nothing where it can. */
        public Optional<String> refused(Rack rack) {
            double middleM = rack.middleM();
            double highestM = OpenRack.ROOF_RUN_CHORDS * rack.chordM();
            return this == CHORD || middleM <= highestM
                    ? Optional.empty()
                    : Optional.of(String.format(
                            Locale.ROOT,
                            "the middle of the rack stands %.2f m above the roof; the wind's run over the roof reaches up"
                                    + " to a tenth of the chord, %.2f m: lay the rack lower or flatter, or take the run"
                                    + " over its chord",
                            middleM,
                            highestM));
        }

        /** This run, or the chord's for a rack that cannot have it. */
        public WindRun within(Rack rack) {
            return refused(rack).isPresent() ? CHORD : this;
        }

        /** Refuses a rack that cannot have this run. */
        public void check(Rack rack) {
            refused(rack).ifPresent(why -> {
                throw new IllegalArgumentException(why);
            });
        }
    }
}
