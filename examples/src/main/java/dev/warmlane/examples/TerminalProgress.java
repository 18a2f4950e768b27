package dev.warmlane.examples;

import dev.warmlane.study.Progress;
import java.io.Console;
import java.io.PrintWriter;

/** Shows how far long work has come in one line of a terminal, and wipes it when the work is done. */
final class TerminalProgress implements Progress {

    private static final String START_OF_LINE = "\r";

    private final PrintWriter err;
    private final String what;
    private int shown;

    private TerminalProgress(PrintWriter err, String what) {
        this.err = err;
        this.what = what;
    }

    /** On a terminal; in a pipe, silence. */
    static Progress of(PrintWriter err, String what) {
        return onTerminal() ? new TerminalProgress(err, what) : SILENT;
    }

    /** From Java 22 on there may be a console in a pipe as well, and it can be asked. */
    @SuppressWarnings("SystemConsoleNull") // asked below
    private static boolean onTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException olderJava) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    @Override
    public synchronized void finished(int finished, int total) {
        // threads may report out of order
        if (finished > shown) {
            shown = finished;
            String line = what + ": " + finished + " of " + total;
            err.print(START_OF_LINE + (finished < total ? line : " ".repeat(line.length()) + START_OF_LINE));
            err.flush();
        }
    }
}
