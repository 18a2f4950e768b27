package dev.warmlane.files;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintableTest {

    @ParameterizedTest
    @ValueSource(
            ints = {
                0x00, 0x07, 0x09, 0x0A, 0x0D, 0x1B, 0x7F, 0x85, 0x9B, 0x200B, 0x200E, 0x2028, 0x2029, 0x202A, 0x202E,
                0x2066, 0x2069, 0xFEFF, 0xD800, 0xE0041
            })
    void whatCommandsATerminalOrHidesIsWrittenAsItsNumber(int point) {
        String text = "a" + Character.toString(point) + "b";

        assertThat(Printable.isPrintable(text)).isFalse();
        assertThat(Printable.line(text)).matches("a\\\\[uU][0-9A-F]{4,8}b");
    }

    @Test
    void wordsOfEveryLanguageStay() {
        String words = "Żółw, Ünterföhring, 東京, הרצליה, 27 °C, 5 m², 🏊";

        assertThat(Printable.line(words)).isEqualTo(words);
    }

    @Test
    void quotesAreShortAndCutNoCharacterInTwo() {
        assertThat(Printable.quote("x".repeat(1_000_000))).isEqualTo("x".repeat(80) + "…");
        assertThat(Printable.quote("🏊".repeat(60)).codePointAt(0)).isEqualTo("🏊".codePointAt(0));
        assertThat(Printable.cut("a🏊", 2)).isEqualTo("a…");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-x", "@SUM(A1)", " =1"})
    void formulasAreGuarded(String cell) {
        assertThat(Printable.csvCell(cell)).isEqualTo("'" + cell);
    }

    @Test
    void otherCellsStay() {
        assertThat(Printable.csvCell("a=b")).isEqualTo("a=b");
    }
}
