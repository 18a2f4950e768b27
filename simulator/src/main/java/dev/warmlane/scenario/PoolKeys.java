package dev.warmlane.scenario;

import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.Freeboard;
import dev.warmlane.pool.GroundStore;
import dev.warmlane.pool.InflowTemperature;
import dev.warmlane.pool.MainsWater;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting.Indoor;
import dev.warmlane.pool.PoolSetting.Outdoor;
import dev.warmlane.pool.SurfaceReflection;
import dev.warmlane.pool.ThroughFlow;
import dev.warmlane.pool.Walls;
import dev.warmlane.units.Measure;
import dev.warmlane.wind.PoolShelter;

/** Keys of the sections pool, water and cover. */
final class PoolKeys {

    private static final String INDOOR_ONLY = "required indoors, not allowed outdoors";

    static final Key<Double> AREA =
            Key.optional("area", Pool.AREA, "water surface", "required without length and width");
    static final Key<Double> LENGTH =
            Key.optional("length", Freeboard.SIDE, "length of a rectangular water surface", "required without area");
    static final Key<Double> WIDTH =
            Key.optional("width", Freeboard.SIDE, "width of a rectangular water surface", "required without area");
    static final Key<Double> DEPTH = Key.required("depth", Pool.DEPTH, "mean depth of the water");
    static final Key<Setting> SETTING =
            Key.required("setting", WordKinds.choice(Setting.class), "under the sky or in a hall");
    static final Key<Finish> FINISH = Key.assumed(
            "finish",
            WordKinds.choice(Finish.class),
            "finish of the basin: solar absorptance 0.85 light, 0.90 dark",
            Finish.LIGHT,
            "absorptance 0.85, ISO/TR 12596 as cited by Kalogirou");
    static final Key<Double> ABSORPTANCE = Key.optional(
            "absorptance",
            Pool.ABSORPTANCE,
            "share of the sun on the surface that stays in the water; 0.05 less than its finish when heavily used",
            "from finish; not with finish");
    static final Key<PoolShelter> WIND_SHELTER = Key.assumed(
            "wind_shelter",
            WordKinds.choice(PoolShelter.class),
            "shelter of the water from wind, outdoors: wind factor 0.15 sheltered, 0.30 suburban, 0.40 exposed",
            PoolShelter.SUBURBAN,
            "wind factor 0.30, ISO/TR 12596:1995, from memory; the largest uncertainty of an outdoor pool");
    static final Key<Double> WIND_FACTOR = Key.optional(
            "wind_factor",
            Outdoor.WIND_FACTOR,
            "wind at 0.3 m above the water over the station's wind at 10 m, outdoors",
            "from wind_shelter; not with wind_shelter");
    static final Key<Double> SHADED_SHARE = Key.assumed(
            "shaded_share",
            Outdoor.SHADED_SHARE,
            "share of the sun that is kept from the water at all hours, outdoors; what shades by direction is for horizon and beside_pool",
            0.0,
            "nothing shades the pool at all hours");
    static final Key<Double> SKY_SHARE = Key.assumed(
            "sky_share",
            Outdoor.SKY_SHARE,
            "share of the sky that the water sees, outdoors, of what horizon and beside_pool leave",
            1.0,
            "nothing hides the sky");
    static final Key<Double> HALL_TEMPERATURE = Key.optional(
            "hall_temperature", Indoor.TEMPERATURE, "temperature of the hall, its air and its walls", INDOOR_ONLY);
    static final Key<Double> HALL_HUMIDITY =
            Key.optional("hall_humidity", Indoor.HUMIDITY, "relative humidity of the hall", INDOOR_ONLY);
    static final Key<Double> AIR_SPEED = Key.assumed(
            "air_speed", Indoor.USUAL_AIR_SPEED, "air speed at the water, indoors; 0.05 to 0.1 m/s is usual");
    static final Key<Evaporation> EVAPORATION = Key.assumed(
            "evaporation",
            WordKinds.choice(Evaporation.class, Evaporation::source),
            "correlation for evaporation",
            Evaporation.SMITH_LOF_JONES,
            "Smith, Löf and Jones 1994, measured on an outdoor pool");
    static final Key<Double> WATER_EMITTANCE =
            Key.assumed("water_emittance", Pool.USUAL_EMITTANCE, "long-wave emittance of water");
    static final Key<Double> GROUND_CONDUCTANCE = Key.optional(
            "ground_conductance",
            Pool.GROUND_CONDUCTANCE,
            "conductance from the water through floor and walls to the ground",
            "required with wall_area, else from area and depth, assumed by ISO 13370");
    static final Key<Double> WALL_AREA = Key.optional(
            "wall_area",
            Walls.AREA,
            "outer area of walls above the ground with water behind them; ground_conductance is then that of the rest, and required",
            "a pool without it lies in the ground");
    static final Key<Double> WALL_U_VALUE = Key.optional(
            "wall_u_value",
            Walls.U_VALUE,
            "conductance of the walls from the water to the outside, outer surface included",
            "required with wall_area");
    static final Key<Double> WALL_ABSORPTANCE = Key.assumed(
            "wall_absorptance",
            Walls.USUAL_ABSORPTANCE,
            "share of the sun on the outside of the walls that they absorb, with wall_area only");
    static final Key<Double> SHELL_STORE = Key.convention(
            "shell_store",
            Pool.SHELL_STORE,
            "heat that walls, floor and ground store over a day, as the depth of water that stores the same; matters in"
                    + " basins of a few decimetres",
            0.0);
    static final Key<GroundStore> GROUND_STORE = Key.optional(
            "ground_store",
            WordKinds.choice(GroundStore.class),
            "counts the heat that the ground about the basin takes up and gives back over hours to months, by what it is made of;"
                    + " shell_store is then that of the shell alone",
            "not counted");
    static final Key<SurfaceReflection> SURFACE_REFLECTION = Key.convention(
            "surface_reflection",
            WordKinds.choice(SurfaceReflection.class),
            "whether the water reflects the same share of all light, or of the beam by its angle; outdoors",
            SurfaceReflection.EVEN);
    static final Key<Double> FREEBOARD = Key.optional(
            "freeboard",
            Freeboard.HEIGHT,
            "height of the basin's walls above the water, which shade it; with length and width, outdoors",
            "nothing of the basin shades its water");
    static final Key<Double> LENGTH_DIRECTION = Key.optional(
            "length_direction",
            Freeboard.AXIS,
            "direction in which the length lies, clockwise from north",
            "required with freeboard");
    static final Key<Double> FREEBOARD_REFLECTANCE = Key.assumed(
            "freeboard_reflectance",
            Freeboard.USUAL_REFLECTANCE,
            "share of the light that the walls above the water reflect, with freeboard only");
    static final Key<Double> THROUGH_FLOW_RETENTION = Key.optional(
            "through_flow_retention",
            ThroughFlow.RETENTION,
            "time in which as much water flows through the pool as it holds",
            "nothing flows through");
    static final Key<Double> THROUGH_FLOW_TEMPERATURE = Key.optional(
            "through_flow_temperature",
            InflowTemperature.Given.TEMPERATURE,
            "temperature of the water that flows in, with through_flow_retention only",
            "the mean of the air over through_flow_air_days");
    static final Key<Double> THROUGH_FLOW_AIR_DAYS = Key.assumed(
            "through_flow_air_days",
            InflowTemperature.MeanAir.USUAL_DAYS,
            "days before over which the air is averaged for the temperature of the water that flows in; with"
                    + " through_flow_retention and without through_flow_temperature only");
    static final Key<Double> BATHERS = Key.assumed(
            "bathers", Bathers.WHEN_FULL, "people in the water at once when the pool is full", 0.0, "nobody counted");
    static final Key<Double> BATHER_HEAT = Key.assumed(
            "bather_heat",
            Kinds.of(Bathers.HEAT_EACH, Measure.BODY_HEAT),
            "heat that each gives to the water while swimming",
            Bathers.USUAL_HEAT.value(),
            Bathers.USUAL_HEAT.source());
    static final Key<Double> BATHER_EVAPORATION_RISE = Key.assumed(
            "bather_evaporation_rise",
            Bathers.USUAL_GREATEST_RISE,
            "by how much bathers raise evaporation over that of quiet water at most, from one on every 5.3 m2 of water"
                    + " on; fewer raise it in proportion");
    static final Key<Double> CIRCULATION_POWER = Key.assumed(
            "circulation_power",
            Pool.CIRCULATION,
            "hydraulic power of the circulation (filter) pump over the season, which ends as heat in the water: its"
                    + " electrical power times its efficiency",
            0.0,
            "no heat counted for it");
    static final Key<Double> TURNOVER = Key.optional(
            "turnover",
            Pool.TURNOVER,
            "time in which the circulation pump moves the pool's volume once; 6 h is common practice",
            "not with circulation_power");
    static final Key<Double> CIRCULATION_HEAD = Key.assumed(
            "circulation_head", Pool.USUAL_HEAD, "head that the circulation pump works against, with turnover only");
    static final Key<Double> MAKE_UP = Key.assumed(
            "make_up",
            MakeUp.WATER,
            "water replaced in the open season beyond what evaporates: backwash, splashing",
            0.0,
            "no more than evaporates");

