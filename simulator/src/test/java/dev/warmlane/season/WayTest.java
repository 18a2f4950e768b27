package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WayTest {

    @ParameterizedTest
    @CsvSource({
        "20, 22, 21, true",
        "20, 22, 22, true",
        "20, 22, 20, false",
        "20, 22, 22.1, false",
        "20, 22, 19.9, false",
        "22, 20, 21, true",
        "22, 20, 20, true",
        "22, 20, 22, false",
        "22, 20, 19.9, false",
        "20, 20, 20, false",
        "20, 22, NaN, false",
        "20, 22, Infinity, false",
        "22, 20, -Infinity, false"
    })
    void holdsItsEndAndNotItsStart(double start, double end, double at, boolean crosses) {
        assertThat(Way.crosses(start, end, at)).isEqualTo(crosses);
        assertThat(Way.first(start, end, Double.NaN, at)).isEqualTo(Double.valueOf(crosses ? at : Double.NaN));
    }

    @Test
    void theNearestIsFoundWhateverTheOrder() {
        assertThat(Way.first(20, 24, 23, 21)).isEqualTo(21);
        assertThat(Way.first(20, 24, 21, 23)).isEqualTo(21);
        assertThat(Way.first(24, 20, 21, 23)).isEqualTo(23);
        assertThat(Way.first(24, 20, 23, 21)).isEqualTo(23);
    }
}
