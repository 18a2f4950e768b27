package dev.warmlane.collector;

import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.irradiance.IncidenceModifier;

/**
 * The numbers of a certificate in the unglazed form of ISO 9806:2013 (from memory), q = η0(1 − bu·u)·G″ − (b1 + b2·u)(Tm −
 * Ta) with G″ = G + (ε/α)(L − σTa⁴).
 *
 * @param eta0 zero-loss efficiency in still air
 * @param bu its wind dependence, s/m
 * @param b1 loss coefficient in still air, W/m²K
 * @param b2 wind dependence of the loss, J/m³K
 * @param emittanceOverAbsorptance ε/α
 */
public record UnglazedForm2013(double eta0, double bu, double b1, double b2, double emittanceOverAbsorptance) {

    /** Checks every range; that of η0 is the curve's. */
    public UnglazedForm2013 {
        CertificateCurve.BU.check(bu);
        CertificateCurve.B1.check(b1);
        CertificateCurve.B2.check(b2);
        CertificateCurve.EMITTANCE_RATIO.check(emittanceOverAbsorptance);
    }

    /**
     * The same curve in the form of 2017. The two forms are the same polynomial, so the link is exact: η0(2017) = η0(1 −
     * 3bu), a1 = b1 + 3b2, a3 = b2, a4 = η0(ε/α)(1 − 3bu), a6 = η0·bu, a7 = η0·bu·ε/α.
     *
     * @param incidence incidence angle modifiers K_b and K_d
     * @param test how it was tested
     */
    public CertificateCurve curve(IncidenceModifier incidence, TestStand test) {
        double reference = eta0 * (1 - CertificateCurve.REFERENCE_WIND_MS * bu);
        return CertificateCurve.builder(reference, b1 + CertificateCurve.REFERENCE_WIND_MS * b2, test)
                .a3(b2)
                .a4(reference * emittanceOverAbsorptance)
                .a6(eta0 * bu)
                .a7(eta0 * bu * emittanceOverAbsorptance)
                .incidence(incidence)
                .build();
    }
}
