package dev.warmlane.examples;

import dev.warmlane.report.AreaTables;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioException;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.ImpossibleSeasonException;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;

/** An engineer asks: how much area, if the last m² must still give 300 kWh a season? The argument is a scenario file. */
public final class HowMuchArea {
    private static final double LEAST_KWH_M2 = 300;

    public static void main(String[] arguments) {
        if (arguments.length != 1) {
            System.err.println("give a scenario file");
            System.exit(2);
        }
        try {
            design(Path.of(arguments[0]));
        } catch (IOException | ScenarioException | ImpossibleSeasonException problem) {
            System.err.println(problem.getMessage());
            System.exit(1);
        }
    }

    private static void design(Path scenarioFile) throws IOException {
        Scenario scenario = ScenarioReader.read(scenarioFile);
        AreaStudy study = AreaStudy.of(scenario.installation(), scenario.readWeather(), new AreaRange(50, 400, 15));

        System.out.println(
                TextWriter.table(AreaTables.areas(study, scenario.report().units())));
        study.designs().stream()
                .filter(design -> design.fitsRoof() && design.next().deliveredKwhPerM2() >= LEAST_KWH_M2)
                .max(Comparator.comparingDouble(AreaDesign::areaM2))
                .ifPresent(largest -> System.out.println("The largest on the roof: " + largest.areaM2() + " m², "
                        + largest.season().comfort().daysAtComfort() + " days at comfort"));
    }
}
