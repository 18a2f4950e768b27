package dev.warmlane.roof;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import java.util.function.Function;

/** How panels come to be on a surface. */
public sealed interface Laying {

    /** One answer for each kind. */
    <T> T match(Function<Mats, T> mats, Function<Racks, T> racks);

    /** Rows of banks in a row: one, or the two sides of a tent, whose banks are laid together or not at all. */
    default int sides() {
        return match(mats -> 1, racks -> racks.tents ? 2 : 1);
    }

    /** Way that is kept in front of a row for others, m. */
    default double frontM(PanelRules rules) {
        return match(mats -> rules.walkwayM(), racks -> racks.tents ? racks.wayM(rules) : rules.walkwayM());
    }

    /** Way that is kept behind a row for others, m: behind racks as much as to their own next row. */
    default double backM(PanelRules rules) {
        return match(mats -> rules.walkwayM(), racks -> racks.wayM(rules));
    }

    /** Mats that lie on it, their tubes one way or the other. */
    record Mats() implements Laying {
        @Override
        public <T> T match(Function<Mats, T> mats, Function<Racks, T> racks) {
            return mats.apply(this);
        }
    }

    /**
     * Racks in rows, all at the same distance, on which panels stand with their length up the slope; or tents, each of two
     * such racks back to back.
     *
     * @param tiltDeg tilt of the racks, degrees
     * @param facingDeg where their fronts face, degrees clockwise from north; of tents one of the two ways
     * @param chordM length of a panel up the slope, m
     * @param pitchM distance from row to row, of tents from ridge to ridge, m
     * @param tents whether a row is two racks back to back
     */
    record Racks(double tiltDeg, double facingDeg, double chordM, double pitchM, boolean tents) implements Laying {

        private static final Range TILT = Range.of("tilt of the racks", Dimension.TILT, 0, 90);
        private static final Range PITCH = Range.of("rack row pitch", Dimension.LENGTH, 0.05, 1000);

        /** Checks every range. */
        public Racks {
            TILT.check(tiltDeg);
            Surface.AZIMUTH.check(facingDeg);
            PanelRules.LENGTH.from(0.1).check(chordM);
            PITCH.check(pitchM);
        }

        /** Rows of single racks. */
        public Racks(double tiltDeg, double facingDeg, double chordM, double pitchM) {
            this(tiltDeg, facingDeg, chordM, pitchM, false);
        }

        /** The same rows at another distance, m. */
        public Racks withPitchM(double value) {
            return new Racks(tiltDeg, facingDeg, chordM, value, tents);
        }

        /** Roof that a row takes, from front to back, with the headers of its panels, m. */
        public double depthM(PanelRules rules) {
            return sides() * (chordM + rules.headersM()) * Math.cos(Math.toRadians(tiltDeg));
        }

        /** Way from a row to the next, m; at least a walkway. */
        private double wayM(PanelRules rules) {
            return Math.max(rules.walkwayM(), pitchM - depthM(rules));
        }

        /** Whether the rows leave the way between them that the rules ask for. */
        public boolean leaves(PanelRules rules) {
            return pitchM >= depthM(rules) + rules.walkwayM() - Blocked.ROUNDING_M;
        }

        @Override
        public <T> T match(Function<Mats, T> mats, Function<Racks, T> racks) {
            return racks.apply(this);
        }
    }
}
