package dev.warmlane.examples;

import dev.warmlane.study.Progress;
import java.io.PrintWriter;

/** A line that tells how far a study has come and vanishes at its end: on a terminal, not in a pipe. */
final class TerminalProgress implements Progress {

    private final PrintWriter out;
    private final String what;

    private TerminalProgress(PrintWriter out, String what) {
        this.out = out;
        this.what = what;
    }

    /** Shows progress if a person is watching. */
    static Progress of(PrintWriter out, String what) {
        return System.console() == null ? SILENT : new TerminalProgress(out, what);
    }

    @Override
    public synchronized void finished(int finished, int total) {
        String line = what + ": " + finished + " of " + total;
        out.print("\r" + (finished < total ? line : " ".repeat(line.length()) + "\r"));
        out.flush();
    }
}
