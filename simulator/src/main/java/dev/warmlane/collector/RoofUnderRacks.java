package dev.warmlane.collector;

import dev.warmlane.irradiance.RackRows;
import dev.warmlane.irradiance.RoofPieces;
import dev.warmlane.irradiance.RowPlace;
import dev.warmlane.irradiance.RowShading;
import dev.warmlane.physics.Constants;
import dev.warmlane.site.Roof;
import java.util.Arrays;

/**
 * The sunlit roof below racks, and what it sends to their two faces, hour by hour; for one thread.
 *
 * <p>The roof is cut into strips; each keeps its own balance: (1−ρ)(B·lit + D·F_sky) + ε[F_sky·L + F_front·σT_front⁴ +
 * F_back·σT_back⁴ − σT_r⁴] = h_roof(T_r − T_a) + U_roof(T_r − T_room). While water runs the plates are taken at 30 °C so that
 * the roof does not depend on the pool. The film coefficient is found twice an hour, for bare sunlit roof and for roof in
 * full shadow, and taken between the two by each strip's share of beam; the strip's temperature then follows by a Newton
 * step. Dry plates may be far from 30 °C: for them film and temperature are found a third time, for roof that sees nothing
 * but plates, so that the step is made from near.
 */
final class RoofUnderRacks {

    /** Temperature of the plates as the roof sees them while water runs, °C. */
    static final double PLATE_C = 30;

    // what reaches the faces in the hour looked at last, W/m²
    double lightOnFront;
    double lightOnBack;
    double longWaveOnFront;
    double longWaveOnBack;

    // how the long-wave rises with the plates' temperature, W/m²K
    double frontPerK;
    double backPerK;

    private final Roof roof;
    private final AirHours air;
    private final FaceFilm film;
    private final LightOnRoof above;
    private final RowShading shading;
    private final RoofPieces strips;
    private final int count;
    private final double[] lit;
    private final double[] sky;
    private final double[] ofFront;
    private final double[] ofBack;
    private final double[] toFront;
    private final double[] toBack;

    // of each strip in the hour looked at last
    private final double[] light;
    private final double[] incoming;
    private final double[] incomingPerK;
    private final double[] gained;
    private final double[] coefficient;
    private final double[] start;
    private final double[] leaving;
    private final double[] returned;

    private int hour;
    private double sunlitC;
    private double shadowC;
    private double sunlitFilm;
    private double shadowFilm;

    RoofUnderRacks(
            CollectorSurroundings around,
            LightOnRoof above,
            RackRows rows,
            RowPlace place,
            RowShading shading,
            double windShare) {
        this.roof = around.roof();
        this.air = around.air();
        this.film = around.filmOfRoof(windShare);
        this.above = above;
        this.shading = shading;
        this.strips = RoofPieces.around(rows, place);
        this.count = strips.count();
        this.lit = new double[count];
        this.sky = new double[count];
        this.ofFront = new double[count];
        this.ofBack = new double[count];
        this.toFront = new double[count];
        this.toBack = new double[count];
        this.light = new double[count];
        this.incoming = new double[count];
        this.incomingPerK = new double[count];
        this.gained = new double[count];
        this.coefficient = new double[count];
        this.start = new double[count];
        this.leaving = new double[count];
        this.returned = new double[count];
        for (int i = 0; i < count; i++) {
            sky[i] = strips.skyView(i);
            ofFront[i] = strips.viewOfFront(i);
            ofBack[i] = strips.viewOfBack(i);
            toFront[i] = strips.frontView(i);
            toBack[i] = strips.backView(i);
        }
        this.sunlitC = air.temperatureC[0];
        this.shadowC = air.temperatureC[0];
    }

    /** Looks at an hour with plates at {@link #PLATE_C}; the hours one after another. */
    void at(int which) {
        hour = which;
        double beam = above.beamWm2(hour);
        double diffuse = above.diffuseWm2(hour);
        double longWave = above.longWaveWm2(hour);
        shadowC = bareC((1 - roof.albedo()) * diffuse, longWave, shadowC);
        shadowFilm = film.coefficient(hour, shadowC - air.temperatureC[hour]);
        sunlitFilm = shadowFilm;
        if (beam > 0) {
            sunlitC = bareC((1 - roof.albedo()) * (beam + diffuse), longWave, Math.max(sunlitC, shadowC));
            sunlitFilm = film.coefficient(hour, sunlitC - air.temperatureC[hour]);
            strips.litShares(shading.profileDeg(hour), lit);
        } else {
            Arrays.fill(lit, 0);
        }
        spread(beam, diffuse, longWave, Constants.blackBody(PLATE_C), blackPerK(PLATE_C));
        balance();
        longWave();
    }

