package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.physics.MoistAir;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.EvaporationCorrelation;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.MainsWater;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.PoolFlows;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.season.Installation;
import dev.warmlane.site.HourOfYear;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A correlation for evaporation of one's own. */
class OwnEvaporationTest {

    private static final int NOON = HourOfYear.of(7, 10, 12);
    private static final double WATER_C = 26;

    /** Invented: bends with the wind, which no published one here does. */
    record Bent(double still, double perWind) implements EvaporationCorrelation {

        @Override
        public double heatWm2Kpa(double windMs) {
            return still + perWind * Math.pow(windMs, 0.8);
        }

        @Override
        public String source() {
            return "measured at our own basin, 2019";
        }
    }

    @Test
    void isWhatTheWaterLoses() {
        EvaporationCorrelation own = new Bent(50, 80);
        PoolForcing forcing = PoolForcing.of(
                Lido.POOL.withEvaporation(own),
                Optional.empty(),
                Bathers.NONE,
                new MakeUp(0, new MainsWater.FromAir()),
                Lido.WEATHER);
        PoolFlows flows = new PoolFlows();
        forcing.evaluate(NOON, WATER_C, 1, flows);
        double wind = Lido.POOL.setting().windAtWaterMs(Lido.WEATHER.windSpeedMs(NOON));
        double drive = MoistAir.saturationPressureKpa(WATER_C) - Lido.WEATHER.vapourPressureKpa(NOON);
        assertThat(wind).isGreaterThan(0.3);
        assertThat(flows.wm2(Flow.EVAPORATION)).isCloseTo(-(50 + 80 * Math.pow(wind, 0.8)) * drive, within(1e-9));
    }

    /** A line of one's own with a published one's numbers is that one, to the last bit. */
    @Test
    void mayBeALine() {
        Installation published = Lido.built().build();
        Installation own = published.toBuilder()
                .pool(Lido.POOL.withEvaporation(wind -> 63.8 + 66.9 * wind))
                .build();
        assertThat(Lido.waterC(own)).isEqualTo(Lido.waterC(published));
    }

    @Test
    void mustBeAnEvaporation() {
        assertRefused(wind -> 60 - 100 * wind, "evaporation correlation gives -");
        assertRefused(wind -> Double.NaN, "NaN");
    }

    private static void assertRefused(EvaporationCorrelation own, String found) {
        Installation built = Lido.built().pool(Lido.POOL.withEvaporation(own)).build();
        assertThatThrownBy(() -> Lido.season(built))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(found)
                .hasMessageContaining("m/s; allowed: 0 or more");
    }

    @Test
    void hasNoWordsInAFile() {
        Installation built =
                Lido.built().pool(Lido.POOL.withEvaporation(new Bent(50, 80))).build();
        assertThatThrownBy(() -> Lido.written(built))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cannot hold an evaporation correlation of one's own");
    }
}
