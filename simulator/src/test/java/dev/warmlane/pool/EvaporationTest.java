package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SyntheticYear;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class EvaporationTest {

    /** The rows state one decimal. */
    private static final double ROW = 0.06;

    private static final double STATION_WIND_MS = 5;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/pool/evaporation.csv", useHeadersInDisplayName = true)
    void meetsThePublishedEquations(
            double waterC, double airC, double rhPercent, double windMs, String correlation, double heatWm2) {
        assertThat(named(correlation).heatWm2Kpa(windMs) * differenceKpa(waterC, airC, rhPercent))
                .isCloseTo(heatWm2, within(ROW));
    }

    /**
     * The rows are the equations without activity factor. For the quiet pool of Smith, Löf and Jones that is the pool as
     * it is; that of the handbook stands for a pool in use, so the pool is kept full of people at factor 1.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/pool/evaporation.csv", useHeadersInDisplayName = true)
    void thePoolLosesWhatTheEquationsSay(
            double waterC, double airC, double rhPercent, double windMs, String correlation, double heatWm2) {
        Evaporation evaporation = named(correlation);
        double dewPoint = MoistAir.dewPointC(rhPercent / 100 * MoistAir.saturationPressureKpa(airC));
        WeatherYear weather = SyntheticYear.at(40)
                .airC(hour -> airC)
                .dewPointC(hour -> dewPoint)
                .windMs(hour -> STATION_WIND_MS)
                .build();
        Pool pool = new Pool(
                100,
                1.5,
                new PoolSetting.Outdoor(windMs / STATION_WIND_MS),
                Pool.LIGHT_FINISH,
                Pool.WATER_EMITTANCE,
                evaporation,
                0);
        PoolFlows inUse = flows(pool, new Bathers(0, 0, 1, Schedule.ALWAYS), weather, waterC);
        assertThat(-inUse.evaporation).isCloseTo(heatWm2, within(ROW));
        double quiet = flows(pool, Bathers.NONE, weather, waterC).evaporation;
        assertThat(quiet).isCloseTo(evaporation.quietFactor() * inUse.evaporation, within(1e-9));
        // Bowen 1926: convection over evaporation at 101.325 kPa
        double bowen = 0.0613 * (waterC - airC) / differenceKpa(waterC, airC, rhPercent);
        assertThat(inUse.convection).isCloseTo(inUse.evaporation * bowen, within(1e-6));
    }

    private static double differenceKpa(double waterC, double airC, double rhPercent) {
        return MoistAir.saturationPressureKpa(waterC) - rhPercent / 100 * MoistAir.saturationPressureKpa(airC);
    }

    private static PoolFlows flows(Pool pool, Bathers bathers, WeatherYear weather, double waterC) {
        MakeUp none = new MakeUp(0, MainsWater.Monthly.constant(15));
        PoolFlows flows = new PoolFlows();
        PoolForcing.of(pool, Optional.empty(), bathers, none, weather).evaluate(12, waterC, 1, flows);
        return flows;
    }

    private static Evaporation named(String correlation) {
        return switch (correlation) {
            case "ASHRAE Applications (Carrier)" -> Evaporation.ASHRAE_CARRIER;
            case "Smith Loef Jones 1994" -> Evaporation.SMITH_LOF_JONES;
            default -> throw new IllegalArgumentException("unknown correlation " + correlation);
        };
    }
}
