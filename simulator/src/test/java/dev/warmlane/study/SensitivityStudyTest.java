package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.warmlane.circuit.Pipes;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Schedule;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class SensitivityStudyTest {

    private static final SharedForcing FORCING = new SharedForcing(Demo.weather("cool-coast"));

    private static final CollectorArray RACKS =
            new CollectorArray("racks", 60, new Mounting.OpenRack(30, 180, 2, 4, 3, 0.3), Absorber.USUAL_MAT);

    /** An unheated pool that never comes to its limit, so that what the collectors give is not hidden by either. */
    private static final Installation INSTALLATION = Demo.pumpedPool(1.8, 3000)
            .arrays(Demo.FLAT, RACKS)
            .cover(Cover.bubble(Schedule.daily(20, 8)))
            .bathers(new Bathers(40, 600, 0.5, Schedule.daily(10, 18)))
            .pipes(new Pipes(60, 900))
            .build();

    private static final SensitivityStudy STUDY = SensitivityStudy.of(INSTALLATION, FORCING, Runs.onAllCores());

    private static Sensitivity of(String name) {
        return STUDY.effects().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(name + " was not varied"));
    }

    private static void raisesHeat(String name) {
        assertThat(of(name).low().change().deliveredKwh()).as(name + " low").isNegative();
        assertThat(of(name).high().change().deliveredKwh()).as(name + " high").isPositive();
    }

    private static void lowersHeat(String name) {
        assertThat(of(name).low().change().deliveredKwh()).as(name + " low").isPositive();
        assertThat(of(name).high().change().deliveredKwh()).as(name + " high").isNegative();
    }

    private static void warms(String name) {
        assertThat(of(name).low().change().meanK()).as(name + " low").isNegative();
        assertThat(of(name).high().change().meanK()).as(name + " high").isPositive();
    }

    private static void cools(String name) {
        assertThat(of(name).low().change().meanK()).as(name + " low").isPositive();
        assertThat(of(name).high().change().meanK()).as(name + " high").isNegative();
    }

    @Test
    void hasTheSignThatPhysicsFixes() {
        raisesHeat("absorptance of the collector");
        raisesHeat("plate-to-fluid conductance");
        lowersHeat("emittance of the collector");
        lowersHeat("heat loss of the pipes");
        lowersHeat("stop difference");
        // water warmer than the air and the room: film and back lose
        lowersHeat("wind's cooling of the collector");
        lowersHeat("wind along the roof, ratio");
        lowersHeat("terrain around the roof");
        lowersHeat("wind at inner rows over the first");
        // what only cools the pool makes its collectors give more
        raisesHeat("wind at pool over the station's");
        raisesHeat("heat loss to the ground");
        raisesHeat("rise of evaporation by bathers");

        cools("wind at pool over the station's");
        cools("heat loss to the ground");
        cools("evaporation correlation");
        cools("rise of evaporation by bathers");
        warms("absorptance of the basin");
        warms("heat of the circulation pump");
        warms("cover, hours a day");
        warms("absorptance of the collector");
    }

    @Test
    void theLargestEffectOnHeatComesFirst() {
        assertThat(STUDY.effects())
                .extracting(Sensitivity::effectOnHeatKwh)
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void everyParameterIsVariedOrSkippedWithItsReason() {
        assertThat(STUDY.effects().size() + STUDY.skipped().size()).isEqualTo(Parameters.ALL.size());
        assertThat(STUDY.skipped())
                .extracting(SensitivityStudy.Skipped::name)
                .containsExactly(
                        "conductivity of the tubes", "conductance of the board behind racks", "back on the test stand");
        assertThat(STUDY.effects()).allSatisfy(s -> assertThat(s.why()).isNotBlank());
    }

    @Test
    void changesAreSeasonLessSeason() {
        for (Sensitivity s : STUDY.effects()) {
            for (Sensitivity.End end : List.of(s.low(), s.high())) {
                assertThat(end.change().deliveredKwh())
                        .isEqualTo(end.season().balance().deliveredKwh()
                                - STUDY.described().balance().deliveredKwh());
                assertThat(end.change().meanK())
                        .isEqualTo(end.season().water().meanC()
                                - STUDY.described().water().meanC());
            }
        }
    }

    @Test
    void skipsWhatIsNotThere() {
        Installation hall = INSTALLATION.toBuilder()
                .pool(Pool.of(100, 1.2, new PoolSetting.Indoor(28, 0.6, 0.07)))
                .cover(null)
                .bathers(Bathers.NONE)
                .pipes(Pipes.NONE)
                .arrays(Demo.FLAT)
                .build();
        SensitivityStudy study = SensitivityStudy.of(hall, FORCING, Runs.onAllCores());
        assertThat(study.skipped())
                .extracting(SensitivityStudy.Skipped::name)
                .containsExactly(
                        "wind at pool over the station's",
                        "rise of evaporation by bathers",
                        "absorptance of the basin",
                        "heat of the circulation pump",
                        "cover, hours a day",
                        "albedo of the roof",
                        "emittance of the roof",
                        "conductivity of the tubes",
                        "clearance below the racks",
                        "conductance of the board behind racks",
                        "wind at inner rows over the first",
                        "back on the test stand",
                        "heat loss of the pipes");
        assertThat(study.skipped()).allSatisfy(s -> assertThat(s.why()).isNotBlank());
    }

    @Test
    void skipsWhatIsTheSameAtBothEnds() {
        Installation always =
                INSTALLATION.toBuilder().cover(Cover.bubble(Schedule.ALWAYS)).build();
        SensitivityStudy study =
                SensitivityStudy.of(always, List.of(new CoverHoursParameter()), FORCING, Runs.onAllCores());
        assertThat(study.effects()).isEmpty();
        assertThat(study.skipped())
                .containsExactly(new SensitivityStudy.Skipped("cover, hours a day", "it stays the same at both ends"));
    }

    @Test
    void oneThreadAndTwoGiveTheSameBits() {
        SensitivityStudy alone =
                SensitivityStudy.of(INSTALLATION, new SharedForcing(FORCING.weather()), new Runs(1, Progress.SILENT));
        SensitivityStudy together =
                SensitivityStudy.of(INSTALLATION, new SharedForcing(FORCING.weather()), new Runs(2, Progress.SILENT));
        assertThat(together).isEqualTo(alone);
    }

    @Test
    void needsCollectors() {
        assertThatThrownBy(() -> SensitivityStudy.of(INSTALLATION.withoutCollectors(), FORCING, Runs.onAllCores()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("invented pool has none");
    }

    @Test
    void stopsWhenCancelled() {
        Progress cancelled = new Progress() {
            @Override
            public void finished(int finished, int total) {}

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        assertThatThrownBy(() -> SensitivityStudy.of(INSTALLATION, FORCING, new Runs(2, cancelled)))
                .isInstanceOf(CancellationException.class);
    }
}
