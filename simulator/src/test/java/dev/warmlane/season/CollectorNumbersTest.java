package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.warmlane.SampleForecasts;
import dev.warmlane.circuit.Control;
import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.collector.HeatCurves;
import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Heat, array, pump, money and working range of the collectors. */
class CollectorNumbersTest {

    private static List<SeasonForecast> forecasts() {
        return List.of(SampleForecasts.MUNICIPAL, SampleForecasts.CLUB, SampleForecasts.SOUTHERN);
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void heatKeepsWithinItsBounds(SeasonForecast forecast) {
        PeriodSummary season = forecast.summary().season();
        CollectorHeat heat = season.collectors();

        assertThat(heat.efficiency().orElseThrow()).isBetween(0.05, 0.95);
        assertThat(heat.deliveredKwh()).isPositive().isLessThanOrEqualTo(heat.usefulKwh());
        assertThat(heat.deliveredKwhPerM2().orElseThrow())
                .isEqualTo(heat.deliveredKwh() / forecast.installation().collectorAreaM2());
        assertThat(heat.lowestOutletC().orElseThrow())
                .isLessThan(heat.highestOutletC().orElseThrow());
        assertThat(heat.peakKw())
                .isEqualTo(IntStream.range(0, forecast.with().hours())
                        .mapToDouble(i -> forecast.with().heatKwh(Flow.COLLECTORS, i)
                                + forecast.with().heatKwh(Flow.PIPES, i))
                        .max()
                        .orElseThrow());
        assertThat(season.solarShareOfGains().orElseThrow())
                .isBetween(0.0, season.solarShareOfHeating().orElseThrow());
        assertThat(season.gainedK()).isPositive();
    }

    /** What falls on mats that lie flat is the weather's global irradiance in the hours that the season has. */
    @Test
    void sunOnFlatMatsIsThatOfTheSeasonsHoursOfTheYear() {
        for (SeasonForecast sample : List.of(SampleForecasts.MUNICIPAL, SampleForecasts.SOUTHERN)) {
            SeasonForecast forecast = SeasonForecast.of(
                    sample.installation().toBuilder().arrays(Demo.FLAT).build(), sample.weather());
            OpeningSeason season = forecast.installation().season();
            // from the day on from which they may run
            double kwhM2 = IntStream.range(-24 * season.before().collectorDays(), season.hours())
                            .mapToDouble(i -> forecast.weather()
                                    .globalHorizontalWm2(Math.floorMod(season.firstHour() + i, HourOfYear.HOURS)))
                            .sum()
                    / 1000;

            assertThat(forecast.summary().season().collectors().irradiationKwh())
                    .isCloseTo(kwhM2 * Demo.FLAT.areaM2(), withinPercentage(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void nextSquareMetreIsWorthLessThanTheMean(SeasonForecast forecast) {
        SeasonSummary summary = forecast.summary();

        assertThat(summary.nextSquareMetre().orElseThrow().deliveredKwhPerM2())
                .isPositive()
                .isLessThan(summary.season().collectors().deliveredKwhPerM2().orElseThrow());
    }

    @Test
    void municipalArrayIsItsPanels() {
        // 210 m² at 0.05 kg/s m² are 37.8 t/h; water of 25 °C has 997 kg/m³
        ArraySummary array = SampleForecasts.MUNICIPAL.summary().arrays().get(0);

        assertThat(array.panels()).hasValue(84);
        assertThat(array.rows()).isEmpty();
        assertThat(array.flowM3h()).isCloseTo(37.91, within(0.01));
        assertThat(SampleForecasts.CLUB.summary().arrays().get(1).rows()).hasValue(2);
    }

    @Test
    void pumpTakesItsPowerForItsHours() {
        PumpSummary pump = SampleForecasts.MUNICIPAL.summary().season().pump();

        assertThat(pump.electricityKwh()).isCloseTo(0.9 * pump.hours(), within(1e-9));
        assertThat(SampleForecasts.SOUTHERN.summary().season().pump().heatPerKwh())
                .isEmpty();
    }

    @Test
    void moneyFollowsFromGasPumpAndPrices() {
        SeasonSummary summary = SampleForecasts.MUNICIPAL.summary();
        MoneySummary money = summary.money().orElseThrow();
        PeriodSummary season = summary.season();

        assertThat(money.saved())
                .isCloseTo(
                        0.09 * season.gas().replacedKwh() - 0.28 * season.pump().electricityKwh(), within(1e-6));
        assertThat(money.collectorCost()).hasValue(140.0 * 210);
        NextSquareMetre next = summary.nextSquareMetre().orElseThrow();
        // 20 years at 3 %: a sum of 1 a year is worth (1 - 1.03^-20) / 0.03 today
        double years = (1 - Math.pow(1.03, -20)) / 0.03;
        assertThat(next.costPerKwh().orElseThrow()).isCloseTo(140 / (next.deliveredKwhPerM2() * years), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void workingRangeIsOfTheWholeYear(SeasonForecast forecast) {
        WorkingRange range = forecast.summary().workingRange().orElseThrow();
        List<CollectorForcing> collectors = forecast.forcing().collectors();
        int frost = 0;
        int frostByAir = 0;
        int hot = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            int at = hour;
            double coldest = collectors.stream()
                    .mapToDouble(c -> c.curves().lowestPlateC(at))
                    .min()
                    .orElseThrow();
            double air = forecast.weather().airTemperatureC(hour);
            frost += Math.min(coldest, air) < 1 ? 1 : 0;
            frostByAir += air < 1 ? 1 : 0;
            hot += collectors.stream().anyMatch(c -> c.curves().highestPlateC(at) > 60) ? 1 : 0;
        }

        assertThat(range.frostHoursByPlate()).isEqualTo(frost).isGreaterThan(frostByAir);
        assertThat(range.frostHoursByAir()).isEqualTo(frostByAir);
        assertThat(range.hoursAbove60C()).isEqualTo(hot);
        assertThat(range.hottestFirstSlugC().orElseThrow()).isLessThanOrEqualTo(range.highestPlateC());
        assertThat(range.pipeMovementMm(6, 7e-5))
                .isCloseTo(7e-5 * 6000 * (range.highestPlateC() - range.lowestPlateC()), within(1e-9));
    }

    /** Pumps that may run from five in the evening on push out what stood in the hotter hour before. */
    @Test
    void firstSlugStoodInTheHourBefore() {
        Installation evenings = Demo.pool(1.5)
                .control(new Control(4, 0.3, 30, Schedule.daily(17, 24)))
                .build();
        SeasonForecast forecast = SeasonForecast.of(evenings, Demo.weather("hot-dry"));
        double slug = Double.NEGATIVE_INFINITY;
        double inTheHourItself = Double.NEGATIVE_INFINITY;
        for (int index = 17; index < forecast.with().hours(); index += 24) {
            if (forecast.with().runShare(0, index) > 0) {
                int hour = forecast.with().hourOfYear(index);
                HeatCurves curves = forecast.forcing().collectors().get(0).curves();
                slug = Math.max(slug, curves.highestPlateC(hour - 1));
                inTheHourItself = Math.max(inTheHourItself, curves.highestPlateC(hour));
            }
        }
        assertThat(slug).isGreaterThan(inTheHourItself + 2);
        assertThat(WorkingRange.of(forecast).orElseThrow().hottestFirstSlugC()).hasValue(slug);
    }

    @Test
    void drainDownIsTheFirstFrostAfterClosing() {
        SeasonForecast forecast = SampleForecasts.SOUTHERN;
        int closing = HourOfYear.of(4, 11, 0);
        int drain = HourOfYear.startOf(
                forecast.summary().workingRange().orElseThrow().drainDown().orElseThrow());
        CollectorForcing collector = forecast.forcing().collectors().get(0);

        assertThat(drain).isGreaterThanOrEqualTo(closing);
        for (int hour = closing; hour < drain; hour++) {
            assertThat(Math.min(
                            forecast.weather().airTemperatureC(hour),
                            collector.curves().lowestPlateC(hour)))
                    .isGreaterThanOrEqualTo(WorkingRange.FROST_C);
        }
    }

    @Test
    void frostWhileTheCollectorsAreInUseIsDatedInTheOrderOfTheSeason() {
        frostIsOfHoursFrom(SampleForecasts.CLUB, SampleForecasts.CLUB.with().opening());
    }

    /** The heater alone warms the pool from forty days before opening on: the circuit is empty then. */
    @Test
    void frostBeforeTheCollectorsAreFilledIsNotCounted() {
        Installation built = SampleForecasts.CLUB.installation();
        SeasonForecast early = SeasonForecast.of(
                built.toBuilder()
                        .season(built.season().after(new BeforeOpening(10, 40)))
                        .build(),
                SampleForecasts.CLUB.weather());
        int hours = early.summary().workingRange().orElseThrow().frostHoursInUse();

        frostIsOfHoursFrom(early, 24 * 30);
        assertThat(hours)
                .isGreaterThan(SampleForecasts.CLUB
                        .summary()
                        .workingRange()
                        .orElseThrow()
                        .frostHoursInUse());
    }

    private static void frostIsOfHoursFrom(SeasonForecast forecast, int first) {
        WorkingRange range = forecast.summary().workingRange().orElseThrow();
        List<Integer> frosts = IntStream.range(first, forecast.with().hours())
                .map(forecast.with()::hourOfYear)
                .filter(hour -> forecast.weather().airTemperatureC(hour) < WorkingRange.FROST_C
                        || forecast.forcing().collectors().stream()
                                .anyMatch(c -> c.curves().lowestPlateC(hour) < WorkingRange.FROST_C))
                .boxed()
                .toList();

        assertThat(frosts).hasSize(range.frostHoursInUse()).isNotEmpty();
        assertThat(range.firstFrostInUse()).contains(HourOfYear.dateOf(frosts.get(0)));
        assertThat(range.lastFrostInUse()).contains(HourOfYear.dateOf(frosts.get(frosts.size() - 1)));
    }

    @Test
    void poolThatNeverClosesHasNoDrainDown() {
        WorkingRange range = SampleForecasts.INDOOR.summary().workingRange().orElseThrow();

        assertThat(range.drainDown()).isEmpty();
        assertThat(range.frostHoursInUse()).isEqualTo(range.frostHoursByPlate());
    }
}
