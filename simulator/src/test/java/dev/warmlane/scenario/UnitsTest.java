package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same job in metric and in US units. Metric numbers are converted by hand with NIST SP 811 factors. */
class UnitsTest {

    /** The metric text below has seven significant digits. */
    private static final double SEVEN_DIGITS = 5e-7;

    private static final String METRIC = """
            [site]
            name = "same"
            weather = "../../weather-samples/cool-coast.csv"
            [pool]
            area = "743.2243 m2"
            depth = "1.524 m"
            setting = "outdoor"
            bathers = 10
            bather_heat = "586.1421 W"
            make_up = "3785.412 L/day"
            [water]
            mains = "10 degC"
            [cover]
            name = "own"
            evaporation_cut = 0.9
            resistance = "0.1761102 m2K/W"
            solar_loss = 0.2
            [roof]
            length = "30.48 m"
            width = "15.24 m"
            height = "6.096 m"
            u_value = "0.5678263 W/m2K"
            room_temperature = "25 degC"
            [[collectors]]
            area = "371.6122 m2"
            mounting = "flat"
            gap = "5.08 mm"
            flow = "0.06790973 kg/s/m2"
            [pipes]
            heat_loss = "52.75279 W/K"
            [heater]
            fuel = "own"
            fuel_name = "gas"
            fuel_heat = "38.63157 MJ/m3"
            fuel_co2 = "50.28890 kg/GJ"
            capacity = "293.0711 kW"
            set_point = "27 degC"
            [prices]
            currency = "USD"
            gas = "0.04094570 per kWh"
            electricity = "0.15 per kWh"
            collectors = "107.6391 per m2"
            [control]
            on_difference = "5 K"
            off_difference = "0.5 K"
            limit = "30 degC"
            [[schedule]]
            what = "bathers"
            """;

    private static final String US = """
            [site]
            name = "same"
            weather = "../../weather-samples/cool-coast.csv"
            [pool]
            area = "8000 ft2"
            depth = "5 ft"
            setting = "outdoor"
            bathers = 10
            bather_heat = "2000 Btu/h"
            make_up = "1000 gal/day"
            [water]
            mains = "50 degF"
            [cover]
            name = "own"
            evaporation_cut = "90 %"
            resistance = "1 h ft2 F/Btu"
            solar_loss = "20 %"
            [roof]
            length = "100 ft"
            width = "50 ft"
            height = "20 ft"
            u_value = "0.1 Btu/h ft2 F"
            room_temperature = "77 degF"
            [[collectors]]
            area = "4000 ft2"
            mounting = "flat"
            gap = "0.2 in"
            flow = "0.1 gal/min/ft2"
            [pipes]
            heat_loss = "100 Btu/h F"
            [heater]
            fuel = "own"
            fuel_name = "gas"
            fuel_heat = "1036.84 Btu/ft3"
            fuel_co2 = "53.0576 kg/MMBtu"
            capacity = "1 MMBtu/h"
            set_point = "80.6 degF"
            [prices]
            currency = "USD"
            gas = "1.20 per therm"
            electricity = "0.15 per kWh"
            collectors = "10 per ft2"
            [control]
            on_difference = "9 degF"
            off_difference = "0.9 degF"
            limit = "86 degF"
            [[schedule]]
            what = "bathers"
            """;

    @TempDir
    private Path folder;

    @Test
    void oneJobInTwoSystemsIsOneInstallation() throws IOException {
        SameInstallation.check(
                Demos.read(US, folder).installation(),
                Demos.read(METRIC, folder).installation(),
                SEVEN_DIGITS);
    }

    @Test
    void differenceInFahrenheitIsASizeAndNotAPlaceOnTheScale() throws IOException {
        assertThat(Demos.read(US, folder).installation().control().onDifferenceK())
                .isEqualTo(5);
    }
}