    static final SectionSchema POOL = SectionSchema.needed(
            "pool",
            "the basin, the people in it and the water it loses",
            AREA,
            LENGTH,
            WIDTH,
            DEPTH,
            SETTING,
            FINISH,
            ABSORPTANCE,
            WIND_SHELTER,
            WIND_FACTOR,
            SHADED_SHARE,
            SKY_SHARE,
            HALL_TEMPERATURE,
            HALL_HUMIDITY,
            AIR_SPEED,
            EVAPORATION,
            WATER_EMITTANCE,
            GROUND_CONDUCTANCE,
            WALL_AREA,
            WALL_U_VALUE,
            WALL_ABSORPTANCE,
            SHELL_STORE,
            GROUND_STORE,
            SURFACE_REFLECTION,
            FREEBOARD,
            LENGTH_DIRECTION,
            FREEBOARD_REFLECTANCE,
            THROUGH_FLOW_RETENTION,
            THROUGH_FLOW_TEMPERATURE,
            THROUGH_FLOW_AIR_DAYS,
            BATHERS,
            BATHER_HEAT,
            BATHER_EVAPORATION_RISE,
            CIRCULATION_POWER,
            TURNOVER,
            CIRCULATION_HEAD,
            MAKE_UP);

    static final Key<MainsWater> MAINS = Key.assumed(
            "mains",
            new MainsKind(),
            "temperature of the water from the mains",
            new MainsWater.FromAir(),
            "rule of Burch and Christensen 2007 from the year's air temperature");

