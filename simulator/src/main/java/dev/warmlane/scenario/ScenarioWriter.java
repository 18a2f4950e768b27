package dev.warmlane.scenario;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.heater.Carrier;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.PoolSkyline;
import dev.warmlane.pool.SurfaceReflection;
import dev.warmlane.scenario.EnergyPriceKind.EnergyPrice;
import dev.warmlane.scenario.PlantKeys.What;
import dev.warmlane.scenario.PoolKeys.CoverKind;
import dev.warmlane.scenario.WordKinds.Span;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Offer;
import dev.warmlane.season.OwnParts;
import dev.warmlane.season.Prices;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Schedule;
import dev.warmlane.study.MountingOption;
import dev.warmlane.weather.WeatherReadOptions;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Writes an installation as the text of a scenario file that {@link ScenarioReader} reads back. Every value is written,
 * so that nothing is left to be assumed; units are SI. A certificate is written in its 2017 form, a cover by its numbers.
 * A correlation, curve, film or controller of a programmer's own has no words in a file: an installation that holds one is
 * refused with an {@link IllegalArgumentException} that says which.
 */
public final class ScenarioWriter {

    private ScenarioWriter() {}

    /**
     * The text of a scenario file.
     *
     * @param installation what is built
     * @param weatherFile the weather file, seen from the folder that the scenario file will be in
     * @param report how the report is wanted
     */
    public static String write(Installation installation, String weatherFile, ReportSettings report) {
        return write(installation, List.of(), weatherFile, WeatherReadOptions.defaults(), report);
    }

    /**
     * The same with mountings to compare, and with what is known better than the weather file.
     *
     * @param installation what is built
     * @param mountings mountings to compare
     * @param weatherFile the weather file, seen from the folder that the scenario file will be in
     * @param weatherReading what is known better than that file
     * @param report how the report is wanted
     */
    public static String write(
            Installation installation,
            List<MountingOption> mountings,
            String weatherFile,
            WeatherReadOptions weatherReading,
            ReportSettings report) {
        OwnParts.of(installation).stream().findFirst().ifPresent(ScenarioWriter::refuse);
        TomlText out = new TomlText();
        out.section("[site]").key(PlaceKeys.NAME, installation.name()).key(PlaceKeys.WEATHER, weatherFile);
        Double utcOffset = weatherReading.utcOffsetHours();
        if (utcOffset != null) {
            out.key(PlaceKeys.UTC_OFFSET, utcOffset);
        }
        Double centre = weatherReading.centreHours();
        if (centre != null) {
            out.key(PlaceKeys.IRRADIANCE_TIME, centre);
        }
        Double windHeight = weatherReading.windHeightM();
        if (windHeight != null) {
            out.key(PlaceKeys.WIND_HEIGHT, windHeight);
        }
        out.key(PlaceKeys.TERRAIN, installation.terrain());
        pool(out, installation);
        installation.fitted().ifPresent(fitted -> FitKeys.write(out, fitted));
        installation.cover().ifPresent(c -> cover(out, c));
        roof(out, installation.roof());
        installation.plan().ifPresent(plan -> DrawnWriter.write(out, plan));
        ShadeReader.write(
                out,
                installation.roof().horizon(),
                installation
                        .pool()
                        .setting()
                        .outdoor()
                        .map(PoolSetting.Outdoor::skyline)
                        .orElseGet(() -> new PoolSkyline(installation.roof().horizon(), List.of())));
        for (CollectorArray array : installation.arrays()) {
            CollectorWriter.write(out, array);
        }
        mountings.forEach(option -> MountingWriter.write(out, option));
        plant(out, installation);
        season(out, installation);
        schedules(out, installation);
        out.section("[models]")
                .key(ModelKeys.SKY, installation.collectorPhysics().sky())
                .key(
                        ModelKeys.FILM,
                        ModelKeys.Film.of(installation.collectorPhysics().film()));
        report(out, report);
        return out.toString();
    }

    private static void report(TomlText out, ReportSettings report) {
        out.section("[report]")
                .key(PlaceKeys.TITLE, report.title())
                .key(PlaceKeys.UNITS, report.units())
                .key(PlaceKeys.NUMBERS, report.notation().numbers())
                .key(PlaceKeys.DATES, report.notation().dates());
        Letterhead head = report.letterhead();
        words(out, PlaceKeys.COMPANY, head.company());
        words(out, PlaceKeys.CONTACT, head.contact());
        head.logo().ifPresent(logo -> out.key(PlaceKeys.LOGO, logo.file()));
        words(out, PlaceKeys.PREPARED_FOR, head.preparedFor());
        words(out, PlaceKeys.OFFER, head.offer());
        words(out, PlaceKeys.DATE, head.date());
        words(out, PlaceKeys.PLACE, head.place());
    }

    private static void words(TomlText out, Key<String> key, String words) {
        if (!words.isEmpty()) {
            out.key(key, words);
        }
    }

