package dev.warmlane.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The front of the handbook, docs/validation.md. Needs no data: the pages below it are held by their own tests. */
@Tag("handbook")
class HandbookTest {

    @Test
    void frontHasWhatThePagesSay() throws IOException {
        Handbook.checkFront();
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
