package dev.warmlane.examples;

import dev.warmlane.scenario.ScenarioException;
import dev.warmlane.season.ImpossibleSeasonException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/**
 * Turns a problem with the input into its message and exit code 1. Anything else is a fault of the program and keeps its
 * stack trace.
 */
final class InputProblems implements IExecutionExceptionHandler {

    @Override
    public int handleExecutionException(Exception problem, CommandLine command, ParseResult parsed) throws Exception {
        if (problem instanceof IOException
                || problem instanceof ScenarioException
                || problem instanceof ImpossibleSeasonException) {
            command.getErr().println(message(problem));
            command.getErr().flush();
            return 1;
        }
        throw problem;
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
