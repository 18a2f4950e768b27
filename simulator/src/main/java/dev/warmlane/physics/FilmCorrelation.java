package dev.warmlane.physics;

import dev.warmlane.units.Checks;
import java.util.function.Function;

/**
 * How the film coefficient of one face is found: from the physics of {@link Film} (the default), by a fit of wind speed
 * alone, published or of one's own, or by a function of the face, so that each mounting may have its own. Never add a
 * natural part to a fit: it already contains one.
 *
 * <p>One of your own must be immutable and give 0 or more; make it a record or keep the object, since forcing is shared
 * among installations whose films are equal.
 */
public sealed interface FilmCorrelation {

    /** Forced and natural flow by {@link Film}, blended by the mounting. */
    FilmCorrelation PHYSICAL = new Physical();

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<Physical, T> physical, Function<WindFit, T> fit, Function<OfFace, T> face);

    /** Where it comes from, in a few words for a report. */
    String source();

    /** Marks the choice of {@link Film}. */
    record Physical() implements FilmCorrelation {
        @Override
        public String source() {
            return "forced and natural flow over each face";
        }

        @Override
        public <T> T match(Function<Physical, T> physical, Function<WindFit, T> fit, Function<OfFace, T> face) {
            return physical.apply(this);
        }
    }

    /** A fit that knows the wind alone. Asked once an hour while forcing is prepared. */
    @FunctionalInterface
    non-sealed interface WindFit extends FilmCorrelation {

        /**
         * Film coefficient of one face, W/m²K.
         *
         * @param windMs wind speed at the face, m/s, 0 or more; beyond the range of the source the fit is continued
         */
        double coefficient(double windMs);

        @Override
        default String source() {
            return "no source named";
        }

        @Override
        default <T> T match(Function<Physical, T> physical, Function<WindFit, T> fit, Function<OfFace, T> face) {
            return fit.apply(this);
        }
    }

    /**
     * A film that knows its face, and so its mounting: mats by one function, racks by another. Asked some tens of times an
     * hour while forcing is prepared, never in the hourly loop.
     */
    @FunctionalInterface
    non-sealed interface OfFace extends FilmCorrelation {

        /**
         * Film coefficient, W/m²K.
         *
         * @param face the face
         * @param windMs wind speed at it, m/s
         * @param differenceK surface less air, K
         */
        double coefficient(Face face, double windMs, double differenceK);

        @Override
        default String source() {
            return "no source named";
        }

        @Override
        default <T> T match(Function<Physical, T> physical, Function<WindFit, T> fit, Function<OfFace, T> face) {
            return face.apply(this);
        }
    }

    /**
     * A face that meets the wind.
     *
     * @param tiltDeg tilt from the horizontal, degrees
     * @param facesUp whether it is the upper one
     * @param runM the surface that the wind has run over, m
     * @param onRoof whether it is part of a flat roof's surface: a mat's top, or a rack lying low, whose film is then taken
     *     between that and one in the open
     */
    record Face(double tiltDeg, boolean facesUp, double runM, boolean onRoof) {}

    /** Straight lines in wind speed. */
    enum Linear implements WindFit {
        /** 2.8 + 3.0 V: Watmuff, Charters and Proctor, COMPLES 2, 1977, 56; V of 0 to 7 m/s (range from memory). */
        WATMUFF("Watmuff, Charters and Proctor 1977", 2.8, 3.0),
        /** 5.7 + 3.8 V: McAdams, Heat Transmission, 3rd edition, 1954; V below 5 m/s. */
        MCADAMS("McAdams 1954", 5.7, 3.8),
        /** 8.55 + 2.56 V: Test, Lessmann and Johary, J. Heat Transfer 103, 1981, 262-267 (from memory). */
        TEST("Test, Lessmann and Johary 1981", 8.55, 2.56),
        /**
         * 6.5 + 3.3 V: Sharples and Charlesworth, Solar Energy 62(2), 1998, 69-77, wind across the slope of a collector
         * on a pitched roof (coefficients from memory).
         */
        SHARPLES("Sharples and Charlesworth 1998", 6.5, 3.3);

        private final String source;
        private final double stillAir;
        private final double perMs;

        Linear(String source, double stillAir, double perMs) {
            this.source = source;
            this.stillAir = stillAir;
            this.perMs = perMs;
        }

        @Override
        public double coefficient(double windMs) {
            return stillAir + perMs * windMs;
        }

        @Override
        public String source() {
            return source;
        }
    }

    /**
     * max(5, 8.6 V^0.6 / ℒ^0.4), ℒ the cube root of the building's volume: Mitchell, "Heat transfer from spheres and
     * other animal forms", Biophysical Journal 16, 1976, 561-569, as Duffie and Beckman apply it to collectors on
     * buildings (from memory).
     *
     * @param buildingVolumeM3 volume of the building that carries the collector, m³, 1 to 1e7
     */
    record Mitchell(double buildingVolumeM3) implements WindFit {

        /** Checks the range. */
        public Mitchell {
            Checks.within("building volume", buildingVolumeM3, 1, 1e7, "m3");
        }

        @Override
        public double coefficient(double windMs) {
            return Math.max(5, 8.6 * Math.pow(windMs, 0.6) / Math.pow(Math.cbrt(buildingVolumeM3), 0.4));
        }

        @Override
        public String source() {
            return "Mitchell 1976, as Duffie and Beckman apply it";
        }
    }
}
