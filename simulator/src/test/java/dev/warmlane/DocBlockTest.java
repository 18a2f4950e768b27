package dev.warmlane;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Numbers of a document may differ by their last digit, and nothing else may. */
class DocBlockTest {

    @Test
    void lastDigitsMayDiffer() {
        assertThatCode(() -> DocBlock.compare("a", "| x-1.epw | 1.24 | 301 |", "| x-1.epw | 1.25 | 300 |"))
                .doesNotThrowAnyException();
    }

    @Test
    void moreThanTheLastDigitMayNot() {
        assertThatThrownBy(() -> DocBlock.compare("a", "| 1.24 |", "| 1.26 |")).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> DocBlock.compare("a", "| 301 |", "| 303 |")).isInstanceOf(AssertionError.class);
    }

    @Test
    void wordsAndHowManyNumbersMayNot() {
        assertThatThrownBy(() -> DocBlock.compare("a", "| flat | 1 |", "| rack | 1 |"))
                .isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> DocBlock.compare("a", "| 1 |", "| 1 | 2 |")).isInstanceOf(AssertionError.class);
    }
}
