package dev.warmlane.collector;

import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.irradiance.IncidenceModifier;
import dev.warmlane.irradiance.MatteBlack;

/**
 * Gathers a certificate in the form of 2017, see {@link CertificateCurve#builder}, or in one whose wind is plain u, see
 * {@link CertificateCurve#plainWindBuilder}. A coefficient that the certificate does
 * not state is 0; light aslant is taken as by matte black paint.
 */
public final class CertificateBuilder {

    private final double eta0;
    private final double a1;
    private final TestStand test;
    private final boolean plainWind;
    private double a2;
    private double a3;
    private double a4;
    private double a6;
    private double a7;
    private double a8;
    private IncidenceModifier incidence = new MatteBlack();

    CertificateBuilder(double eta0, double a1, TestStand test, boolean plainWind) {
        this.eta0 = eta0;
        this.a1 = a1;
        this.test = test;
        this.plainWind = plainWind;
    }

    /** See {@link CertificateCurve#a2}, W/m²K². */
    public CertificateBuilder a2(double value) {
        a2 = value;
        return this;
    }

    /** See {@link CertificateCurve#a3}, J/m³K. */
    public CertificateBuilder a3(double value) {
        a3 = value;
        return this;
    }

    /** See {@link CertificateCurve#a4}. */
    public CertificateBuilder a4(double value) {
        a4 = value;
        return this;
    }

    /** See {@link CertificateCurve#a6}, s/m. */
    public CertificateBuilder a6(double value) {
        a6 = value;
        return this;
    }

    /** See {@link CertificateCurve#a7}, s/m. */
    public CertificateBuilder a7(double value) {
        a7 = value;
        return this;
    }

    /** See {@link CertificateCurve#a8}, W/m²K⁴. */
    public CertificateBuilder a8(double value) {
        a8 = value;
        return this;
    }

    /** See {@link CertificateCurve#incidence}. */
    public CertificateBuilder incidence(IncidenceModifier value) {
        incidence = value;
        return this;
    }

    /**
     * The finished certificate.
     *
     * @throws IllegalArgumentException if a value is out of range, or the coefficients leave no loss of an unglazed collector
     */
    public CertificateCurve build() {
        double calm = plainWind ? CertificateCurve.REFERENCE_WIND_MS : 0;
        return new CertificateCurve(
                eta0 - calm * a6, a1 + calm * a3, a2, a3, a4 - calm * a7, a6, a7, a8, incidence, test);
    }
}
