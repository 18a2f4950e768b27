package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.season.Installation;
import dev.warmlane.site.Schedule;
import java.util.Comparator;

/** Compares installations field by field. */
final class SameInstallation {

    /** A value goes through one conversion each way, of which each rounds by 1e-16 or so. */
    static final double ROUNDING = 1e-14;

    private SameInstallation() {}

    /** Fails unless every number of the one is that of the other but for a relative difference. */
    static void check(Installation actual, Installation expected, double tolerance) {
        assertThat(actual)
                .usingRecursiveComparison()
                .withEqualsForType(Schedule::equals, Schedule.class)
                .withComparatorForType(closeTo(tolerance), Double.class)
                .isEqualTo(expected);
    }

    private static Comparator<Double> closeTo(double tolerance) {
        return (a, b) -> Math.abs(a - b) <= tolerance * Math.max(1, Math.abs(a)) ? 0 : Double.compare(a, b);
    }
}
