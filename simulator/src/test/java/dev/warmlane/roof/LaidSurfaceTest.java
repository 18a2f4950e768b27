package dev.warmlane.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Where banks lie on a plan that several collectors share: a roof of 30 m by 14 m, its first rows along the long edge. */
class LaidSurfaceTest {

    private static final Offset<Double> EXACT = within(1e-5);
    private static final Surface HALL = Surface.flat("hall", Outline.rectangle(30, 14), 180, 6);

    private static Bank bank(double x, double y, double alongDeg) {
        return new Bank(1, new Patch(new RoofPoint(x, y), alongDeg, 4.8, 2.2), 4, 2, 1.2, 0.05, 0.05);
    }

    private static LaidSurface.On on(String name, double alongDeg, Bank... banks) {
        return new LaidSurface.On(name, new SurfaceLayout(HALL, alongDeg, List.of(banks)), new Laying.Mats());
    }

    private static LaidSurface.Place second(double alongDeg) {
        LaidSurface.On other = on("second", alongDeg, bank(10, 8, alongDeg));
        LaidSurface laid = new LaidSurface(List.of(on("first", 0, bank(1, 1, 0)), other));
        return laid.place(other, other.layout().banks().get(0));
    }

    private static void holds(LaidSurface.Place place, double along, double across, double length, double depth) {
        assertThat(List.of(place.alongM(), place.acrossM(), place.lengthM(), place.depthM()))
                .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-5 ? 0 : Double.compare(one, other))
                .containsExactly(along, across, length, depth);
    }

    /** A bank of 4.8 m by 2.2 m from (10, 8) on, its depth to the left of its length, and turned by quarters. */
    @Test
    void ofRowsAlongAndAcrossItIsTheRectangleThatCounts() {
        holds(second(0), 10, 8, 4.8, 2.2);
        holds(second(90), 10 - 2.2, 8, 2.2, 4.8);
        holds(second(180), 10 - 4.8, 8 - 2.2, 4.8, 2.2);
        holds(second(270), 10, 8 - 4.8, 2.2, 4.8);
        assertThat(List.of(second(0), second(90), second(180), second(270)))
                .extracting(LaidSurface.Place::askewDeg)
                .containsOnly(0.0);
    }

    @Test
    void askewItIsItsOwnCornerWithItsOwnSidesAndTheTurn() {
        holds(second(20), 10, 8, 4.8, 2.2);
        assertThat(second(20).askewDeg()).isCloseTo(20, EXACT);
        assertThat(second(340).askewDeg()).as("to the right").isCloseTo(-20, EXACT);
    }

    @Test
    void whatLiesOnItIsAddedUp() {
        LaidSurface laid = new LaidSurface(
                List.of(on("first", 0, bank(1, 1, 0), bank(7, 1, 0)), on("second", 90, bank(20, 5, 90))));

        assertThat(laid.banks()).isEqualTo(3);
        assertThat(laid.panels()).isEqualTo(12);
        assertThat(laid.areaM2()).isCloseTo(12 * 2.4, EXACT);
        assertThat(laid.quarterTurns(laid.collectors().get(1))).isEqualTo(1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LaidSurface(new ArrayList<>()))
                .withMessageContaining("nothing lies on the surface");
    }
}
