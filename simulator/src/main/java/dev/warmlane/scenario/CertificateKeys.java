package dev.warmlane.scenario;

import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CertificateCurve.TestStand;

/** Keys of the section collectors.certificate. */
final class CertificateKeys {

    private static final String OF_2013 = "required for the 2013 form";
    private static final String OF_2017 = "required for the 2017 form and EN 12975";
    private static final String NONE = "not on every certificate, none counted";

    static final Key<Form> FORM = Key.required(
            "form",
            WordKinds.choice(Form.class),
            "the form of its coefficients: unglazed ISO 9806:2013; ISO 9806:2017; or EN 12975, whose c1 to c6 are given as a1 to"
                    + " a6 and multiply the plain wind, not u - 3 m/s");
    static final Key<Double> ETA0 = Key.required(
            "eta0", CertificateCurve.ETA0, "zero-loss efficiency: in still air (2013, EN 12975), at 3 m/s (2017)");
    static final Key<Double> BU =
            Key.optional("bu", CertificateCurve.BU, "wind dependence of the zero-loss efficiency", OF_2013);
    static final Key<Double> B1 = Key.optional("b1", CertificateCurve.B1, "loss coefficient in still air", OF_2013);
    static final Key<Double> B2 = Key.optional("b2", CertificateCurve.B2, "wind dependence of the loss", OF_2013);
    static final Key<Double> EMITTANCE_RATIO = Key.optional(
            "emittance_over_absorptance",
            CertificateCurve.EMITTANCE_RATIO,
            "long-wave emittance over short-wave absorptance",
            OF_2013);
    static final Key<Double> A1 = Key.optional(
            "a1", CertificateCurve.A1, "loss coefficient: at 3 m/s (2017), in still air (EN 12975)", OF_2017);
    static final Key<Double> A2 = Key.assumed(
            "a2", CertificateCurve.A2, "temperature dependence of the loss; counted above air temperature", 0.0, NONE);
    static final Key<Double> A3 = Key.optional("a3", CertificateCurve.A3, "wind dependence of the loss", OF_2017);
    static final Key<Double> A4 = Key.optional("a4", CertificateCurve.A4, "sky temperature dependence", OF_2017);
    static final Key<Double> A6 =
            Key.optional("a6", CertificateCurve.A6, "wind dependence of the zero-loss efficiency", OF_2017);
    static final Key<Double> A7 = Key.assumed("a7", CertificateCurve.A7, "wind dependence of the sky term", 0.0, NONE);
    static final Key<Double> A8 =
            Key.assumed("a8", CertificateCurve.A8, "radiation loss; counted above air temperature", 0.0, NONE);
    static final Key<TestBack> TEST_BACK = Key.required(
            "test_back", WordKinds.choice(TestBack.class), "whether the wind reached the back of the tested collector");
    static final Key<Double> TEST_LENGTH =
            Key.required("test_length", TestStand.LENGTH, "length of the tested collector along the wind");
    static final Key<Double> TEST_WIND_LOWEST =
            Key.required("test_wind_lowest", TestStand.LOWEST_WIND, "lowest tested wind");
    static final Key<Double> TEST_WIND_HIGHEST =
            Key.required("test_wind_highest", TestStand.HIGHEST_WIND, "highest tested wind, at least test_wind_lowest");

    static final SectionSchema CERTIFICATE = SectionSchema.optional(
            "certificate",
            "the coefficients of a test certificate, instead of an absorber",
            FORM,
            ETA0,
            BU,
            B1,
            B2,
            EMITTANCE_RATIO,
            A1,
            A2,
            A3,
            A4,
            A6,
            A7,
            A8,
            TEST_BACK,
            TEST_LENGTH,
            TEST_WIND_LOWEST,
            TEST_WIND_HIGHEST);

    private CertificateKeys() {}

    /** Form of the coefficients. */
    enum Form {
        ISO_9806_2013,
        ISO_9806_2017,
        EN_12975
    }

    /** Back of the tested collector. */
    enum TestBack {
        OPEN,
        CLOSED
    }
}
