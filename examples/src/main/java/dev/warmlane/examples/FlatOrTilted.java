package dev.warmlane.examples;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.report.MountingReport;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.season.ImpossibleSeasonException;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Roof;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.wind.PoolShelter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A designer asks: do the mats lie flat on the roof, or stand on racks? The one argument is a weather file. */
public final class FlatOrTilted {
    public static void main(String[] arguments) {
        if (arguments.length != 1) {
            System.err.println("give a weather file");
            System.exit(2);
        }
        try {
            compare(Path.of(arguments[0]));
        } catch (IOException | ImpossibleSeasonException problem) {
            System.err.println(problem.getMessage());
            System.exit(1);
        }
    }

    private static void compare(Path weatherFile) throws IOException {
        MountingOption racks = MountingOption.racks("20° racks", 20, 180);
        List<MountingOption> options = List.of(MountingOption.flat("flat"), racks);
        MountingStudy study = MountingStudy.of(lido(), WeatherFiles.read(weatherFile), options);
        System.out.print(TextWriter.brief(MountingReport.of(study, UnitSystem.METRIC)));
    }

    static Installation lido() {
        Pool pool = Pool.of(312.5, 1.8, new PoolSetting.Outdoor(PoolShelter.SUBURBAN));
        return Installation.builder("lido", pool, Roof.builder(30, 14, 6).build())
                .arrays(new CollectorArray("mats", 210, Mounting.FlatOnRoof.USUAL, Absorber.USUAL_MAT))
                .build();
    }
}
