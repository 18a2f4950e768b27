package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.CondensingBoiler;
import dev.warmlane.heater.DistrictHeat;
import dev.warmlane.heater.ElectricHeater;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.HeatPump;
import dev.warmlane.heater.HeatPumpRating;
import dev.warmlane.heater.Heater;
import dev.warmlane.heater.RatedPoint;
import dev.warmlane.pool.Flow;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Seasons with each kind of heater. */
class HeaterSeasonTest {

    private static final WeatherYear WEATHER = Demo.weather("cool-coast");
    private static final HeatPumpRating RATING =
            HeatPumpRating.of(new RatedPoint(27, 27, 6, 120), new RatedPoint(10, 27, 3.5, 70));

    /** The water moves within an hour, and its efficiency with it: less than this of the hour's energy. */
    private static final double WITHIN_THE_HOUR = 0.01;

    /** Over a season that evens out. */
    private static final double WITHIN_THE_SEASON = 1e-3;

    private static List<Heater> heaters() {
        Schedule day = Schedule.daily(8, 20);
        Fuel electricity = Fuel.electricity(100);
        return List.of(
                new Boiler(Fuel.HEATING_OIL, 0.85, 90, 26, day),
                new CondensingBoiler(Fuel.NATURAL_GAS, 0.96, 0.88, 90, 26, Schedule.ALWAYS),
                new ElectricHeater(electricity, 60, 26, Schedule.daily(22, 6)),
                new HeatPump(electricity, RATING, 12, 26, Schedule.ALWAYS),
                new DistrictHeat(Fuel.districtHeat(40), 200, 26, day));
    }

    @ParameterizedTest
    @MethodSource("heaters")
    void whatIsBoughtIsTheHeatOverTheEfficiencyOfEveryHour(Heater heater) {
        SeasonLedger ledger = simulate(heater);
        double heated = 0;
        double sum = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            double air = WEATHER.airTemperatureC(ledger.hourOfYear(index));
            double bought = ledger.heatKwh(Flow.HEATER, index) / heater.heatPerBought(air, ledger.waterC(index));
            assertThat(ledger.boughtKwh(index)).isCloseTo(bought, within(1e-9 + WITHIN_THE_HOUR * bought));
            sum += bought;
            heated += ledger.heatKwh(Flow.HEATER, index);
        }
        assertThat(heated).isGreaterThan(10_000);
        assertThat(ledger.boughtKwh(Periods.season(ledger))).isCloseTo(sum, within(WITHIN_THE_SEASON * sum));
    }

    @ParameterizedTest
    @MethodSource("heaters")
    void itRestsOutsideOfItsHoursAndGivesNoMoreThanItHas(Heater heater) {
        SeasonLedger ledger = simulate(heater);
        int resting = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            int hour = ledger.hourOfYear(index);
            double most = heater.hours().at(hour) > 0 ? heater.capacityKw(WEATHER.airTemperatureC(hour)) : 0;
            assertThat(ledger.heatKwh(Flow.HEATER, index)).isLessThanOrEqualTo(most * (1 + 1e-9));
            resting += most == 0 ? 1 : 0;
        }
        boolean always = heater.hours().equals(Schedule.ALWAYS);
        assertThat(resting).isEqualTo(always ? frozen(heater, ledger) : ledger.hours() - duty(heater, ledger));
    }

    private static int frozen(Heater heater, SeasonLedger ledger) {
        int hours = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            double airC = WEATHER.airTemperatureC(ledger.hourOfYear(index));
            hours += heater.match(b -> 0, c -> 0, e -> 0, pump -> airC < 12 ? 1 : 0, d -> 0);
        }
        return hours;
    }

    private static int duty(Heater heater, SeasonLedger ledger) {
        int hours = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            hours += heater.hours().at(HourOfYear.hourOfDay(ledger.hourOfYear(index))) > 0 ? 1 : 0;
        }
        return hours;
    }

    /** What heats the water has no say in how warm it gets, only in what is paid for it. */
    @Test
    void theWaterDoesNotKnowWhereItsHeatComesFrom() {
        SeasonLedger boiler = simulate(new Boiler(Fuel.NATURAL_GAS, 0.82, 120, 26));
        SeasonLedger electric = simulate(new ElectricHeater(Fuel.electricity(100), 120, 26, Schedule.ALWAYS));
        SeasonLedger pump = simulate(new HeatPump(
                Fuel.electricity(100),
                HeatPumpRating.of(new RatedPoint(27, 27, 6, 120)),
                HeatPump.FROST_LIMIT.lowest(),
                26,
                Schedule.ALWAYS));
        for (int index = 0; index < boiler.hours(); index++) {
            assertThat(electric.waterEndC(index)).isEqualTo(boiler.waterEndC(index));
            assertThat(pump.waterEndC(index)).isEqualTo(boiler.waterEndC(index));
        }
        Period season = Periods.season(boiler);
        assertThat(boiler.boughtKwh(season)).isCloseTo(electric.boughtKwh(season) / 0.82, within(1e-6));
        double cop = electric.boughtKwh(season) / pump.boughtKwh(season);
        // between that of the coldest air of a cool coast's summer and that of the certificate
        assertThat(cop).isBetween(3.0, 6.0);
    }

    /** Displaced is the difference of two seasons in what is bought, not in heat. */
    @Test
    void electricityDisplacedIsWhatIsNotBought() {
        Installation built = Demo.pool(1.5)
                .heater(new HeatPump(Fuel.electricity(100), RATING, 5, 26, Schedule.ALWAYS))
                .build();
        SeasonForecast forecast = SeasonForecast.of(built, WEATHER);
        GasSummary gas = forecast.summary().season().gas();
        double bought = forecast.without().boughtKwh(Periods.season(forecast.without()))
                - forecast.with().boughtKwh(Periods.season(forecast.with()));

        assertThat(gas.replacedKwh()).isEqualTo(bought).isPositive();
        assertThat(gas.fuel().word()).isEqualTo("electricity");
        // 360 g a kWh
        assertThat(gas.replacedCo2Kg()).isCloseTo(0.36 * bought, within(1e-6));
    }

    private static SeasonLedger simulate(Heater heater) {
        Installation built = Demo.pool(1.5).arrays().heater(heater).build();
        return SeasonSimulator.simulate(built, SeasonForcing.of(built, WEATHER));
    }
}
