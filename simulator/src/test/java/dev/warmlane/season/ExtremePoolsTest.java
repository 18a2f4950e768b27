package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.circuit.Control;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.StartWater;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.wind.PoolShelter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pools so small, heaters so strong and arrays so large that nobody would build them: the numbers must still make sense. */
class ExtremePoolsTest {

    private final WeatherYear weather = Demo.weather("warm-inland");

    @ParameterizedTest
    @CsvSource({
        "10, 0.2, 1000, 0.5",
        "2, 0.2, 250, 0.5",
        "4, 0.5, 1000, 0.5",
        "1, 0.5, 250, 0.5",
        "10, 0.2, 50, 3000",
        "30, 0.2, 50, 90000"
    })
    void aHeatedPoolStaysBetweenItsSetPointAndWhatTheSunCanDo(
            double areaM2, double depthM, double heaterKw, double collectorM2) {
        double setPointC = 28;
        Installation installation = Demo.pool(1.8)
                .pool(Pool.of(areaM2, depthM, new PoolSetting.Outdoor(PoolShelter.SUBURBAN)))
                .arrays(Demo.FLAT.withAreaM2(collectorM2))
                .heater(new Boiler(Fuel.NATURAL_GAS, 0.82, heaterKw, setPointC))
                .control(Control.withLimit(30))
                .startWater(new StartWater.Given(setPointC))
                .build();
        SeasonLedger ledger = SeasonSimulator.simulate(installation, SeasonForcing.of(installation, weather));
        for (int index = 0; index < ledger.hours(); index++) {
            // the sun alone takes a shallow pool above its limit by day
            assertThat(ledger.waterEndC(index)).as("hour %d", index).isBetween(setPointC - 1e-9, 45.0);
        }
    }

    @Test
    void aPoolThatNeverClosesComesIntoTheYearAsItGoesOut() {
        Installation installation = Demo.pool(1.8)
                .heater(Demo.HEATER)
                .season(OpeningSeason.wholeYear())
                .startWater(StartWater.StandingFilled.USUAL)
                .build();
        SeasonLedger ledger = SeasonSimulator.simulate(installation, SeasonForcing.of(installation, weather));
        assertThat(ledger.waterStartC(0)).isCloseTo(ledger.waterEndC(ledger.hours() - 1), within(0.1));
    }

    @Test
    void theWorthOfTheNextSquareMetreIsThereForTheLargestArrayToo() {
        Installation installation = Demo.pool(1.8)
                .arrays(Demo.FLAT.withAreaM2(CollectorArray.AREA.highest()))
                .build();
        assertThat(SeasonForecast.of(installation, weather).summary().nextSquareMetre())
                .isPresent();
    }
}
