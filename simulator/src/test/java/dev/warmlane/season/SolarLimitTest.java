package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SolarLimitTest {

    private final SolarLimit limit = new SolarLimit(28);

    @ParameterizedTest
    @CsvSource({
        // water, others, solar, hold, share
        "27.9, -100, 400, false, 1",
        "27.9, 100, 400, false, 1",
        "28.1, -100, 400, false, 0",
        "28.1, -100, 400, true, 0",
        // at the limit: none where the pool warms without them, all where it cools with them, else what it takes
        "28, 50, 400, false, 0",
        "28, 0, 400, false, 0",
        "28, -100, 400, false, 0.25",
        "28, -400, 400, false, 1",
        "28, -500, 400, false, 1",
        // a circuit that hunts is held below the limit in the same way
        "20, -100, 400, true, 0.25",
        "20, 50, 400, true, 0",
        // nothing to give, nothing to hold back
        "28, -100, 0, false, 1",
        "20, -100, 0, true, 1"
    })
    void sharesOutWhatThePoolTakes(double waterC, double others, double solar, boolean hold, double share) {
        assertThat(limit.share(waterC, others, solar, hold)).isEqualTo(share);
    }
}
