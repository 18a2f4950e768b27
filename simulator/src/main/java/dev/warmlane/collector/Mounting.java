package dev.warmlane.collector;

import dev.warmlane.units.Checks;

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
     *     that it is part of it
     */
    record OpenRack(
            double tiltDeg,
            double azimuthDeg,
            double chordM,
            double pitchM,
            int rows,
            double clearanceM,
            Back back,
            WindRun windRun)
            implements Mounting {

        /**
         * The widest pitch of rows, in chords. There an interior row gives within 1 % of what a row alone gives; give
         * rows that stand farther apart as arrays of one row each.
         */
        public static final double MOST_PITCH_CHORDS = 40;

        /** Checks every range. */
        public OpenRack {
            Checks.within("rack tilt", tiltDeg, 0, 90, "degrees");
            Checks.within("rack azimuth", azimuthDeg, 0, 360, "degrees");
            Checks.within("rack chord", chordM, 0.2, 20, "m");
            Checks.within("rack rows", rows, 1, 1000, "");
            Checks.within("rack clearance", clearanceM, 0, 5, "m");
            double footprint = chordM * Math.cos(Math.toRadians(tiltDeg));
            Checks.within("rack row pitch", pitchM, footprint, rows == 1 ? 1000 : MOST_PITCH_CHORDS * chordM, "m");
        }

        /** A rack with an open back whose film is that of its own chord. */
        public OpenRack(double tiltDeg, double azimuthDeg, double chordM, double pitchM, int rows, double clearanceM) {
            this(tiltDeg, azimuthDeg, chordM, pitchM, rows, clearanceM, Back.OPEN, WindRun.CHORD);
        }

        /** The same rack at another height of its lower edge above the roof, m. */
        public OpenRack withClearanceM(double value) {
            return new OpenRack(tiltDeg, azimuthDeg, chordM, pitchM, rows, value, back, windRun);
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

    /** What closes the back of a rack. */
    enum Back {
        /** Nothing: wind, roof and sky reach the back. */
        OPEN,
        /** An insulating board: no heat and no light pass through the back. */
        BOARDED
    }

    /** The surface over which the wind's boundary layer has grown. */
    enum WindRun {
        /** The rack's own chord. */
        CHORD,
        /** The roof from its edge. */
        ROOF
    }
}
