package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.warmlane.SyntheticYear;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.StartWater;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;

/** A pool at its freezing point: the ice alone, and through a winter. */
class IceTest {

    /** The promise of the ledger. */
    private static final double CLOSURE = 1e-9;

    private final Ice ice = new Ice();

    /** Frost for three weeks, then spring. */
    private final WeatherYear winter = SyntheticYear.at(50)
            .sunless()
            .airC(hour -> hour < 21 * 24 ? -8 : 12)
            .dewPointC(hour -> hour < 21 * 24 ? -12 : 6)
            .build();

    @Test
    void freezesForAsLongAsHeatFlowsOut() {
        assertThat(ice.hold(0, -100, 600)).isEqualTo(600);
        assertThat(ice.heatJm2()).isEqualTo(60_000);
        assertThat(ice.hold(0, 0, 600)).isEqualTo(600);
        assertThat(ice.heatJm2()).isEqualTo(60_000);
    }

    @Test
    void meltsUntilNoneIsLeft() {
        ice.set(60_000);
        assertThat(ice.hold(0, 50, 600)).isEqualTo(600);
        assertThat(ice.heatJm2()).isEqualTo(30_000);
        assertThat(ice.hold(0, 100, 600)).isEqualTo(300);
        assertThat(ice.heatJm2()).isZero();
        assertThat(ice.hold(0, 100, 300)).as("no ice, no stay").isZero();
    }

    @Test
    void doesNothingInWarmerWater() {
        assertThat(ice.hold(1e-9, -100, 600)).isZero();
        assertThat(ice.heatJm2()).isZero();
    }

    /**
     * Under steady frost the thickness obeys d + |s|/(2k)·d² = |q|·t/(ρL): Stefan's law with a film above the ice (derived).
     * Steps of an hour stay within a hundredth of it.
     */
    @Test
    void growsByStefansLaw() {
        double q = -150;
        double slope = -20;
        int hours = 40 * 24;
        for (int hour = 0; hour < hours; hour++) {
            ice.hold(0, q * ice.lets(slope), 3600);
        }
        double open = -q * hours * 3600 / (Ice.DENSITY_KG_M3 * 333_400);
        double half = -slope / (2 * Ice.CONDUCTIVITY_WMK);
        double thickness = (Math.sqrt(1 + 4 * half * open) - 1) / (2 * half);
        assertThat(ice.thicknessM()).isCloseTo(thickness, withinPercentage(1));
        assertThat(thickness).isBetween(0.2, 0.7);
    }

    @Test
    void aMetreOfWaterFreezesWithItsHeatOfFusion() {
        assertThat(Ice.allOfJm2(1)).isCloseTo(999.8 * 333_400, within(1e5));
    }

    @Test
    void aWinterStopsAtZeroAndTheLedgerClosesOverTheIce() {
        SeasonLedger ledger = season(1.2, winter);
        double frozen = 0;
        int underIce = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            double sum = 0;
            double size = 1;
            for (Flow flow : Flow.values()) {
                sum += ledger.heatJm2(flow, index);
                size += Math.abs(ledger.heatJm2(flow, index));
            }
            assertThat(Math.abs(ledger.storedJm2(index) - sum))
                    .as("hour %d", index)
                    .isLessThan(CLOSURE * size);
            assertThat(ledger.waterEndC(index)).isNotNegative();
            // the pool has 312.5 m2, a kWh 3.6 MJ
            assertThat(ledger.iceKwh(index)).isCloseTo(ledger.iceJm2(index) * 312.5 / 3.6e6, within(1e-9));
            if (ledger.iceJm2(index) > 0) {
                assertThat(ledger.waterEndC(index)).isZero();
                underIce++;
            }
            frozen = Math.max(frozen, ledger.iceJm2(index));
        }
        // some centimetres of ice, gone again before the end
        assertThat(frozen / 333_400 / 917).isBetween(0.01, 0.6);
        assertThat(underIce).isGreaterThan(100);
        assertThat(ledger.everIced()).isTrue();
        assertThat(season(1.2, Demo.weather("southern-temperate")).everIced()).isFalse();
        assertThat(ledger.iceJm2(ledger.hours() - 1)).isZero();
        assertThat(ledger.waterEndC(ledger.hours() - 1)).isPositive();
    }

    @Test
    void aPaddlingPoolThatFreezesToTheGroundIsRefused() {
        assertThatThrownBy(() -> season(0.2, winter))
                .isInstanceOf(ImpossibleSeasonException.class)
                .hasMessageStartingWith("all the water is ice by 01-")
                .hasMessageContaining("0.20 m of it: no such pool stands filled then; let the season begin later");
    }

    private static SeasonLedger season(double depthM, WeatherYear weather) {
        Installation installation = Demo.pool(depthM)
                .arrays()
                .season(new OpeningSeason(MonthDay.of(1, 1), MonthDay.of(4, 30), Schedule.ALWAYS))
                .startWater(new StartWater.Given(4))
                .build();
        SeasonForcing forcing = SeasonForcing.of(installation, weather);
        assertThat(installation.season().firstHour()).isEqualTo(HourOfYear.of(1, 1, 0));
        return SeasonSimulator.simulate(installation, forcing);
    }
}
