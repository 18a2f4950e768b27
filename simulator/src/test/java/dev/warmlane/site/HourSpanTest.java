package dev.warmlane.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class HourSpanTest {

    private static final HourSpan WINTER = new HourSpan(8750, 20);

    @Test
    void goesOverNewYear() {
        assertThat(WINTER.rising())
                .startsWith(0, 1)
                .contains(9, 8750, 8759)
                .doesNotContain(10, 8749)
                .hasSize(20);
        assertThat(new HourSpan(5, 2).from(10)).isEqualTo(new HourSpan(8755, 12));
    }

    @Test
    void coversWhatLiesInIt() {
        assertThat(WINTER.covers(new HourSpan(8758, 5))).isTrue();
        assertThat(WINTER.covers(WINTER)).isTrue();
        assertThat(WINTER.covers(new HourSpan(9, 2))).isFalse();
        assertThat(WINTER.covers(new HourSpan(8749, 2))).isFalse();
        assertThat(WINTER.covers(HourSpan.YEAR)).isFalse();
        assertThat(HourSpan.YEAR.covers(WINTER)).isTrue();
    }

    @Test
    void theWholeYearIsOneWhereverItBegins() {
        assertThat(new HourSpan(100, 8760)).isEqualTo(HourSpan.YEAR);
        assertThat(new HourSpan(100, 8700).from(90)).isEqualTo(HourSpan.YEAR);
    }

    @Test
    void refusesWhatIsNoHourOfAYear() {
        for (int[] wrong : new int[][] {{-1, 5}, {8760, 5}, {0, 0}, {0, 8761}}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new HourSpan(wrong[0], wrong[1]))
                    .withMessageContaining("are not hours of one year");
        }
    }
}
