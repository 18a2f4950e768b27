package dev.warmlane.scenario;

import static dev.warmlane.collector.CertificateLimits.LEAST_LOSS_WM2K;
import static dev.warmlane.collector.CertificateLimits.MOST_EFFICIENCY;
import static dev.warmlane.collector.CertificateLimits.MOST_SKY_SHARE;

import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.collector.CertificateLimits;
import dev.warmlane.collector.UnglazedForm2013;

/**
 * Coefficients of a certificate that do not go together, told by the keys of the form they were given in. The limits are
 * those of {@link CertificateLimits}.
 */
final class CertificateChecks {

    private static final double REFERENCE_MS = CertificateCurve.REFERENCE_WIND_MS;

    private static final Kind<Double> SPEED = Kinds.of(TestStand.HIGHEST_WIND);
    private static final Kind<Double> LOSS = Kinds.of(CertificateCurve.A1);

    private static final Kind<Double> A7 = Kinds.of(CertificateCurve.A7);
    private static final Kind<Double> SHARE = Kinds.of(CertificateCurve.A4);

    private static final String PLAIN = quoted(CertificateKeys.Form.EN_12975);
    private static final String REFERENCED = quoted(CertificateKeys.Form.ISO_9806_2017);

    private CertificateChecks() {}

    /** The limits are those of the curve that the coefficients become, {@link UnglazedForm2013#curve}. */
    static void form2013(Section s, double eta0, double bu, double b1, double b2, double ratio, TestStand stand) {
        double efficiency = eta0 * (1 - REFERENCE_MS * bu);
        double loss = b1 + REFERENCE_MS * b2;
        if (efficiency < CertificateCurve.ETA0.lowest()) {
            s.error(
                    CertificateKeys.BU,
                    "with this eta0 leaves an efficiency of " + share(efficiency) + " at 3 m/s; allowed: at least "
                            + share(CertificateCurve.ETA0.lowest()));
        } else if (eta0 * bu * ratio > CertificateCurve.A7.highest()) {
            s.error(
                    CertificateKeys.BU,
                    "times eta0 and emittance_over_absorptance is " + share(eta0 * bu * ratio)
                            + " s/m; allowed: at most "
                            + A7.show(CertificateCurve.A7.highest()));
        } else if (!CertificateLimits.isShare(1 - bu * stand.highestWindMs(), MOST_EFFICIENCY)) {
            s.error(
                    CertificateKeys.BU,
                    "makes the light cool the collector at the highest tested wind, "
                            + SPEED.show(stand.highestWindMs())
                            + "; allowed: bu times that wind at most 1: check bu, or lower test_wind_highest");
        }
        if (loss > CertificateCurve.A1.highest()) {
            s.error(
                    CertificateKeys.B2,
                    "with this b1 makes a loss of " + LOSS.show(loss) + " at 3 m/s; allowed: at most "
                            + LOSS.show(CertificateCurve.A1.highest()));
        }
        loss(
                s,
                new Losses(CertificateKeys.B1, "b1 + b2 u", "b1 and b2", ""),
                new Coefficients(loss, b2, efficiency * ratio, eta0 * bu * ratio),
                stand);
    }

    /** Loss, light and sky at every tested wind. */
    static void form2017(
            Section s, double eta0, double a1, double a3, double a4, double a6, double a7, TestStand stand) {
        String otherwise =
                "; if they multiply the plain wind and not u - 3 m/s, the form is " + PLAIN + ", not " + REFERENCED;
        straight(
                s,
                new Losses(CertificateKeys.A3, "a1 + a3 (u - 3 m/s)", "a1 and a3", otherwise),
                "(u - 3 m/s)",
                eta0,
                a6,
                new Coefficients(a1, a3, a4, a7),
                stand);
    }

