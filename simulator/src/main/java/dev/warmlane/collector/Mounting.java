package dev.warmlane.collector;

import dev.warmlane.units.Checks;
import java.util.Locale;
import java.util.Optional;

/** How collectors are mounted: which way they face, what the wind and the sky can reach, and what is behind them. */
public sealed interface Mounting {

    /** Tilt from the horizontal, degrees. */
    double tiltDeg();

    /** Direction the front faces, degrees clockwise from north; without meaning at tilt 0. */
    double azimuthDeg();

    /**
     * Mats laid flat on a flat roof. Only the top meets wind and sky; the back loses heat through a thin gap and the
     * roof to the room below. The wind has run over the whole roof before it leaves.
     *
     * @param gapM mean gap between mat and roof, m, 0.0005 to 0.1
     */
    record FlatOnRoof(double gapM) implements Mounting {

        /** Mats with corrugations and welds rest about 5 mm above the roof on average (common practice, no source). */
        public static final FlatOnRoof USUAL = new FlatOnRoof(0.005);

        /** Checks the range. */
        public FlatOnRoof {
            Checks.within("gap below the mat", gapM, 0.0005, 0.1, "m");
        }

        @Override
        public double tiltDeg() {
            return 0;
        }

        @Override
        public double azimuthDeg() {
            return 180;
        }
    }

    /**
     * Racks standing on a flat roof in parallel rows. Front and back meet the wind, the sky and the roof strips below.
     *
     * @param tiltDeg tilt, degrees, 0 to 90
     * @param azimuthDeg direction the front faces, degrees clockwise from north, 0 to 360
     * @param chordM length of the collector up the slope, m, 0.2 to 20
     * @param pitchM distance from row to row on the roof, m; at least the row's own footprint, and for more than one row
     *     at most 40 chords, beyond which rows no longer feel each other
     * @param rows number of rows, 1 to 1000
     * @param clearanceM height of the lower edge above the roof, m, 0 to 5
     * @param back open to wind and roof, or closed by a board
     * @param windRun the surface the wind has run over: the rack's own chord, or the whole roof for a rack lying so low
     *     that it is part of it, see {@link #roofShare}
     * @param innerWind wind at every row but the first over that at the first, 0.1 to 1.5
     */
    record OpenRack(
            double tiltDeg,
            double azimuthDeg,
            double chordM,
            double pitchM,
            int rows,
            double clearanceM,
            Back back,
            WindRun windRun,
            double innerWind)
            implements Mounting {

        /**
         * The widest pitch of rows, in chords. There an interior row gives within 1 % of what a row alone gives; give
         * rows that stand farther apart as arrays of one row each.
         */
        public static final double MOST_PITCH_CHORDS = 40;

        /** Height of the middle of a rack, in chords, from which on it has nothing of the roof's film; own choice. */
        public static final double ROOF_RUN_CHORDS = 0.1;

        /** What is assumed of the wind at inner rows where nothing is known: as at the first. */
        public static final double USUAL_INNER_WIND = 1;

        /** Checks every range. */
        public OpenRack {
            Checks.within("rack tilt", tiltDeg, 0, 90, "degrees");
            Checks.within("rack azimuth", azimuthDeg, 0, 360, "degrees");
            Checks.within("rack chord", chordM, 0.2, 20, "m");
            Checks.within("rack rows", rows, 1, 1000, "");
            Checks.within("rack clearance", clearanceM, 0, 5, "m");
            Checks.within("wind at inner rows", innerWind, 0.1, 1.5, "");
            windRun.check(tiltDeg, chordM, clearanceM);
            double footprint = chordM * Math.cos(Math.toRadians(tiltDeg));
            Checks.within("rack row pitch", pitchM, footprint, rows == 1 ? 1000 : MOST_PITCH_CHORDS * chordM, "m");
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
            this(tiltDeg, azimuthDeg, chordM, pitchM, rows, clearanceM, back, windRun, USUAL_INNER_WIND);
        }

        /** Height of the middle of the slope above the roof, m. */
        public double middleM() {
            return middleM(tiltDeg, chordM, clearanceM);
        }

        /**
         * How much of a face's film is the roof's: 1 for a rack lying on it, falling with the height of the middle of its
         * slope to 0 at {@link #ROOF_RUN_CHORDS}; 0 at any height where the wind runs over the chord.
         */
        public double roofShare() {
            return windRun == WindRun.CHORD ? 0 : Math.max(0, 1 - middleM() / (ROOF_RUN_CHORDS * chordM));
        }

        static double middleM(double tiltDeg, double chordM, double clearanceM) {
            return clearanceM + chordM * Math.sin(Math.toRadians(tiltDeg)) / 2;
        }

        /**
         * The same rack at another height of its lower edge above the roof, m; too high for a run over the roof, it has
         * the film of its chord, which it has just there anyway.
         */
        public OpenRack withClearanceM(double value) {
            WindRun run = windRun.within(tiltDeg, chordM, value);
            return new OpenRack(tiltDeg, azimuthDeg, chordM, pitchM, rows, value, back, run, innerWind);
        }

        /** The same rack with another back. */
        public OpenRack withBack(Back value) {
            return new OpenRack(tiltDeg, azimuthDeg, chordM, pitchM, rows, clearanceM, value, windRun, innerWind);
        }

        /** The same rack with another wind at its inner rows. */
        public OpenRack withInnerWind(double value) {
            return new OpenRack(tiltDeg, azimuthDeg, chordM, pitchM, rows, clearanceM, back, windRun, value);
        }
    }

