package dev.warmlane.heater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.warmlane.site.Schedule;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What fuels, bills and ratings refuse, are called, and are equal to. */
class HeaterValuesTest {

    private static final RatedPoint WARM = new RatedPoint(27, 27, 6, 40);
    private static final RatedPoint COLD = new RatedPoint(10, 27, 3.5, 23);

    @Test
    void aBillCostsSomethingOrIsSilent() {
        assertThat(new Bill(1, SaleUnit.M3, OptionalDouble.empty()).cost()).isEmpty();
        assertThatThrownBy(() -> new Bill(1, SaleUnit.M3, OptionalDouble.of(0)))
                .hasMessageContaining("cost of the bill");
        assertThatThrownBy(() -> new Bill(0, SaleUnit.M3, OptionalDouble.empty()))
                .hasMessageContaining("amount of the bill");
    }

    @Test
    void aFuelSoldByEnergyHoldsItsUnit() {
        assertThatThrownBy(() -> new Fuel("x", Carrier.OTHER, SaleUnit.KWH, 3.5, 50))
                .hasMessage("a kWh is 3.6 MJ, was 3.5 MJ");
        assertThatThrownBy(() -> new Fuel("x", Carrier.ELECTRICITY, SaleUnit.M3, 38, 50))
                .hasMessageContaining("is sold by energy");
        // a pound is no unit here; what holds too little heat for a gas in m3 does so in hundred cubic feet too
        assertThatThrownBy(() -> new Fuel("x", Carrier.GAS, SaleUnit.CCF, 2, 50))
                .hasMessageContaining("heating value");
    }

    /** A network may burn three kWh for one that it sells; a fire gives no more than its fuel holds. */
    @Test
    void whatIsBoughtMayHoldMoreCarbonThanWhatBurns() {
        assertThat(Fuel.electricity(300).co2KgPerGj()).isEqualTo(300);
        assertThatThrownBy(() -> new Fuel("x", "m3", 38, 300)).hasMessageContaining("CO2");
    }

    @Test
    void aFuelIsCalledByItsKindOrItsName() {
        assertThat(Fuel.NATURAL_GAS.word()).isEqualTo("gas");
        assertThat(Fuel.HEATING_OIL.word()).isEqualTo("oil");
        assertThat(new Fuel("wood gas", "m3", 5, 1).word()).isEqualTo("wood gas");
    }

    @Test
    void ratingsAreEqualByTheirPoints() {
        HeatPumpRating two = HeatPumpRating.of(WARM, COLD);
        assertThat(two).isEqualTo(HeatPumpRating.of(COLD, WARM)).hasSameHashCodeAs(HeatPumpRating.of(COLD, WARM));
        assertThat(two).isNotEqualTo(HeatPumpRating.of(WARM)).isNotEqualTo(WARM);
        assertThat(HeatPumpRating.of(WARM)).isNotEqualTo(HeatPumpRating.of(COLD));
        assertThat(two.hashCode()).isNotEqualTo(HeatPumpRating.of(WARM).hashCode());
        assertThat(two.cold()).contains(COLD);
        assertThat(HeatPumpRating.of(WARM).cold()).isEmpty();
        assertThat(two).hasToString(WARM + " and " + COLD);
        assertThat(HeatPumpRating.of(WARM)).hasToString(WARM.toString());
    }

    @Test
    void aHeatPumpIsAsLargeAsItsWarmPoint() {
        HeatPump pump = new HeatPump(Fuel.electricity(100), HeatPumpRating.of(WARM, COLD), 5, 26, Schedule.ALWAYS);
        assertThat(pump.capacityKw()).isEqualTo(40);
        assertThat(pump.followsAir()).isTrue();
        assertThat(new Boiler(Fuel.NATURAL_GAS, 0.8, 100, 26).followsAir()).isFalse();
    }
}