    static final SectionSchema WATER = SectionSchema.optional("water", "the water from the mains", MAINS);

    private static final String FROM_KIND = "required without kind, assumed with it";

    static final Key<CoverKind> COVER_KIND = Key.optional(
            "kind", WordKinds.choice(CoverKind.class), "a usual kind of cover", "required without the numbers below");
    static final Key<String> COVER_NAME =
            Key.optional("name", WordKinds.text(), "what the cover is called", "the name of its kind, or \"cover\"");
    static final Key<Double> EVAPORATION_CUT =
            Key.optional("evaporation_cut", Cover.EVAPORATION_CUT, "share of evaporation it stops while on", FROM_KIND);
    static final Key<Double> RESISTANCE =
            Key.optional("resistance", Cover.RESISTANCE, "thermal resistance of the cover", FROM_KIND);
    static final Key<Double> SOLAR_LOSS = Key.optional(
            "solar_loss", Cover.SOLAR_LOSS, "share of the sun it keeps from the water while on", FROM_KIND);
    static final Key<WordKinds.Span> DRAWN = Key.assumed(
            "drawn",
            WordKinds.hours(),
            "hours in which it lies on the water every day; assumed only where no [[schedule]] is for it",
            new WordKinds.Span(20, 8),
            "by night, common practice, no source");

    static final SectionSchema COVER = SectionSchema.optional(
            "cover",
            "the pool's cover; a pool without this section has none",
            COVER_KIND,
            COVER_NAME,
            EVAPORATION_CUT,
            RESISTANCE,
            SOLAR_LOSS,
            DRAWN);

    private PoolKeys() {}

    /** Where a pool is. */
    enum Setting {
        OUTDOOR,
        INDOOR
    }

    /** The finish of a basin. */
    enum Finish {
        LIGHT(Pool.LIGHT_FINISH),
        DARK(Pool.DARK_FINISH);

        final double absorptance;

        Finish(double absorptance) {
            this.absorptance = absorptance;
        }
    }

    /** Usual covers. */
    enum CoverKind {
        BUBBLE,
        FOAM,
        SOLID_TRACK,
        LIQUID_FILM
    }
}
