package dev.warmlane.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {

    @ParameterizedTest
    @CsvSource({
        "tilt, tilt, 0",
        "titl, tilt, 1",
        "tlt, tilt, 1",
        "azimut, azimuth, 1",
        "kitten, sitting, 3",
        "'', abc, 3"
    })
    void countsEdits(String a, String b, int edits) {
        assertThat(Spelling.distance(a, b)).isEqualTo(edits).isEqualTo(Spelling.distance(b, a));
    }

    @Test
    void findsTheNearestOrNone() {
        List<String> keys = List.of("surface", "depth", "finish", "shelter");
        assertThat(Spelling.nearest("surfcae", keys)).contains("surface");
        assertThat(Spelling.nearest("Depht", keys)).contains("depth");
        assertThat(Spelling.nearest("colour", keys)).isEmpty();
        assertThat(Spelling.nearest("x", List.of("y"))).isEmpty();
    }
}
