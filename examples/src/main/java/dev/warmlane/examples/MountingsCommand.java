package dev.warmlane.examples;

import dev.warmlane.report.MountingReport;
import dev.warmlane.report.Subject;
import dev.warmlane.scenario.Assumption;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.MountingDuel;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.Progress;
import dev.warmlane.study.RoofMap;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SharedForcing;
import dev.warmlane.study.TracedPair;
import dev.warmlane.study.TurningPoints;
import dev.warmlane.study.UsualMountings;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Flat against tilted on one roof. */
@Command(
        name = "mountings",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = {
            "Compares ways to mount the collectors of one installation twice: with the same collector area, and with"
                    + " the most that fits the same roof. Says where the difference comes from and where the ranking"
                    + " turns.",
            "",
            "The scenario names the mountings in its sections [[mountings]]. Without any: " + UsualMountings.WORDS
                    + "; and " + UsualMountings.WORDS_OF_OWN + "."
        },
        footer = {
            "",
            "Example:",
            "  warmlane mountings scenarios/municipal-25m.toml --output mountings",
            "prints the comparison and writes all of it to the folder mountings: mountings.html to hand over,"
                    + " mountings.txt, mountings.csv, mountings_months.csv, mountings_even.csv, mountings_days.csv, mountings_roof.csv, and the charts as PNG and SVG."
        })
final class MountingsCommand implements Callable<Integer> {

    @Mixin
    private final JobOptions job = new JobOptions();

    @Option(
            names = "--trace",
            paramLabel = "NAME",
            description = "A mounting whose ranking is traced to where it turns; twice, for a flat one and for racks."
                    + " Without it the best of either kind that fit the roof.")
    private final List<String> trace = new ArrayList<>();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        Scenario scenario = job.scenario(err);
        SharedForcing forcing = new SharedForcing(scenario.readWeather());
        List<Assumption> assumed = new ArrayList<>(scenario.assumed());
        assumed.addAll(scenario.mountingsAssumed());
        MountingStudy study = study(scenario, forcing, assumed);
        Subject described = StudyOptions.described(scenario, forcing);
        Optional<MountingDuel> duel = duel(study, forcing);
        Runs runs = Runs.onAllCores(progress("looking for turning points"));
        job.hand(
                spec,
                MountingReport.of(
                        study,
                        duel.map(two -> TurningPoints.of(two, runs)),
                        duel.flatMap(two -> BreakEvenMap.of(two, runs)),
                        duel.flatMap(two -> RoofMap.of(two, runs)),
                        described.assuming(assumed)));
        return 0;
    }

    private MountingStudy study(Scenario scenario, SharedForcing forcing, List<Assumption> assumed) throws IOException {
        List<MountingOption> options = scenario.mountings();
        if (options.isEmpty()) {
            options =
                    UsualMountings.of(scenario.installation(), forcing.weather().site());
            assumed.add(new Assumption(
                    "mountings",
                    "name",
                    UsualMountings.WORDS
                            + ", no row shading another from 9 to 15 o'clock on the day of the season with the"
                            + " lowest sun; " + UsualMountings.WORDS_OF_OWN,
                    "no mountings given; racks built like the first ones of the installation, else 2 m up the slope"
                            + " and 0.3 m above the roof; common practice, no source"));
        }
        try {
            return MountingStudy.of(
                    scenario.installation(), forcing, options, Runs.onAllCores(progress("comparing mountings")));
        } catch (IllegalArgumentException e) {
            throw new IOException(job.scenarioFile() + ": " + e.getMessage(), e);
        }
    }

    /** The pair that is named, else the best of either kind that fits. */
    private Optional<MountingDuel> duel(MountingStudy study, SharedForcing forcing) throws IOException {
        return traced(study).map(pair -> new MountingDuel(study.template(), forcing, pair.flat(), pair.racks()));
    }

    private Optional<TracedPair> traced(MountingStudy study) throws IOException {
        if (trace.isEmpty()) {
            return TracedPair.best(study);
        }
        try {
            return Optional.of(TracedPair.named(study, trace));
        } catch (IllegalArgumentException e) {
            throw new IOException("--trace: " + e.getMessage(), e);
        }
    }

    private Progress progress(String what) {
        return TerminalProgress.of(spec.commandLine().getErr(), what);
    }
}
