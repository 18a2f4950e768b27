package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleTest {

    private static final double ROUNDING = 1e-9;

    @ParameterizedTest
    @CsvSource({
        "13.7, 28.8, 10, 12, 30, 2",
        "62.2, 94.3, 10, 60, 95, 5",
        "27, 29.7, 10, 27, 30, 0.5",
        "-95000, 97000, 8, -100000, 100000, 50000",
        "0, 0, 6, 0, 0.2, 0.2",
        "26, 26, 10, 25, 30, 5",
        "20, 30, 10, 20, 30, 1"
    })
    void holdsTheValuesBetweenRoundTicks(
            double lowest, double highest, int steps, double low, double high, double step) {
        Scale scale = Scale.holding(lowest, highest, steps);

        assertThat(scale.low()).isEqualTo(low, within(ROUNDING));
        assertThat(scale.high()).isEqualTo(high, within(ROUNDING));
        assertThat(scale.step()).isEqualTo(step, within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "5, 0", "2000, 0", "0.5, 1", "0.2, 1", "0.05, 2", "10, 0"})
    void showsAsManyDecimalsAsItsStepNeeds(double step, int decimals) {
        assertThat(new Scale(0, 10 * step, step).decimals()).isEqualTo(decimals);
    }
}
