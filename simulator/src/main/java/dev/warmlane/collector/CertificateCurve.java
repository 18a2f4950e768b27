package dev.warmlane.collector;

import dev.warmlane.irradiance.IncidenceModifier;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * The heat of an unglazed collector as a test certificate states it, in the form of ISO 9806:2017 (from memory),
 * per m² of collector:
 *
 * <p>q = η0·(Kb·Gb + Kd·Gd) − a1·ΔT − a2·ΔT² − a3·u′·ΔT + a4·(L − σTa⁴) − a6·u′·G − a7·u′·(L − σTa⁴) − a8·ΔT⁴, with
 * ΔT = Tm − Ta and u′ = u − 3 m/s. The term with a5 is heat capacity and has no part in a steady balance.
 *
 * <p>The squares of a2 and a8 are losses that grow with a plate warmer than the air, which is where collectors are
 * tested. Below the temperature of the air the polynomial would turn and give heat back for being colder, without end;
 * there the two terms are left out, and the curve goes on straight with the slope that it has at ΔT = 0.
 *
 * <p>So heat falls with the mean temperature wherever the rest does, at every wind that was tested: what does not is no
 * collector and is refused, see {@link CertificateLimits}.
 *
 * @param eta0 zero-loss efficiency at u = 3 m/s
 * @param a1 loss coefficient, W/m²K
 * @param a2 temperature dependence of the loss, W/m²K²: radiation of two black faces makes 12σT² = 0.06 of it,
 *     natural convection of two faces some 0.3 over the first 30 K (derived from 1.5 ΔT^(1/3) W/m²K); the limit is our
 *     own choice beyond
 * @param a3 wind dependence of the loss, J/m³K
 * @param a4 sky temperature dependence
 * @param a6 wind dependence of the zero-loss efficiency, s/m
 * @param a7 wind dependence of the sky term, s/m
 * @param a8 radiation loss, W/m²K⁴
 * @param incidence incidence angle modifiers K_b and K_d
 * @param test how it was tested
 */
