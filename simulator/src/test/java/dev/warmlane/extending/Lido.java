package dev.warmlane.extending;

import dev.warmlane.circuit.Control;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorModel;
import dev.warmlane.collector.Mounting;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.Heater;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.StartWater;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.scenario.ScenarioWriter;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Schedule;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.wind.PoolShelter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.MonthDay;

/** An invented pool in invented weather, as somebody who builds on the library would write it. */
final class Lido {

    static final Pool POOL = Pool.of(312.5, 1.8, new PoolSetting.Outdoor(PoolShelter.SUBURBAN));

    static final Roof ROOF = Roof.builder(30, 14, 6).build();

    static final Mounting RACKS = new Mounting.OpenRack(30, 180, 1.2, 2.4, 5, 0.3);

    static final Heater HEATER = new Boiler(Fuel.NATURAL_GAS, 0.82, 250, 25);

    static final WeatherYear WEATHER = read("cool-coast");

    private Lido() {}

    /** Open in June and July, with 200 m² of mats lying flat. */
    static Installation.Builder built() {
        return Installation.builder("lido", POOL, ROOF)
                .arrays(array(Mounting.FlatOnRoof.USUAL, Absorber.USUAL_MAT))
                .control(Control.withLimit(28))
                .season(new OpeningSeason(MonthDay.of(6, 1), MonthDay.of(7, 31), Schedule.ALWAYS))
                .startWater(new StartWater.Given(20));
    }

    static CollectorArray array(Mounting mounting, CollectorModel model) {
        return new CollectorArray("collectors", 200, mounting, model);
    }

    static SeasonLedger season(Installation built) {
        return SeasonSimulator.simulate(built, SeasonForcing.of(built, WEATHER));
    }

    static double[] waterC(Installation built) {
        SeasonLedger ledger = season(built);
        double[] water = new double[ledger.hours()];
        for (int index = 0; index < water.length; index++) {
            water[index] = ledger.waterC(index);
        }
        return water;
    }

    static String written(Installation built) {
        return ScenarioWriter.write(built, "weather.csv", new ReportSettings("lido", UnitSystem.METRIC));
    }

    private static WeatherYear read(String sample) {
        try {
            return WeatherFiles.read(Path.of("..", "weather-samples", sample + ".csv"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
