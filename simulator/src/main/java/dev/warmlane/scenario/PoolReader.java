package dev.warmlane.scenario;

import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.Freeboard;
import dev.warmlane.pool.GroundLoss;
import dev.warmlane.pool.GroundStore;
import dev.warmlane.pool.InflowTemperature;
import dev.warmlane.pool.MainsWater;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.SurfaceReflection;
import dev.warmlane.pool.ThroughFlow;
import dev.warmlane.pool.Walls;
import dev.warmlane.scenario.PlantKeys.What;
import dev.warmlane.scenario.PoolKeys.CoverKind;
import dev.warmlane.scenario.PoolKeys.Setting;
import dev.warmlane.site.Schedule;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the basin, its bathers, its make-up water and its cover. */
final class PoolReader {

    private PoolReader() {}

    static @Nullable Pool pool(Section s) {
        double area = area(s);
        double depth = s.get(PoolKeys.DEPTH);
        PoolSetting setting = setting(s);
        double absorptance = absorptance(s, setting != null && setting.outdoor().isEmpty());
        double emittance = s.get(PoolKeys.WATER_EMITTANCE);
        Evaporation evaporation = s.get(PoolKeys.EVAPORATION);
        double ground = ground(s, area, depth);
        double circulation = circulation(s, area, depth);
        Optional<Walls> walls = walls(s);
        Optional<ThroughFlow> throughFlow = throughFlow(s);
        double store = s.get(PoolKeys.SHELL_STORE);
        Optional<GroundStore> groundStore = groundStore(s);
        SurfaceReflection reflection = s.get(PoolKeys.SURFACE_REFLECTION);
        Optional<Freeboard> freeboard = freeboard(s);
        return s.build(() -> new Pool(
                area,
                depth,
                known(setting),
                absorptance,
                emittance,
                evaporation,
                ground,
                circulation,
                walls,
                throughFlow,
                store,
                groundStore,
                reflection,
                freeboard));
    }

    private static Optional<GroundStore> groundStore(Section s) {
        return s.has(PoolKeys.GROUND_STORE) ? Optional.of(s.get(PoolKeys.GROUND_STORE)) : Optional.empty();
    }

    private static Optional<Freeboard> freeboard(Section s) {
        if (!s.has(PoolKeys.FREEBOARD)) {
            s.refuse("allowed with freeboard only", PoolKeys.LENGTH_DIRECTION, PoolKeys.FREEBOARD_REFLECTANCE);
            return Optional.empty();
        }
        if (s.has(PoolKeys.AREA)) {
            s.error(PoolKeys.FREEBOARD, "its shadow is that of a rectangle; give length and width in place of area");
            return Optional.empty();
        }
        double height = s.get(PoolKeys.FREEBOARD);
        double length = s.get(PoolKeys.LENGTH);
        double width = s.get(PoolKeys.WIDTH);
        double direction = s.get(PoolKeys.LENGTH_DIRECTION);
        double reflectance = s.get(PoolKeys.FREEBOARD_REFLECTANCE);
        return Optional.ofNullable(s.build(() -> new Freeboard(height, length, width, direction, reflectance)));
    }

    private static Optional<Walls> walls(Section s) {
        if (!s.has(PoolKeys.WALL_AREA)) {
            s.refuse("allowed with wall_area only", PoolKeys.WALL_U_VALUE, PoolKeys.WALL_ABSORPTANCE);
            return Optional.empty();
        }
        double area = s.get(PoolKeys.WALL_AREA);
        double uValue = s.get(PoolKeys.WALL_U_VALUE);
        double absorptance = s.get(PoolKeys.WALL_ABSORPTANCE);
        return Optional.ofNullable(s.build(() -> new Walls(area, uValue, absorptance)));
    }

