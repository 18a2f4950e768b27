package dev.warmlane.collector;

import dev.warmlane.physics.Air;
import dev.warmlane.physics.Film;
import dev.warmlane.physics.NaturalFace;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherYear;

/**
 * What the air of each hour means for convection. Properties belong to the film between the air and a surface at 30 °C,
 * the pool's usual upper end; a surface 20 K warmer or colder changes a film coefficient by less than 1 % and a season's
 * heat by less than 0.1 % (measured in {@code HeatCurvesTest}).
 */
final class AirHours {

    /** The surface temperature the film properties are taken for, °C. */
    static final double SURFACE_C = 30;

    /** Prandtl number of air, frozen: it moves between 0.70 and 0.72 over the weather of a year. */
    static final double PRANDTL = Air.prandtl(20);

    final double[] temperatureC = new double[HourOfYear.HOURS];
    final double[] conductivityWmK = new double[HourOfYear.HOURS];
    final double[] viscosityM2S = new double[HourOfYear.HOURS];
    final double[] expansionPerK = new double[HourOfYear.HOURS];
    final double[] buoyancy = new double[HourOfYear.HOURS];

    AirHours(WeatherYear weather) {
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            temperatureC[hour] = weather.airTemperatureC(hour);
            double film = (temperatureC[hour] + SURFACE_C) / 2;
            conductivityWmK[hour] = Air.conductivityWmK(film);
            viscosityM2S[hour] = Air.kinematicViscosityM2S(film, weather.pressureKpa(hour));
            expansionPerK[hour] = Air.expansionPerK(film);
            buoyancy[hour] = NaturalFace.buoyancy(
                    conductivityWmK[hour], Film.rayleighPerKelvin(expansionPerK[hour], viscosityM2S[hour], PRANDTL));
        }
    }
}
