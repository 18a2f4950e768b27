package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.warmlane.report.SampleStudies;
import java.util.List;
import org.junit.jupiter.api.Test;

class TracedPairTest {

    private static final MountingStudy STUDY = SampleStudies.MUNICIPAL.mountings();

    @Test
    void bestRacksThatFitAreTraced() {
        TracedPair pair = TracedPair.best(STUDY).orElseThrow();
        double heat = STUDY.sameArea().stream()
                .filter(r -> r.option().equals(pair.racks()))
                .findFirst()
                .orElseThrow()
                .deliveredKwh();

        boolean anyFits = STUDY.sameArea().stream()
                .anyMatch(r ->
                        r.option() instanceof MountingOption.Racks && r.fit().fits());
        assertThat(STUDY.sameArea())
                .filteredOn(r ->
                        r.option() instanceof MountingOption.Racks && (r.fit().fits() || !anyFits))
                .allSatisfy(r -> assertThat(r.deliveredKwh()).isLessThanOrEqualTo(heat));
        assertThat(TracedPair.best(SampleStudies.SINGLE.mountings())).isEmpty();
    }

    @Test
    void namesMayStandInAnyOrder() {
        TracedPair best = TracedPair.best(STUDY).orElseThrow();

        assertThat(TracedPair.named(
                        STUDY, List.of(best.racks().name(), best.flat().name())))
                .isEqualTo(best);
    }

    @Test
    void otherNamesAreToldWhichThereAre() {
        assertThatThrownBy(() -> TracedPair.named(STUDY, List.of("flat", "roof")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("found \"flat\", \"roof\"; flat: \"flat\"; racks: \"15° racks");
    }
}
