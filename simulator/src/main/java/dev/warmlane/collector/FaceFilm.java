package dev.warmlane.collector;

import dev.warmlane.physics.Film;
import dev.warmlane.physics.FilmCorrelation;
import dev.warmlane.physics.NaturalFace;

/**
 * The film coefficient of one face of a collector or of the roof in each hour. By the physics it is one function for
 * every mounting, each face with its own run of the wind, tilt and blend; it may also be a fit of the wind or a function of
 * the face.
 */
abstract class FaceFilm {

    /**
     * Prepares a face.
     *
     * @param correlation how the coefficient is found
     * @param air the air of each hour
     * @param windMs wind along the face in each hour, m/s
     * @param face the face: on a roof forced and natural convection join by Clear, Gartland and Winkelmann 2003, else by
     *     Churchill 1977
     * @param roughnessFactor roughness of the surface
     * @param natural the geometry of the natural part
     */
    static FaceFilm of(
            FilmCorrelation correlation,
            AirHours air,
            double[] windMs,
            FilmCorrelation.Face face,
            double roughnessFactor,
            NaturalFace natural) {
        return correlation.match(
                physical -> new Physical(air, windMs, face, roughnessFactor, natural),
                fit -> new Fitted(fit, windMs),
                own -> new Own(own, face, windMs));
    }

    /** A film between two others. */
    static FaceFilm between(FaceFilm one, FaceFilm other, double shareOfOther) {
        return shareOfOther == 1 ? other : new Between(one, other, shareOfOther);
    }

    /** Film coefficient at a temperature difference from surface to air, W/m²K. */
    final double coefficient(int hour, double differenceK) {
        return coefficient(hour, differenceK, NaturalFace.drive(differenceK));
    }

    /** The same with {@link NaturalFace#drive} of the difference at hand, which all faces of a plate share. */
    abstract double coefficient(int hour, double differenceK, double drive);

    private static final class Physical extends FaceFilm {

        private final AirHours air;
        private final NaturalFace natural;
        private final boolean onRoof;
        private final double[] forced;
        private final double[] richardsonPerK;

        Physical(
                AirHours air, double[] windMs, FilmCorrelation.Face face, double roughnessFactor, NaturalFace natural) {
            this.air = air;
            this.natural = natural;
            this.onRoof = face.onRoof();
            this.forced = new double[windMs.length];
            this.richardsonPerK = new double[windMs.length];
            for (int hour : air.solved) {
                double wind = Film.effectiveWindMs(windMs[hour]);
                forced[hour] = Film.forcedTurbulent(wind, face.runM(), roughnessFactor, air.film(hour));
                richardsonPerK[hour] = Film.richardsonPerKelvin(air.expansionPerK[hour], wind, face.runM());
            }
        }

        @Override
        double coefficient(int hour, double differenceK, double drive) {
            double still = natural.coefficient(differenceK, drive, air.rootBuoyancy[hour], air.rootConductivity[hour]);
            double film = onRoof
                    ? Film.flatRoof(forced[hour], still, richardsonPerK[hour] * Math.abs(differenceK))
                    : Film.rack(forced[hour], still);
            return film * air.surfaceCorrection(hour, differenceK);
        }
    }

    private static final class Between extends FaceFilm {

        private final FaceFilm one;
        private final FaceFilm other;
        private final double shareOfOther;

        Between(FaceFilm one, FaceFilm other, double shareOfOther) {
            this.one = one;
            this.other = other;
            this.shareOfOther = shareOfOther;
        }

        @Override
        double coefficient(int hour, double differenceK, double drive) {
            double from = one.coefficient(hour, differenceK, drive);
            return from + shareOfOther * (other.coefficient(hour, differenceK, drive) - from);
        }
    }

    private static final class Fitted extends FaceFilm {

        private final double[] coefficient;

        Fitted(FilmCorrelation.WindFit fit, double[] windMs) {
            coefficient = new double[windMs.length];
            for (int hour = 0; hour < windMs.length; hour++) {
                coefficient[hour] = checked(fit.coefficient(windMs[hour]), windMs[hour]);
            }
        }

        @Override
        double coefficient(int hour, double differenceK, double drive) {
            return coefficient[hour];
        }
    }

    private static final class Own extends FaceFilm {

        private final FilmCorrelation.OfFace correlation;
        private final FilmCorrelation.Face face;
        private final double[] windMs;

        Own(FilmCorrelation.OfFace correlation, FilmCorrelation.Face face, double[] windMs) {
            this.correlation = correlation;
            this.face = face;
            this.windMs = windMs;
        }

        @Override
        double coefficient(int hour, double differenceK, double drive) {
            return checked(correlation.coefficient(face, windMs[hour], differenceK), windMs[hour]);
        }
    }

    private static double checked(double wm2K, double windMs) {
        if (!(wm2K >= 0 && wm2K < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the film correlation gives " + wm2K + " W/m2K at a wind of " + windMs
                    + " m/s; allowed: 0 or more, finite, at every wind and temperature");
        }
        return wm2K;
    }
}
