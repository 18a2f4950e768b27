package dev.warmlane.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.InventedReport;
import org.junit.jupiter.api.Test;

class TextWriterTest {

    @Test
    void writesEveryKindOfBlock() {
        assertThat(TextWriter.full(InventedReport.REPORT)).isEqualTo("""
                Märchenbad
                ==========

                Answer
                  A paragraph.
                  Another one.

                  24.0 °C  mean (cold before)
                  9 days   warm

                Both
                  - only in full

                  two pools
                  pool   heat
                  -----------
                  old   1,235
                  new       -

                  after the table

                Technical
                  for whoever checks it
                """);
    }

    @Test
    void briefHasWhatIsMarkedForIt() {
        assertThat(TextWriter.brief(InventedReport.REPORT))
                .contains("Answer", "Both\n  only in short\n\n  two pools")
                .doesNotContain("only in full", "Technical", "for whoever");
    }

    @Test
    void longWordsAreBrokenBetweenWordsAndPointsAreIndented() {
        String text =
                TextWriter.full(InventedReport.of("short", "word ".repeat(50).strip()));

        assertThat(text.lines()).allMatch(line -> line.length() <= 2 + TextWriter.WIDTH);
        assertThat(text).contains("\n  - word", "\n    word");
        assertThat(text.replaceAll("\\s+", " ")).contains("word ".repeat(50).strip());
    }

    @Test
    void aNumberKeepsItsUnitAndItsCurrency() {
        for (int before = 0; before < TextWriter.WIDTH; before++) {
            String text = TextWriter.full(InventedReport.of(
                    "short",
                    "x".repeat(before + 1) + " 24.0 °C and 9.1 Btu/h ft² °F and 32,400 EUR or 61 days of 134"));

            assertThat(text)
                    .doesNotContainPattern("24\\.0\\s*\n\\s*°C")
                    .doesNotContainPattern("9\\.1\\s*\n")
                    .doesNotContainPattern("32,400\\s*\n")
                    .doesNotContainPattern("61\\s*\n");
        }
        assertThat(TextWriter.full(InventedReport.of("short", "x".repeat(TextWriter.WIDTH - 6) + " 23 degreesX")))
                .contains(" 23\n");
    }

    @Test
    void whatCommandsATerminalIsWrittenAsItsNumber() {
        assertThat(TextWriter.full(InventedReport.of("red \u001b[31m"))).contains("red \\u001B[31m");
    }
}
