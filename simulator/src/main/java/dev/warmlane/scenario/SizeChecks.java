package dev.warmlane.scenario;

import dev.warmlane.heater.Heater;
import dev.warmlane.physics.Water;
import dev.warmlane.pool.Pool;
import dev.warmlane.season.Installation;
import dev.warmlane.units.Units;
import java.util.List;
import java.util.Locale;

/** Sizes that are allowed but out of all proportion, mostly a slip of the unit. The limits are our own choice. */
final class SizeChecks {

    /** Water surface for a swimmer at the fullest; common practice, no source. */
    private static final double WATER_M2_PER_SWIMMER = 2;
    /** No pool is meant to warm faster, K/h. */
    private static final double WARMING_AT_MOST_K_H = 10;

    /** Half to all of the water surface is usual; common practice, no source. */
    private static final double COLLECTORS_OVER_POOL_AT_MOST = 2;
    /** Halls are kept a few kelvin above the water, °C. */
    private static final double HALL_AT_MOST_C = 40;
    /** What collectors give at most: the sun at its strongest, kW/m². */
    private static final double FULL_SUN_KW_M2 = 1;
    /** Heat to warm water by 1 K, kWh/m³K, at 25 °C. */
    private static final double WATER_KWH_M3K = Units.kwh(Water.densityKgM3(25) * Water.specificHeatJKgK(25));

    private SizeChecks() {}

    static void run(Installation built, Section pool, List<Section> collectors, Section heater, Notes notes) {
        swimmers(built, pool);
        hall(built.pool(), pool);
        built.heater().ifPresent(h -> heater(h, built.pool(), heater));
        if (collectors.isEmpty()) {
            notes.warning(0, "collectors", "", "there are none: the pool goes without the sun's heat from the roof");
        } else {
            collectors(built, collectors.get(0));
        }
    }

    private static void swimmers(Installation built, Section section) {
        double most = built.pool().areaM2() / WATER_M2_PER_SWIMMER;
        if (built.bathers().whenFull() > most) {
            section.warning(
                    PoolKeys.BATHERS,
                    text(
                            "is more than one for every %.0f m2 of water, %.0f at once in this pool",
                            WATER_M2_PER_SWIMMER, Math.floor(most)));
        }
    }

    private static void hall(Pool pool, Section section) {
        if (pool.setting().match(outdoor -> false, indoor -> indoor.hallTemperatureC() > HALL_AT_MOST_C)) {
            section.warning(
                    PoolKeys.HALL_TEMPERATURE, text("is above %.0f degC: nobody stays in such a hall", HALL_AT_MOST_C));
        }
    }

    private static void heater(Heater heater, Pool pool, Section section) {
        double warming = warmingKH(heater.capacityKw(), pool);
        if (warming > WARMING_AT_MOST_K_H) {
            section.warning(
                    HeaterKeys.CAPACITY,
                    text("warms this pool of %.1f m3 by %.0f K an hour; check both", pool.volumeM3(), warming));
        }
    }

    private static void collectors(Installation built, Section section) {
        Pool pool = built.pool();
        double area = built.collectorAreaM2();
        double warming = warmingKH(area * FULL_SUN_KW_M2, pool);
        if (area > COLLECTORS_OVER_POOL_AT_MOST * pool.areaM2()) {
            section.warning(text(
                    "collectors of %.1f m2 are more than %.0f times the water surface of %.1f m2; check both",
                    area, COLLECTORS_OVER_POOL_AT_MOST, pool.areaM2()));
        }
        if (warming > WARMING_AT_MOST_K_H) {
            section.warning(text(
                    "collectors of %.1f m2 could warm this pool of %.1f m3 by %.0f K an hour in full sun; check both",
                    area, pool.volumeM3(), warming));
        }
    }

    private static double warmingKH(double kw, Pool pool) {
        return kw / (WATER_KWH_M3K * pool.volumeM3());
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
