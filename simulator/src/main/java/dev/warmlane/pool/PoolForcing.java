package dev.warmlane.pool;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.physics.Water;
import dev.warmlane.units.Units;
import dev.warmlane.weather.HourlyWeather;
import java.util.Arrays;
import java.util.Optional;

/**
 * Everything of a pool's balance that does not depend on its temperature, for every hour of the weather, per m² of water;
 * and the balance itself at a temperature. Immutable, shared by all runs of the same pool in the same weather.
 */
public final class PoolForcing {

    /**
     * Bowen's ratio of convection to evaporation at standard pressure, kPa/K: q_c/q_e = 0.0613·(P/101.325)·(Tw − Ta)/(pw
     * − pa), Bowen 1926 (Physical Review 27:779), from memory.
     */
    private static final double BOWEN_KPA_K = 0.0613;

    /** Density and specific heat are taken at this temperature, °C; over 10 to 40 °C they change by 0.7 and 0.3 %. */
    static final double REFERENCE_C = 25;

    private static final double WATER_HEAT_J_KGK = Water.specificHeatJKgK(REFERENCE_C);

    /** Gas constant of water vapour, J/kgK: 8.314462618 J/molK over 18.015 g/mol. */
    private static final double VAPOUR_GAS_CONSTANT_J_KGK = 461.5;

    // the two functions of the water's temperature that cost most, over every temperature of a pool: 1e-12 from the
    // equations themselves, 1e-8 for latent heat below 0.1 °C
    private static final int HOTTEST_C = 75;
    private static final int CELLS_PER_K = 16;
    static final Tabulated SATURATION_KPA = new Tabulated(MoistAir::saturationPressureKpa, 0, HOTTEST_C, CELLS_PER_K);
    static final Tabulated LATENT_J_KG = new Tabulated(Water::latentHeatJKg, 0, HOTTEST_C, CELLS_PER_K);

    private final Departure departure;
    private final Pool pool;
    private final Optional<Cover> cover;
    private final Bathers people;
    private final MakeUp makeUp;
    private final HourlyWeather weather;
    private final PoolLight light;
    private final double heatCapacityJm2K;
    private final double waterEmittance;
    private final double groundWm2K;
    private final double groundFace;
    private final double circulationWm2;
    private final double makeUpKgSM2;
    private final double evaporationCut;
    private final double coverResistance;

    private final double[] sun;
    private final double[] bathers;
    private final double[] evaporationWm2Kpa;
    /** By how much people in the water raise evaporation and convection, as a share of those of the quiet pool. */
    private final double[] moreInUse;

    private final double[] convectionWm2K;
    private final double[] longWaveIn;
    private final double[] airC;
    private final double[] vapourKpa;
    private final double[] coverShare;
    private final double[] mainsC;
    private final double[] groundC;
    // of walls and through-flow; where there are none their conductance is 0, and any column does
    private final double wallsWm2K;
    private final double throughFlowWm2K;
    private final double evaporatedReplaced;
    private final double[] wallAirC;
    private final double[] inflowC;