    private static Optional<ThroughFlow> throughFlow(Section s) {
        if (!s.has(PoolKeys.THROUGH_FLOW_RETENTION)) {
            s.refuse(
                    "allowed with through_flow_retention only",
                    PoolKeys.THROUGH_FLOW_TEMPERATURE,
                    PoolKeys.THROUGH_FLOW_AIR_DAYS);
            return Optional.empty();
        }
        double retention = s.get(PoolKeys.THROUGH_FLOW_RETENTION);
        if (s.has(PoolKeys.THROUGH_FLOW_TEMPERATURE)) {
            s.refuse("not allowed with through_flow_temperature; give one of them", PoolKeys.THROUGH_FLOW_AIR_DAYS);
            double temperature = s.get(PoolKeys.THROUGH_FLOW_TEMPERATURE);
            return Optional.ofNullable(
                    s.build(() -> new ThroughFlow(retention, new InflowTemperature.Given(temperature))));
        }
        double days = s.get(PoolKeys.THROUGH_FLOW_AIR_DAYS);
        return Optional.ofNullable(s.build(() -> new ThroughFlow(retention, new InflowTemperature.MeanAir(days))));
    }

    /** Only ever asked for where no finding was made, and then there is a setting. */
    private static PoolSetting known(@Nullable PoolSetting setting) {
        return Objects.requireNonNull(setting);
    }

    private static double area(Section s) {
        if (s.has(PoolKeys.AREA)) {
            s.refuse("not allowed with area; give area or length and width", PoolKeys.LENGTH, PoolKeys.WIDTH);
            return s.get(PoolKeys.AREA);
        }
        if (s.has(PoolKeys.LENGTH) || s.has(PoolKeys.WIDTH)) {
            return s.get(PoolKeys.LENGTH) * s.get(PoolKeys.WIDTH);
        }
        return s.get(PoolKeys.AREA);
    }

    private static @Nullable PoolSetting setting(Section s) {
        Setting setting = s.get(PoolKeys.SETTING);
        if (!s.sound(PoolKeys.SETTING) || !s.has(PoolKeys.SETTING)) {
            return null;
        }
        return setting == Setting.OUTDOOR ? outdoor(s) : indoor(s);
    }

    private static @Nullable PoolSetting outdoor(Section s) {
        s.refuse(
                "allowed with setting = \"indoor\" only",
                PoolKeys.HALL_TEMPERATURE,
                PoolKeys.HALL_HUMIDITY,
                PoolKeys.AIR_SPEED);
        double wind;
        if (s.has(PoolKeys.WIND_FACTOR)) {
            s.refuse("not allowed with wind_factor; give one of them", PoolKeys.WIND_SHELTER);
            wind = s.get(PoolKeys.WIND_FACTOR);
        } else {
            wind = s.get(PoolKeys.WIND_SHELTER).factor();
        }
        double shaded = s.get(PoolKeys.SHADED_SHARE);
        double sky = s.get(PoolKeys.SKY_SHARE);
        return s.build(() -> new PoolSetting.Outdoor(wind, shaded, sky));
    }

    private static @Nullable PoolSetting indoor(Section s) {
        s.refuse(
                "allowed with setting = \"outdoor\" only",
                PoolKeys.WIND_SHELTER,
                PoolKeys.WIND_FACTOR,
                PoolKeys.SHADED_SHARE,
                PoolKeys.SKY_SHARE,
                PoolKeys.SURFACE_REFLECTION,
                PoolKeys.FREEBOARD);
        double temperature = s.get(PoolKeys.HALL_TEMPERATURE);
        double humidity = s.get(PoolKeys.HALL_HUMIDITY);
        double speed = s.get(PoolKeys.AIR_SPEED);
        return s.build(() -> new PoolSetting.Indoor(temperature, humidity, speed));
    }

    /** Indoors no sun reaches the water, so nothing is said of an absorptance that was not given. */
    private static double absorptance(Section s, boolean indoor) {
        if (s.has(PoolKeys.ABSORPTANCE)) {
            s.refuse("not allowed with absorptance; give one of them", PoolKeys.FINISH);
            return s.get(PoolKeys.ABSORPTANCE);
        }
        if (indoor && !s.has(PoolKeys.FINISH)) {
            return Pool.LIGHT_FINISH;
        }
        return s.get(PoolKeys.FINISH).absorptance;
    }

    private static double ground(Section s, double area, double depth) {
        if (s.has(PoolKeys.WALL_AREA) && !s.has(PoolKeys.GROUND_CONDUCTANCE)) {
            s.error(
                    PoolKeys.WALL_AREA,
                    "what is assumed for the ground counts these walls once more; give ground_conductance of the floor and"
                            + " of what stands in the ground");
        }
        if (s.hasFailed()) {
            return 0;
        }
        return s.get(
                PoolKeys.GROUND_CONDUCTANCE,
                GroundLoss.conductanceWK(area, depth),
                "from area and depth, form for heated basements of ISO 13370, from memory");
    }

