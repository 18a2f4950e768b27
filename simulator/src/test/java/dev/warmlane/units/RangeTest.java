package dev.warmlane.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a range says of itself, and that what it writes it reads. */
class RangeTest {

    private static final Range GAP =
            Range.of("gap", Dimension.LENGTH, 0.0005, 0.1).writtenIn("mm");

    private static Stream<Range> ranges() {
        return Stream.of(
                GAP,
                Range.of("capacity", Dimension.POWER, "kW", 1, 20_000),
                Range.of("make-up", Dimension.VOLUME_FLOW, "L/day", 0, 2_000_000),
                Range.of("pipe", Dimension.LENGTH, 0, 3).writtenIn("ft"),
                Range.of("room", Dimension.TEMPERATURE, -20, 50).writtenIn("degF"),
                Range.share("share", 0, 1),
                Range.number("factor", 0, 1e-5));
    }

    @Test
    void tellsItsEndsInTheUnitThatPeopleWrite() {
        assertThat(GAP.ends()).isEqualTo("0.5 to 100 mm");
        assertThat(Range.number("a8", 0, 1e-5).ends()).isEqualTo("0 to 0.00001");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0004, 0.11, Double.NaN, Double.POSITIVE_INFINITY, -1e300})
    void refusesWhatLiesOutside(double value) {
        assertThat(GAP.holds(value)).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GAP.check(value))
                .withMessageStartingWith("gap must be 0.0005 to 0.1 m, was ");
    }

    @Test
    void bothEndsAreAllowed() {
        assertThat(GAP.check(0.0005)).isEqualTo(0.0005);
        assertThat(GAP.check(0.1)).isEqualTo(0.1);
        assertThat(GAP.holds(GAP.read("0.5 mm"))).isTrue();
        assertThat(GAP.holds(GAP.read("10 cm"))).isTrue();
    }

    @Test
    void anotherEndHoldsForOneValueAlone() {
        assertThat(GAP.from(0.05).holds(0.04)).isFalse();
        assertThat(GAP.upTo(0.05).holds(0.06)).isFalse();
        assertThat(GAP.from(0.05).holds(0.1)).isTrue();
    }

    @ParameterizedTest
    @MethodSource("ranges")
    void readsExactlyWhatItWrites(Range range) {
        for (int i = 0; i <= 1000; i++) {
            double value = range.lowest() + (range.highest() - range.lowest()) * i / 1000;
            assertThat(range.read(range.write(value))).as(range.write(value)).isEqualTo(value);
        }
    }

    /** 9 times a thousandth is 0.009000000000000001. */
    @Test
    void aThousandthIsDividedBy() {
        assertThat(GAP.read("9 mm")).isEqualTo(0.009);
        assertThat(GAP.write(0.009)).isEqualTo("9 mm");
    }

    @Test
    void aNumberInItsOwnUnitComesBackAsItStands() {
        assertThat(Range.of("gas", Dimension.PRICE_PER_ENERGY, "per kWh", 0, 10).read("0.061 per kWh"))
                .isEqualTo(0.061);
    }

    @Test
    void refusesUnitsOfAnotherDimensionAndEndsInDisorder() {
        assertThatIllegalArgumentException().isThrownBy(() -> Range.of("gap", Dimension.LENGTH, "kW", 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> GAP.writtenIn("kg"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GAP.from(0.2))
                .withMessageContaining("ends at 0.1, before it begins, at 0.2");
    }
}
