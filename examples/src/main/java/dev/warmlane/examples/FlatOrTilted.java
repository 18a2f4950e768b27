package dev.warmlane.examples;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.plant.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.report.MountingTables;
import dev.warmlane.scenario.ReportSettings.Units;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Schedule;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.wind.PoolShelter;
import java.io.IOException;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.List;

/** A designer asks: do the mats lie flat on the roof, or stand on racks? The one argument is a weather file. */
public final class FlatOrTilted {
    public static void main(String[] arguments) throws IOException {
        WeatherYear weather = WeatherFiles.read(Path.of(arguments[0]));
        List<MountingOption> options = List.of(
                MountingOption.flat("flat"),
                MountingOption.racks("racks 20°", 20, 180),
                MountingOption.racks("boarded racks", 20, 180).withBack(Mounting.Back.BOARDED));
        MountingStudy study = MountingStudy.of(lido(), weather, options);

        System.out.println(
                MountingTables.comparison(study.sameArea(), Units.METRIC).text());
        System.out.println(
                MountingTables.comparison(study.sameRoof(), Units.METRIC).text());
        System.out.print(
                MountingTables.lightAgainstFirst(study.sameArea(), Units.METRIC).text());
    }

    static Installation lido() {
        Pool pool = Pool.of(312.5, 1.8, new PoolSetting.Outdoor(PoolShelter.SUBURBAN));
        return Installation.builder("lido", pool, Roof.builder(30, 14, 6).build())
                .arrays(new CollectorArray("mats", 210, Mounting.FlatOnRoof.USUAL, Absorber.USUAL_MAT))
                .season(new OpeningSeason(MonthDay.of(5, 5), MonthDay.of(9, 15), Schedule.daily(9, 20)))
                .build();
    }
}