    /** What the strips gain with every plate alike, and where their balances start. */
    private void spread(double beam, double diffuse, double longWave, double plate, double platePerK) {
        double absorptance = 1 - roof.albedo();
        double emittance = roof.emittance();
        double filmRise = sunlitFilm - shadowFilm;
        double rise = sunlitC - shadowC;
        for (int i = 0; i < count; i++) {
            double covered = 1 - sky[i];
            light[i] = beam * lit[i] + diffuse * sky[i];
            incoming[i] = sky[i] * longWave + covered * plate;
            incomingPerK[i] = covered * platePerK;
            gained[i] = absorptance * light[i] + emittance * incoming[i];
            // one Newton step from between the two known states: the fourth power bends by under 0.1 K over it
            coefficient[i] = shadowFilm + lit[i] * filmRise;
            start[i] = shadowC + lit[i] * rise;
        }
        lightOnFront = 0;
        lightOnBack = 0;
        if (beam + diffuse > 0) {
            for (int i = 0; i < count; i++) {
                lightOnFront += toFront[i] * light[i];
                lightOnBack += toBack[i] * light[i];
            }
            lightOnFront *= roof.albedo();
            lightOnBack *= roof.albedo();
        }
    }

    /**
     * Looks at the same hour again with other plates; the light stays as it was.
     *
     * @param frontC temperature of their fronts
     * @param backC temperature of their backs
     * @param backShare by how much a back gets warmer with each kelvin of the front
     */
    void withPlates(double frontC, double backC, double backShare) {
        double beam = above.beamWm2(hour);
        double diffuse = above.diffuseWm2(hour);
        double longWave = above.longWaveWm2(hour);
        double front = Constants.blackBody(frontC);
        double back = Constants.blackBody(backC);
        double frontRise = blackPerK(frontC);
        double backRise = backShare * blackPerK(backC);
        double coveredC = bareC(0, (front + back) / 2, shadowC);
        double coveredFilm = film.coefficient(hour, coveredC - air.temperatureC[hour]);
        double absorptance = 1 - roof.albedo();
        double emittance = roof.emittance();
        double filmRise = sunlitFilm - shadowFilm;
        double rise = sunlitC - shadowC;
        double filmCovered = coveredFilm - shadowFilm;
        double riseCovered = coveredC - shadowC;
        for (int i = 0; i < count; i++) {
            double covered = 1 - sky[i];
            incoming[i] = sky[i] * longWave + ofFront[i] * front + ofBack[i] * back;
            incomingPerK[i] = ofFront[i] * frontRise + ofBack[i] * backRise;
            gained[i] = absorptance * (beam * lit[i] + diffuse * sky[i]) + emittance * incoming[i];
            coefficient[i] = shadowFilm + lit[i] * filmRise + covered * filmCovered;
            start[i] = shadowC + lit[i] * rise + covered * riseCovered;
        }
        balance();
        longWave();
    }

    /**
     * A Newton step for every strip, and what each sends; with each kelvin of the plates it gains {@code incomingPerK}, and
     * gives part of it back. Strip by strip alike, so that the processor takes several at once.
     */
    private void balance() {
        double emittance = roof.emittance();
        double reflected = 1 - emittance;
        double black = emittance * Constants.STEFAN_BOLTZMANN;
        double uValue = roof.uValueWm2K();
        double airC = air.temperatureC[hour];
        double roomC = roof.roomTemperatureC();
        for (int i = 0; i < count; i++) {
            double kelvin = start[i] + Constants.KELVIN;
            double cube = black * kelvin * kelvin * kelvin;
            double surplus =
                    gained[i] - cube * kelvin - coefficient[i] * (start[i] - airC) - uValue * (start[i] - roomC);
            double warm = kelvin + surplus / (4 * cube + coefficient[i] + uValue);
            double warmCube = black * warm * warm * warm;
            double perK = 4 * warmCube;
            leaving[i] = warmCube * warm + reflected * incoming[i];
            returned[i] = incomingPerK[i] * (reflected + emittance * perK / (perK + coefficient[i] + uValue));
        }
    }

    /** Sums up what leaves the strips for the faces. */
    private void longWave() {
        double onFront = 0;
        double onBack = 0;
        double onFrontPerK = 0;
        double onBackPerK = 0;
        for (int i = 0; i < count; i++) {
            onFront += toFront[i] * leaving[i];
            onBack += toBack[i] * leaving[i];
            onFrontPerK += toFront[i] * returned[i];
            onBackPerK += toBack[i] * returned[i];
        }
        longWaveOnFront = onFront;
        longWaveOnBack = onBack;
        frontPerK = onFrontPerK;
        backPerK = onBackPerK;
    }

    private static double blackPerK(double temperatureC) {
        double kelvin = temperatureC + Constants.KELVIN;
        return 4 * Constants.STEFAN_BOLTZMANN * kelvin * kelvin * kelvin;
    }

    /** Temperature of roof that sees one thing everywhere, its film coefficient found along with it, °C. */
    private double bareC(double absorbed, double longWave, double guessC) {
        double temperature = guessC;
        for (int step = 0; step < 4; step++) {
            double coefficient = film.coefficient(hour, temperature - air.temperatureC[hour]);
            temperature = newton(absorbed + roof.emittance() * longWave, coefficient, temperature);
        }
        return temperature;
    }

    private double newton(double gained, double coefficient, double temperature) {
        double kelvin = temperature + Constants.KELVIN;
        double cube = roof.emittance() * Constants.STEFAN_BOLTZMANN * kelvin * kelvin * kelvin;
        double surplus = gained
                - cube * kelvin
                - coefficient * (temperature - air.temperatureC[hour])
                - roof.uValueWm2K() * (temperature - roof.roomTemperatureC());
        return temperature + surplus / (4 * cube + coefficient + roof.uValueWm2K());
    }
}
