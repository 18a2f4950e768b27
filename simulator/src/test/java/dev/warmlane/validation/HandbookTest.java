package dev.warmlane.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The front of the handbook, docs/validation.md. Needs no data: the pages below it are held by their own tests. */
@Tag("handbook")
class HandbookTest {

    @Test
    void frontHasWhatThePagesSay() throws IOException {
        Handbook.checkFront();
    }

    /** Ten values with +1 and 2 %, thirty with +5 and 4 %: mean +4 %, square (10 (4 + 9) + 30 (16 + 1)) / 40 = 16. */
    @Test
    void experimentsOfOneQuantityAreWeightedByTheirValues() {
        String front = Handbook.front(new TreeMap<>(Map.of(
                "a.md", page("| heat | one | 10 | 9 W | +1.0 % | 2.0 % | 3 % |"),
                "b.md", page("| heat | two | 30 | 9 W | +5.0 % | 4.0 % | not stated |"),
                "c.md", "no block")));

        assertThat(front.lines().skip(2))
                .containsExactly("| heat | [one](validation/a.md), [two](validation/b.md) | 40 | +4.0 % | 4.0 % |"
                        + " 3 %; not stated |");
    }

    private static String page(String row) {
        return "# A page\n\n<!-- computed: quantities -->\n| head |\n|---|\n" + row + "\n<!-- end -->\n";
    }

    @Test
    void frontLeadsToEveryPage() throws IOException {
        String front = Files.readString(Path.of("..", "docs", Handbook.FRONT));
        assertThat(Handbook.pages()).isNotEmpty().allSatisfy(page -> assertThat(front)
                .contains("](validation/" + page.getFileName() + ")"));
    }

    @Test
    void frontBeginsWithWhatIsNotValidated() throws IOException {
        String front = Files.readString(Path.of("..", "docs", Handbook.FRONT));
        assertThat(front.indexOf("## What is not validated")).isPositive().isEqualTo(front.indexOf("\n## ") + 1);
    }
}