    private PoolForcing(
            Pool pool,
            Optional<Cover> cover,
            Bathers people,
            MakeUp makeUp,
            HourlyWeather weather,
            Departure departure) {
        this.departure = departure;
        this.pool = pool;
        this.cover = cover;
        this.people = people;
        this.makeUp = makeUp;
        this.weather = weather;
        this.light = PoolLight.of(pool.setting(), pool.areaM2(), weather);
        this.groundFace = GroundStore.faceShare(pool);
        this.heatCapacityJm2K = (pool.depthM() + pool.shellStoreM()) * Water.densityKgM3(REFERENCE_C) * WATER_HEAT_J_KGK
                + pool.groundStore()
                        .map(ground -> groundFace * ground.inStepJm2K())
                        .orElse(0.0);
        this.waterEmittance = pool.waterEmittance();
        this.groundWm2K = pool.groundConductanceWK() / pool.areaM2();
        this.circulationWm2 = pool.circulationW() / pool.areaM2();
        this.groundC = GroundTemperature.hourly(pool, weather);
        // one litre is taken as one kilogram: mains water is within 0.2 % of it
        this.makeUpKgSM2 = makeUp.litresPerDay() / Units.DAY / pool.areaM2();
        this.mainsC = MainsWaterTemperature.hourly(makeUp.mains(), weather);
        this.evaporationCut = cover.map(Cover::evaporationCut).orElse(0.0);
        this.coverResistance = cover.map(Cover::resistanceM2KW).orElse(0.0);
        int hours = weather.hours();
        this.sun = new double[hours];
        this.bathers = new double[hours];
        this.evaporationWm2Kpa = new double[hours];
        this.moreInUse = new double[hours];
        this.convectionWm2K = new double[hours];
        this.longWaveIn = new double[hours];
        this.airC = new double[hours];
        this.vapourKpa = new double[hours];
        this.coverShare = new double[hours];
        PoolSetting setting = pool.setting();
        WaterLight onWater = new WaterLight(pool, light, weather);
        this.wallsWm2K = pool.walls().map(Walls::conductanceWK).orElse(0.0) / pool.areaM2();
        this.wallAirC = pool.walls()
                .map(walls -> wallAirC(setting, walls, light, weather, 0, hours))
                .orElse(airC);
        this.throughFlowWm2K = pool.throughFlow()
                .map(flow -> pool.depthM() * Water.densityKgM3(REFERENCE_C) * WATER_HEAT_J_KGK / flow.retentionS())
                .orElse(0.0);
        this.inflowC =
                pool.throughFlow().map(flow -> flow.inflow().hourlyC(weather)).orElse(airC);
        this.evaporatedReplaced = pool.throughFlow().isPresent() ? 0 : 1;
        for (int hour = 0; hour < hours; hour++) {
            int ofYear = weather.hourOfYear(hour);
            airC[hour] = setting.airC(weather, hour);
            vapourKpa[hour] = setting.vapourKpa(weather, hour);
            longWaveIn[hour] = onWater.longWaveWm2(hour) + departure.longWaveWm2(hour);
            moreInUse[hour] = people.riseOfEvaporation(pool.areaM2(), ofYear);
            longWaveIn[hour] *= waterEmittance;
            bathers[hour] = people.inTheWater(ofYear) * people.heatEachW() / pool.areaM2();
            coverShare[hour] = cover.isPresent() ? cover.get().drawn().at(ofYear) : 0;
        }
        fillWindAndSun(0, hours);
    }

    private PoolForcing(PoolForcing like, Pool pool, MakeUp makeUp, Departure departure, int from, int to) {
        this.departure = departure;
        this.pool = pool;
        this.cover = like.cover;
        this.people = like.people;
        this.makeUp = makeUp;
        this.weather = like.weather;
        this.light = like.light;
        this.heatCapacityJm2K = like.heatCapacityJm2K;
        this.waterEmittance = like.waterEmittance;
        this.groundWm2K = like.groundWm2K;
        this.groundFace = like.groundFace;
        this.circulationWm2 = like.circulationWm2;
        this.groundC = like.groundC;
        this.makeUpKgSM2 = makeUp.litresPerDay() / Units.DAY / pool.areaM2();
        this.mainsC = like.mainsC;
        this.evaporationCut = like.evaporationCut;
        this.coverResistance = like.coverResistance;
        this.sun = new double[weather.hours()];
        this.bathers = like.bathers;
        this.evaporationWm2Kpa = new double[weather.hours()];
        this.moreInUse = like.moreInUse;
        this.convectionWm2K = new double[weather.hours()];
        this.longWaveIn = like.longWaveIn.clone();
        for (int hour = from; hour < to; hour++) {
            longWaveIn[hour] += waterEmittance * departure.longWaveWm2(hour);
        }
        this.airC = like.airC;
        this.vapourKpa = like.vapourKpa;
        this.coverShare = like.coverShare;
        this.wallsWm2K = like.wallsWm2K;
        // the walls' sun is shaded as the water's is
        this.wallAirC = pool.walls()
                .map(walls -> wallAirC(pool.setting(), walls, light, weather, from, to))
                .orElse(airC);
        this.throughFlowWm2K = like.throughFlowWm2K;
        this.inflowC = like.inflowC;
        this.evaporatedReplaced = like.evaporatedReplaced;
        fillWindAndSun(from, to);
    }

