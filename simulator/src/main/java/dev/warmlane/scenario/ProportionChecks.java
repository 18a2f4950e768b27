package dev.warmlane.scenario;

import dev.warmlane.heater.Heater;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Prices;
import dev.warmlane.units.Units;
import java.util.Locale;
import java.util.Set;

/** A heater and prices that are allowed but out of all proportion, mostly a slip of the unit. The bounds are our own choice. */
final class ProportionChecks {

    /** A heater is told when it gives more than so many times, or less than the same part of, what the pool loses. */
    private static final double TIMES = 10;

    // a cold and windy hour for an open pool that is kept at its set point
    private static final double COLDER_AIR_K = 15;
    private static final double AIR_HUMIDITY = 0.5;
    private static final double STATION_WIND_MS = 4;
    /** Long-wave to air and sky, W/m²K: 4·0.95·σ·T³ at 290 K is 5.3, and the sky is colder than the air. */
    private static final double LONG_WAVE_WM2K = 6;
    /** Bowen 1926, kPa/K, from memory. */
    private static final double BOWEN_KPA_K = 0.0613;

    /** Currencies whose unit buys about as much; of another nothing is said by the number alone. */
    private static final Set<String> ABOUT_A_EURO =
            Set.of("EUR", "USD", "GBP", "CHF", "CAD", "AUD", "\u20ac", "$", "\u00a3");
    /** Above what households paid for gas in the dearest countries, about 0.3 (from memory), per kWh. */
    private static final double FUEL_AT_MOST = 0.5;
    /** Above what households paid for electricity there, about 0.5 (from memory), per kWh. */
    private static final double ELECTRICITY_AT_MOST = 1;
    /** What is burned for heat seldom costs more than electricity; with its losses it would then be the dearer heat. */
    private static final double OVER_ELECTRICITY = 1.5;

    /** Installed, plastic collectors cost some 80 to 350 for each m²; common practice, no source. */
    private static final double COLLECTORS_AT_MOST = 800;

    private static final double COLLECTORS_AT_LEAST = 20;

    /** In whatever currency a m² costs some 500 to 5000 kWh of gas; from memory. */
    private static final double OVER_GAS_AT_LEAST = 30;

    private static final double OVER_GAS_AT_MOST = 100_000;

    private ProportionChecks() {}

    static void run(Installation built, Section heater, Section prices) {
        built.heater().ifPresent(h -> built.pool()
                .setting()
                .outdoor()
                .ifPresent(outdoor -> heater(h, built.pool(), outdoor, heater)));
        built.prices().ifPresent(p -> prices(built, p, prices));
    }

    private static void heater(Heater heater, Pool pool, PoolSetting.Outdoor outdoor, Section section) {
        double given = Units.watts(heater.capacityKw()) / pool.areaM2();
        double lost = lossWm2(heater.setPointC(), pool, outdoor);
        if (given > TIMES * lost) {
            section.warning(HeaterKeys.CAPACITY, told(given, lost) + "; check both");
        } else if (given < lost / TIMES) {
            section.warning(
                    HeaterKeys.CAPACITY, told(given, lost) + ": it cannot hold the pool at set_point; check both");
        }
    }

    private static String told(double given, double lost) {
        return String.format(
                Locale.ROOT,
                "gives %.0f W to each m2 of water, %.2g times the %.0f W that an open pool at set_point loses in wind and air"
                        + " %.0f K colder",
                given,
                given / lost,
                lost,
                COLDER_AIR_K);
    }

    /** What an open pool loses in a cold and windy hour, W/m². */
    static double lossWm2(double waterC, Pool pool, PoolSetting.Outdoor outdoor) {
        double perKpa = pool.evaporation().heatWm2Kpa(outdoor.windAtWaterMs(STATION_WIND_MS))
                * pool.evaporation().quietFactor(outdoor);
        double deficitKpa = MoistAir.saturationPressureKpa(waterC)
                - AIR_HUMIDITY * MoistAir.saturationPressureKpa(waterC - COLDER_AIR_K);
        return perKpa * (deficitKpa + BOWEN_KPA_K * COLDER_AIR_K) + LONG_WAVE_WM2K * COLDER_AIR_K;
    }

    private static void prices(Installation built, Prices prices, Section section) {
        boolean known = ABOUT_A_EURO.contains(prices.currency().strip());
        boolean burns = built.heater().map(h -> h.fuel().carrier().burned()).orElse(true);
        Key<?> key = section.has(PlantKeys.FUEL_PRICE) ? PlantKeys.FUEL_PRICE : PlantKeys.GAS_PRICE;
        String fuel = perKwh(prices.gasPerKwh(), prices);
        if (burns && known && prices.gasPerKwh() > FUEL_AT_MOST) {
            section.warning(key, "is " + fuel + ", more than anybody pays; check the unit, such as \"0.09 per kWh\"");
        } else if (burns
                && prices.electricityPerKwh() > 0
                && prices.gasPerKwh() > OVER_ELECTRICITY * prices.electricityPerKwh()) {
            section.warning(
                    key,
                    "is " + fuel + ", more than electricity at " + perKwh(prices.electricityPerKwh(), prices)
                            + "; check the units of both");
        }
        if (known && prices.electricityPerKwh() > ELECTRICITY_AT_MOST) {
            section.warning(
                    PlantKeys.ELECTRICITY_PRICE,
                    "is " + perKwh(prices.electricityPerKwh(), prices)
                            + ", more than anybody pays; check the unit, such as \"0.28 per kWh\"");
        }
        boolean pumps = built.pipes().pumpPowerW() > 0 && !built.arrays().isEmpty();
        if (section.has(PlantKeys.ELECTRICITY_PRICE) && prices.electricityPerKwh() == 0 && (pumps || !burns)) {
            section.warning(
                    PlantKeys.ELECTRICITY_PRICE,
                    "is 0, so that pumping costs nothing; give what a kWh costs, or what it would be sold for");
        }
        collectors(prices, known, section);
    }

    private static void collectors(Prices prices, boolean known, Section section) {
        double perM2 = prices.collectorPerM2();
        if (known && perM2 > COLLECTORS_AT_MOST) {
            section.warning(
                    PlantKeys.COLLECTOR_PRICE,
                    perM2(prices) + ", several times what plastic collectors cost installed; check the unit, such as"
                            + " \"140 per m2\"");
        } else if (known && perM2 > 0 && perM2 < COLLECTORS_AT_LEAST) {
            section.warning(
                    PlantKeys.COLLECTOR_PRICE,
                    perM2(prices) + ", less than the plastic alone costs; check the unit, such as \"14 per ft2\"");
        }
        double overGas = perM2 / prices.gasPerKwh();
        boolean out = overGas < OVER_GAS_AT_LEAST || overGas > OVER_GAS_AT_MOST;
        if (!known && perM2 > 0 && prices.gasPerKwh() > 0 && out) {
            section.warning(
                    PlantKeys.COLLECTOR_PRICE,
                    String.format(
                            Locale.ROOT,
                            "a m2 of collectors costs as much as %.2g kWh of gas; 500 to 5000 is usual: check both",
                            overGas));
        }
    }

    private static String perM2(Prices prices) {
        return String.format(Locale.ROOT, "is %.4g %s for each m2", prices.collectorPerM2(), prices.currency());
    }

    private static String perKwh(double price, Prices prices) {
        return String.format(Locale.ROOT, "%.3g %s per kWh", price, prices.currency());
    }
}
