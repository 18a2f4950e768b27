package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class RunsTest {

    private final Runs runs = new Runs(2, Progress.SILENT);

    @Test
    void resultsComeInTheOrderOfTheItems() {
        assertThat(runs.map(List.of(3, 1, 2), item -> 10 * item)).containsExactly(30, 10, 20);
    }

    /** Whoever asked has to hear that there is no memory left, not that a state was illegal. */
    @Test
    void errorsComeThroughAsTheyAre() {
        OutOfMemoryError none = new OutOfMemoryError("Java heap space");
        assertThatThrownBy(() -> runs.map(List.of(1, 2), item -> {
                    throw none;
                }))
                .isSameAs(none);
    }

    @Test
    void exceptionsComeThroughAsTheyAre() {
        IllegalArgumentException wrong = new IllegalArgumentException("wrong");
        assertThatThrownBy(() -> runs.map(List.of(1), item -> {
                    throw wrong;
                }))
                .isSameAs(wrong);
    }
}
