package dev.warmlane.heater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.site.Schedule;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Efficiency and heat of each kind, worked by hand. */
class HeaterTest {

    /** Rounding of the sums by hand. */
    private static final Offset<Double> BY_HAND = within(5e-5);

    private static final Fuel ELECTRICITY = Fuel.electricity(100);

    private static final CondensingBoiler CONDENSING =
            new CondensingBoiler(Fuel.NATURAL_GAS, 0.96, 0.88, 200, 26, Schedule.ALWAYS);

    private static final HeatPumpRating TWO_POINTS =
            HeatPumpRating.of(new RatedPoint(27, 27, 6, 40), new RatedPoint(10, 27, 3.5, 23));

    @Test
    void aBoilerBurnsTheSameWhateverTheWater() {
        Boiler boiler = new Boiler(Fuel.HEATING_OIL, 0.85, 100, 26);
        assertThat(boiler.heatPerBought(-5, 15)).isEqualTo(0.85);
        assertThat(boiler.heatPerBought(30, 35)).isEqualTo(0.85);
        // 1000 kWh of heat are 1176.47 kWh of oil, 4235.3 MJ, 110.12 L of 38.46 MJ and 296.9 kg of 70.10 kg/GJ
        double kwh = 1000 / boiler.heatPerBought(10, 20);
        assertThat(boiler.fuel().unitsForKwh(kwh)).isCloseTo(110.12, within(0.01));
        assertThat(boiler.fuel().co2KgForKwh(kwh)).isCloseTo(296.9, within(0.1));
    }

    @ParameterizedTest
    @CsvSource({
        // a straight line of -0.0032 a kelvin from 0.96 at 30 degC, half of that in colder water
        "25, 0.968",
        "28, 0.9632",
        "30, 0.96",
        "40, 0.928",
        "55, 0.88",
        // dry from the dew point on, and never without a loss
        "60, 0.88",
        "5, 0.99"
    })
    void aCondensingBoilerGivesMoreTheColderThePool(double waterC, double efficiency) {
        assertThat(CONDENSING.heatPerBought(5, waterC)).isCloseTo(efficiency, within(1e-12));
    }

    /**
     * Methane burns with 1.25 times the air it needs: to a mole come 1 CO2, 2 H2O, 9.40 N2 and 0.5 O2, and 890.6 kJ of higher
     * heating value (handbook value, from memory). Smoke leaves 5 K above the return with as much vapour as it can hold,
     * warmed from 20 degC with 30 J/molK, and 0.6 % is lost by the casing (derived; both from memory).
     */
    @ParameterizedTest
    @CsvSource({"15", "20", "25", "30", "40", "55"})
    void usualCondensingBoilerIsThatOfABalanceOfTheSmoke(double returnC) {
        double smokeC = returnC + 5;
        double dryMol = 10.9;
        // Magnus formula, WMO
        double saturationKpa = 0.6112 * Math.exp(17.62 * smokeC / (243.12 + smokeC));
        double vapourMol = Math.min(2, dryMol * saturationKpa / (101.325 - saturationKpa));
        double latentKj = vapourMol * (45.05 - 0.0428 * smokeC);
        double sensibleKj = (dryMol + vapourMol) * 0.030 * (smokeC - 20);
        double efficiency = 1 - (latentKj + sensibleKj) / 890.6 - 0.006;

        assertThat(CONDENSING.heatPerBought(0, returnC)).isCloseTo(efficiency, within(0.005));
    }

