package dev.warmlane.examples;

import dev.warmlane.study.Progress;
import java.io.Console;
import java.io.PrintWriter;

/** A line that tells how far a study has come and vanishes at its end: on a terminal, not in a pipe. */
final class TerminalProgress implements Progress {

    private final PrintWriter out;
    private final String what;
    private int latest;
    private int latestTotal;

    private TerminalProgress(PrintWriter out, String what) {
        this.out = out;
        this.what = what;
    }

    /** Shows progress if a person is watching. */
    static Progress of(PrintWriter out, String what) {
        return watched() ? new TerminalProgress(out, what) : SILENT;
    }

    /** From Java 22 on there may be a console without a terminal, but it tells; before, it had no such method. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean watched() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    @Override
    public synchronized void finished(int finished, int total) {
        // threads may tell of their runs out of order; the line must not come back after its end
        if (total == latestTotal && finished < latest) {
            return;
        }
        latest = finished;
        latestTotal = total;
        String line = what + ": " + finished + " of " + total;
        out.print("\r" + (finished < total ? line : " ".repeat(line.length()) + "\r"));
        out.flush();
    }
}
