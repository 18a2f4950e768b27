package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import dev.warmlane.scenario.ScenarioReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Asks what is built and writes the scenario file. */
@Command(
        name = "describe",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Asks what the pool, the roof and the collectors are, and writes a scenario file that the other"
                + " commands read. Answers may be in any units; an empty line takes what stands in brackets, ? says more,"
                + " back goes back, quit leaves and writes nothing.",
        footer = {"", "Example:", "  warmlane describe my-pool.toml"})
final class DescribeCommand implements Callable<Integer> {

    @Parameters(
            paramLabel = "SCENARIO",
            defaultValue = "my-pool.toml",
            description =
                    "Scenario file to write (${DEFAULT-VALUE}); one that is there is kept unless you say otherwise.")
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private Path file;

    @ParentCommand
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private Main main;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Interview interview = main.input().interview(out);
        if (Files.isDirectory(file)) {
            throw new IOException(file + ": is a folder; name the scenario file to write");
        }
        boolean there = Files.exists(file);
        if (there && !interview.yes(Printable.line(file.toString()) + " is there already. Write over it?")) {
            throw new Interview.Left(Printable.line(file.toString()) + " was kept; nothing was written");
        }
        out.println("An empty line takes what stands in [brackets], a number alone is in the unit that stands there;");
        out.println("? says more, back goes back, quit leaves and writes nothing.");
        Answers answers = new Answers(file);
        List<Question> questions = Questions.all(out);
        interview.ask(questions, answers, new LookAhead(questions, out));
        write(DescribedScenario.of(answers), there, out);
        return 0;
    }

    /** Writes aside, reads that as the other commands will, and puts it in place only then. */
    private void write(String text, boolean over, PrintWriter out) throws IOException {
        Path folder = file.toAbsolutePath().resolveSibling("");
        Files.createDirectories(folder);
        Path aside = folder.resolve("." + file.getFileName() + ".part");
        try {
            Files.writeString(aside, text);
            ScenarioReader.read(aside);
            if (over) {
                Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
            } else {
                Files.move(aside, file);
            }
        } finally {
            Files.deleteIfExists(aside);
        }
        String name = Printable.line(file.toString());
        out.println("Written: " + name + ". Next:");
        out.println("  warmlane forecast " + quoted(name) + " --output " + quoted(name.replaceFirst("\\.toml$", "")));
        out.flush();
    }

    private static String quoted(String name) {
        return name.contains(" ") ? "\"" + name + "\"" : name;
    }
}
