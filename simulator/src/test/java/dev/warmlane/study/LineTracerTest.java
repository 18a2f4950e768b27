package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.study.LineTracer.Vertex;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Lines that are known by their equation. */
class LineTracerTest {

    private static final double ACCURACY = 1e-6;

    private static final Runs RUNS = new Runs(1, Progress.SILENT);

    private static List<Double> places(int steps) {
        return IntStream.rangeClosed(0, steps)
                .mapToObj(i -> -2 + 4.0 * i / steps)
                .toList();
    }

    private static LineTracer tracer(DoubleBinaryOperator difference, int steps) {
        double[] along = places(steps).stream().mapToDouble(y -> y).toArray();
        return new LineTracer(difference, along, ACCURACY, ACCURACY);
    }

    private static List<List<Vertex>> traced(DoubleBinaryOperator difference, int steps) {
        return tracer(difference, steps).trace(places(steps), RUNS);
    }

    @Test
    void aCircleIsOneRingWhateverTheGrid() {
        for (int steps : new int[] {7, 11, 23}) {
            List<List<Vertex>> branches = traced((x, y) -> 1 - x * x - y * y, steps);

            assertThat(branches).hasSize(1);
            List<Vertex> ring = branches.get(0);
            assertThat(ring.get(ring.size() - 1)).isEqualTo(ring.get(0));
            assertThat(ring)
                    .allSatisfy(v -> assertThat(Math.hypot(v.x(), v.y())).isCloseTo(1, within(2 * ACCURACY)));
            assertThat(ring).allSatisfy(v -> assertThat(v.rises()).isEqualTo(v.y() < 0));
            // where its two halves meet it is closed in on
            assertThat(ring.stream().mapToDouble(Vertex::x).max().orElseThrow()).isGreaterThan(0.85);
        }
    }

    @Test
    void aLineThatLeavesThroughTheTopIsFollowedToThere() {
        List<List<Vertex>> branches = traced((x, y) -> 3.1 * x - y, 9);

        assertThat(branches).hasSize(1);
        List<Vertex> line = branches.get(0);
        assertThat(line).allSatisfy(v -> assertThat(v.y()).isCloseTo(3.1 * v.x(), within(5 * ACCURACY)));
        assertThat(line.stream().mapToDouble(Vertex::y)).contains(-2.0, 2.0);
        assertThat(line.stream().mapToDouble(Vertex::x).boxed().toList()).isSorted();
    }

    /** At most places of these the difference is just 0 in places along y. */
    @Test
    void aPlaceOfTheGridMayLieOnTheLine() {
        List<List<Vertex>> branches = traced((x, y) -> y - x / 2, 8);

        assertThat(branches).hasSize(1);
        assertThat(branches.get(0)).hasSize(9);
        assertThat(branches.get(0)).allSatisfy(v -> assertThat(v.y()).isCloseTo(v.x() / 2, within(ACCURACY)));
    }

    @Test
    void bothBranchesOfAHyperbolaAreFound() {
        List<List<Vertex>> branches = traced((x, y) -> y * y - x * x - 0.3, 8);

        assertThat(branches).hasSize(2);
        assertThat(branches).allSatisfy(branch -> assertThat(branch).allSatisfy(v -> assertThat(Math.abs(v.y()))
                .isCloseTo(Math.sqrt(v.x() * v.x() + 0.3), within(2 * ACCURACY))));
        assertThat(branches).allSatisfy(branch -> assertThat(branch).hasSizeGreaterThan(7));
    }

    @Test
    void oneSignEverywhereHasNoLine() {
        assertThat(traced((x, y) -> 1 + x * x, 8)).isEmpty();
        assertThat(traced((x, y) -> 0, 8)).as("neither gives anything").isEmpty();
        assertThat(tracer((x, y) -> 1 + y, 8).crossings(0.5, places(8), RUNS)).isEmpty();
    }

    @Test
    void crossingsAlongXAreFound() {
        List<Double> found = tracer((x, y) -> x * x - y, 9).crossings(1.5, places(9), RUNS);

        assertThat(found).hasSize(2);
        assertThat(found.get(0)).isCloseTo(-Math.sqrt(1.5), within(ACCURACY));
        assertThat(found.get(1)).isCloseTo(Math.sqrt(1.5), within(ACCURACY));
    }
}