    private static void pool(TomlText out, Installation installation) {
        Pool pool = installation.pool();
        out.section("[pool]");
        pool.freeboard()
                .ifPresentOrElse(
                        walls -> out.key(PoolKeys.LENGTH, walls.lengthM())
                                .key(PoolKeys.WIDTH, walls.widthM())
                                .key(PoolKeys.FREEBOARD, walls.heightM())
                                .key(PoolKeys.LENGTH_DIRECTION, walls.axisDeg())
                                .key(PoolKeys.FREEBOARD_REFLECTANCE, walls.reflectance()),
                        () -> out.key(PoolKeys.AREA, pool.areaM2()));
        out.key(PoolKeys.DEPTH, pool.depthM());
        pool.setting()
                .match(
                        outdoor -> out.key(PoolKeys.SETTING, PoolKeys.Setting.OUTDOOR)
                                .key(PoolKeys.WIND_FACTOR, outdoor.windFactor())
                                .key(PoolKeys.SHADED_SHARE, outdoor.shadedShare())
                                .key(PoolKeys.SKY_SHARE, outdoor.skyShare()),
                        indoor -> out.key(PoolKeys.SETTING, PoolKeys.Setting.INDOOR)
                                .key(PoolKeys.HALL_TEMPERATURE, indoor.hallTemperatureC())
                                .key(PoolKeys.HALL_HUMIDITY, indoor.hallHumidity())
                                .key(PoolKeys.AIR_SPEED, indoor.airSpeedMs()));
        out.key(PoolKeys.ABSORPTANCE, pool.solarAbsorptance())
                .key(PoolKeys.EVAPORATION, (Evaporation) pool.evaporation())
                .key(PoolKeys.WATER_EMITTANCE, pool.waterEmittance())
                .key(PoolKeys.GROUND_CONDUCTANCE, pool.groundConductanceWK());
        pool.walls().ifPresent(walls -> out.key(PoolKeys.WALL_AREA, walls.areaM2())
                .key(PoolKeys.WALL_U_VALUE, walls.uValueWm2K())
                .key(PoolKeys.WALL_ABSORPTANCE, walls.absorptance()));
        if (pool.shellStoreM() > 0) {
            out.key(PoolKeys.SHELL_STORE, pool.shellStoreM());
        }
        pool.groundStore().ifPresent(ground -> out.key(PoolKeys.GROUND_STORE, ground));
        if (pool.reflection() != SurfaceReflection.EVEN) {
            out.key(PoolKeys.SURFACE_REFLECTION, pool.reflection());
        }
        pool.throughFlow().ifPresent(flow -> {
            out.key(PoolKeys.THROUGH_FLOW_RETENTION, flow.retentionS());
            flow.inflow()
                    .match(
                            given -> out.key(PoolKeys.THROUGH_FLOW_TEMPERATURE, given.temperatureC()),
                            air -> out.key(PoolKeys.THROUGH_FLOW_AIR_DAYS, air.days()));
        });
        Bathers bathers = installation.bathers();
        out.key(PoolKeys.BATHERS, bathers.whenFull());
        if (!bathers.equals(Bathers.NONE)) {
            out.key(PoolKeys.BATHER_HEAT, bathers.heatEachW())
                    .key(PoolKeys.BATHER_EVAPORATION_RISE, bathers.greatestRise());
        }
        out.key(PoolKeys.CIRCULATION_POWER, pool.circulationW());
        out.key(PoolKeys.MAKE_UP, installation.makeUp().litresPerDay());
        out.section("[water]").key(PoolKeys.MAINS, installation.makeUp().mains());
    }

    private static void cover(TomlText out, Cover cover) {
        out.section("[cover]")
                .key(PoolKeys.COVER_NAME, cover.name())
                .key(PoolKeys.EVAPORATION_CUT, cover.evaporationCut())
                .key(PoolKeys.RESISTANCE, cover.resistanceM2KW())
                .key(PoolKeys.SOLAR_LOSS, cover.solarLoss());
    }

    private static void roof(TomlText out, Roof roof) {
        out.section("[roof]")
                .key(PlaceKeys.LENGTH, roof.lengthM())
                .key(PlaceKeys.WIDTH, roof.widthM())
                .key(PlaceKeys.HEIGHT, roof.heightM())
                .key(PlaceKeys.ALBEDO, roof.albedo())
                .key(PlaceKeys.EMITTANCE, roof.emittance())
                .key(PlaceKeys.U_VALUE, roof.uValueWm2K())
                .key(PlaceKeys.ROOM_TEMPERATURE, roof.roomTemperatureC())
                .key(PlaceKeys.ROUGHNESS, roof.roughnessFactor())
                .key(PlaceKeys.WIND_SPEED_RATIO, roof.windSpeedRatio())
                .key(PlaceKeys.USABLE_SHARE, roof.usableShare());
    }

    private static void plant(TomlText out, Installation installation) {
        CircuitWriter.write(out, installation.pipes(), installation.hydraulics());
        installation.heater().ifPresent(h -> HeaterWriter.write(out, h, installation.lastBill()));
        installation
                .prices()
                .ifPresent(p ->
                        prices(out, p, gas(installation), installation.heater().isPresent()));
        money(out, installation);
        out.section("[control]")
                .key(PlantKeys.ON_DIFFERENCE, installation.control().onDifferenceK())
                .key(PlantKeys.OFF_DIFFERENCE, installation.control().offDifferenceK())
                .key(PlantKeys.LIMIT, installation.control().limitC());
        if (Double.isFinite(installation.control().shedAboveC())) {
            out.key(PlantKeys.COOL_ABOVE, installation.control().shedAboveC());
        }
    }