    /** The coefficients as they are given, for the plain wind; the limits are those of the curve that they become. */
    static void plainWind(
            Section s, double eta0, double a1, double a3, double a4, double a6, double a7, TestStand stand) {
        double efficiency = eta0 - REFERENCE_MS * a6;
        double loss = a1 + REFERENCE_MS * a3;
        if (efficiency < CertificateCurve.ETA0.lowest()) {
            s.error(
                    CertificateKeys.A6,
                    "with this eta0 leaves an efficiency of " + share(efficiency) + " at 3 m/s; allowed: at least "
                            + share(CertificateCurve.ETA0.lowest()));
            return;
        }
        if (loss > CertificateCurve.A1.highest()) {
            s.error(
                    CertificateKeys.A3,
                    "with this a1 makes a loss of " + LOSS.show(loss) + " at 3 m/s; allowed: at most "
                            + LOSS.show(CertificateCurve.A1.highest()));
            return;
        }
        if (a4 - REFERENCE_MS * a7 < CertificateCurve.A4.lowest()) {
            s.error(
                    CertificateKeys.A7,
                    "with this a4 leaves a share of the sky of " + share(a4 - REFERENCE_MS * a7)
                            + " at 3 m/s; allowed: at least " + share(CertificateCurve.A4.lowest()));
            return;
        }
        straight(
                s,
                new Losses(CertificateKeys.A3, "a1 + a3 u", "a1 and a3", ""),
                "u",
                efficiency,
                a6,
                new Coefficients(loss, a3, a4 - REFERENCE_MS * a7, a7),
                stand);
    }

    private static void straight(
            Section s, Losses words, String wind, double eta0, double a6, Coefficients c, TestStand stand) {
        loss(s, words, c, stand);
        share(s, CertificateKeys.A6, "an efficiency eta0 - a6 " + wind, eta0, a6, MOST_EFFICIENCY, stand);
        share(s, CertificateKeys.A7, "a share of the sky a4 - a7 " + wind, c.a4, c.a7, MOST_SKY_SHARE, stand);
    }

    /** A collector loses heat even at the lowest tested wind, and with its back closed. */
    private static void loss(Section s, Losses words, Coefficients c, TestStand stand) {
        double loss = CertificateLimits.lossWm2K(c.a1, c.a3, stand);
        double withoutBack = CertificateLimits.lossWithoutBackWm2K(c.a1, c.a3, c.a4, c.a7, stand);
        String least = "at least " + LOSS.show(LEAST_LOSS_WM2K);
        if (!CertificateLimits.isLoss(loss)) {
            s.error(
                    words.key,
                    "makes a loss of " + rounded(loss) + " at the lowest tested wind, "
                            + SPEED.show(stand.lowestWindMs()) + "; allowed: " + words.sum + " " + least
                            + " there: check " + words.both + ", or raise test_wind_lowest");
        } else if (stand.backOpen() && !CertificateLimits.isLoss(withoutBack)) {
            s.error(
                    CertificateKeys.TEST_BACK,
                    "leaves a loss of " + rounded(withoutBack) + " at the lowest tested wind, "
                            + SPEED.show(stand.lowestWindMs())
                            + ", once what an open back radiates is taken out of it; allowed: " + least
                            + ": was the back closed, or the lowest tested wind higher? Check " + words.both + " too");
        } else if (CertificateLimits.losesLessThanItRadiates(c.a1, c.a3, c.a4, c.a7, stand)) {
            s.warning(
                    words.key,
                    "leaves a loss of " + rounded(CertificateLimits.calmLossWm2K(c.a1, c.a3))
                            + " in still air, less than the "
                            + rounded(CertificateLimits.radiatedWm2K(c.a4, c.a7, stand)) + " that "
                            + (stand.backOpen() ? "front and open back radiate" : "the front radiates")
                            + ": check " + words.both + (stand.backOpen() ? " and test_back" : "") + words.otherwise);
        }
    }

    private static void share(
            Section s, Key<Double> key, String what, double share, double perMs, double most, TestStand stand) {
        for (double wind : new double[] {stand.lowestWindMs(), stand.highestWindMs()}) {
            double there = CertificateLimits.at(wind, share, perMs);
            if (!CertificateLimits.isShare(there, most)) {
                s.error(
                        key,
                        "makes " + what + " of " + share(there) + " at " + SPEED.show(wind) + "; allowed: 0 to "
                                + share(most) + " from test_wind_lowest to test_wind_highest");
                return;
            }
        }
    }

    private static String quoted(CertificateKeys.Form form) {
        return CertificateKeys.FORM.kind().show(form);
    }

    private static String rounded(double loss) {
        return LOSS.show(Math.round(loss * 100) / 100.0);
    }

    private static String share(double value) {
        return SHARE.show(value);
    }

    /** How a form writes its loss, and what else may be the matter. */
    private record Losses(Key<Double> key, String sum, String both, String otherwise) {}

    /** The coefficients of the 2017 form that the loss stands on. */
    private record Coefficients(double a1, double a3, double a4, double a7) {}
}
