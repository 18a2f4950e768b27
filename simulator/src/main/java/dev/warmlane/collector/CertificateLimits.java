package dev.warmlane.collector;

import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.physics.Constants;
import dev.warmlane.weather.WeatherYear;
import java.util.Locale;

/**
 * What the coefficients of a certificate must leave at every wind between the lowest and the highest tested, whatever
 * they are one by one: a loss, and a share of light and sky that can be. All are straight in the wind, so that the two
 * ends tell.
 */
public final class CertificateLimits {

    /** A collector that lost less than this per kelvin would not be an unglazed one, W/m²K; own choice. */
    public static final double LEAST_LOSS_WM2K = 2;

    /** A collector keeps no more light than falls on it. */
    public static final double MOST_EFFICIENCY = 1;

    /** Largest share of the sky's long-wave: that of {@code a4}. */
    public static final double MOST_SKY_SHARE = CertificateCurve.A4.highest();

    /** The two forms of the standard are one polynomial but for rounding. */
    private static final double ROUNDING = 1e-9;

    /** Air for which the radiation of a plate is reckoned where a certificate is doubted, °C: that of a mild test day; own choice. */
    public static final double DOUBT_AIR_C = 20;

    private CertificateLimits() {}

    /** Loss in still air, W/m²K: the straight line through the tested winds carried on to none. */
    public static double calmLossWm2K(double a1, double a3) {
        return a1 - a3 * CertificateCurve.REFERENCE_WIND_MS;
    }

    /** What the open faces of a tested plate radiate per kelvin above the air in still air, W/m²K: a4·4σTa³ each. */
    public static double radiatedWm2K(double a4, double a7, TestStand test) {
        return (test.backOpen() ? 2 : 1) * at(0, a4, a7) * radiationWm2K(DOUBT_AIR_C);
    }

    /** Whether a plate would lose less in still air than it radiates, see {@link CertificateCurve#doubt}. */
    public static boolean losesLessThanItRadiates(double a1, double a3, double a4, double a7, TestStand test) {
        return calmLossWm2K(a1, a3) < radiatedWm2K(a4, a7, test);
    }

    /** Loss at the lowest tested wind, where it is least, W/m²K: a1 + a3·u′. */
    public static double lossWm2K(double a1, double a3, TestStand test) {
        return a1 + a3 * (test.lowestWindMs() - CertificateCurve.REFERENCE_WIND_MS);
    }

    /**
     * The same loss without what an open back radiates, W/m²K: what is left to a mounting with a closed back, in the
     * hottest air that there is.
     */
    public static double lossWithoutBackWm2K(double a1, double a3, double a4, double a7, TestStand test) {
        double sky = at(test.lowestWindMs(), a4, a7);
        return lossWm2K(a1, a3, test) - sky * radiationWm2K(WeatherYear.HOTTEST_AIR_C);
    }

    /** Whether a loss is one that an unglazed collector can have. */
    public static boolean isLoss(double lossWm2K) {
        return lossWm2K >= LEAST_LOSS_WM2K - ROUNDING;
    }

    /** A share and its fall with the wind: η0 and a6, or a4 and a7, at a wind. */
    public static double at(double windMs, double share, double perMs) {
        return share - perMs * (windMs - CertificateCurve.REFERENCE_WIND_MS);
    }

    /** Whether a share lies between 0 and the most that can be. */
    public static boolean isShare(double share, double most) {
        return share >= -ROUNDING && share <= most + ROUNDING;
    }

    /** Radiation of a black surface per kelvin above the air, W/m²K: 4σTa³. */
    static double radiationWm2K(double airC) {
        double kelvin = airC + Constants.KELVIN;
        return 4 * Constants.STEFAN_BOLTZMANN * kelvin * kelvin * kelvin;
    }

    static void check(double eta0, double a1, double a3, double a4, double a6, double a7, TestStand test) {
        double loss = lossWm2K(a1, a3, test);
        if (!isLoss(loss)) {
            throw refused(
                    "the certificate leaves a loss a1 + a3 (u - 3) of %.2f W/m2K at the lowest tested wind, %.1f m/s;"
                            + " an unglazed collector loses at least %.0f: check a1 and a3, or raise the lowest tested"
                            + " wind",
                    loss, test.lowestWindMs(), LEAST_LOSS_WM2K);
        }
        for (double wind : new double[] {test.lowestWindMs(), test.highestWindMs()}) {
            if (!isShare(at(wind, eta0, a6), MOST_EFFICIENCY)) {
                throw refused(
                        "the certificate leaves an efficiency eta0 - a6 (u - 3) of %.3f at %.1f m/s; allowed: 0 to %.0f"
                                + " at every tested wind: check eta0 and a6, or narrow the tested winds",
                        at(wind, eta0, a6), wind, MOST_EFFICIENCY);
            }
            if (!isShare(at(wind, a4, a7), MOST_SKY_SHARE)) {
                throw refused(
                        "the certificate leaves a share of the sky a4 - a7 (u - 3) of %.3f at %.1f m/s; allowed: 0 to"
                                + " %.1f at every tested wind: check a4 and a7, or narrow the tested winds",
                        at(wind, a4, a7), wind, MOST_SKY_SHARE);
            }
        }
        double withoutBack = lossWithoutBackWm2K(a1, a3, a4, a7, test);
        if (test.backOpen() && !isLoss(withoutBack)) {
            throw refused(
                    "the certificate of a collector tested with an open back leaves a loss of %.2f W/m2K at the lowest"
                            + " tested wind, %.1f m/s, once the back's radiation is taken out; an unglazed collector"
                            + " loses at least %.0f: was the back closed, or the lowest tested wind higher?",
                    withoutBack, test.lowestWindMs(), LEAST_LOSS_WM2K);
        }
    }

    private static IllegalArgumentException refused(String format, Object... values) {
        return new IllegalArgumentException(String.format(Locale.ROOT, format, values));
    }
}
