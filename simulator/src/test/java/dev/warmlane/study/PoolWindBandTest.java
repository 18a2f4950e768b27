package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import org.junit.jupiter.api.Test;

class PoolWindBandTest {

    @Test
    void shelteredPoolWithoutHeaterIsWarmerAndTakesLessHeat() {
        PoolWindBand band = PoolWindBand.of(SampleForecasts.SOUTHERN).orElseThrow();

        assertThat(band.sheltered().windFactor()).isEqualTo(0.15);
        assertThat(band.likely().windFactor()).isEqualTo(0.35);
        assertThat(band.exposed().windFactor()).isEqualTo(0.40);
        assertThat(band.likely().season())
                .isEqualTo(SampleForecasts.SOUTHERN.summary().season());
        assertThat(band.sheltered().season().water().meanC())
                .isGreaterThan(band.likely().season().water().meanC());
        assertThat(band.exposed().season().water().meanC())
                .isLessThan(band.likely().season().water().meanC());
        assertThat(band.sheltered().season().balance().deliveredKwh())
                .isLessThan(band.exposed().season().balance().deliveredKwh());
    }

    @Test
    void hallHasNoWind() {
        assertThat(PoolWindBand.of(SampleForecasts.INDOOR)).isEmpty();
    }
}
