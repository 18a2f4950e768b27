package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import dev.warmlane.fit.FitRefusal;
import dev.warmlane.scenario.ScenarioException;
import dev.warmlane.season.ImpossibleSeasonException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Turns a problem with the input into its message and exit code 1. Anything else is a fault of the program, told in a
 * line that whoever mends it can use: no stack trace is anything to a person with a pool.
 */
final class InputProblems implements IExecutionExceptionHandler {

    private static final int MESSAGE_AT_MOST = 500;

    /** The exit code of a fault of the program. */
    static final int FAULT = 3;

    private static final String OURS = "dev.warmlane.";

    @Override
    public int handleExecutionException(Exception problem, CommandLine command, ParseResult parsed) {
        if (problem instanceof IOException
                || problem instanceof ScenarioException
                || problem instanceof FitRefusal
                || problem instanceof ImpossibleSeasonException) {
            return told(command, message(problem), 1);
        }
        if (problem instanceof UncheckedIOException && problem.getCause() instanceof IOException cause) {
            return told(command, message(cause), 1);
        }
        return told(command, fault(problem), FAULT);
    }

    private static int told(CommandLine command, String message, int exitCode) {
        command.getErr().println(Printable.lines(message.replace("\r\n", "\n")));
        command.getErr().flush();
        return exitCode;
    }

    /** A command that was not understood, with how it is meant. */
    static int wrongUsage(ParameterException problem, String[] arguments) {
        CommandLine command = problem.getCommandLine();
        command.getErr().println(Printable.cut(String.valueOf(problem.getMessage()), MESSAGE_AT_MOST));
        if (!UnmatchedArgumentException.printSuggestions(problem, command.getErr())) {
            command.usage(command.getErr());
        }
        command.getErr().flush();
        return command.getCommandSpec().exitCodeOnInvalidInput();
    }

    /** What went wrong in the program and where, in one line. */
    static String fault(Throwable problem) {
        String where = Stream.of(problem.getStackTrace())
                .filter(frame -> frame.getClassName().startsWith(OURS))
                .map(frame -> " at " + frame.getClassName() + ":" + frame.getLineNumber())
                .findFirst()
                .orElse("");
        return "this is a fault of the program, please report it with your files: "
                + Printable.cut(problem.toString(), MESSAGE_AT_MOST) + where;
    }

    private static String message(Exception problem) {
        if (problem instanceof NoSuchFileException missing) {
            return missing.getFile() + ": there is no such file";
        }
        if (problem instanceof AccessDeniedException denied) {
            return denied.getFile() + ": access is denied";
        }
        if (problem instanceof NotDirectoryException || problem instanceof FileAlreadyExistsException) {
            return problem.getMessage() + ": is a file, not a folder; choose another output folder";
        }
        return String.valueOf(problem.getMessage());
    }
}
