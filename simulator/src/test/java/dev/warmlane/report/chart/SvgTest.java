package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SvgTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<rect x=\"12.345678\"/>             | <rect x=\"12.35\"/>",
                "<path d=\"M1.7763568394E-15,-0.0001 L3,4.5\"/> | <path d=\"M0,0 L3,4.5\"/>",
                "<line x1=\"1.2345678E-5\" x2=\"-9.87654E2\"/> | <line x1=\"0\" x2=\"-987.65\"/>",
                "<rect width=\"1.5E-7\" height=\"1.25E+3\"/>   | <rect width=\"0\" height=\"1250\"/>",
                "<g stroke-width=\"0.8\"/>          | <g stroke-width=\"0.8\"/>"
            })
    void numbersAreShortAndStayWhatTheyAre(String drawn, String written) {
        assertThat(Svg.shortened(drawn)).isEqualTo(written);
    }
}
