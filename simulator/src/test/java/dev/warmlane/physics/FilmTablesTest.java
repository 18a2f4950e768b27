package dev.warmlane.physics;

import dev.warmlane.DocBlock;
import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** How much the choices in the film move: tables of docs/model.md. {@code -Ddocs.write=true} writes them. */
class FilmTablesTest {

    private static final double AIR_C = 20;
    private static final double PRESSURE_KPA = Constants.STANDARD_PRESSURE_KPA;

    /** The mean run over a roof of 30 m by 14 m. */
    private static final double ROOF_RUN_M = 16.9;

    private static final double ROUGHNESS = 1.13;
    private static final double CHORD_M = 2;

    @Test
    void roofBlendOverTheBlendInTheOpen() throws IOException {
        StringBuilder rows = new StringBuilder("""
                | wind, m/s | 0.5 | 1 | 1.5 | 2 | 3 | 5 |
                |---|---|---|---|---|---|---|
                """);
        for (int difference : new int[] {5, 10, 20}) {
            rows.append("| plate ").append(difference).append(" K above air");
            double film = AIR_C + difference / 2.0;
            double viscosity = Air.kinematicViscosityM2S(film, PRESSURE_KPA);
            double natural = natural(difference, 0, ROOF_RUN_M);
            double grashof = Film.grashof(Air.expansionPerK(film), difference, ROOF_RUN_M, viscosity);
            for (double wind : new double[] {0.5, 1, 1.5, 2, 3, 5}) {
                double forced = forced(wind, difference, ROOF_RUN_M);
                double onRoof = Film.flatRoof(forced, natural, grashof, Film.reynolds(wind, ROOF_RUN_M, viscosity));
                rows.append(" | " + percent(onRoof, Film.rack(forced, natural)));
            }
            rows.append(" |\n");
        }
        DocBlock.check("model.md", "blends", rows.toString());
    }

    @Test
    void bothComponentsOfGravityOverTheOneAlongTheSlope() throws IOException {
        int difference = 15;
        double film = AIR_C + difference / 2.0;
        double rayleigh = Film.rayleighPerKelvin(
                        Air.expansionPerK(film), Air.kinematicViscosityM2S(film, PRESSURE_KPA), Air.prandtl(film))
                * difference
                * Math.pow(CHORD_M, 3);
        double along =
                Air.conductivityWmK(film) * Film.alongNusselt(rayleigh * 0.5, Air.prandtl(film)) / CHORD_M; // sin 30°
        double both = natural(difference, 30, CHORD_M);
        StringBuilder rows = new StringBuilder("""
                | upper face, chord 2 m, 30°, 15 K above air | natural, W/m²K | film at 1 m/s | at 3 m/s |
                |---|---|---|---|
                """);
        rows.append(String.format(
                Locale.ROOT, "| both components, against along the slope alone | %.2f, %.2f", both, along));
        for (double wind : new double[] {1, 3}) {
            double forced = forced(wind, difference, CHORD_M);
            rows.append(" | " + percent(Film.rack(forced, both), Film.rack(forced, along)));
        }
        DocBlock.check("model.md", "components of gravity", rows.append(" |\n").toString());
    }

    private static String percent(double one, double other) {
        return DocBlock.signed(100 * (one / other - 1), 0) + " %";
    }

    private static double natural(double difference, double tiltDeg, double lengthM) {
        double film = AIR_C + difference / 2;
        return Film.natural(
                new PlateFace(tiltDeg, true, lengthM, lengthM / 4),
                AIR_C + difference,
                AIR_C,
                FilmAir.at(film, PRESSURE_KPA));
    }

    private static double forced(double wind, double difference, double lengthM) {
        double film = AIR_C + difference / 2;
        return Film.forcedTurbulent(wind, lengthM, ROUGHNESS, FilmAir.at(film, PRESSURE_KPA));
    }
}
