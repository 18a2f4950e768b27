package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.NextSquareMetre;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.Prices;
import dev.warmlane.season.SeasonForecast;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class AreaStudyTest {

    /** Two sums of the same products in another order. */
    private static final double ROUNDING = 1e-9;

    private static final SharedForcing FORCING = new SharedForcing(Demo.weather("cool-coast"));
    private static final Runs ALONE = new Runs(1, Progress.SILENT);

    private static final CollectorArray PANELS = new CollectorArray(
            "panels", 210, Mounting.FlatOnRoof.USUAL, Absorber.USUAL_MAT, CollectorArray.USUAL_FLOW_KG_S_M2, 2.5);

    private static final CollectorArray RACKS =
            new CollectorArray("racks", 60, new Mounting.OpenRack(30, 180, 2, 4, 3, 0.3), Absorber.USUAL_MAT);

    private static final Installation PLAIN = Demo.pool(1.8).build();

    private static final Installation HEATED = Demo.pool(1.8)
            .heater(Demo.HEATER)
            .arrays(PANELS)
            .prices(new Prices("EUR", 0.09, 0.28, 140))
            .build();

    private static AreaStudy study(Installation installation, double fromM2, double toM2, int designs) {
        return AreaStudy.of(installation, new AreaRange(fromM2, toM2, designs), FORCING, ALONE);
    }

    @Test
    void moreAreaIsWarmerAndGivesLessForEachSquareMetre() {
        for (Installation installation : List.of(PLAIN, HEATED)) {
            List<AreaDesign> designs = study(installation, 20, 600, 30).designs();

            assertThat(designs).hasSize(30);
            for (int i = 1; i < designs.size(); i++) {
                PeriodSummary smaller = designs.get(i - 1).season();
                PeriodSummary larger = designs.get(i).season();
                assertThat(larger.water().meanC()).isGreaterThan(smaller.water().meanC());
                assertThat(larger.balance().deliveredKwh())
                        .isGreaterThan(smaller.balance().deliveredKwh());
                assertThat(larger.collectors().deliveredKwhPerM2().orElseThrow())
                        .isLessThan(smaller.collectors().deliveredKwhPerM2().orElseThrow());
                assertThat(larger.collectors().refusedKwh())
                        .isGreaterThanOrEqualTo(smaller.collectors().refusedKwh());
                assertThat(larger.comfort().daysAtComfort())
                        .isGreaterThanOrEqualTo(smaller.comfort().daysAtComfort());
            }
        }
    }

    @Test
    void whatTheNextSquareMetreIsWorthIsTheDifferenceOfTheRows() {
        List<AreaDesign> designs = study(HEATED, 100, 400, 7).designs();
        for (int i = 1; i < designs.size(); i++) {
            AreaDesign smaller = designs.get(i - 1);
            AreaDesign larger = designs.get(i);
            double added = larger.areaM2() - smaller.areaM2();
            assertThat(smaller.next().deliveredKwhPerM2() * added)
                    .isCloseTo(
                            larger.season().balance().deliveredKwh()
                                    - smaller.season().balance().deliveredKwh(),
                            within(ROUNDING * larger.season().balance().deliveredKwh()));
            assertThat(smaller.next().displacedKwhPerM2().orElseThrow() * added)
                    .isCloseTo(
                            larger.season().gas().replacedKwh()
                                    - smaller.season().gas().replacedKwh(),
                            within(ROUNDING * larger.season().gas().replacedKwh()));
        }
        // the last row has a next one that is not shown
        AreaDesign last = designs.get(designs.size() - 1);
        AreaDesign beyond = study(HEATED, 450, 450, 1).designs().get(0);
        assertThat(last.next()).isEqualTo(NextSquareMetre.between(last.season(), beyond.season(), HEATED));
    }

    @Test
    void theDescribedAreaIsTheForecastItself() {
        AreaStudy study = AreaStudy.of(HEATED, AreaRange.around(HEATED.collectorAreaM2()), FORCING, ALONE);
        List<AreaDesign> described =
                study.designs().stream().filter(AreaDesign::asDescribed).toList();

        SeasonForecast forecast = SeasonForecast.of(HEATED, FORCING.weather());
        assertThat(described).hasSize(1);
        assertThat(described.get(0).season()).isEqualTo(PeriodSummary.of(forecast, Periods.season(forecast.with())));
        assertThat(described.get(0).money()).isEqualTo(forecast.summary().money());
    }

    @Test
    void anOversizedInstallationIsComparedWithWhatTheRoofHolds() {
        for (CollectorArray array : List.of(PANELS.withAreaM2(2500), Demo.FLAT.withAreaM2(2500))) {
            Installation oversized = HEATED.toBuilder().arrays(array).build();
            AreaStudy study = AreaStudy.of(oversized, AreaRange.around(oversized), FORCING, ALONE);

            assertThat(study.designs()).hasSize(8);
            assertThat(study.designs().get(0).fitsRoof()).isTrue();
            assertThat(study.designs().stream().filter(AreaDesign::asDescribed)).hasSize(1);
            assertThat(study.designs().get(5).asDescribed()).isTrue();
        }
        assertThat(AreaRange.around(HEATED)).isEqualTo(AreaRange.around(210));
    }

    @Test
    void oneThreadAndTwoGiveTheSameBits() {
        AreaRange range = new AreaRange(50, 500, 40);
        AreaStudy alone = AreaStudy.of(HEATED, range, new SharedForcing(FORCING.weather()), ALONE);
        AreaStudy together =
                AreaStudy.of(HEATED, range, new SharedForcing(FORCING.weather()), new Runs(2, Progress.SILENT));
        assertThat(together.designs().stream().map(AreaDesign::season))
                .containsExactlyElementsOf(
                        alone.designs().stream().map(AreaDesign::season).toList());
        assertThat(together.designs().stream().map(AreaDesign::next))
                .containsExactlyElementsOf(
                        alone.designs().stream().map(AreaDesign::next).toList());
    }

    @Test
    void panelsComeWhole() {
        List<AreaDesign> designs = study(HEATED, 101, 109, 9).designs();
        // 101 m² is nearest to 40 panels and 109 m² to 44; what comes out the same is kept once
        assertThat(designs.stream().map(d -> d.panels().orElseThrow())).containsExactly(40, 41, 42, 43, 44);
        assertThat(designs.stream().map(AreaDesign::areaM2)).containsExactly(100.0, 102.5, 105.0, 107.5, 110.0);
    }

    @Test
    void onePanelIsTheLeastAndOneMoreIsNext() {
        AreaDesign only = study(HEATED, 0.1, 0.1, 1).designs().get(0);
        assertThat(only.panels()).hasValue(1);
        AreaDesign two = study(HEATED, 5, 5, 1).designs().get(0);
        assertThat(only.next()).isEqualTo(NextSquareMetre.between(only.season(), two.season(), HEATED));
    }

    @Test
    void arraysKeepTheirSharesAndRacksTheirRows() {
        Installation both = Demo.pool(1.8).arrays(PANELS, RACKS).build();
        AreaDesign half = study(both, 135, 135, 1).designs().get(0);
        assertThat(half.arrays().get(0).panels()).hasValue(42);
        assertThat(half.arrays().get(1).areaM2()).isCloseTo(30, within(ROUNDING));
        assertThat(half.arrays().get(1).rows()).hasValue(3);
        assertThat(half.panels()).isEmpty();
    }

    @Test
    void theRoofsLimitIsWhereItsUsableAreaIsUsedUp() {
        // 420 m² of roof, 80 % of it usable
        assertThat(study(PLAIN, 200, 200, 1).roofLimitM2()).hasValue(336);
        List<AreaDesign> designs = study(PLAIN, 335, 337, 3).designs();
        assertThat(designs.stream().map(AreaDesign::fitsRoof)).containsExactly(true, true, false);

        // three rows of 2 m chord: 10 m by (2·4 + 2·cos 30°) m of roof for 60 m²
        Installation racks = Demo.pool(1.8).arrays(RACKS).build();
        double taken = 10 * (2 * 4 + 2 * Math.cos(Math.toRadians(30)));
        assertThat(study(racks, 60, 60, 1).roofLimitM2().orElseThrow()).isCloseTo(60 * 336 / taken, within(ROUNDING));

        Installation pitched = Demo.pool(1.8)
                .arrays(RACKS.withMounting(new Mounting.FlushOnPitchedRoof(25, 180, 6, 0.005)))
                .build();
        assertThat(study(pitched, 60, 60, 1).roofLimitM2()).isEmpty();
    }

    @Test
    void oneAreaIsEnough() {
        AreaStudy one = study(PLAIN, 200, 200, 5);
        assertThat(one.designs()).hasSize(1);
        assertThat(one.designs().get(0).asDescribed()).isTrue();
        assertThat(one.designs().get(0).next().deliveredKwhPerM2())
                .isEqualTo(SeasonForecast.of(PLAIN, FORCING.weather())
                        .summary()
                        .nextSquareMetre()
                        .orElseThrow()
                        .deliveredKwhPerM2());
    }

    @Test
    void refusesWhatMakesNoStudy() {
        refused(() -> new AreaRange(300, 100, 5), "run upwards", "from 300 m2 down to 100 m2");
        refused(() -> new AreaRange(100, 300, 1), "one design cannot cover");
        refused(() -> new AreaRange(100, 300, 0), "1 to 10000 designs", "0");
        refused(() -> new AreaRange(0, 300, 3), "above 0", "from 0 to 300");
        refused(() -> new AreaRange(100, 60_000, 3), "at most 50000 m2");
        refused(() -> new AreaRange(Double.NaN, 300, 3), "above 0");
        refused(() -> study(PLAIN.withoutCollectors(), 100, 300, 3), "invented pool has none");
        Installation both = Demo.pool(1.8).arrays(Demo.FLAT, RACKS).build();
        refused(() -> study(both, 1, 300, 3), "from 1 m2 is too small", "racks would have 0.2308 m2", "least is 0.5");
    }

    private static void refused(ThrowingCallable call, String... words) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContainingAll(words);
    }

    @Test
    void tellsHowFarItIs() {
        ConcurrentLinkedQueue<Integer> heard = new ConcurrentLinkedQueue<>();
        Set<Integer> totals = ConcurrentHashMap.newKeySet();
        Runs runs = new Runs(2, (finished, total) -> {
            heard.add(finished);
            totals.add(total);
        });
        AreaStudy.of(PLAIN, new AreaRange(100, 200, 9), FORCING, runs);
        // nine areas and one beyond
        assertThat(heard)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.rangeClosed(1, 10).boxed().toList());
        assertThat(totals).containsExactly(10);
    }

    @Test
    void stopsWhenCancelled() {
        AtomicInteger finishedRuns = new AtomicInteger();
        Progress impatient = new Progress() {
            @Override
            public void finished(int finished, int total) {
                finishedRuns.incrementAndGet();
            }

            @Override
            public boolean cancelled() {
                return finishedRuns.get() >= 3;
            }
        };
        assertThatThrownBy(() -> AreaStudy.of(PLAIN, new AreaRange(100, 200, 50), FORCING, new Runs(1, impatient)))
                .isInstanceOf(CancellationException.class);
        assertThat(finishedRuns).hasValue(3);
    }
}
