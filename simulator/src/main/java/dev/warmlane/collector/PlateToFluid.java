package dev.warmlane.collector;

import dev.warmlane.units.Checks;

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

    /**
     * A given conductance: F' = U_i / (U_i + U_L).
     *
     * @param wm2K U_i, W per m² of collector and kelvin, 5 to 10000
     */
    record Conductance(double wm2K) implements PlateToFluid {

        /** Checks the range. */
        public Conductance {
            Checks.within("plate to fluid conductance", wm2K, 5, 10000, "W/m2K");
        }

        @Override
        public double efficiencyFactor(double lossWm2K) {
            return wm2K / (wm2K + lossWm2K);
        }
    }

    /**
     * Tubes joined by a flat plate: F' from the geometry with the resistance of the tube's wall, Duffie and Beckman
     * chapter 6, fin and tube; lengths in m.
     *
     * @param tubePitchM distance from tube to tube W, m, 0.003 to 0.5
     * @param outerDiameterM outer diameter of a tube, m; at most the pitch
     * @param innerDiameterM inner diameter, m; less than the outer
     * @param finThicknessM thickness of the plate between tubes, m, 0.0002 to 0.02
     * @param conductivityWmK conductivity of the material, W/mK, 0.05 to 400
     * @param innerFilmWm2K film coefficient inside the tube, W/m²K, 20 to 20000
     */
    record TubeSheet(
            double tubePitchM,
            double outerDiameterM,
            double innerDiameterM,
            double finThicknessM,
            double conductivityWmK,
            double innerFilmWm2K)
            implements PlateToFluid {

        /** Nusselt number of fully developed laminar flow with constant heat flux, 48/11. */
        private static final double LAMINAR_NUSSELT = 4.364;

        /** Conductivity of water near 25 °C, W/mK; from memory of steam tables. */
        private static final double WATER_CONDUCTIVITY = 0.61;

        /** Checks every range. */
        public TubeSheet {
            Checks.within("tube pitch", tubePitchM, 0.003, 0.5, "m");
            Checks.within("outer tube diameter", outerDiameterM, 0.002, tubePitchM, "m");
            Checks.within("inner tube diameter", innerDiameterM, 0.001, outerDiameterM - 1e-5, "m");
            Checks.within("fin thickness", finThicknessM, 0.0002, 0.02, "m");
            Checks.within("conductivity", conductivityWmK, 0.05, 400, "W/mK");
            Checks.within("inner film coefficient", innerFilmWm2K, 20, 20000, "W/m2K");
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
    }
}
