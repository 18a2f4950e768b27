package dev.warmlane.validation;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.Film;
import dev.warmlane.physics.FilmAir;
import dev.warmlane.physics.PlateFace;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.EvaporationCorrelation;
import dev.warmlane.pool.MainsWater;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolFlows;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.Walls;
import dev.warmlane.weather.WeatherRecord;
import java.util.Optional;

/**
 * A class A pan as a pool of the library, with what a pool in the ground has not: a wall of sheet metal in sun and wind, and a
 * bottom over slats. Walls and bottom are as warm as the water, since the film inside them is far better than that outside.
 */
final class Pan {

    static final double DIAMETER_M = 1.207;
    static final double WALL_M = 0.254;

    /** Filled to 5 cm below the rim: WMO, Guide to Instruments and Methods of Observation, from memory. */
    private static final double WATER_M = 0.20;

    /** Short-wave that water and bottom, and the wall, absorb: PenPan and its successors, from memory, low certainty. */
    private static final double ABSORPTANCE = 0.86;

    private static final double WALL_ABSORPTANCE = 0.64;

    /** Long-wave emittance of wall and bottom: the same, from memory, low certainty. */
    private static final double WALL_EMITTANCE = 0.82;

    /** Albedo of short grass, FAO-56. */
    private static final double GROUND_ALBEDO = 0.23;

    private static final double SURFACE_M2 = Math.PI * DIAMETER_M * DIAMETER_M / 4;

    /** Wall over water surface. */
    private static final double WALL_SHARE = 4 * WALL_M / DIAMETER_M;

    /** Bare steel by the library: as warm as the water, its outer surface alone; the bottom is not counted. */
    private static final Walls LIBRARYS = new Walls(WALL_SHARE * SURFACE_M2, Walls.U_VALUE.highest(), WALL_ABSORPTANCE);

    /** What is around the water. */
    enum Shell {
        NONE,
        SHEET_METAL,
        LIBRARYS_WALLS
    }

    private static final double STEP_S = 600;

    private static final double START_C = 20;

    private final WeatherRecord weather;
    private final PoolForcing pool;
    private final double windFactor;
    private final Shell shell;

    Pan(WeatherRecord weather, EvaporationCorrelation evaporation, double windFactor, Shell shell) {
        this.weather = weather;
        this.windFactor = windFactor;
        this.shell = shell;
        Pool basin = Pool.of(SURFACE_M2, WATER_M, new PoolSetting.Outdoor(windFactor))
                .withSolarAbsorptance(ABSORPTANCE)
                .withEvaporation(evaporation)
                .withGroundConductanceWK(0);
        if (shell == Shell.LIBRARYS_WALLS) {
            basin = basin.withWalls(LIBRARYS);
        }
        this.pool =
                PoolForcing.of(basin, Optional.empty(), Bathers.NONE, new MakeUp(0, new MainsWater.FromAir()), weather);
    }

    /** Water evaporated and condensed in each hour, mm; the pan is followed from its first hour. */
    double[] evaporatedMm() {
        double[] millimetres = new double[weather.hours()];
        PoolFlows flows = new PoolFlows();
        double water = START_C;
        for (int hour = 0; hour < millimetres.length; hour++) {
            for (double second = 0; second < 3600; second += STEP_S) {
                pool.evaluate(hour, water, 0, flows);
                double net = flows.net() + (shell == Shell.SHEET_METAL ? wallsWm2(hour, water) : 0);
                water += STEP_S * net / pool.heatCapacityJm2K();
                millimetres[hour] += STEP_S * flows.evaporatedKgSM2();
            }
        }
        return millimetres;
    }

    /** What wall and bottom gain, W per m² of water. */
    private double wallsWm2(int hour, double waterC) {
        double zenith = Math.toRadians(weather.sun().zenithDeg(hour));
        double beam = weather.directNormalWm2(hour) * Math.max(0, Math.sin(zenith)) * WALL_SHARE / Math.PI;
        double around = (weather.diffuseHorizontalWm2(hour) + GROUND_ALBEDO * weather.globalHorizontalWm2(hour)) / 2;
        double air = weather.airTemperatureC(hour);
        double black = Constants.blackBody(air);
        double own = Constants.blackBody(waterC);
        double wind = Film.effectiveWindMs(windFactor * weather.windSpeedMs(hour));
        FilmAir film = FilmAir.at((air + waterC) / 2, weather.pressureKpa(hour));
        double forced = Film.forcedTurbulent(wind, DIAMETER_M, 1, film);
        double side = Film.rack(forced, Film.natural(new PlateFace(90, true, WALL_M, WALL_M / 4), waterC, air, film));
        double below =
                Film.rack(forced, Film.natural(new PlateFace(0, false, DIAMETER_M, DIAMETER_M / 4), waterC, air, film));
        double wall = WALL_ABSORPTANCE * (beam + around * WALL_SHARE)
                + WALL_SHARE
                        * (side * (air - waterC) + WALL_EMITTANCE * ((weather.skyLongWaveWm2(hour) + black) / 2 - own));
        double bottom = below * (air - waterC) + WALL_EMITTANCE * (black - own);
        return wall + bottom;
    }
}
