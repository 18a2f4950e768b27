package dev.warmlane.scenario;

import static java.util.Objects.requireNonNull;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.heater.Bill;
import dev.warmlane.heater.Heater;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.StartWater;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.season.Comfort;
import dev.warmlane.season.FittedDoubt;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Offer;
import dev.warmlane.season.Prices;
import dev.warmlane.site.Horizon;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.study.MountingOption;
import dev.warmlane.weather.WeatherReadOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts a scenario together from the sections of its file, in the order of the schema. */
final class ScenarioAssembly {

    private ScenarioAssembly() {}

    /** Reads every section before it gives up, so that everything wrong is found at once. */
    static Scenario of(Document document, Notes notes, Path file) {
        Section reportSection = document.one(PlaceKeys.REPORT);
        notes.use(reportSection.get(PlaceKeys.UNITS));
        Schedules schedules = new Schedules(document.all(PlantKeys.SCHEDULE));

        Section siteSection = document.one(PlaceKeys.SITE);
        Path weather = PlaceReader.weather(siteSection, file);
        boolean near = PlaceReader.isNear(siteSection, PlaceKeys.WEATHER, file);
        Optional<Scenario.RealYears> years = PlaceReader.years(siteSection, file);
        WeatherReadOptions reading = PlaceReader.reading(siteSection);
        String name = PlaceReader.name(siteSection, file);
        Terrain terrain = siteSection.get(PlaceKeys.TERRAIN);

        Section poolSection = document.one(PoolKeys.POOL);
        Section horizonSection = document.one(ShadeKeys.HORIZON);
        Horizon horizon = ShadeReader.horizon(horizonSection, file);
        Pool pool = ShadeReader.under(
                PoolReader.pool(poolSection), horizonSection, document.all(ShadeKeys.BESIDE_POOL), horizon, file);
        FittedDoubt fitted = FitKeys.read(document.one(FitKeys.FIT));
        Bathers bathers = PoolReader.bathers(poolSection, schedules, pool);
        MakeUp makeUp = PoolReader.makeUp(poolSection, document.one(PoolKeys.WATER));
        Section coverSection = document.one(PoolKeys.COVER);
        Cover cover = PoolReader.cover(coverSection, schedules);

        Section roofSection = document.one(PlaceKeys.ROOF);
        List<Document.Group> surfaces = document.all(DrawnKeys.SURFACE);
        Section layout = document.one(DrawnKeys.LAYOUT);
        boolean isDrawn = !surfaces.isEmpty() || layout.has(DrawnKeys.DRAWING);
        RoofPlan plan = DrawnReader.plan(
                surfaces, document.all(DrawnKeys.OBSTACLE), layout, roofSection.get(PlaceKeys.HEIGHT), file);
        Roof roof = PlaceReader.roof(roofSection, horizon, isDrawn, plan);
        List<Document.Group> collectors = document.all(CollectorKeys.COLLECTORS);
        DrawnCollectors drawn = new DrawnCollectors(isDrawn, plan, notes.units());
        Section pipesSection = document.one(CircuitKeys.PIPES);
        CircuitReader circuit =
                new CircuitReader(pipesSection, document.one(CircuitKeys.PANEL), document.one(CircuitKeys.PUMP));
        List<CollectorArray> arrays = arrays(collectors, drawn, circuit.flowIsThePumps());
        Section pricesSection = document.one(PlantKeys.PRICES);
        List<MountingOption> mountings =
                MountingReader.options(document.all(MountingKeys.MOUNTINGS), pricesSection.present(), drawn);

        Pipes pipes = circuit.pipes();
        Hydraulics hydraulics = circuit.hydraulics(isDrawn, roofSection.get(PlaceKeys.HEIGHT));
        List<Section> collectorSections =
                collectors.stream().map(Document.Group::main).toList();
        circuit.checkFlows(collectorSections);
        Section heaterSection = document.one(HeaterKeys.HEATER);
        Heater heater = HeaterReader.heater(heaterSection, schedules);
        Bill bill = HeaterReader.bill(heaterSection, heater);
        Section moneySection = document.one(MoneyKeys.MONEY);
        Prices prices = MoneyReader.prices(
                moneySection, pricesSection, PlantReader.prices(pricesSection, heaterSection, heater), arrays);
        Offer offer = MoneyReader.offer(moneySection, prices, cover);
        Section controlSection = document.one(PlantKeys.CONTROL);
        Control control = PlantReader.control(controlSection, schedules);

        Section seasonSection = document.one(PlantKeys.SEASON);
        OpeningSeason season = PlantReader.season(seasonSection, schedules);
        StartWater startWater = PlantReader.startWater(seasonSection);
        Comfort comfort = PlantReader.comfort(seasonSection);

        Section modelSection = document.one(ModelKeys.MODELS);
        ReportSettings report = PlaceReader.report(reportSection, name, file);
        notes.throwIfAny();

        Installation told = Installation.builder(name, requireNonNull(pool), requireNonNull(roof))
                .plan(plan)
                .terrain(terrain)
                .collectorPhysics(ModelKeys.physics(modelSection, requireNonNull(roof)))
                .cover(cover)
                .bathers(bathers)
                .makeUp(requireNonNull(makeUp))
                .arrays(arrays)
                .pipes(requireNonNull(pipes))
                .hydraulics(hydraulics)
                .heater(heater)
                .lastBill(bill)
                .prices(prices)
                .offer(requireNonNull(offer))
                .control(requireNonNull(control))
                .season(requireNonNull(season))
                .startWater(requireNonNull(startWater))
                .comfort(requireNonNull(comfort))
                .fitted(fitted)
                .build();
        boolean ownFlow = collectorSections.stream().anyMatch(s -> s.has(CollectorKeys.FLOW));
        Installation built = circuit.applied(told, ownFlow);
        notes.throwIfAny();
        CrossChecks.run(
                built,
                notes.units(),
                new CrossChecks.Sections(
                        poolSection,
                        coverSection,
                        roofSection,
                        heaterSection,
                        controlSection,
                        seasonSection,
                        schedules.all()));
        SizeChecks.run(built, poolSection, collectorSections, heaterSection, notes);
        ProportionChecks.run(built, heaterSection, pricesSection);
        CollectorProportions.run(built, pipesSection, collectorSections);
        return new Scenario(
                built,
                mountings,
                weather,
                near,
                years,
                reading,
                report,
                assumed(notes, false),
                assumed(notes, true),
                notes.warnings());
    }

    /** What was assumed of the mountings, or of everything else. */
    private static List<Assumption> assumed(Notes notes, boolean mountings) {
        return notes.assumed().stream()
                .filter(a -> a.section().startsWith(MountingKeys.MOUNTINGS.name()) == mountings)
                .toList();
    }

    private static List<CollectorArray> arrays(
            List<Document.Group> groups, DrawnCollectors drawn, boolean flowIsThePumps) {
        List<CollectorArray> arrays = new ArrayList<>();
        int most = Installation.MOST_ARRAYS;
        if (groups.size() > most) {
            groups.get(most).main().error("is one of " + groups.size() + "; allowed: at most " + most);
        }
        for (int i = 0; i < Math.min(most, groups.size()); i++) {
            @Nullable CollectorArray array = CollectorReader.array(groups.get(i), i + 1, drawn, flowIsThePumps);
            if (array != null) {
                arrays.add(array);
            }
        }
        return arrays;
    }
}
