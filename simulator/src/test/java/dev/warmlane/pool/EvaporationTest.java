package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SyntheticYear;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class EvaporationTest {

    /** The rows state one decimal. */
    private static final double ROW = 0.06;

    /** The rows in use state two decimals; the middle of 15 to 20 swimmers is rounded to one on 5.3 m². */
    private static final double ROW_IN_USE = 0.011;

    private static final double STATION_WIND_MS = 5;
    private static final double POOL_M2 = 100;
    private static final double M2_IN_1000_FT2 = 92.903;
    private static final double WATER_C = 26;
    private static final PoolSetting OPEN = new PoolSetting.Outdoor(0.3);
    private static final WeatherYear BREEZE = SyntheticYear.at(40)
            .airC(hour -> 20)
            .dewPointC(hour -> 10)
            .windMs(hour -> STATION_WIND_MS)
            .build();

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/pool/evaporation.csv", useHeadersInDisplayName = true)
    void meetsThePublishedEquations(
            double waterC, double airC, double rhPercent, double windMs, String correlation, double heatWm2) {
        assertThat(named(correlation).heatWm2Kpa(windMs) * differenceKpa(waterC, airC, rhPercent))
                .isCloseTo(heatWm2, within(ROW));
    }

    /** The rows are the equations as they stand; of the handbook's, quiet water outdoors has 0.74. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/pool/evaporation.csv", useHeadersInDisplayName = true)
    void aQuietPoolLosesWhatTheEquationsSay(
            double waterC, double airC, double rhPercent, double windMs, String correlation, double heatWm2) {
        double dewPoint = MoistAir.dewPointC(rhPercent / 100 * MoistAir.saturationPressureKpa(airC));
        WeatherYear weather = SyntheticYear.at(40)
                .airC(hour -> airC)
                .dewPointC(hour -> dewPoint)
                .windMs(hour -> STATION_WIND_MS)
                .build();
        Pool pool = pool(new PoolSetting.Outdoor(windMs / STATION_WIND_MS), named(correlation));
        double share = named(correlation) == Evaporation.ASHRAE_CARRIER ? 0.74 : 1;
        PoolFlows quiet = flows(pool, Bathers.NONE, weather, waterC);
        assertThat(-quiet.wm2(Flow.EVAPORATION)).isCloseTo(share * heatWm2, within(ROW));
        // Bowen 1926: convection over evaporation at 101.325 kPa
        double bowen = 0.0613 * (waterC - airC) / differenceKpa(waterC, airC, rhPercent);
        assertThat(quiet.wm2(Flow.CONVECTION)).isCloseTo(quiet.wm2(Flow.EVAPORATION) * bowen, within(1e-6));
    }

    /** Measured over the handbook's equation and over quiet water, by swimmers in the water. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/pool/evaporation_in_use.csv", useHeadersInDisplayName = true)
    void inUseAPoolLosesWhatWasMeasured(double swimmersPer1000Ft2, double overEquation, double overQuiet) {
        double swimmers = swimmersPer1000Ft2 * POOL_M2 / M2_IN_1000_FT2;
        Bathers inUse = new Bathers(swimmers, 0, Bathers.USUAL_RISE, Schedule.ALWAYS);
        for (Evaporation evaporation : Evaporation.values()) {
            assertThat(latent(evaporation, inUse) / latent(evaporation, Bathers.NONE))
                    .isCloseTo(overQuiet, within(ROW_IN_USE));
        }
        double equation = latent(Evaporation.ASHRAE_CARRIER, Bathers.NONE) / 0.74;
        assertThat(latent(Evaporation.ASHRAE_CARRIER, inUse) / equation).isCloseTo(overEquation, within(ROW_IN_USE));
    }

    @Test
    void inAHallQuietWaterHasHalfOfTheHandbooksEquation() {
        Pool hall = pool(new PoolSetting.Indoor(28, 0.6, 0), Evaporation.ASHRAE_CARRIER);
        // the published row of 28 °C and 60 %
        assertThat(-flows(hall, Bathers.NONE, BREEZE, 28).wm2(Flow.EVAPORATION)).isCloseTo(0.5 * 134.7, within(ROW));
    }

    /** More swimmers never evaporate less, and the rise ends where it is full. */
    @Test
    void moreSwimmersEvaporateMore() {
        double before = 0;
        for (double swimmers = 0; swimmers <= 40; swimmers += 0.5) {
            double now =
                    latent(Evaporation.SMITH_LOF_JONES, new Bathers(swimmers, 0, Bathers.USUAL_RISE, Schedule.ALWAYS));
            if (swimmers <= POOL_M2 / 5.3) {
                assertThat(now).isGreaterThan(before);
            }
            before = Math.max(before, now);
            assertThat(now).isEqualTo(before);
        }
    }

    /** A schedule of nobody is the quiet pool to the bit. */
    @Test
    void nobodyInTheWaterChangesNothing() {
        Bathers nobody = new Bathers(0, Bathers.USUAL_HEAT_W, Bathers.USUAL_RISE, Schedule.ALWAYS);
        for (Evaporation evaporation : Evaporation.values()) {
            PoolFlows quiet = flows(pool(OPEN, evaporation), Bathers.NONE, BREEZE, WATER_C);
            PoolFlows scheduled = flows(pool(OPEN, evaporation), nobody, BREEZE, WATER_C);
            assertThat(scheduled.wm2(Flow.EVAPORATION)).isEqualTo(quiet.wm2(Flow.EVAPORATION));
            assertThat(scheduled.net()).isEqualTo(quiet.net());
            assertThat(scheduled.slope()).isEqualTo(quiet.slope());
        }
    }

    private static double latent(Evaporation evaporation, Bathers bathers) {
        return -flows(pool(OPEN, evaporation), bathers, BREEZE, WATER_C).wm2(Flow.EVAPORATION);
    }

    private static Pool pool(PoolSetting setting, Evaporation evaporation) {
        return new Pool(POOL_M2, 1.5, setting, Pool.LIGHT_FINISH, Pool.WATER_EMITTANCE, evaporation, 0, 0);
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