    @Test
    void electricityAndDistrictHeatAreBoughtAsTheyAreGiven() {
        assertThat(new ElectricHeater(ELECTRICITY, 50, 26, Schedule.ALWAYS).heatPerBought(3, 22))
                .isEqualTo(1);
        assertThat(new DistrictHeat(Fuel.districtHeat(50), 50, 26, Schedule.ALWAYS).heatPerBought(3, 22))
                .isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        // share 6 x 20 K / 310.15 K; 6 x 20 / 37 in air of 10 degC
        "27, 27, 6",
        "10, 27, 3.24324",
        // share 0.386909 x 306.15 K / (23 - 15 + 20) K
        "15, 23, 4.23045",
        // the pump works against no less than at its rated point
        "38, 27, 6",
        "35, 15, 5.76785"
    })
    void copOfOnePointFollowsCarnot(double airC, double waterC, double cop) {
        HeatPumpRating rating = HeatPumpRating.of(new RatedPoint(27, 27, 6, 40));
        assertThat(rating.cop(airC, waterC)).isCloseTo(cop, BY_HAND);
        assertThat(rating.capacityKw(airC)).isEqualTo(40);
    }

    /**
     * 6 A = 3.5 (17 + A) gives A = 59.5 / 2.5 = 23.8 K; the share is 6 x 23.8 / (300.15 + 11.9) = 0.457619. In air of 15 and
     * water of 25 degC the COP is 0.457619 x 310.05 / (10 + 23.8) = 4.19776.
     */
    @Test
    void twoPointsGiveShareAndApproach() {
        assertThat(TWO_POINTS.approachK()).isCloseTo(23.8, within(1e-9));
        assertThat(TWO_POINTS.carnotShare()).isCloseTo(0.457619, within(1e-6));
        assertThat(TWO_POINTS.cop(15, 25)).isCloseTo(4.19776, BY_HAND);
        assertThat(TWO_POINTS.cop(27, 27)).isCloseTo(6, within(1e-9));
        assertThat(TWO_POINTS.cop(10, 27)).isCloseTo(3.5, within(1e-9));
        assertThat(HeatPumpRating.of(new RatedPoint(10, 27, 3.5, 23), new RatedPoint(27, 27, 6, 40)))
                .as("whichever is told first")
                .isEqualTo(TWO_POINTS);
    }

    @Test
    void twoPointsWithDifferentWaterAreBothMet() {
        HeatPumpRating rating = HeatPumpRating.of(new RatedPoint(26, 26, 6.2, 40), new RatedPoint(7, 35, 3.0, 21));
        assertThat(rating.cop(26, 26)).isCloseTo(6.2, within(1e-9));
        assertThat(rating.cop(7, 35)).isCloseTo(3.0, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"27, 40", "35, 40", "18.5, 31.5", "10, 23", "5, 18", "4.9, 0"})
    void heatOfAHeatPumpRunsStraightWithTheAirDownToItsFrostLimit(double airC, double kw) {
        HeatPump pump = new HeatPump(ELECTRICITY, TWO_POINTS, 5, 28, Schedule.ALWAYS);
        assertThat(pump.capacityKw(airC)).isCloseTo(kw, within(1e-9));
    }

    @Test
    void pointsThatNoHeatPumpHasAreRefused() {
        assertThatThrownBy(() -> HeatPumpRating.of(new RatedPoint(27, 27, 5, 40), new RatedPoint(10, 27, 5, 40)))
                .hasMessageContaining("cannot be of one heat pump");
        assertThatThrownBy(() -> HeatPumpRating.of(new RatedPoint(27, 27, 5, 40), new RatedPoint(27, 35, 3, 40)))
                .hasMessageContaining("cannot be of one heat pump");
        assertThatThrownBy(() -> HeatPumpRating.of(new RatedPoint(27, 27, 19, 40)))
                .hasMessageContaining("nature allows");
    }

    @Test
    void aHeaterIsFedWithWhatItTakes() {
        assertThatThrownBy(() -> new Boiler(ELECTRICITY, 0.8, 50, 26)).hasMessageContaining("burns a fuel");
        assertThatThrownBy(() -> new ElectricHeater(Fuel.PROPANE, 50, 26, Schedule.ALWAYS))
                .hasMessageContaining("takes electricity");
        assertThatThrownBy(() -> new CondensingBoiler(Fuel.HEATING_OIL, 0.96, 0.88, 50, 26, Schedule.ALWAYS))
                .hasMessageContaining("smoke of a gas");
    }
}
