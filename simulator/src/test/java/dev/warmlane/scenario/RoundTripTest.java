package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.circuit.PanelInside;
import dev.warmlane.circuit.PanelTubes;
import dev.warmlane.circuit.PipeRun;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.circuit.PumpChoice;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorPhysics;
import dev.warmlane.collector.Mounting;
import dev.warmlane.collector.PlateToFluid;
import dev.warmlane.heater.Bill;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.CondensingBoiler;
import dev.warmlane.heater.DistrictHeat;
import dev.warmlane.heater.ElectricHeater;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.HeatPump;
import dev.warmlane.heater.HeatPumpRating;
import dev.warmlane.heater.Heater;
import dev.warmlane.heater.RatedPoint;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.hydraulics.Manifold;
import dev.warmlane.hydraulics.PumpCurve;
import dev.warmlane.irradiance.AngleCoefficient;
import dev.warmlane.irradiance.AngleTable;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.irradiance.SkyModel;
import dev.warmlane.money.Terms;
import dev.warmlane.physics.FilmCorrelation;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.Freeboard;
import dev.warmlane.pool.GroundStore;
import dev.warmlane.pool.InflowTemperature;
import dev.warmlane.pool.MainsWater;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.PoolSkyline;
import dev.warmlane.pool.Screen;
import dev.warmlane.pool.StartWater;
import dev.warmlane.pool.SurfaceReflection;
import dev.warmlane.pool.ThroughFlow;
import dev.warmlane.pool.Walls;
import dev.warmlane.roof.Obstacle;
import dev.warmlane.roof.Outline;
import dev.warmlane.roof.PanelRules;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.RoofPoint;
import dev.warmlane.roof.Surface;
import dev.warmlane.season.Comfort;
import dev.warmlane.season.CoverOffer;
import dev.warmlane.season.FittedDoubt;
import dev.warmlane.season.FittedDoubt.Correlations;
import dev.warmlane.season.FittedDoubt.Spread;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Offer;
import dev.warmlane.season.Prices;
import dev.warmlane.site.Horizon;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Schedule;
import dev.warmlane.site.Terrain;
import dev.warmlane.study.WaterCircuit;
import dev.warmlane.units.DateOrder;
import dev.warmlane.units.Notation;
import dev.warmlane.units.NumberStyle;
import dev.warmlane.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the writer writes, the reader reads as the same installation, with nothing left to assume. */
class RoundTripTest {

    private static final String WEATHER = "../../weather-samples/cool-coast.csv";
    private static final ReportSettings REPORT = new ReportSettings(
            "A \"quoted\" title \\ für Löwen",
            UnitSystem.US,
            new Notation(NumberStyle.SPACE_COMMA, DateOrder.DAY_FIRST),
            Letterhead.builder()
                    .company("Löwenwerke")
                    .contact("A. Muster, 0000 / 12 34")
                    .preparedFor("the council")
                    .offer("17-4")
                    .date("1 May")
                    .place("Nirgendwo")
                    .build());

    @TempDir
    private Path folder;

