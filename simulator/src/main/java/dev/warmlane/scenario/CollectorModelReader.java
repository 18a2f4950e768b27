package dev.warmlane.scenario;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.collector.CollectorModel;
import dev.warmlane.collector.PlateToFluid;
import dev.warmlane.collector.PlateToFluid.TubeSheet;
import dev.warmlane.collector.UnglazedForm2013;
import dev.warmlane.irradiance.IncidenceModifier;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Reads how collectors make heat: from an absorber or from a certificate. */
final class CollectorModelReader {

    private static final Key<?>[] TUBES = {
        AbsorberKeys.OUTER_DIAMETER,
        AbsorberKeys.INNER_DIAMETER,
        AbsorberKeys.FIN_THICKNESS,
        AbsorberKeys.CONDUCTIVITY,
        AbsorberKeys.INNER_FILM
    };

    private static final Key<?>[] FORM_2013 = {
        CertificateKeys.BU, CertificateKeys.B1, CertificateKeys.B2, CertificateKeys.EMITTANCE_RATIO
    };

    private static final Key<?>[] FORM_2017 = {
        CertificateKeys.A1,
        CertificateKeys.A2,
        CertificateKeys.A3,
        CertificateKeys.A4,
        CertificateKeys.A6,
        CertificateKeys.A7,
        CertificateKeys.A8
    };

    private CollectorModelReader() {}

    static @Nullable CollectorModel model(
            Section collectors, Section absorber, Section certificate, Section incidence) {
        IncidenceModifier modifier = IncidenceReader.modifier(incidence);
        if (!certificate.present()) {
            return absorber(absorber, modifier);
        }
        if (absorber.present()) {
            collectors.error("has both an absorber and a certificate; give one of them");
        }
        return certificate(certificate, modifier);
    }

    private static @Nullable CollectorModel absorber(Section s, @Nullable IncidenceModifier incidence) {
        double absorptance = s.get(AbsorberKeys.ABSORPTANCE);
        double emittance = s.get(AbsorberKeys.EMITTANCE);
        double roughness = s.get(AbsorberKeys.ROUGHNESS);
        PlateToFluid way = s.has(AbsorberKeys.TUBE_PITCH) ? tubes(s) : conductance(s);
        if (way == null || incidence == null) {
            return null;
        }
        return s.build(() -> new Absorber(absorptance, emittance, roughness, way, incidence));
    }

    private static @Nullable PlateToFluid conductance(Section s) {
        s.refuse("allowed with tube_pitch only", TUBES);
        double conductance = s.get(AbsorberKeys.CONDUCTANCE);
        return s.build(() -> new PlateToFluid.Conductance(conductance));
    }

    private static @Nullable PlateToFluid tubes(Section s) {
        s.refuse("not allowed with tube_pitch; give the conductance or the tubes", AbsorberKeys.CONDUCTANCE);
        double pitch = s.get(AbsorberKeys.TUBE_PITCH);
        double outer = s.get(AbsorberKeys.OUTER_DIAMETER);
        double inner = s.get(AbsorberKeys.INNER_DIAMETER);
        double fin = s.get(AbsorberKeys.FIN_THICKNESS);
        double conductivity = s.get(AbsorberKeys.CONDUCTIVITY);
        if (!s.hasFailed() && outer > pitch) {
            s.error(AbsorberKeys.OUTER_DIAMETER, "is more than tube_pitch; allowed: up to tube_pitch");
        }
        if (!s.hasFailed() && inner >= outer) {
            s.error(AbsorberKeys.INNER_DIAMETER, "is not less than outer_diameter; allowed: less than it");
        }
        double film = s.hasFailed()
                ? 0
                : s.get(
                        AbsorberKeys.INNER_FILM,
                        TubeSheet.laminarFilmWm2K(inner),
                        "laminar flow in the tube, 4.364 k/D");
        return s.build(() -> new TubeSheet(pitch, outer, inner, fin, conductivity, film));
    }

    private static @Nullable CollectorModel certificate(Section s, @Nullable IncidenceModifier incidence) {
        CertificateKeys.Form form = s.get(CertificateKeys.FORM);
        double eta0 = s.get(CertificateKeys.ETA0);
        boolean open = s.get(CertificateKeys.TEST_BACK) == CertificateKeys.TestBack.OPEN;
        double length = s.get(CertificateKeys.TEST_LENGTH);
        double lowest = s.get(CertificateKeys.TEST_WIND_LOWEST);
        double highest = s.get(CertificateKeys.TEST_WIND_HIGHEST);
        if (!s.hasFailed() && highest < lowest) {
            s.error(CertificateKeys.TEST_WIND_HIGHEST, "is less than test_wind_lowest; allowed: at least that");
        }
        TestStand stand = s.build(() -> new TestStand(open, length, lowest, highest));
        if (!s.has(CertificateKeys.FORM) || !s.sound(CertificateKeys.FORM) || incidence == null) {
            return null;
        }
        return form == CertificateKeys.Form.ISO_9806_2013
                ? form2013(s, eta0, incidence, stand)
                : form2017(s, form == CertificateKeys.Form.EN_12975, eta0, incidence, stand);
    }

    private static @Nullable CollectorModel form2013(
            Section s, double eta0, IncidenceModifier incidence, @Nullable TestStand stand) {
        s.refuse("allowed with the 2017 form and EN 12975 only", FORM_2017);
        double bu = s.get(CertificateKeys.BU);
        double b1 = s.get(CertificateKeys.B1);
        double b2 = s.get(CertificateKeys.B2);
        double ratio = s.get(CertificateKeys.EMITTANCE_RATIO);
        if (!s.hasFailed()) {
            CertificateChecks.form2013(s, eta0, bu, b1, b2, ratio, Objects.requireNonNull(stand));
        }
        return s.build(
                () -> new UnglazedForm2013(eta0, bu, b1, b2, ratio).curve(incidence, Objects.requireNonNull(stand)));
    }

    private static @Nullable CollectorModel form2017(
            Section s, boolean plainWind, double eta0, IncidenceModifier incidence, @Nullable TestStand stand) {
        s.refuse("allowed with the 2013 form only", FORM_2013);
        double a1 = s.get(CertificateKeys.A1);
        double a2 = s.get(CertificateKeys.A2);
        double a3 = s.get(CertificateKeys.A3);
        double a4 = s.get(CertificateKeys.A4);
        double a6 = s.get(CertificateKeys.A6);
        double a7 = s.get(CertificateKeys.A7);
        double a8 = s.get(CertificateKeys.A8);
        if (!s.hasFailed()) {
            TestStand tested = Objects.requireNonNull(stand);
            if (plainWind) {
                CertificateChecks.plainWind(s, eta0, a1, a3, a4, a6, a7, tested);
            } else {
                CertificateChecks.form2017(s, eta0, a1, a3, a4, a6, a7, tested);
            }
        }
        return s.build(() -> (plainWind
                        ? CertificateCurve.plainWindBuilder(eta0, a1, Objects.requireNonNull(stand))
                        : CertificateCurve.builder(eta0, a1, Objects.requireNonNull(stand)))
                .a2(a2)
                .a3(a3)
                .a4(a4)
                .a6(a6)
                .a7(a7)
                .a8(a8)
                .incidence(incidence)
                .build());
    }
}
