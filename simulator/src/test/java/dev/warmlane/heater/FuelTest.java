package dev.warmlane.heater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FuelTest {

    /**
     * 1000 kWh are 3600 MJ and 3.41214 MMBtu. Heating values: 1036 Btu/ft3 (EIA), 3.84 MMBtu/bbl of 42 gal (40 CFR 98, table
     * NN-1), 0.138 MMBtu/gal (table C-1).
     */
    @ParameterizedTest
    @CsvSource({
        "gas, ccf, 32.936",
        "gas, therm, 34.1214",
        "gas, m3, 93.26",
        "propane, gal, 37.320",
        "oil, gal, 24.726",
        "oil, GJ, 3.6",
        "oil, MWh, 1"
    })
    void anAmountIsToldInTheUnitItIsSoldIn(String what, String unit, double amount) {
        Fuel sold = fuel(what).soldIn(SaleUnit.of(unit).orElseThrow());
        // the values above are rounded to four digits
        assertThat(sold.unitsForKwh(1000)).isCloseTo(amount, within(1e-3 * amount));
        assertThat(sold.kwhOfUnits(sold.unitsForKwh(1000))).isCloseTo(1000, within(1e-9));
        assertThat(sold.co2KgForKwh(1000)).isEqualTo(fuel(what).co2KgForKwh(1000));
    }

    private static Fuel fuel(String what) {
        return switch (what) {
            case "gas" -> Fuel.NATURAL_GAS;
            case "propane" -> Fuel.PROPANE;
            default -> Fuel.HEATING_OIL;
        };
    }

    /** 53.06, 62.87 and 73.96 kg/MMBtu (40 CFR 98, tables NN-1 and C-1). */
    @Test
    void carbonIsThatOfTheTables() {
        double mmBtuKwh = 293.0711;
        assertThat(Fuel.NATURAL_GAS.co2KgForKwh(mmBtuKwh)).isCloseTo(53.06, within(0.01));
        assertThat(Fuel.PROPANE.co2KgForKwh(mmBtuKwh)).isCloseTo(62.87, within(0.02));
        assertThat(Fuel.HEATING_OIL.co2KgForKwh(mmBtuKwh)).isCloseTo(73.96, within(0.01));
        // 0.36 kg/kWh
        assertThat(Fuel.electricity(100).co2KgForKwh(1000)).isCloseTo(360, within(1e-9));
    }

    @Test
    void electricityHasNoVolume() {
        assertThatThrownBy(() -> Fuel.electricity(100).soldIn(SaleUnit.GALLON))
                .hasMessage("electricity is sold by the kWh, of which no gal is known");
        assertThat(Fuel.districtHeat(50).soldIn(SaleUnit.GJ).unitsForKwh(1000)).isCloseTo(3.6, within(1e-12));
    }

    @Test
    void aBillIsEnergyOfTheFuel() {
        Bill bill = new Bill(1200, SaleUnit.GALLON, OptionalDouble.of(4200));
        // 1200 gal of 0.138 MMBtu are 165.6 MMBtu
        assertThat(bill.kwh(Fuel.HEATING_OIL)).isCloseTo(165.6 * 293.0711, within(10.0));
        assertThatThrownBy(() -> new Bill(0, SaleUnit.KWH, OptionalDouble.empty()))
                .hasMessageContaining("amount of the bill");
    }
}
