package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.irradiance.MatteBlack;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CertificateCurveTest {

    /** The rows state two decimals. */
    private static final double ROW = 0.006;

    /** The two forms are one polynomial: only rounding lies between them. */
    private static final double SAME = 1e-10;

    private static final CertificateCurve.TestStand STAND = new CertificateCurve.TestStand(false, 2, 0, 5);

    /** The collector of the rows in the form of 2013. */
    private final CertificateCurve form2013 =
            new UnglazedForm2013(0.85, 0.02, 10, 4, 0.95).curve(new MatteBlack(), STAND);

    /** The same in the form of 2017: 0.799 = 0.85 (1 - 3·0.02), 22 = 10 + 3·4, 0.75905 = 0.799·0.95, 0.01615 = 0.017·0.95. */
    private final CertificateCurve form2017 =
            new CertificateCurve(0.799, 22, 0, 4, 0.75905, 0.017, 0.01615, 0, new MatteBlack(), STAND);

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/collector/iso9806.csv", useHeadersInDisplayName = true)
    void bothFormsOfTheStandardGiveThePublishedHeat(
            double irradiance, double netLongWave, double windMs, double deltaK, double heatWm2) {
        double of2013 = form2013.heatWm2(irradiance, irradiance, netLongWave, windMs, deltaK);
        double of2017 = form2017.heatWm2(irradiance, irradiance, netLongWave, windMs, deltaK);
        double written = 0.85 * (1 - 0.02 * windMs) * (irradiance + 0.95 * netLongWave) - (10 + 4 * windMs) * deltaK;
        assertThat(of2013).isCloseTo(heatWm2, within(ROW)).isCloseTo(written, within(SAME));
        assertThat(of2017).isCloseTo(of2013, within(SAME));
    }
}