    private static double circulation(Section s, double area, double depth) {
        if (s.has(PoolKeys.TURNOVER)) {
            s.refuse("not allowed with turnover; give one of them", PoolKeys.CIRCULATION_POWER);
            double turnoverS = s.get(PoolKeys.TURNOVER);
            return Pool.circulationPowerW(area * depth, turnoverS, s.get(PoolKeys.CIRCULATION_HEAD));
        }
        s.refuse("allowed with turnover only", PoolKeys.CIRCULATION_HEAD);
        return s.get(PoolKeys.CIRCULATION_POWER);
    }

    static Bathers bathers(Section s, Schedules schedules, @Nullable Pool pool) {
        double whenFull = s.get(PoolKeys.BATHERS);
        if (!s.has(PoolKeys.BATHERS)) {
            String why = "nobody to count; give [pool] bathers";
            s.refuse(why, PoolKeys.BATHER_HEAT, PoolKeys.BATHER_EVAPORATION_RISE);
            schedules.refuse(What.BATHERS, why);
            return Bathers.NONE;
        }
        boolean described =
                schedules.has(What.BATHERS) || s.has(PoolKeys.BATHER_HEAT) || s.has(PoolKeys.BATHER_EVAPORATION_RISE);
        if (whenFull == 0 && !described) {
            return Bathers.NONE;
        }
        if (!schedules.has(What.BATHERS)) {
            s.error(
                    PoolKeys.BATHERS,
                    "when they are in the water is missing; give a [[schedule]] with what = \"bathers\"");
        }
        double heat = s.get(PoolKeys.BATHER_HEAT);
        double rise = s.get(PoolKeys.BATHER_EVAPORATION_RISE);
        Schedule presence = schedules.of(What.BATHERS);
        Bathers bathers = s.build(() -> new Bathers(whenFull, heat, rise, presence));
        if (bathers == null || pool == null) {
            return Bathers.NONE;
        }
        try {
            bathers.checkRoom(pool.areaM2());
        } catch (IllegalArgumentException e) {
            s.error(PoolKeys.BATHERS, String.valueOf(e.getMessage()));
        }
        return bathers;
    }

    static @Nullable MakeUp makeUp(Section pool, Section water) {
        double litres = pool.get(PoolKeys.MAKE_UP);
        MainsWater mains = water.get(PoolKeys.MAINS);
        return water.build(() -> new MakeUp(litres, mains));
    }

    static @Nullable Cover cover(Section s, Schedules schedules) {
        if (!s.present()) {
            schedules.refuse(What.COVER, "there is no cover to draw; give a section [cover]");
            return null;
        }
        Schedule drawn = schedules.of(What.COVER, s, PoolKeys.DRAWN);
        Cover usual = s.has(PoolKeys.COVER_KIND) ? usual(s.get(PoolKeys.COVER_KIND), drawn) : null;
        String name = s.has(PoolKeys.COVER_NAME) ? s.get(PoolKeys.COVER_NAME) : usual == null ? "cover" : usual.name();
        double cut = number(s, PoolKeys.EVAPORATION_CUT, usual == null ? null : usual.evaporationCut(), "trade press");
        double resistance = number(
                s, PoolKeys.RESISTANCE, usual == null ? null : usual.resistanceM2KW(), "common practice, no source");
        double loss = number(s, PoolKeys.SOLAR_LOSS, usual == null ? null : usual.solarLoss(), "trade press");
        return s.build(() -> new Cover(name, cut, resistance, loss, drawn));
    }

    private static double number(Section s, Key<Double> key, @Nullable Double usual, String source) {
        return usual == null ? s.get(key) : s.get(key, usual, "usual for this kind of cover, " + source);
    }

    /** What a report calls a kind of cover. */
    static String name(CoverKind kind) {
        return usual(kind, Schedule.ALWAYS).name();
    }

    static Cover usual(CoverKind kind, Schedule drawn) {
        return switch (kind) {
            case BUBBLE -> Cover.bubble(drawn);
            case FOAM -> Cover.foam(drawn);
            case SOLID_TRACK -> Cover.solidTrack(drawn);
            case LIQUID_FILM -> Cover.liquidFilm(drawn);
        };
    }
}
