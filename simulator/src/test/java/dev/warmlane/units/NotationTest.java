package dev.warmlane.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.MonthDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NotationTest {

    private static final MonthDay DAY = MonthDay.of(5, 15);

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
                    COMMA_POINT | 1,234,567.8 | −0.5 | 1,234.5
                    POINT_COMMA | 1.234.567,8 | −0,5 | 1.234,5
                    SPACE_COMMA | 1 234 567,8 | −0,5 | 1 234,5
                    SPACE_POINT | 1 234 567.8 | −0.5 | 1 234.5
                    APOSTROPHE_POINT | 1'234'567.8 | −0.5 | 1'234.5
                    """)
    void everyStyleHasItsMarks(NumberStyle style, String large, String small, String sample) {
        assertThat(style.show(1234567.8, 1)).isEqualTo(large);
        assertThat(style.show(-0.5, 1)).isEqualTo(small);
        assertThat(style.show(-0.04, 1)).doesNotContain("-");
        assertThat(style.sample()).isEqualTo(sample);
    }

    @Test
    void decimalsAreThoseBetweenDigitsAlone() {
        assertThat(NumberStyle.POINT_COMMA.decimals("0.2 to 1.5 m, see no. 3.")).isEqualTo("0,2 to 1,5 m, see no. 3.");
        assertThat(NumberStyle.COMMA_POINT.decimals("0.2")).isEqualTo("0.2");
    }

    @Test
    void datesBeginWithDayOrMonth() {
        assertThat(new Notation(NumberStyle.COMMA_POINT, DateOrder.DAY_FIRST).show(DAY))
                .isEqualTo("15 May");
        assertThat(new Notation(NumberStyle.COMMA_POINT, DateOrder.MONTH_FIRST).show(DAY))
                .isEqualTo("May 15");
        assertThat(Notation.usual(UnitSystem.METRIC).show(DAY)).isEqualTo("15 May");
        assertThat(Notation.usual(UnitSystem.US).show(DAY)).isEqualTo("May 15");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    COMMA_POINT | $ | $1,200 | −$1,200 | $1,200 to $1,200
                    COMMA_POINT | A$ | A$1,200 | −A$1,200 | A$1,200 to A$1,200
                    COMMA_POINT | EUR | 1,200 EUR | −1,200 EUR | 1,200 to 1,200 EUR
                    POINT_COMMA | EUR | 1.200 EUR | −1.200 EUR | 1.200 to 1.200 EUR
                    POINT_COMMA | € | 1.200 € | −1.200 € | 1.200 to 1.200 €
                    """)
    void aSignLeadsBeforeADecimalPoint(NumberStyle style, String currency, String money, String less, String range) {
        Notation notation = new Notation(style, DateOrder.DAY_FIRST);
        String amount = notation.show(1200, 0);

        assertThat(notation.money(amount, currency)).isEqualTo(money);
        assertThat(notation.money("-" + amount, currency)).isEqualTo(less);
        assertThat(notation.lead(amount, currency) + " to " + notation.money(amount, currency))
                .isEqualTo(range);
    }
}
