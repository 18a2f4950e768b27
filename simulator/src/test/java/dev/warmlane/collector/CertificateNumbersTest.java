package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.CertificateCurve.TestStand;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The terms of a certificate's curve and the limits of its coefficients, each by hand. */
class CertificateNumbersTest {

    private static final double ROUNDING = 1e-9;
    private static final TestStand CLOSED = new TestStand(false, 2, 1, 5);

    private final CertificateCurve curve = CertificateCurve.builder(0.8, 12, CLOSED)
            .a2(0.02)
            .a3(2)
            .a4(0.7)
            .a6(0.01)
            .a7(0.03)
            .a8(1e-6)
            .build();

    /** 0.8·900 − 12·20 − 0.02·400 − 2·2·20 + 0.7·(−80) − 0.01·2·1000 + 0.03·2·80 − 1e-6·160000, at 5 m/s: u − 3 = 2. */
    @Test
    void everyTermOfTheStandardCounts() {
        assertThat(curve.heatWm2(900, 1000, -80, 5, 20))
                .isCloseTo(720 - 240 - 8 - 80 - 56 - 20 + 4.8 - 0.16, within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource({"1, 10", "5, 40", "3, 25"})
    void lossIsTheSlopeOfTheHeat(double windMs, double deltaK) {
        double below = curve.heatWm2(900, 1000, -80, windMs, deltaK - 1e-3);
        double above = curve.heatWm2(900, 1000, -80, windMs, deltaK + 1e-3);
        assertThat(curve.lossWm2K(windMs, deltaK)).isCloseTo((below - above) / 2e-3, within(1e-6));
    }

    @Test
    void lossAtAndBelowTheAirIsTheLeast() {
        assertThat(curve.lossWm2K(4, -15)).isCloseTo(14, within(ROUNDING));
        assertThat(curve.lossWm2K(4, 0)).isCloseTo(14, within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource({"1, 0.76", "3, 0.7", "5, 0.64"})
    void skyShareIsWhatTheLongWaveAdds(double windMs, double share) {
        assertThat(curve.skyShare(windMs)).isCloseTo(share, within(ROUNDING));
        assertThat(curve.heatWm2(900, 1000, 1, windMs, 20) - curve.heatWm2(900, 1000, 0, windMs, 20))
                .isCloseTo(share, within(ROUNDING));
    }

    /** 4σTa³ is 5.714 W/m²K at 20 °C; a1 + a3 (u − 3) at 1 m/s is 12 − 2·2. */
    @Test
    void lossesOfTheLimits() {
        assertThat(CertificateLimits.radiationWm2K(20)).isCloseTo(5.714016, within(1e-6));
        assertThat(CertificateLimits.lossWm2K(12, 2, CLOSED)).isEqualTo(8);
        assertThat(CertificateLimits.lossWithoutBackWm2K(12, 2, 0.7, 0.03, CLOSED))
                .isCloseTo(8 - 0.76 * CertificateLimits.radiationWm2K(60), within(ROUNDING));
        assertThat(CertificateLimits.isLoss(2)).isTrue();
        assertThat(CertificateLimits.isLoss(2 - 1e-6)).isFalse();
        assertThat(CertificateLimits.isShare(0, 1.2)).isTrue();
        assertThat(CertificateLimits.isShare(1.2, 1.2)).isTrue();
        assertThat(CertificateLimits.isShare(-1e-6, 1.2)).isFalse();
        assertThat(CertificateLimits.isShare(1.2 + 1e-6, 1.2)).isFalse();
    }

    /** At 1 m/s, the lowest tested: 6 − 2·2 = 2 is enough, less is not. */
    @Test
    void aLossMustBeThatOfAnUnglazedCollector() {
        assertThatCode(() -> CertificateCurve.builder(0.8, 6, CLOSED).a3(2).build())
                .doesNotThrowAnyException();
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> CertificateCurve.builder(0.8, 5.9, CLOSED).a3(2).build())
                .withMessageContaining("of 1.90 W/m2K at the lowest tested wind, 1.0 m/s");
    }

    @Test
    void sharesMustBeSharesAtEveryTestedWind() {
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        CertificateCurve.builder(0.95, 12, CLOSED).a6(0.03).build())
                .withMessageContaining("an efficiency eta0 - a6 (u - 3) of 1.010 at 1.0 m/s");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> CertificateCurve.builder(0.3, 12, CLOSED).a6(0.2).build())
                .withMessageContaining("of -0.100 at 5.0 m/s");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CertificateCurve.builder(0.8, 12, CLOSED)
                        .a4(1.1)
                        .a7(0.1)
                        .build())
                .withMessageContaining("a share of the sky a4 - a7 (u - 3) of 1.300 at 1.0 m/s");
    }

    /** In air of 60 °C a black surface radiates 8.39 W/m²K more per kelvin, so that 18 less 0.76 of that leaves enough. */
    @Test
    void anOpenBackNeedsLossToTakeItsRadiationFrom() {
        TestStand open = CLOSED.withBackOpen(true);
        assertThatCode(() -> curve.withTest(CLOSED)).doesNotThrowAnyException();
        assertThat(curve.mayHaveBeenOpen()).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> curve.withTest(open))
                .withMessageContaining("was the back closed");
        CertificateCurve strong =
                CertificateCurve.builder(0.8, 18, CLOSED).a3(2).a4(0.7).a7(0.03).build();
        assertThat(strong.mayHaveBeenOpen()).isTrue();
        assertThatCode(() -> strong.withTest(open)).doesNotThrowAnyException();
    }
}