    /**
     * Collectors lying on a pitched roof, nothing but a thin gap below them.
     *
     * @param tiltDeg tilt of the roof, degrees, 0 to 90
     * @param azimuthDeg direction the roof faces, degrees clockwise from north, 0 to 360
     * @param slopeLengthM length of the roof up the slope, m, 0.5 to 50
     * @param gapM mean gap between collector and roof, m, 0.0005 to 0.1
     */
    record FlushOnPitchedRoof(double tiltDeg, double azimuthDeg, double slopeLengthM, double gapM) implements Mounting {

        /** Checks every range. */
        public FlushOnPitchedRoof {
            Checks.within("roof tilt", tiltDeg, 0, 90, "degrees");
            Checks.within("roof azimuth", azimuthDeg, 0, 360, "degrees");
            Checks.within("slope length", slopeLengthM, 0.5, 50, "m");
            Checks.within("gap below the collector", gapM, 0.0005, 0.1, "m");
        }

        /** The same roof with another gap below the collector, m. */
        public FlushOnPitchedRoof withGapM(double value) {
            return new FlushOnPitchedRoof(tiltDeg, azimuthDeg, slopeLengthM, value);
        }
    }

    /**
     * What closes the back of a rack.
     *
     * @param open whether nothing does: wind, roof and sky reach the back
     * @param boardWm2K conductance of the board that closes it, from face to face, W/m²K, 0 to 50; 0 lets no heat through,
     *     and stands for no board where the back is open
     */
    record Back(boolean open, double boardWm2K) {

        /**
         * What is assumed of a board, W/m²K: 23 mm of foam of 0.035 W/mK (handbook tables, from memory), own choice. 50 mm of
         * it have 0.7, 12 mm of plywood of 0.13 W/mK 11 W/m²K (derived).
         */
        public static final double USUAL_BOARD_WM2K = 1.5;

        /** No board. */
        public static final Back OPEN = new Back(true, 0);

        /** A board as it is assumed to be. */
        public static final Back BOARDED = boarded(USUAL_BOARD_WM2K);

        /** Checks the range. */
        public Back {
            Checks.within("conductance of the board", boardWm2K, 0, open ? 0 : 50, "W/m2K");
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
        public Optional<String> refused(double tiltDeg, double chordM, double clearanceM) {
            double middleM = OpenRack.middleM(tiltDeg, chordM, clearanceM);
            double highestM = OpenRack.ROOF_RUN_CHORDS * chordM;
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
        public WindRun within(double tiltDeg, double chordM, double clearanceM) {
            return refused(tiltDeg, chordM, clearanceM).isPresent() ? CHORD : this;
        }

        /** Refuses a rack that cannot have this run. */
        public void check(double tiltDeg, double chordM, double clearanceM) {
            refused(tiltDeg, chordM, clearanceM).ifPresent(why -> {
                throw new IllegalArgumentException(why);
            });
        }
    }
}