    private static List<Path> demos() {
        return Demos.all();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void demosComeBack(Path demo) throws IOException {
        comesBack(Demos.read(demo, folder).installation());
    }

    @Test
    void barestInstallationComesBack() throws IOException {
        comesBack(Installation.builder(
                        "bare",
                        Pool.of(100, 1.5, new PoolSetting.Outdoor(0.3)),
                        Roof.builder(10, 5, 3).build())
                .build());
    }

    @Test
    void everyVariantComesBack() throws IOException {
        CertificateCurve certificate = new CertificateCurve(
                0.83,
                21.3,
                0.013,
                4.1,
                0.77,
                0.017,
                0.016,
                5.1e-9,
                new AngleTable(List.of(1.0, 1.0, 0.99, 0.98, 0.97, 0.95, 0.91, 0.83, 0.61, 0.0), 0.93),
                new CertificateCurve.TestStand(true, 1.9, 0.4, 3.7));
        Absorber tubes = new Absorber(
                0.93,
                0.89,
                1.3,
                new PlateToFluid.TubeSheet(0.0101, 0.0079, 0.0061, 0.0011, 0.37, 430.7),
                new AngleCoefficient(0.017, 0.97));
        Mounting low = new Mounting.OpenRack(
                new RackRows(new Rack(3.3, 211, 1.9, 0.03), 2.1, 7),
                Mounting.Back.boarded(4.7),
                Mounting.WindRun.ROOF,
                0.73);
        Mounting tents = new Mounting.OpenRack(
                new RackRows(new Rack(11.3, 97, 1.7, 0.07), 4.3, 5, true),
                Mounting.Back.OPEN,
                Mounting.WindRun.CHORD,
                0.83);
        Installation installation = Installation.builder(
                        "every variant",
                        new Pool(
                                33.3 * 10,
                                1.37,
                                new PoolSetting.Outdoor(
                                        0.234,
                                        0.11,
                                        0.87,
                                        new PoolSkyline(
                                                new Horizon(List.of(new Horizon.Height(12.5, 3.25))),
                                                List.of(new Screen("hedge", 271.5, 3.3, 22.2, 4.4)))),
                                0.83,
                                0.94,
                                Evaporation.ISO_TR_12596,
                                123.4,
                                2345.6,
                                Optional.of(new Walls(12.3, 3.45, 0.67)),
                                Optional.of(new ThroughFlow(123_456, new InflowTemperature.MeanAir(3.25))),
                                0,
                                Optional.of(GroundStore.CLAY),
                                SurfaceReflection.BY_ANGLE,
                                Optional.of(new Freeboard(0.17, 33.3, 10, 37, 0.43))),
                        new Roof(
                                33.3,
                                11.1,
                                7.7,
                                0.57,
                                0.88,
                                0.33,
                                19.5,
                                1.4,
                                0.9,
                                0.7,
                                new Horizon(List.of(new Horizon.Height(0, 1.5), new Horizon.Height(222.2, 9)))))
                .fitted(new FittedDoubt(
                        "a log, some days",
                        MonthDay.of(11, 3),
                        MonthDay.of(2, 20),
                        new Spread(0.013, 0.31, 0.14),
                        new Spread(0.021, 0.83, 0.11),
                        -4.1,
                        new Spread(5.3, 0.4, 19.5),
                        new Correlations(-0.37, -0.31, 0.12),
                        0.41,
                        57.3))
                .terrain(Terrain.WATER)
                .collectorPhysics(new CollectorPhysics(SkyModel.HAY_DAVIES, FilmCorrelation.Linear.SHARPLES))
                .cover(new Cover("home-made", 0.7, 0.011, 0.21, Schedule.constant(0.9)))
                .bathers(new Bathers(
                        33.5,
                        512,
                        0.61,
                        Schedule.builder(0.1)
                                .monthly(11, 2, 22, 3, 0.7)
                                .daily(12, 13, 1)
                                .build()))
                .makeUp(new MakeUp(1234.5, MainsWater.Monthly.constant(11.1)))
                .arrays(
                        new CollectorArray(
                                "mats",
                                33.3,
                                new Mounting.FlatOnRoof(0.0047),
                                tubes,
                                0.047,
                                1.11,
                                new CollectorArray.Filling(2.7, 3.3)),
                        new CollectorArray("racks", 44.4, low, certificate),
                        new CollectorArray("tents", 43.3, tents, Absorber.USUAL_MAT),
                        new CollectorArray(
                                "slopes",
                                55.5,
                                new Mounting.FlushOnPitchedRoof(27.3, 133.3, 7.3, 0.013, true),
                                Absorber.USUAL_MAT))
                .pipes(new Pipes(33.3, 444.4))
                .heater(new Boiler(new Fuel("own \"gas\"", "L", 23.7, 61.3), 0.77, 77.7, 25.7))
                .prices(new Prices("Mark", 0.0773, 0.233, 133.3))
                .offer(new Offer(
                        1234.5,
                        2345.6,
                        123.4,
                        new Terms(0.037, -0.013, 17),
                        new CoverOffer(CoverOffer.USUAL.cover(), 23.7, 7)))
                .control(new Control(3.7, 0.27, 28.3, 29.7, Schedule.daily(7, 19)))
                .season(new OpeningSeason(
                        MonthDay.of(11, 3), MonthDay.of(2, 7), Schedule.daily(9, 17), new BeforeOpening(21, 6)))
                .startWater(new StartWater.Given(17.3))
                .comfort(new Comfort(23.3, 29.1))
                .build();

        comesBack(installation);
    }

    @Test
    void drawnRoofComesBack() throws IOException {
        comesBack(Installation.builder(
                        "drawn",
                        Pool.of(100, 1.5, new PoolSetting.Outdoor(0.3)),
                        Roof.builder(10, 5, 3).build())
                .plan(new RoofPlan(
                        List.of(
                                new Surface(
                                        "hall",
                                        new Outline(List.of(
                                                new RoofPoint(0.3, 0),
                                                new RoofPoint(31.7, 0.7),
                                                new RoofPoint(29.9, 12.3))),
                                        201,
                                        2.3,
                                        6.7,
                                        0.77,
                                        1.3,
                                        List.of(
                                                new Obstacle(
                                                        "vent",
                                                        new Obstacle.Disc(new RoofPoint(20.1, 5.3), 0.37),
                                                        0.9,
                                                        0.17),
                                                new Obstacle(
                                                        "light",
                                                        Obstacle.Block.around(new RoofPoint(25.3, 3.3), 1.7, 0.9),
                                                        0.2,
                                                        0.4))),
                                new Surface("wing", Outline.rectangle(7.3, 11.1), 111, 27.3, 7.1, 0.1, 0.7, List.of())),
                        new PanelRules(
                                1.21,
                                new PanelRules.Fixed(List.of(2.43, 3.61)),
                                PanelRules.HeaderEnds.ONE,
                                0.13,
                                9,
                                0.57,
                                0.31)))
                .arrays(
                        new CollectorArray(
                                "racks",
                                7.26,
                                new Mounting.OpenRack(30, 201, 2, 4, 1, 0.3),
                                Absorber.USUAL_MAT,
                                0.05,
                                2.42),
                        new CollectorArray(
                                "slope",
                                7.3,
                                new Mounting.FlushOnPitchedRoof(27.3, 111, 11.1, 0.013),
                                Absorber.USUAL_MAT))
                .build());
    }

    @Test
    void circuitComesBack() throws IOException {
        Installation told = Installation.builder(
                        "circuit",
                        Pool.of(100, 1.5, new PoolSetting.Outdoor(0.3)),
                        Roof.builder(10, 5, 3).build())
                .arrays(new CollectorArray("mats", 36, new Mounting.FlatOnRoof(0.0047), Absorber.USUAL_MAT, 0.047, 3.6))
                .hydraulics(new Hydraulics(
                        new PanelTubes(
                                new PanelInside.Tubes(117, 0.0051, 2.3),
                                0.053,
                                Manifold.Outlet.SAME_END,
                                Optional.of(new PanelTubes.Shape(3.03, 1.19, 7))),
                        new PipeRun(
                                0.057,
                                33.3,
                                3e-6,
                                17.7,
                                Optional.of(new PipeRun.Coat(0.063, 0.21, 0.013, 0.037, 11.1, 0.77))),
                        Manifold.Outlet.FAR_END,
                        new Hydraulics.Lift(5.7, false),
                        new PumpChoice(
                                0.37,
                                Optional.of(new PumpCurve(
                                        List.of(new PumpCurve.Point(0, 17.7), new PumpCurve.Point(0.0061, 4.3)))))))
                .build();
        Installation applied = WaterCircuit.applied(told);

        Installation back = Demos.read(ScenarioWriter.write(applied, WEATHER, REPORT), folder)
                .installation();

        assertThat(back.hydraulics().orElseThrow())
                .usingRecursiveComparison()
                .withEqualsForType((a, b) -> Math.abs(a - b) <= SameInstallation.ROUNDING, Double.class)
                .isEqualTo(told.hydraulics().orElseThrow());
        assertThat(back.pipes().pumpPowerW()).isCloseTo(applied.pipes().pumpPowerW(), within(1e-4));
        assertThat(back.pipes().heatLossWK()).isCloseTo(applied.pipes().heatLossWK(), within(1e-9));
    }

    @Test
    void panelsCutToLengthComeBack() throws IOException {
        comesBack(Installation.builder(
                        "bare",
                        Pool.of(100, 1.5, new PoolSetting.Outdoor(0.3)),
                        Roof.builder(10, 5, 3).build())
                .plan(new RoofPlan(
                        List.of(Surface.flat("roof", Outline.rectangle(10, 5), 180, 3)),
                        new PanelRules(1.2, new PanelRules.Cut(1.7, 4.3), PanelRules.HeaderEnds.BOTH, 0.1, 10, 0.6, 0)))
                .build());
    }

    private static List<Heater> heaters() {
        Schedule night = Schedule.daily(21, 7);
        return List.of(
                new Boiler(Fuel.NATURAL_GAS.soldIn(SaleUnit.CCF), 0.77, 77.7, 25.7, night),
                new Boiler(Fuel.HEATING_OIL.soldIn(SaleUnit.GALLON), 0.87, 77.7, 25.7),
                new CondensingBoiler(Fuel.PROPANE, 0.955, 0.885, 77.7, 25.7, night),
                new ElectricHeater(Fuel.electricity(123.4), 33.3, 25.7, Schedule.ALWAYS),
                new HeatPump(
                        Fuel.electricity(33.3).soldIn(SaleUnit.MWH),
                        HeatPumpRating.of(new RatedPoint(26, 26, 5.9, 41.1), new RatedPoint(7, 26, 3.7, 27.3)),
                        -7.5,
                        25.7,
                        night),
                new HeatPump(
                        Fuel.electricity(0),
                        HeatPumpRating.of(new RatedPoint(15, 26, 4.4, 31)),
                        3,
                        27,
                        Schedule.ALWAYS),
                new DistrictHeat(Fuel.districtHeat(44.4).soldIn(SaleUnit.GJ), 222.2, 25.7, Schedule.ALWAYS));
    }

    @ParameterizedTest
    @MethodSource("heaters")
    void everyHeaterComesBack(Heater heater) throws IOException {
        Installation bare = Installation.builder(
                        "bare",
                        Pool.of(100, 1.5, new PoolSetting.Outdoor(0.3)),
                        Roof.builder(10, 5, 3).build())
                .heater(heater)
                .lastBill(new Bill(12_345.6, SaleUnit.MWH, OptionalDouble.of(9_876.5)))
                .prices(new Prices("EUR", 0.0773, 0.233, 0))
                .build();

        Installation back =
                Demos.read(ScenarioWriter.write(bare, WEATHER, REPORT), folder).installation();

        assertThat(back.heater()).isEqualTo(bare.heater());
        assertThat(back.lastBill()).isEqualTo(bare.lastBill());
        assertThat(back.prices()).isEqualTo(bare.prices());
    }

    @Test
    void offeredCoverComesBack() throws IOException {
        comesBack(Installation.builder(
                        "bare",
                        Pool.of(100, 1.5, new PoolSetting.Outdoor(0.3)),
                        Roof.builder(10, 5, 3).build())
                .offer(new Offer(
                        0,
                        0,
                        0,
                        Terms.USUAL,
                        new CoverOffer(Cover.foam(CoverOffer.USUAL.cover().drawn()), 0, 9)))
                .build());
    }

    private void comesBack(Installation installation) throws IOException {
        Scenario back = Demos.read(ScenarioWriter.write(installation, WEATHER, REPORT), folder);

        SameInstallation.check(back.installation(), installation, SameInstallation.ROUNDING);
        assertThat(back.report()).isEqualTo(REPORT);
        assertThat(back.assumed()).isEmpty();
    }
}