    /** What the wind at the water and the share of the sun that stays in it make of some hours of the weather. */
    private void fillWindAndSun(int from, int to) {
        unknownBut(sun, from, to);
        unknownBut(evaporationWm2Kpa, from, to);
        unknownBut(convectionWm2K, from, to);
        PoolSetting setting = pool.setting();
        WaterLight onWater = new WaterLight(pool, light, weather);
        double quiet = pool.evaporation().quietFactor(setting);
        double solarLoss = cover.map(Cover::solarLoss).orElse(0.0);
        for (int hour = from; hour < to; hour++) {
            double wind = setting.windAtWaterMs(weather.windSpeedMs(hour)) * departure.windRatio(hour);
            double evaporation = checked(pool.evaporation().heatWm2Kpa(wind) * quiet, wind);
            evaporationWm2Kpa[hour] = evaporation;
            convectionWm2K[hour] =
                    evaporation * BOWEN_KPA_K * weather.pressureKpa(hour) / Constants.STANDARD_PRESSURE_KPA;
            sun[hour] = departure.sunRatio(hour)
                    * onWater.sunWm2(hour)
                    * (pool.solarAbsorptance() * (1 - coverShare[hour] * solarLoss));
        }
    }

    /**
     * Prepares a pool in its weather.
     *
     * @param pool the basin
     * @param cover its cover, or none
     * @param bathers the people in the water
     * @param makeUp the water that is replaced
     * @param weather a year or a record
     */
    public static PoolForcing of(
            Pool pool, Optional<Cover> cover, Bathers bathers, MakeUp makeUp, HourlyWeather weather) {
        return of(pool, cover, bathers, makeUp, weather, Departure.NONE);
    }

    /**
     * The same where the weather at the water is another than the description makes of the station's.
     *
     * @param departure by how much, in each hour of the weather
     */
    public static PoolForcing of(
            Pool pool,
            Optional<Cover> cover,
            Bathers bathers,
            MakeUp makeUp,
            HourlyWeather weather,
            Departure departure) {
        return new PoolForcing(pool, cover, bathers, makeUp, weather, departure);
    }

    /**
     * The same pool with another wind factor, shaded share or absorptance, and other make-up water from the same mains: only
     * what they change is computed, and only in the hours that are asked for, for runs by the thousand. In other hours its
     * flows are no number.
     *
     * @param other the pool
     * @param otherMakeUp the make-up water
     * @param departure by how much the weather at the water is another in each hour
     * @param from first of the hours of the weather that are run
     * @param to the hour after their last
     * @throws IllegalArgumentException if anything else of the pool differs, or this forcing departs itself
     */
    public PoolForcing with(Pool other, MakeUp otherMakeUp, Departure departure, int from, int to) {
        if (this.departure != Departure.NONE) {
            throw new IllegalArgumentException("the pool was prepared with a weather at its water that departs from"
                    + " the station's: prepare it without, with PoolForcing.of");
        }
        if (!fixed(other).equals(fixed(pool)) || !otherMakeUp.mains().equals(makeUp.mains())) {
            throw new IllegalArgumentException(
                    "more than wind, sun and the amount of make-up water differs from the pool"
                            + " that this forcing was prepared for: prepare it with PoolForcing.of");
        }
        return new PoolForcing(this, other, otherMakeUp, departure, from, to);
    }

    /** A pool without the wind, shade and absorptance that it has. */
    private static Pool fixed(Pool pool) {
        PoolSetting setting =
                pool.setting().match(outdoor -> outdoor.withWindFactor(0).withShadedShare(0), indoor -> indoor);
        return pool.withSetting(setting).withSolarAbsorptance(1);
    }

    /** By how much the weather at the water was taken to be another than that of the station. */
    public Departure departure() {
        return departure;
    }

    /** The weather it was prepared in. */
    public HourlyWeather weather() {
        return weather;
    }

    /**
     * What it was prepared for that another pool has otherwise, in a word; nothing where it serves that pool.
     *
     * @param otherPool the basin
     * @param otherCover its cover, or none
     * @param otherBathers the people in the water
     * @param otherMakeUp the water that is replaced
     */
    public Optional<String> differsFrom(
            Pool otherPool, Optional<Cover> otherCover, Bathers otherBathers, MakeUp otherMakeUp) {
        if (!pool.equals(otherPool)) {
            return Optional.of("pool");
        }
        if (!cover.equals(otherCover)) {
            return Optional.of("cover");
        }
        if (!people.equals(otherBathers)) {
            return Optional.of("bathers");
        }
        return makeUp.equals(otherMakeUp) ? Optional.empty() : Optional.of("make-up water");
    }

