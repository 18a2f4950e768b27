package dev.warmlane.collector;

import dev.warmlane.physics.Air;
import dev.warmlane.physics.Film;
import dev.warmlane.physics.FilmAir;
import dev.warmlane.physics.NaturalFace;
import dev.warmlane.weather.HourlyWeather;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What the air of each hour means for convection. Properties belong to the film between the air and a surface; they are
 * worked out for a surface at 30 °C, the pool's usual upper end, and corrected for others by
 * {@link #surfaceCorrection}.
 */
final class AirHours {

    /** The surface temperature the film properties are worked out for, °C. */
    static final double SURFACE_C = 30;

    /**
     * How a film coefficient changes with the temperature of the surface through the properties of the air alone, 1/K.
     * Derived: forced convection goes with k/ν^0.8, natural with k/(ν² T)^(1/3), and the film takes half of the change
     * of the surface; between films of 0 and 50 °C the two slopes are -0.0008 to -0.0011.
     */
    static final double SURFACE_SLOPE_PER_K = -0.0010;

    /** Prandtl number of air, frozen: it moves between 0.70 and 0.72 over the weather of a year. */
    static final double PRANDTL = Air.prandtl(20);

    final double[] temperatureC;
    final double[] conductivityWmK;
    final double[] viscosityM2S;
    final double[] expansionPerK;
    final double[] buoyancy;
    final double[] rootBuoyancy;
    final double[] rootConductivity;

    /** The hours that anything is worked out for, rising: all, or those that are asked for. */
    final int[] solved;

    private final IntFunction<String> labels;

    AirHours(HourlyWeather weather) {
        this(weather.hours(), weather::airTemperatureC, weather::pressureKpa, weather::label);
    }

    /** Of weather in which not all hours are asked for. */
    AirHours(HourlyWeather weather, int[] solved) {
        this(weather.hours(), solved, weather::airTemperatureC, weather::pressureKpa, weather::label);
    }

    /** The air of as many hours, or moments, as asked for. */
    AirHours(int hours, IntToDoubleFunction airC, IntToDoubleFunction pressureKpa, IntFunction<String> labels) {
        this(hours, IntStream.range(0, hours).toArray(), airC, pressureKpa, labels);
    }

    private AirHours(
            int hours,
            int[] solved,
            IntToDoubleFunction airC,
            IntToDoubleFunction pressureKpa,
            IntFunction<String> labels) {
        this.solved = solved;
        this.labels = labels;
        temperatureC = new double[hours];
        conductivityWmK = new double[hours];
        viscosityM2S = new double[hours];
        expansionPerK = new double[hours];
        buoyancy = new double[hours];
        rootBuoyancy = new double[hours];
        rootConductivity = new double[hours];
        for (int hour = 0; hour < hours; hour++) {
            temperatureC[hour] = airC.applyAsDouble(hour);
            double film = (temperatureC[hour] + SURFACE_C) / 2;
            conductivityWmK[hour] = Air.conductivityWmK(film);
            viscosityM2S[hour] = Air.kinematicViscosityM2S(film, pressureKpa.applyAsDouble(hour));
            expansionPerK[hour] = Air.expansionPerK(film);
            buoyancy[hour] = NaturalFace.buoyancy(
                    conductivityWmK[hour], Film.rayleighPerKelvin(expansionPerK[hour], viscosityM2S[hour], PRANDTL));
            rootBuoyancy[hour] = Math.sqrt(buoyancy[hour]);
            rootConductivity[hour] = Math.sqrt(conductivityWmK[hour]);
        }
    }

    /** The air of an hour's film. */
    FilmAir film(int hour) {
        return new FilmAir(conductivityWmK[hour], viscosityM2S[hour], PRANDTL);
    }

    /** The factor on a film coefficient for a surface some kelvins above the air, see {@link #SURFACE_SLOPE_PER_K}. */
    double surfaceCorrection(int hour, double differenceK) {
        return 1 + SURFACE_SLOPE_PER_K * (temperatureC[hour] + differenceK - SURFACE_C);
    }

    /** An hour as a person reads it. */
    String label(int hour) {
        return labels.apply(hour);
    }
}
