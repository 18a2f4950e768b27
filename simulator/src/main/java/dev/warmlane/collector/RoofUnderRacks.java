package dev.warmlane.collector;

import dev.warmlane.irradiance.RackRows;
import dev.warmlane.irradiance.RoofStrips;
import dev.warmlane.irradiance.RowPlace;
import dev.warmlane.irradiance.RowShading;
import dev.warmlane.physics.Constants;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Roof;
import dev.warmlane.weather.WeatherYear;

/**
 * The sunlit roof below racks, and what it sends to their two faces in each hour.
 *
 * <p>The roof is cut into strips; each keeps its own balance: (1−ρ)(B·lit + D·F_sky) + ε[F_sky·L + (1−F_sky)σT_p⁴ −
 * σT_r⁴] = h_roof(T_r − T_a) + U_roof(T_r − T_room), with the plates taken at 30 °C so that the roof does not depend on
 * the pool. The film coefficient is found twice an hour, for bare sunlit roof and for roof in full shadow, and taken
 * between the two by each strip's share of beam; the strip's temperature then follows by a Newton step.
 */
final class RoofUnderRacks {

    /** Temperature of the plates as the roof sees them, °C. */
    static final double PLATE_C = 30;

    final double[] lightOnFront = new double[HourOfYear.HOURS];
    final double[] lightOnBack = new double[HourOfYear.HOURS];
    final double[] longWaveOnFront = new double[HourOfYear.HOURS];
    final double[] longWaveOnBack = new double[HourOfYear.HOURS];

    private final Roof roof;
    private final AirHours air;
    private final FaceFilm film;

    RoofUnderRacks(CollectorSurroundings around, RackRows rows, RowPlace place, RowShading shading, double windShare) {
        this.roof = around.roof();
        this.air = around.air();
        this.film = around.filmOfRoof(windShare);
        WeatherYear weather = around.weather();
        RoofStrips strips = RoofStrips.below(rows, place);
        int count = strips.count();
        double[] lit = new double[count];
        double[] sky = new double[count];
        double[] toFront = new double[count];
        double[] toBack = new double[count];
        for (int i = 0; i < count; i++) {
            sky[i] = strips.skyView(i);
            toFront[i] = strips.frontView(i);
            toBack[i] = strips.backView(i);
        }
        double plate = Constants.blackBody(PLATE_C);
        double sunlitC = air.temperatureC[0];
        double shadowC = air.temperatureC[0];
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double beam = weather.beamHorizontalWm2(hour);
            double diffuse = weather.globalHorizontalWm2(hour) - beam;
            double longWave = weather.skyLongWaveWm2(hour);
            boolean sunlit = beam > 0;
            shadowC = temperature(hour, (1 - roof.albedo()) * diffuse, longWave, shadowC);
            double shadowFilm = film.coefficient(hour, shadowC - air.temperatureC[hour]);
            double sunlitFilm = shadowFilm;
            if (sunlit) {
                sunlitC =
                        temperature(hour, (1 - roof.albedo()) * (beam + diffuse), longWave, Math.max(sunlitC, shadowC));
                sunlitFilm = film.coefficient(hour, sunlitC - air.temperatureC[hour]);
                strips.litShares(shading.profileDeg(hour), lit);
            }
            double front = 0;
            double back = 0;
            double lightFront = 0;
            double lightBack = 0;
            for (int i = 0; i < count; i++) {
                double share = sunlit ? lit[i] : 0;
                double light = beam * share + diffuse * sky[i];
                double incoming = sky[i] * longWave + (1 - sky[i]) * plate;
                double coefficient = shadowFilm + share * (sunlitFilm - shadowFilm);
                // one Newton step from between the two known states: the fourth power bends by under 0.1 K over it
                double temperature = newton(
                        hour,
                        (1 - roof.albedo()) * light + roof.emittance() * incoming,
                        coefficient,
                        shadowC + share * (sunlitC - shadowC));
                double leaving =
                        roof.emittance() * Constants.blackBody(temperature) + (1 - roof.emittance()) * incoming;
                front += toFront[i] * leaving;
                back += toBack[i] * leaving;
                lightFront += toFront[i] * light;
                lightBack += toBack[i] * light;
            }
            longWaveOnFront[hour] = front;
            longWaveOnBack[hour] = back;
            lightOnFront[hour] = roof.albedo() * lightFront;
            lightOnBack[hour] = roof.albedo() * lightBack;
        }
    }

    /** Temperature of bare roof under the whole sky, its film coefficient found along with it, °C. */
    private double temperature(int hour, double absorbed, double longWave, double guessC) {
        double temperature = guessC;
        for (int step = 0; step < 4; step++) {
            double coefficient = film.coefficient(hour, temperature - air.temperatureC[hour]);
            temperature = newton(hour, absorbed + roof.emittance() * longWave, coefficient, temperature);
        }
        return temperature;
    }

    private double newton(int hour, double gained, double coefficient, double temperature) {
        double kelvin = temperature + Constants.KELVIN;
        double cube = roof.emittance() * Constants.STEFAN_BOLTZMANN * kelvin * kelvin * kelvin;
        double surplus = gained
                - cube * kelvin
                - coefficient * (temperature - air.temperatureC[hour])
                - roof.uValueWm2K() * (temperature - roof.roomTemperatureC());
        return temperature + surplus / (4 * cube + coefficient + roof.uValueWm2K());
    }
}
