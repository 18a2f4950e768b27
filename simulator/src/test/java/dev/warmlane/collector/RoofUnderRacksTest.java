package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.warmlane.SyntheticYear;
import dev.warmlane.irradiance.AngleCoefficient;
import dev.warmlane.irradiance.RowPlace;
import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A plate 0.2 m long held 5 m above the roof takes next to nothing from it, so that its faces look on bare roof, whose
 * balance is solved here by halving an interval.
 */
class RoofUnderRacksTest {

    private static final double SIGMA = 5.670374e-8;

    /** (1 - cos 30°)/2: what the back sees of the sky and the front of the roof. */
    private static final double SKY_VIEW = 0.0669873;

    /** The plate hides up to 0.2/(2·5) of the sky from the roof below it, and its shadow lies there at noon. */
    private static final double LIGHT_PERCENT = 2;

    /** What the plate hides of the sky it gives back at 30 °C: 2 % of the difference of the two, some 3 W/m² of 450. */
    private static final double LONG_WAVE_PERCENT = 1;

    private static final double AIR_C = 20;
    private static final double ROOM_C = 22;

    @ParameterizedTest
    @CsvSource({"0.1, 0.9", "0.1, 0.5", "0.7, 0.9", "0.7, 0.5"})
    void facesOverBareRoofSeeItsLightAndItsWarmth(double albedo, double emittance) {
        WeatherYear weather = SyntheticYear.at(40).airC(hour -> AIR_C).build();
        Roof roof = Demo.ROOF.toBuilder()
                .albedo(albedo)
                .emittance(emittance)
                .uValueWm2K(1)
                .roomTemperatureC(ROOM_C)
                .build();
        CollectorSurroundings around = new CollectorSurroundings(weather, roof, Terrain.SUBURBAN);
        Mounting.OpenRack high = new Mounting.OpenRack(30, 180, 0.2, 1, 1, 5);
        Exposure exposure = exposures(around).rack(high, RowPlace.FIRST, HeldPlates.AT_30);
        Roof black = roof.toBuilder().albedo(0).build();
        Exposure overBlack = exposures(new CollectorSurroundings(weather, black, Terrain.SUBURBAN))
                .rack(high, RowPlace.FIRST, HeldPlates.AT_30);
        FaceFilm film = around.filmOfRoof(1);
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 5) {
            double global = weather.globalHorizontalWm2(hour);
            double sky = weather.skyLongWaveWm2(hour);
            double roofC = roofC(film, hour, (1 - albedo) * global + emittance * sky, emittance);
            double leaving = emittance * SIGMA * Math.pow(roofC + 273.15, 4) + (1 - emittance) * sky;
            assertThat(exposure.longWaveBack[hour])
                    .as(HourOfYear.label(hour))
                    .isCloseTo(SKY_VIEW * sky + (1 - SKY_VIEW) * leaving, withinPercentage(LONG_WAVE_PERCENT));
            // around midday the sun stands before the plate
            if (global > 50 && Math.abs(HourOfYear.hourOfDay(hour) - 12) <= 3) {
                assertThat(exposure.modifiedBack[hour])
                        .as(HourOfYear.label(hour))
                        .isCloseTo(
                                SKY_VIEW * weather.diffuseHorizontalWm2(hour) + (1 - SKY_VIEW) * albedo * global,
                                withinPercentage(LIGHT_PERCENT));
                assertThat(exposure.irradiance[hour] - overBlack.irradiance[hour])
                        .as(HourOfYear.label(hour))
                        .isCloseTo(SKY_VIEW * albedo * global, withinPercentage(LIGHT_PERCENT));
            }
        }
    }

    /** Faces that take diffuse light as it comes. */
    private static Exposures exposures(CollectorSurroundings around) {
        return new Exposures(around, new AngleCoefficient(0, 1), 1.13);
    }

    /** The temperature at which bare roof loses what it gains. */
    private static double roofC(FaceFilm film, int hour, double gained, double emittance) {
        double low = -50;
        double high = 120;
        for (int halving = 0; halving < 50; halving++) {
            double middle = (low + high) / 2;
            double lost = emittance * SIGMA * Math.pow(middle + 273.15, 4)
                    + film.coefficient(hour, middle - AIR_C) * (middle - AIR_C)
                    + (middle - ROOM_C);
            if (lost < gained) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
