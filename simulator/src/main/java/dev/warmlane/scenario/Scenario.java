package dev.warmlane.scenario;

import dev.warmlane.season.Installation;
import dev.warmlane.study.MountingOption;
import java.nio.file.Path;
import java.util.List;

/**
 * One job as its file describes it.
 *
 * @param installation what is built
 * @param mountings mountings to compare; empty where the file names none
 * @param weatherFile the weather file, resolved against the folder of the scenario file
 * @param report how the report is wanted
 * @param assumed every value that the file leaves open about the installation
 * @param mountingsAssumed the same about the mountings to compare
 * @param warnings what is allowed but hardly meant
 */
public record Scenario(
        Installation installation,
        List<MountingOption> mountings,
        Path weatherFile,
        ReportSettings report,
        List<Assumption> assumed,
        List<Assumption> mountingsAssumed,
        List<Finding> warnings) {

    /** Keeps its own copies of the lists. */
    public Scenario {
        mountings = List.copyOf(mountings);
        assumed = List.copyOf(assumed);
        mountingsAssumed = List.copyOf(mountingsAssumed);
        warnings = List.copyOf(warnings);
    }
}
