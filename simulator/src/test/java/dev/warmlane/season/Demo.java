package dev.warmlane.season;

import dev.warmlane.circuit.Control;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.Heater;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.StartWater;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.wind.PoolShelter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.MonthDay;

/** Invented installations and the invented sample weather, for tests. */
public final class Demo {

    public static final Roof ROOF = Roof.builder(30, 14, 6).build();

    public static final CollectorArray FLAT =
            new CollectorArray("flat", 200, Mounting.FlatOnRoof.USUAL, Absorber.USUAL_MAT);

    public static final Heater HEATER = new Boiler(Fuel.NATURAL_GAS, 0.82, 250, 26);

    private Demo() {}

    /** One of the sample years that come with the project. */
    public static WeatherYear weather(String sample) {
        try {
            return WeatherFiles.read(Path.of("..", "weather-samples", sample + ".csv"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same pool with the heat of a circulation pump, W. */
    public static Installation.Builder pumpedPool(double depthM, double circulationW) {
        Installation.Builder pool = pool(depthM);
        return pool.pool(pool.build().pool().withCirculationW(circulationW));
    }

    /** An outdoor pool with 200 m² of flat mats, no heater, open from May to September. */
    public static Installation.Builder pool(double depthM) {
        Pool pool = Pool.of(312.5, depthM, new PoolSetting.Outdoor(PoolShelter.SUBURBAN));
        return Installation.builder("invented pool", pool, ROOF)
                .arrays(FLAT)
                .control(Control.withLimit(30))
                .season(new OpeningSeason(MonthDay.of(5, 1), MonthDay.of(9, 30), Schedule.ALWAYS))
                .startWater(new StartWater.Given(18));
    }
}
