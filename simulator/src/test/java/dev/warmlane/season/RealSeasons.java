package dev.warmlane.season;

import dev.warmlane.RealWeather;
import dev.warmlane.circuit.Control;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.wind.PoolShelter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.MonthDay;
import java.util.List;

/** One invented outdoor pool at the places of the real weather files, from May to September. */
final class RealSeasons {

    static final List<String> FILES = List.of(
            "toronto-cwec.epw",
            "po-valley-pvgis.csv",
            "greensboro-tmy3.csv",
            "miami-tmy3.csv",
            "miami-tmy2.tm2",
            "fortaleza-swera.epw");

    static final double COLLECTOR_M2 = 200;

    static final OpeningSeason SEASON = new OpeningSeason(MonthDay.of(5, 1), MonthDay.of(9, 30), Schedule.ALWAYS);

    private RealSeasons() {}

    static WeatherYear weather(String file) {
        try {
            return WeatherFiles.read(RealWeather.file(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** 312.5 m², 1.5 m deep, suburban wind, no cover, no heater, a solar limit of 30 °C, standing filled before opening. */
    static Installation.Builder pool(CollectorArray array) {
        Pool pool = Pool.of(312.5, 1.5, new PoolSetting.Outdoor(PoolShelter.SUBURBAN));
        return Installation.builder("invented pool", pool, Demo.ROOF)
                .arrays(array)
                .control(Control.withLimit(30))
                .season(SEASON);
    }

    static CollectorArray flat() {
        return new CollectorArray("flat", COLLECTOR_M2, Mounting.FlatOnRoof.USUAL, Absorber.USUAL_MAT);
    }

    /** Racks of 30 degrees and 2 m towards the equator, open at the back, 0.3 m above the roof; rows two chords apart. */
    static CollectorArray racks(WeatherYear weather, int rows) {
        double azimuth = weather.site().southern() ? 0 : 180;
        return new CollectorArray(
                "racks", COLLECTOR_M2, new Mounting.OpenRack(30, azimuth, 2, 4, rows, 0.3), Absorber.USUAL_MAT);
    }

    static double mean(SeasonLedger ledger) {
        double sum = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            sum += ledger.waterC(index);
        }
        return sum / ledger.hours();
    }
}
