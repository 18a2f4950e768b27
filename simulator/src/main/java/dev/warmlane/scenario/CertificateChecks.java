package dev.warmlane.scenario;

import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.units.Dimension;

/** Coefficients of a certificate that do not go together, told by the keys of the form they were given in. */
final class CertificateChecks {

    private static final double REFERENCE_MS = CertificateCurve.REFERENCE_WIND_MS;

    private static final Kind<Double> SPEED = Kinds.quantity(Dimension.SPEED, "m/s", 0, 20);
    private static final Kind<Double> LOSS = Kinds.quantity(Dimension.HEAT_TRANSFER_COEFFICIENT, "W/m2K", 0, 60);

    private CertificateChecks() {}

    /** The limits are those of the curve that the coefficients become, {@link CertificateCurve#ofUnglazedForm2013}. */
    static void form2013(Section s, double eta0, double bu, double b1, double b2, double ratio, TestStand stand) {
        double efficiency = eta0 * (1 - REFERENCE_MS * bu);
        if (efficiency < 0.1) {
            s.error(
                    CertificateKeys.BU,
                    "with this eta0 leaves an efficiency of " + share(efficiency) + " at 3 m/s; allowed: at least 0.1");
        }
        double loss = b1 + REFERENCE_MS * b2;
        if (loss > 60) {
            s.error(
                    CertificateKeys.B2,
                    "with this b1 makes a loss of " + LOSS.show(loss) + " at 3 m/s; allowed: at most 60 W/m2K");
        }
        if (eta0 * bu * ratio > 0.2) {
            s.error(
                    CertificateKeys.BU,
                    "times eta0 and emittance_over_absorptance is " + share(eta0 * bu * ratio)
                            + " s/m; allowed: at most 0.2 s/m");
        }
        if (!(b1 + b2 * stand.lowestWindMs() > 0)) {
            s.error(
                    CertificateKeys.B1,
                    "makes no loss at the lowest tested wind, " + SPEED.show(stand.lowestWindMs())
                            + "; allowed: b1 + b2 times that wind above 0 W/m2K");
        }
    }

    /** A collector loses heat even at the lowest tested wind. */
    static void form2017(Section s, double a1, double a3, TestStand stand) {
        double loss = a1 + a3 * (stand.lowestWindMs() - REFERENCE_MS);
        if (!(loss > 0)) {
            s.error(
                    CertificateKeys.A3,
                    "makes a loss of " + LOSS.show(loss) + " at the lowest tested wind, "
                            + SPEED.show(stand.lowestWindMs())
                            + "; allowed: a1 + a3 (u - 3 m/s) above 0 there: check a1 and a3, or raise"
                            + " test_wind_lowest");
        }
    }

    private static String share(double value) {
        return Kinds.factor(-1, 1).show(value);
    }
}
