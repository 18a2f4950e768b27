package dev.warmlane.fuzz;

import static dev.warmlane.fuzz.Fuzz.oneOf;
import static dev.warmlane.fuzz.Fuzz.within;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorModel;
import dev.warmlane.collector.Mounting;
import dev.warmlane.collector.PlateToFluid;
import dev.warmlane.collector.UnglazedForm2013;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.CondensingBoiler;
import dev.warmlane.heater.ElectricHeater;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.HeatPump;
import dev.warmlane.heater.HeatPumpRating;
import dev.warmlane.heater.Heater;
import dev.warmlane.heater.RatedPoint;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.MainsWater;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.StartWater;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Schedule;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Invented installations such as somebody could build, by chance. */
final class RandomInstallations {

    private RandomInstallations() {}

    /** One installation, open for a month in the warm half of a hemisphere. */
    static Installation installation(boolean southern, Random chance) {
        double areaM2 = Math.exp(within(chance, Math.log(20), Math.log(1500)));
        Pool pool = Pool.of(areaM2, within(chance, 0.6, 3), setting(chance));
        Roof roof = Roof.builder(within(chance, 10, 60), within(chance, 8, 30), within(chance, 3, 12))
                .albedo(within(chance, 0.05, 0.7))
                .uValueWm2K(within(chance, 0.1, 1.5))
                .windSpeedRatio(within(chance, 0.3, 1.2))
                .build();
        List<CollectorArray> arrays = new ArrayList<>();
        for (int i = oneOf(chance, 1, 1, 2); i > 0; i--) {
            arrays.add(new CollectorArray(
                    "array " + i, areaM2 * within(chance, 0.1, 0.8), mounting(southern, chance), model(chance)));
        }
        double limitC = within(chance, 26, 34);
        int month = southern ? oneOf(chance, 11, 12, 1, 2) : oneOf(chance, 5, 6, 7, 8);
        int day = 1 + chance.nextInt(28);
        return Installation.builder("invented", pool, roof)
                .arrays(arrays)
                .heater(heater(chance))
                .cover(cover(chance))
                .bathers(new Bathers(
                        areaM2 * within(chance, 0, 0.3),
                        Bathers.USUAL_HEAT_W,
                        Bathers.USUAL_RISE,
                        Schedule.daily(9, 20)))
                .makeUp(new MakeUp(
                        areaM2 * within(chance, 0, 30),
                        chance.nextBoolean() ? new MainsWater.FromAir() : MainsWater.Monthly.constant(13)))
                .pipes(chance.nextBoolean() ? Pipes.NONE : new Pipes(within(chance, 0, 80), within(chance, 0, 2000)))
                .control(Control.withLimit(limitC))
                .season(new OpeningSeason(
                        MonthDay.of(month, day),
                        MonthDay.of(month % 12 + 1, day),
                        chance.nextBoolean() ? Schedule.ALWAYS : Schedule.daily(8, 21)))
                .startWater(new StartWater.Given(within(chance, 12, 28)))
                .build();
    }

    private static PoolSetting setting(Random chance) {
        return chance.nextInt(5) == 0
                ? new PoolSetting.Indoor(within(chance, 24, 32), within(chance, 0.45, 0.7), within(chance, 0.02, 0.3))
                : new PoolSetting.Outdoor(within(chance, 0.05, 1), within(chance, 0, 0.5), within(chance, 0.5, 1));
    }

    private static @Nullable Heater heater(Random chance) {
        double kw = within(chance, 20, 600);
        double setPointC = within(chance, 22, 30);
        Schedule hours =
                chance.nextInt(3) == 0 ? Schedule.daily(chance.nextInt(24), 1 + chance.nextInt(24)) : Schedule.ALWAYS;
        return switch (chance.nextInt(10)) {
            case 0, 1, 2 -> new Boiler(Fuel.NATURAL_GAS, within(chance, 0.6, 0.95), kw, setPointC, hours);
            case 3 -> new CondensingBoiler(Fuel.PROPANE, within(chance, 0.93, 0.98), 0.88, kw, setPointC, hours);
            case 4 ->
                new HeatPump(
                        Fuel.electricity(within(chance, 0, 300)),
                        HeatPumpRating.of(
                                new RatedPoint(27, 27, within(chance, 5.5, 7), kw),
                                new RatedPoint(
                                        10, 27, within(chance, 3, 4.2), Math.max(1, kw * within(chance, 0.4, 1)))),
                        within(chance, -10, 12),
                        setPointC,
                        hours);
            case 5 -> new ElectricHeater(Fuel.electricity(100), kw, setPointC, hours);
            default -> null;
        };
    }

    private static @Nullable Cover cover(Random chance) {
        Schedule night = Schedule.daily(20, 8);
        return switch (chance.nextInt(5)) {
            case 0 -> Cover.bubble(night);
            case 1 -> Cover.foam(night);
            case 2 -> Cover.solidTrack(night);
            case 3 -> Cover.liquidFilm(night);
            default -> null;
        };
    }

    private static Mounting mounting(boolean southern, Random chance) {
        double azimuth = Math.floorMod((southern ? 0 : 180) + chance.nextInt(121) - 60, 360);
        double chord = within(chance, 0.8, 4);
        return switch (chance.nextInt(4)) {
            case 0 -> new Mounting.FlatOnRoof(within(chance, 0.001, 0.03));
            case 1 ->
                new Mounting.OpenRack(
                        within(chance, 10, 50),
                        azimuth,
                        chord,
                        chord * within(chance, 1.3, 4),
                        1 + chance.nextInt(8),
                        within(chance, 0.1, 1),
                        oneOf(chance, Mounting.Back.OPEN, Mounting.Back.BOARDED),
                        Mounting.WindRun.CHORD);
            case 2 ->
                new Mounting.OpenRack(
                        new RackRows(
                                new Rack(within(chance, 0, 40), azimuth, chord, within(chance, 0, 0.5)),
                                chord * within(chance, 2, 5),
                                1 + chance.nextInt(8),
                                true),
                        oneOf(chance, Mounting.Back.OPEN, Mounting.Back.BOARDED),
                        Mounting.WindRun.CHORD,
                        within(chance, 0.3, 1));
            default ->
                new Mounting.FlushOnPitchedRoof(
                        within(chance, 10, 45), azimuth, within(chance, 3, 10), within(chance, 0.002, 0.05));
        };
    }

    private static CollectorModel model(Random chance) {
        return chance.nextInt(4) == 0
                ? new UnglazedForm2013(
                                within(chance, 0.8, 0.92),
                                within(chance, 0.01, 0.03),
                                within(chance, 8, 14),
                                within(chance, 2, 5),
                                0.95)
                        .curve(new MatteBlack(), new CertificateCurve.TestStand(chance.nextBoolean(), 2, 0.5, 4))
                : new Absorber(
                        within(chance, 0.85, 0.96),
                        within(chance, 0.85, 0.95),
                        within(chance, 1, 1.5),
                        new PlateToFluid.Conductance(within(chance, 80, 500)));
    }
}