public record CertificateCurve(
        double eta0,
        double a1,
        double a2,
        double a3,
        double a4,
        double a6,
        double a7,
        double a8,
        IncidenceModifier incidence,
        TestStand test)
        implements CollectorModel, HeatAtMoment {

    /** Range of {@link #eta0}. */
    public static final Range ETA0 = Range.share("eta0", 0.1, 1);

    /** Range of {@link #a1}. */
    public static final Range A1 = Range.of("a1", Dimension.HEAT_TRANSFER_COEFFICIENT, 0, 60);

    /** Range of {@link #a2}. */
    public static final Range A2 = Range.of("a2", Dimension.HEAT_TRANSFER_PER_KELVIN, 0, 1);

    /** Range of {@link #a3}. */
    public static final Range A3 = Range.of("a3", Dimension.WIND_LOSS_COEFFICIENT, 0, 20);

    /** Range of {@link #a4}. */
    public static final Range A4 = Range.number("a4", 0, 1.2);

    /** Range of {@link #a6}. */
    public static final Range A6 = Range.of("a6", Dimension.PER_SPEED, 0, 0.2);

    /** Range of {@link #a7}. */
    public static final Range A7 = Range.of("a7", Dimension.PER_SPEED, 0, 0.2);

    /** Range of {@link #a8}. */
    public static final Range A8 = Range.of("a8", Dimension.RADIATIVE_LOSS_COEFFICIENT, 0, 1e-5);

    /** Range of {@code bu}. */
    public static final Range BU = Range.of("bu", Dimension.PER_SPEED, 0, 0.2);

    /** Range of {@code b1}. */
    public static final Range B1 = Range.of("b1", Dimension.HEAT_TRANSFER_COEFFICIENT, 0, 60);

    /** Range of {@code b2}. */
    public static final Range B2 = Range.of("b2", Dimension.WIND_LOSS_COEFFICIENT, 0, 20);

    /** Range of {@code emittanceOverAbsorptance}. */
    public static final Range EMITTANCE_RATIO = Range.number("emittance over absorptance", 0.05, 1.2);

    /** The reference wind of the 2017 form, m/s. */
    public static final double REFERENCE_WIND_MS = 3;

    /** Checks every range. */
    public CertificateCurve {
        ETA0.check(eta0);
        A1.check(a1);
        A2.check(a2);
        A3.check(a3);
        A4.check(a4);
        A6.check(a6);
        A7.check(a7);
        A8.check(a8);
        CertificateLimits.check(eta0, a1, a3, a4, a6, a7, test);
    }

    /** Starts a certificate in the form of 2017 from what every one states, with the defaults of {@link CertificateBuilder}. */
    public static CertificateBuilder builder(double eta0, double a1, TestStand test) {
        return new CertificateBuilder(eta0, a1, test, false);
    }

    /**
     * Starts a certificate in the quasi-dynamic form of EN 12975-2:2006 (from memory), which is still printed: its
     * coefficients c1 to c6 are the terms of a1 to a6, but multiply the plain wind u, not u − 3 m/s. So η0 and c1 are those of
     * still air, and the curve has η0 − 3c6 and c1 + 3c3 in their place. Exact for light straight on; aslant the forms differ
     * by 3c6·(1 − K)·G, since one has K in that term and the other has not. Read as the form of 2017 a certificate would lose
     * 3c3 too little at every wind: {@link #doubt} tells where that shows.
     */
    public static CertificateBuilder plainWindBuilder(double eta0, double c1, TestStand test) {
        return new CertificateBuilder(eta0, c1, test, true);
    }

    /**
     * What is doubtful about the coefficients, in a sentence; nothing for most. A plate that loses less in still air, a1 − 3a3,
     * than its faces radiate to a sky, has no physics: even without any convection it would radiate a4·4σTa³ for each face
     * that was open (a4 holds the emittance, from plate to fluid; T of {@value CertificateLimits#DOUBT_AIR_C} °C). A straight
     * line through tests in wind lies above the true loss of still air, not below, since convection bends down from there.
     * Then the wind of another form was meant, see {@link #plainWindBuilder}, or a digit is wrong.
     */
    public Optional<String> doubt() {
        return CertificateLimits.losesLessThanItRadiates(a1, a3, a4, a7, test)
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "the certificate loses %.1f W/m2K in still air (a1 - 3 a3), less than the %.1f W/m2K that %s:"
                                + " do its coefficients multiply the plain wind and not u - 3 m/s?%s",
                        CertificateLimits.calmLossWm2K(a1, a3),
                        CertificateLimits.radiatedWm2K(a4, a7, test),
                        test.backOpen() ? "front and open back radiate" : "its front radiates",
                        test.backOpen() ? " Or was the back closed?" : ""))
                : Optional.empty();
    }

    /** Whether the losses are enough for a collector that was tested with an open back, see {@link CertificateLimits}. */
    public boolean mayHaveBeenOpen() {
        return CertificateLimits.isLoss(CertificateLimits.lossWithoutBackWm2K(a1, a3, a4, a7, test));
    }

    /** The same numbers from another test stand. */
    public CertificateCurve withTest(TestStand value) {
        return new CertificateCurve(eta0, a1, a2, a3, a4, a6, a7, a8, incidence, value);
    }

    /**
     * Heat per m² of collector, W/m², where the light after incidence is at hand; {@link #heatAtMeanWm2} finds it.
     *
     * @param modifiedIrradiance irradiance after incidence, Kb·Gb + Kd·Gd, W/m²
     * @param irradiance irradiance on the plane, W/m²
     * @param netLongWave L − σTa⁴, W/m²
     * @param windMs wind at the collector's plane as on the test stand, m/s
     * @param deltaK mean fluid temperature less air temperature, K
     */
    public double heatWm2(
            double modifiedIrradiance, double irradiance, double netLongWave, double windMs, double deltaK) {
        double u = windMs - REFERENCE_WIND_MS;
        double warm = Math.max(0, deltaK);
        double square = warm * warm;
        return eta0 * modifiedIrradiance
                - a1 * deltaK
                - a2 * square
                - a3 * u * deltaK
                + a4 * netLongWave
                - a6 * u * irradiance
                - a7 * u * netLongWave
                - a8 * square * square;
    }

    /** With its own incidence modifier, at the wind of the test stand as it is; not held to the tested winds. */
    @Override
    public double heatAtMeanWm2(CollectorMoment at, double meanC) {
        return heatWm2(
                at.light().afterWm2(incidence),
                at.light().totalWm2(),
                at.netLongWaveWm2(),
                at.windMs(),
                meanC - at.airC());
    }

    /** By how much the heat falls with each kelvin of mean fluid temperature, W/m²K; at and below the air's the least. */
    double lossWm2K(double windMs, double deltaK) {
        double warm = Math.max(0, deltaK);
        return a1 + a3 * (windMs - REFERENCE_WIND_MS) + 2 * a2 * warm + 4 * a8 * warm * warm * warm;
    }

    /** Share of what the sky sends more than a black surface at the air's temperature that is gained, at a wind. */
    double skyShare(double windMs) {
        return a4 - a7 * (windMs - REFERENCE_WIND_MS);
    }

    /**
     * The stand on which a certificate was made: it tells what the certificate's wind did to the tested collector.
     *
     * @param backOpen whether the wind reached the back as well as the front
     * @param lengthM length of the tested collector along the wind, m
     * @param lowestWindMs lowest tested wind, m/s
     * @param highestWindMs highest tested wind, m/s
     */
    public record TestStand(boolean backOpen, double lengthM, double lowestWindMs, double highestWindMs) {

        /** Range of {@link #lengthM}. */
        public static final Range LENGTH = Range.of("test length", Dimension.LENGTH, 0.3, 20);

        /** Range of {@link #lowestWindMs}. */
        public static final Range LOWEST_WIND = Range.of("lowest tested wind", Dimension.SPEED, 0, 10);

        /** Range of {@link #highestWindMs}. */
        public static final Range HIGHEST_WIND = Range.of("highest tested wind", Dimension.SPEED, 0, 20);

        /** Checks every range. */
        public TestStand {
            LENGTH.check(lengthM);
            LOWEST_WIND.check(lowestWindMs);
            HIGHEST_WIND.from(lowestWindMs).check(highestWindMs);
        }

        /** The same stand with its back open or closed. */
        public TestStand withBackOpen(boolean value) {
            return new TestStand(value, lengthM, lowestWindMs, highestWindMs);
        }
    }

    @Override
    public <T> T match(
            Function<Absorber, T> absorber,
            Function<CertificateCurve, T> certificate,
            Function<MeasuredCurve, T> curve) {
        return certificate.apply(this);
    }
}
