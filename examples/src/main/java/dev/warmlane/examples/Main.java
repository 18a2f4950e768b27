package dev.warmlane.examples;

import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command: simulates a scenario file and prints what people ask for. */
@Command(
        name = "warmlane",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Simulates unglazed solar collectors that heat a swimming pool, hour by hour over a typical year.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            DescribeCommand.class,
            ForecastCommand.class,
            MountingsCommand.class,
            AreasCommand.class,
            DatesCommand.class,
            SensitivityCommand.class,
            YearsCommand.class,
            FitCommand.class,
            WeatherCommand.class,
            GenerateCommand.class
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:done", "1:a problem with the input", "2:wrong usage", "3:a fault of the program"},
        footer = {
            "",
            "Example:",
            "  warmlane describe my-pool.toml",
            "  warmlane forecast scenarios/municipal-25m.toml --output forecast"
        })
public final class Main implements Runnable {

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    private final Terminal terminal;

    /** Made by {@link #main} and by tests. */
    Main() {
        this(Terminal.standard());
    }

    /** A command that is answered elsewhere than at its terminal. */
    Main(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Where answers come from. */
    Terminal input() {
        return terminal;
    }

    /** Runs the command and ends with its exit code. */
    public static void main(String[] arguments) {
        // charts need no screen, and a machine without one must not be searched for it
        System.setProperty("java.awt.headless", "true");
        Charset charset = Terminal.shows();
        PrintWriter out = Terminal.printing(System.out, charset);
        PrintWriter err = Terminal.printing(System.err, charset);
        int exitCode = ended(out, err, run(out, err, arguments));
        err.flush();
        System.exit(exitCode);
    }

    /** The exit code once everything is written: a full disk or a closed pipe swallows words without an exception. */
    static int ended(PrintWriter out, PrintWriter err, int exitCode) {
        if (exitCode == 0 && out.checkError()) {
            err.println("the output could not be written to its end");
            return 1;
        }
        return exitCode;
    }

    /** Runs the command with its output going to two writers. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return run(Terminal.standard(), out, err, arguments);
    }

    /** The same with answers that come from elsewhere. */
    static int run(Terminal terminal, PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine command = new CommandLine(new Main(terminal))
                .setOut(out)
                .setErr(err)
                // a name that begins with @ is a name
                .setExpandAtFiles(false)
                .registerConverter(Path.class, new PathConverter())
                .setParameterExceptionHandler(InputProblems::wrongUsage)
                .setExecutionExceptionHandler(new InputProblems());
        try {
            return command.execute(arguments);
        } catch (OutOfMemoryError e) {
            err.println("there is not enough memory for this; give Java more of it with -Xmx2g, or ask for less");
        } catch (StackOverflowError e) {
            err.println(InputProblems.fault(e));
        }
        err.flush();
        return InputProblems.FAULT;
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "Say what to do: describe, forecast, mountings, areas, sensitivity, years, fit, weather or generate.");
    }

    /** The version that the jar was built as. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"warmlane " + (version == null ? "(not from a jar)" : version)};
        }
    }
}
