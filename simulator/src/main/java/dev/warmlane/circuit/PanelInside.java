package dev.warmlane.circuit;

import dev.warmlane.hydraulics.Liquid;
import dev.warmlane.hydraulics.MeasuredDrop;
import dev.warmlane.hydraulics.Pipe;
import dev.warmlane.hydraulics.Way;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.function.Function;

/** What a panel takes of pressure between its headers: by its tubes, or as its maker measured it. */
public sealed interface PanelInside permits PanelInside.Tubes, PanelInside.Measured {

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<Tubes, T> tubes, Function<Measured, T> measured);

    /** The way through a panel of a length, m. */
    default Way panel(double lengthM, Liquid liquid) {
        return match(tubes -> tubes.through(lengthM, liquid), measured -> measured.through(lengthM));
    }

    /**
     * Many small tubes side by side.
     *
     * @param number tubes of a panel
     * @param innerM bore of a tube, m
     * @param endLosses loss factors at both ends of a tube together, on the dynamic pressure in it
     */
    record Tubes(int number, double innerM, double endLosses) implements PanelInside {

        /** Range of {@link #number}. */
        public static final Range NUMBER = Range.number("tubes of a panel", 1, 2000);

        /** Range of {@link #innerM}. */
        public static final Range INNER =
                Range.of("bore of a tube", Dimension.LENGTH, 1e-3, 0.05).writtenIn("mm");

        /** Range of {@link #endLosses}. */
        public static final Range END_LOSSES = Range.number("loss factors at the ends of a tube", 0, 1000);

        /** Usual {@link #endLosses}. */
        public static final Usual USUAL_END_LOSSES = END_LOSSES.usually(
                1.5, "in over a sharp edge 0.5, out into the header 1, handbook values, from memory");

        /** Checks every range. */
        public Tubes {
            NUMBER.check(number);
            INNER.check(innerM);
            END_LOSSES.check(endLosses);
        }

        @Override
        public <T> T match(Function<Tubes, T> tubes, Function<Measured, T> measured) {
            return tubes.apply(this);
        }

        private Way through(double lengthM, Liquid liquid) {
            Pipe tube = new Pipe(innerM, lengthM, PanelTubes.SMOOTH_M, endLosses);
            return kgS -> tube.dropPa(kgS / number, liquid);
        }
    }

    /**
     * As it was measured, in proportion to the length for panels of another.
     *
     * @param drop pressure over the flow of one panel
     * @param lengthM length of the panel that was measured, m
     */
    record Measured(MeasuredDrop drop, double lengthM) implements PanelInside {

        /** Refuses a panel of no length. */
        public Measured {
            if (!(lengthM > 0)) {
                throw new IllegalArgumentException(
                        "a panel whose drop was measured has a length, was " + lengthM + " m");
            }
        }

        @Override
        public <T> T match(Function<Tubes, T> tubes, Function<Measured, T> measured) {
            return measured.apply(this);
        }

        private Way through(double otherM) {
            return kgS -> otherM / lengthM * drop.dropPa(kgS);
        }
    }
}
