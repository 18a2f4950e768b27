package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The worked example of IOGP guidance note 7-2 for method EPSG 9802, NAD27 / Texas South Central (read in the source). */
class LambertConicTest {

    /** A hundredth of a foot is 3e-8 degrees. */
    private static final double DEGREES = 1e-7;

    @Test
    void workedExample() {
        LambertConic texas = LambertConic.of(
                20_925_832.16, 294.97870, new double[] {28 + 23.0 / 60, 30 + 17.0 / 60}, 27 + 50.0 / 60, -99, 2e6, 0);
        double[] place = texas.degrees(2_963_503.91, 254_759.80);
        assertThat(place[0]).isCloseTo(28.5, within(DEGREES));
        assertThat(place[1]).isCloseTo(-96, within(DEGREES));
    }

    @Test
    void europeBeginsWhereItsOriginIs() {
        assertThat(LambertConic.europe().degrees(4e6, 2.8e6)[0]).isCloseTo(52, within(DEGREES));
        assertThat(LambertConic.europe().degrees(4e6, 2.8e6)[1]).isCloseTo(10, within(DEGREES));
    }
}
