package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SampleForecasts;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.units.Estimate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is told of two seasons together is doubtful only as far as something moves them apart. */
class PairedBandTest {

    /** Of the doubt that all parameters make of a lead, what those that are varied for it make at least. */
    private static final double MOST_OF_IT = 0.9;

    private static final SeasonForecast FORECAST = SampleForecasts.MUNICIPAL;

    private static double heat(PeriodSummary season) {
        return season.balance().deliveredKwh();
    }

    private static double lead(PeriodSummary one, PeriodSummary other) {
        return heat(one) / heat(other) - 1;
    }

    @Test
    void aSeasonIsNotInDoubtAgainstItself() {
        SeasonBand band = SeasonBand.of(FORECAST);
        assertThat(band.of(PairedBandTest::heat).doubt()).isPositive();

        PairedBand pair = new PairedBand(band, band);
        assertThat(pair.of((one, other) -> heat(one) - heat(other))).isEqualTo(Estimate.exactly(0));
        assertThat(pair.leastCertain((one, other) -> heat(one) - heat(other))).isEmpty();
    }

    @Test
    void eachDoubtIsTriedUnderBothAndWhatOneOfThemLacksLeavesItAsItIs() {
        MountingStudy study = MountingStudy.of(
                FORECAST.installation(),
                FORECAST.weather(),
                List.of(MountingOption.flat("flat"), MountingOption.racks("racks", 30, 180)));
        SharedForcing forcing = new SharedForcing(FORECAST.weather());
        SeasonBand flat = SeasonBand.of(
                study.sameArea().get(0).forecast(), List.of(RoofParameters.WIND_RATIO), forcing, Runs.onAllCores());
        SeasonBand racks = SeasonBand.of(
                study.sameArea().get(1).forecast(),
                List.of(RoofParameters.WIND_RATIO, CollectorParameters.INNER_WIND),
                forcing,
                Runs.onAllCores());
        assertThat(flat.doubts()).hasSize(1);
        assertThat(racks.doubts()).hasSize(2);

        double likely = lead(flat.likely(), racks.likely());
        double down = 0;
        double up = 0;
        for (Sensitivity doubt : racks.doubts()) {
            boolean both = doubt.name().equals(flat.doubts().get(0).name());
            double low = lead(
                    both ? flat.doubts().get(0).low().season() : flat.likely(),
                    doubt.low().season());
            double high = lead(
                    both ? flat.doubts().get(0).high().season() : flat.likely(),
                    doubt.high().season());
            down = Math.hypot(down, likely - Math.min(likely, Math.min(low, high)));
            up = Math.hypot(up, Math.max(likely, Math.max(low, high)) - likely);
        }
        Estimate lead = new PairedBand(flat, racks).of(PairedBandTest::lead);
        assertThat(lead.likely()).isEqualTo(likely);
        assertThat(lead.low()).isCloseTo(likely - down, within(1e-12));
        assertThat(lead.high()).isCloseTo(likely + up, within(1e-12));
        assertThat(down).isPositive();
    }

    @Test
    void whatIsVariedForALeadIsMostOfItsDoubt() {
        SharedForcing forcing = new SharedForcing(FORECAST.weather());
        MountingStudy study = MountingStudy.of(
                FORECAST.installation(),
                FORECAST.weather(),
                List.of(MountingOption.flat("flat"), MountingOption.racks("racks", 30, 180)));
        MountingResult flat = study.sameArea().get(0);
        MountingResult racks = study.sameArea().get(1);
        double doubt = new MountingBands(study)
                .of(flat, racks)
                .of(PairedBandTest::lead)
                .doubt();
        double all = new PairedBand(
                        SeasonBand.of(flat.forecast(), Parameters.ALL, forcing, Runs.onAllCores()),
                        SeasonBand.of(racks.forecast(), Parameters.ALL, forcing, Runs.onAllCores()))
                .of(PairedBandTest::lead)
                .doubt();
        assertThat(doubt).isBetween(MOST_OF_IT * all, all + 1e-9);
        // a season by itself is as certain as its forecast says
        assertThat(new MountingBands(study).of(flat).of(PairedBandTest::heat))
                .isEqualTo(SeasonBand.of(flat.forecast()).of(PairedBandTest::heat));
    }
}