    /** Heat that warms the water by one kelvin, J/m²K. */
    public double heatCapacityJm2K() {
        return heatCapacityJm2K;
    }

    /** Face between pool and ground for each m² of water, of which its {@link Pool#groundStore} has heat. */
    public double groundFace() {
        return groundFace;
    }

    /** Temperature of the air over the water, °C. */
    public double airC(int hour) {
        return airC[hour];
    }

    /** Temperature of the mains water, °C. */
    public double mainsC(int hour) {
        return mainsC[hour];
    }

    /**
     * The pool's flows at a water temperature.
     *
     * @param hour hour of the weather
     * @param waterC water temperature, °C
     * @param inUse 1 while the pool is in use, 0 while it only stands filled: then nobody swims, the circulation pump
     *     rests and nothing is replaced but what evaporates
     * @param out where the flows go
     */
    public void evaluate(int hour, double waterC, double inUse, PoolFlows out) {
        double kelvin = waterC + Constants.KELVIN;
        double cube = Constants.STEFAN_BOLTZMANN * kelvin * kelvin * kelvin;
        double covered = coverShare[hour];
        double cut = 1 - covered * evaporationCut;
        double activity = 1 + inUse * moreInUse[hour];
        double convection = convectionWm2K[hour] * activity;
        double radiation = 4 * waterEmittance * cube;
        // under the cover the film and the cover's resistance are in series; open and covered water stand side by side
        double dry = covered == 0 ? 1 : 1 - covered + covered / (1 + coverResistance * (convection + radiation));
        double saturation = SATURATION_KPA.at(waterC);
        double latentJKg = LATENT_J_KG.at(waterC);
        double perKpa = evaporationWm2Kpa[hour] * activity * cut;
        double evaporation = perKpa * (vapourKpa[hour] - saturation);
        // Clausius and Clapeyron with the gas constant of vapour: good for a slope, not used for a flow
        double saturationSlope = saturation * latentJKg / (VAPOUR_GAS_CONSTANT_J_KGK * kelvin * kelvin);
        double evaporated = Math.max(0, -evaporation / latentJKg);
        double replaced = (makeUpKgSM2 * inUse + evaporated * evaporatedReplaced) * WATER_HEAT_J_KGK;
        out.begin();
        out.put(Flow.SUN, sun[hour], 0);
        out.put(Flow.BATHERS, bathers[hour] * inUse, 0);
        out.put(Flow.CIRCULATION, circulationWm2 * inUse, 0);
        out.put(Flow.EVAPORATION, evaporation, -perKpa * saturationSlope);
        out.put(Flow.CONVECTION, convection * dry * (airC[hour] - waterC), -convection * dry);
        out.put(Flow.LONG_WAVE, dry * (longWaveIn[hour] - waterEmittance * cube * kelvin), -dry * radiation);
        out.put(Flow.GROUND, groundWm2K * (groundC[hour] - waterC), -groundWm2K);
        out.put(Flow.WALLS, wallsWm2K * (wallAirC[hour] - waterC), -wallsWm2K);
        out.put(Flow.THROUGH_FLOW, throughFlowWm2K * (inflowC[hour] - waterC), -throughFlowWm2K);
        out.put(Flow.MAKE_UP, replaced * (mainsC[hour] - waterC), -replaced);
        out.evaporated(evaporated);
    }

    private static double[] wallAirC(
            PoolSetting setting, Walls walls, PoolLight light, HourlyWeather weather, int from, int to) {
        double[] air = new double[weather.hours()];
        unknownBut(air, from, to);
        for (int hour = from; hour < to; hour++) {
            air[hour] = setting.wallAirC(walls, light, weather, hour);
        }
        return air;
    }

    /** What is not computed is no number, so that a run beyond it stops. */
    private static void unknownBut(double[] column, int from, int to) {
        Arrays.fill(column, 0, from, Double.NaN);
        Arrays.fill(column, to, column.length, Double.NaN);
    }

    private static double checked(double heatWm2Kpa, double windMs) {
        if (!(heatWm2Kpa >= 0 && heatWm2Kpa < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the evaporation correlation gives " + heatWm2Kpa
                    + " W/m2kPa at a wind of " + windMs + " m/s; allowed: 0 or more, finite, at every wind");
        }
        return heatWm2Kpa;
    }
}