    /** Whether what the heater is fed with is priced as gas; so is what a heater would have burned. */
    private static boolean gas(Installation installation) {
        return installation.heater().map(h -> h.fuel().carrier() == Carrier.GAS).orElse(true);
    }

    private static void prices(TomlText out, Prices prices, boolean gas, boolean heated) {
        out.section("[prices]").key(PlantKeys.CURRENCY, prices.currency());
        if (heated || prices.gasPerKwh() > 0) {
            out.key(gas ? PlantKeys.GAS_PRICE : PlantKeys.FUEL_PRICE, EnergyPrice.perKwh(prices.gasPerKwh()));
        }
        out.key(PlantKeys.ELECTRICITY_PRICE, prices.electricityPerKwh())
                .key(PlantKeys.COLLECTOR_PRICE, prices.collectorPerM2());
    }

    private static void money(TomlText out, Installation installation) {
        Offer offer = installation.offer();
        out.section("[money]")
                .key(MoneyKeys.INTEREST, offer.terms().interest())
                .key(MoneyKeys.PRICE_GROWTH, offer.terms().energyPriceGrowth())
                .key(MoneyKeys.YEARS, offer.terms().years());
        if (installation.prices().isPresent()) {
            out.key(MoneyKeys.FIXED_COST, offer.fixedCost())
                    .key(MoneyKeys.GRANT, offer.grant())
                    .key(MoneyKeys.UPKEEP, offer.upkeepPerYear());
        }
        if (installation.prices().isPresent() && offer.cover().pricePerM2() > 0) {
            out.key(MoneyKeys.COVER_PRICE, offer.cover().pricePerM2());
        }
        out.key(MoneyKeys.COVER_YEARS, offer.cover().lastsYears());
        if (installation.cover().isEmpty()) {
            kind(offer.cover().cover()).ifPresent(kind -> out.key(MoneyKeys.COVER_KIND, kind));
        }
    }

    /** The kind whose numbers a cover has; nothing for one of its own, which the section cannot say. */
    private static Optional<CoverKind> kind(Cover cover) {
        return Arrays.stream(CoverKind.values())
                .filter(kind -> PoolReader.usual(kind, cover.drawn()).equals(cover))
                .findFirst();
    }

    private static void season(TomlText out, Installation installation) {
        out.section("[season]")
                .key(PlantKeys.FIRST_DAY, installation.season().first())
                .key(PlantKeys.LAST_DAY, installation.season().last());
        BeforeOpening before = installation.season().before();
        if (before.days() > 0) {
            out.key(PlantKeys.COLLECTORS_BEFORE, before.collectorDays())
                    .key(PlantKeys.HEATER_BEFORE, before.heaterDays());
        }
        installation
                .startWater()
                .match(
                        given -> out.key(PlantKeys.START_TEMPERATURE, given.temperatureC()),
                        standing -> out.key(PlantKeys.DAYS_STANDING, standing.days()));
        out.key(PlantKeys.COMFORT, installation.comfort().warmEnoughC())
                .key(PlantKeys.COMFORT_MAXIMUM, installation.comfort().tooWarmC());
    }

    private static void schedules(TomlText out, Installation installation) {
        installation.cover().ifPresent(c -> schedule(out, What.COVER, c.drawn()));
        if (!installation.bathers().equals(Bathers.NONE)) {
            schedule(out, What.BATHERS, installation.bathers().presence());
        }
        schedule(out, What.OPEN, installation.season().openHours());
        schedule(out, What.PUMPING, installation.control().pumping());
        installation
                .heater()
                .filter(h -> !h.hours().equals(Schedule.ALWAYS))
                .ifPresent(h -> schedule(out, What.HEATING, h.hours()));
    }

    /** A schedule is 0 in the file where no rule fits; any other value there becomes a first rule for every hour. */
    private static void schedule(TomlText out, What what, Schedule schedule) {
        if (schedule.otherwise() != 0 || schedule.rules().isEmpty()) {
            rule(out, what, new Schedule.Rule(1, 12, 0, 24, schedule.otherwise()));
        }
        schedule.rules().forEach(rule -> rule(out, what, rule));
    }

    private static void rule(TomlText out, What what, Schedule.Rule rule) {
        out.section("[[schedule]]")
                .key(PlantKeys.WHAT, what)
                .key(PlantKeys.MONTHS, new Span(rule.fromMonth(), rule.toMonth()))
                .key(PlantKeys.HOURS, new Span(rule.fromHour(), rule.toHour()))
                .key(PlantKeys.SHARE, rule.share());
    }

    private static void refuse(OwnParts.Part own) {
        throw new IllegalArgumentException(
                "a scenario file cannot hold " + own.what() + " of one's own: give the installation " + own.builtIn()
                        + " before writing it, and put your own in again after reading");
    }
}
