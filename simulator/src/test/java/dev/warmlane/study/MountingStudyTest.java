package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.Mounting;
import dev.warmlane.collector.PlateFlow;
import dev.warmlane.pool.Flow;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.study.MountingOption.Flat;
import dev.warmlane.weather.WeatherYear;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class MountingStudyTest {

    /** The plate's temperature follows from a loss coefficient that is settled to 0.1 %, see the plate's balance. */
    private static final double CLOSURE = 0.005;

    /**
     * The ledger's heat comes from curves (0.1 %) and follows the water within the hour; the budget takes the middle of
     * the hour.
     */
    private static final double LEDGER = 0.005;

    private static WeatherYear weather;
    private static Installation template;
    private static List<MountingOption> options;
    private static MountingStudy study;

    @BeforeAll
    static void simulate() {
        weather = Demo.weather("cool-coast");
        template = Demo.pool(1.8).build();
        options = UsualMountings.of(template, weather.site());
        study = MountingStudy.of(template, new SharedForcing(weather), options, new Runs(2, Progress.SILENT));
    }

    /** Rows of racks by hand: their number, the pitch between them, and the last one's run on the roof. */
    @Test
    void heatPerRoofCountsTheWaysBetweenRows() {
        assertThat(study.sameRoof()).allSatisfy(result -> {
            double roof = result.fit()
                    .racks()
                    .map(rows -> result.fit().areaM2()
                            / (rows.rows() * rows.collectorPerRowM())
                            * ((rows.rows() - 1) * rows.pitchM()
                                    + rows.collectorPerRowM() * Math.cos(Math.toRadians(rows.tiltDeg()))))
                    .orElse(result.fit().areaM2());
            assertThat(result.deliveredKwhPerRoofM2()).isCloseTo(result.deliveredKwh() / roof, within(1e-9));
        });
    }

    @Test
    void sameBitsOnOneThreadAsOnTwo() {
        MountingStudy one =
                MountingStudy.of(template, new SharedForcing(weather), options, new Runs(1, Progress.SILENT));

        for (int i = 0; i < options.size(); i++) {
            sameBits(one.sameArea().get(i), study.sameArea().get(i));
            sameBits(one.sameRoof().get(i), study.sameRoof().get(i));
        }
    }

    private static void sameBits(MountingResult one, MountingResult two) {
        SeasonLedger a = one.forecast().with();
        SeasonLedger b = two.forecast().with();
        for (int index = 0; index < a.hours(); index++) {
            assertThat(a.waterEndC(index)).isEqualTo(b.waterEndC(index));
            assertThat(a.heatJm2(Flow.COLLECTORS, index)).isEqualTo(b.heatJm2(Flow.COLLECTORS, index));
        }
        assertThat(one.season()).isEqualTo(two.season());
        assertThat(one.light()).isEqualTo(two.light());
        assertThat(one.lightByMonth()).isEqualTo(two.lightByMonth());
        assertThat(one.fit()).isEqualTo(two.fit());
    }

    @Test
    void comparesEveryOptionTwice() {
        assertThat(study.compared()).extracting(MountingStudy.Compared::option).isEqualTo(options);
        assertThat(study.sameArea())
                .allSatisfy(r -> assertThat(r.fit().areaM2()).isEqualTo(200));
        assertThat(study.sameRoof()).allSatisfy(r -> assertThat(r.fit().fits()).isTrue());
        assertThat(study.sameRoof().get(0).fit().areaM2())
                .isCloseTo(template.roof().usableAreaM2(), within(1e-9));
        assertThat(study.sameRoof().get(0).deliveredKwh())
                .isGreaterThan(study.sameArea().get(0).deliveredKwh());
    }

    @Test
    void lightThatIsAbsorbedIsLostOrUseful() {
        for (MountingResult result : study.sameArea()) {
            LightBudget season = result.light().orElseThrow();
            assertThat(season.absorbed() - season.losses())
                    .as(result.option().name())
                    .isCloseTo(season.useful(), within(CLOSURE * season.absorbed()));
            for (LightBudget month : result.lightByMonth()) {
                assertThat(month.absorbed() - month.losses())
                        .isCloseTo(month.useful(), within(CLOSURE * month.absorbed()));
            }
        }
    }

    @Test
    void monthsOfTheBudgetAddUpToTheSeason() {
        for (MountingResult result : study.sameArea()) {
            LightBudget season = result.light().orElseThrow();
            double hours = result.lightByMonth().stream()
                    .mapToDouble(LightBudget::runHours)
                    .sum();
            assertThat(hours).isCloseTo(season.runHours(), within(1e-6));
            assertThat(hours).isCloseTo(result.season().pump().hours(), within(1e-6));
            assertThat(result.lightByMonth()).hasSameSizeAs(result.months());
        }
    }

    @Test
    void budgetsUsefulHeatIsThatOfTheLedger() {
        for (MountingResult result : study.sameArea()) {
            double ledger =
                    result.season().collectors().usefulKwh() / result.fit().areaM2();
            assertThat(result.light().orElseThrow().useful()).isCloseTo(ledger, within(LEDGER * ledger));
        }
    }

    @Test
    void airOfTheBudgetIsThatOfTheHoursTheyRan() {
        for (MountingResult result : study.sameArea()) {
            SeasonLedger ledger = result.forecast().with();
            double hours = 0;
            double air = 0;
            for (int index = 0; index < ledger.hours(); index++) {
                // the season begins on 1 May, 120 days into the year
                hours += ledger.runShare(0, index);
                air += ledger.runShare(0, index) * weather.airTemperatureC(120 * 24 + index);
            }

            assertThat(result.light().orElseThrow().airC()).isCloseTo(air / hours, within(1e-9));
        }
    }

    @Test
    void onlyAnOpenBackHasAFilmAndOnlyAClosedOneLosesToTheRoom() {
        LightBudget flat = study.sameArea().get(0).light().orElseThrow();
        LightBudget racks = study.sameArea().get(1).light().orElseThrow();

        assertThat(flat.filmBackWm2K()).isZero();
        assertThat(flat.kwhM2(PlateFlow.CONVECTION_BACK)).isZero();
        assertThat(racks.filmBackWm2K()).isPositive();
        assertThat(racks.kwhM2(PlateFlow.CONVECTION_BACK)).isPositive();
        assertThat(racks.kwhM2(PlateFlow.THROUGH_BACK)).isZero();
        assertThat(flat.filmFrontWm2K()).as("the wind has run over the roof").isLessThan(racks.filmFrontWm2K());
    }

    @Test
    void progressIsHeardForEveryRun() {
        List<Integer> heard = Collections.synchronizedList(new ArrayList<>());
        int[] total = new int[1];

        MountingStudy.of(template, new SharedForcing(weather), options.subList(0, 2), new Runs(2, (finished, of) -> {
            heard.add(finished);
            total[0] = of;
        }));

        assertThat(heard).containsExactlyInAnyOrder(1, 2, 3, 4);
        assertThat(total[0]).isEqualTo(4);
    }

    @Test
    void cancelStopsTheStudy() {
        Progress cancelling = new Progress() {
            private volatile boolean stop;

            @Override
            public void finished(int finished, int total) {
                stop = true;
            }

            @Override
            public boolean cancelled() {
                return stop;
            }
        };

        assertThatExceptionOfType(CancellationException.class)
                .isThrownBy(
                        () -> MountingStudy.of(template, new SharedForcing(weather), options, new Runs(1, cancelling)));
    }

    @Test
    void refusesWhatCannotBeCompared() {
        Runs runs = new Runs(1, Progress.SILENT);

        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> MountingStudy.of(template.withoutCollectors(), new SharedForcing(weather), options, runs))
                .withMessageContaining("needs an installation with collectors");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MountingStudy.of(template, new SharedForcing(weather), List.of(), runs))
                .withMessageContaining("no mounting to compare");
        Flat flat = new Flat("twice", Mounting.FlatOnRoof.USUAL);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MountingStudy.of(template, new SharedForcing(weather), List.of(flat, flat), runs))
                .withMessageContaining("two mountings are called \"twice\"");
    }
}
