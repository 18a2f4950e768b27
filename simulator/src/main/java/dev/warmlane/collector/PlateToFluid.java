package dev.warmlane.collector;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import java.util.function.Function;

/** The thermal way from the absorber plate to the fluid in its tubes. */
public sealed interface PlateToFluid {

    /**
     * Collector efficiency factor F': useful heat over the heat that would be useful if the whole plate were at the
     * fluid's temperature (Duffie and Beckman, Solar Engineering of Thermal Processes, chapter 6).
     *
     * @param lossWm2K loss coefficient of the plate U_L, W/m²K, above 0
     * @return F', 0 to 1
     */
    double efficiencyFactor(double lossWm2K);

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<Conductance, T> conductance, Function<TubeSheet, T> tubes);

    /**
     * A given conductance: F' = U_i / (U_i + U_L).
     *
     * @param wm2K U_i, W per m² of collector and kelvin
     */
    record Conductance(double wm2K) implements PlateToFluid {

        /** Range of {@link #wm2K}. */
        public static final Range CONDUCTANCE =
                Range.of("plate to fluid conductance", Dimension.HEAT_TRANSFER_COEFFICIENT, 5, 10_000);

        /** Checks the range. */
        public Conductance {
            CONDUCTANCE.check(wm2K);
        }

        @Override
        public double efficiencyFactor(double lossWm2K) {
            return wm2K / (wm2K + lossWm2K);
        }

        @Override
        public <T> T match(Function<Conductance, T> conductance, Function<TubeSheet, T> tubes) {
            return conductance.apply(this);
        }
    }

    /**
     * Tubes joined by a flat plate: F' from the geometry with the resistance of the tube's wall, Duffie and Beckman
     * chapter 6, fin and tube; lengths in m.
     *
     * @param tubePitchM distance from tube to tube W, m
     * @param outerDiameterM outer diameter of a tube, m; at most the pitch
     * @param innerDiameterM inner diameter, m; less than the outer
     * @param finThicknessM thickness of the plate between tubes, m
     * @param conductivityWmK conductivity of the material, W/mK
     * @param innerFilmWm2K film coefficient inside the tube, W/m²K
     */
    record TubeSheet(
            double tubePitchM,
            double outerDiameterM,
            double innerDiameterM,
            double finThicknessM,
            double conductivityWmK,
            double innerFilmWm2K)
            implements PlateToFluid {

        /** Range of {@link #tubePitchM}. */
        public static final Range TUBE_PITCH =
                Range.of("tube pitch", Dimension.LENGTH, 0.003, 0.5).writtenIn("mm");

        /** Range of {@link #outerDiameterM}. */
        public static final Range OUTER_DIAMETER =
                Range.of("outer tube diameter", Dimension.LENGTH, 0.002, 0.5).writtenIn("mm");

        /** Range of {@link #innerDiameterM}. */
        public static final Range INNER_DIAMETER =
                Range.of("inner tube diameter", Dimension.LENGTH, 0.001, 0.5).writtenIn("mm");

        /** Range of {@link #finThicknessM}. */
        public static final Range FIN_THICKNESS =
                Range.of("fin thickness", Dimension.LENGTH, 0.0002, 0.02).writtenIn("mm");

        /** Range of {@link #conductivityWmK}. */
        public static final Range CONDUCTIVITY = Range.of("conductivity", Dimension.CONDUCTIVITY, 0.05, 400);

        /** Range of {@link #innerFilmWm2K}. */
        public static final Range INNER_FILM =
                Range.of("inner film coefficient", Dimension.HEAT_TRANSFER_COEFFICIENT, 20, 20_000);

        /** A bore as wide as its tube is a slip; own choice, m. */
        private static final double LEAST_WALL_M = 1e-5;

        /** Nusselt number of fully developed laminar flow with constant heat flux, 48/11. */
        private static final double LAMINAR_NUSSELT = 4.364;

        /** Conductivity of water near 25 °C, W/mK; from memory of steam tables. */
        private static final double WATER_CONDUCTIVITY = 0.61;

        /** Checks every range. */
        public TubeSheet {
            TUBE_PITCH.check(tubePitchM);
            OUTER_DIAMETER.upTo(tubePitchM).check(outerDiameterM);
            INNER_DIAMETER.upTo(outerDiameterM - LEAST_WALL_M).check(innerDiameterM);
            FIN_THICKNESS.check(finThicknessM);
            CONDUCTIVITY.check(conductivityWmK);
            INNER_FILM.check(innerFilmWm2K);
        }

        /** Tubes with laminar flow in them, {@link #laminarFilmWm2K}. */
        public static TubeSheet ofLaminarFlow(
                double tubePitchM,
                double outerDiameterM,
                double innerDiameterM,
                double finThicknessM,
                double conductivityWmK) {
            double film = laminarFilmWm2K(innerDiameterM);
            return new TubeSheet(tubePitchM, outerDiameterM, innerDiameterM, finThicknessM, conductivityWmK, film);
        }

        /** The same tubes with another film inside, W/m²K. */
        public TubeSheet withInnerFilmWm2K(double value) {
            return new TubeSheet(tubePitchM, outerDiameterM, innerDiameterM, finThicknessM, conductivityWmK, value);
        }

        /** The same tubes of another material, conductivity in W/mK. */
        public TubeSheet withConductivityWmK(double value) {
            return new TubeSheet(tubePitchM, outerDiameterM, innerDiameterM, finThicknessM, value, innerFilmWm2K);
        }

        /** Film coefficient of laminar water flow in a tube, W/m²K: 4.364 k/D. */
        public static double laminarFilmWm2K(double innerDiameterM) {
            return LAMINAR_NUSSELT * WATER_CONDUCTIVITY / innerDiameterM;
        }

        @Override
        public double efficiencyFactor(double lossWm2K) {
            double half = (tubePitchM - outerDiameterM) / 2;
            double x = Math.sqrt(lossWm2K / (conductivityWmK * finThicknessM)) * half;
            double fin = x < 1e-6 ? 1 : Math.tanh(x) / x;
            double plate = 1 / (lossWm2K * (outerDiameterM + 2 * half * fin));
            double wall = Math.log(outerDiameterM / innerDiameterM) / (2 * Math.PI * conductivityWmK);
            double film = 1 / (Math.PI * innerDiameterM * innerFilmWm2K);
            return 1 / lossWm2K / (tubePitchM * (plate + wall + film));
        }

        @Override
        public <T> T match(Function<Conductance, T> conductance, Function<TubeSheet, T> tubes) {
            return tubes.apply(this);
        }
    }
}
