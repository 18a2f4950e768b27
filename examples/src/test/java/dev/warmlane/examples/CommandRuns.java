package dev.warmlane.examples;

import java.io.PrintWriter;
import java.io.StringWriter;

/** Runs the command and keeps what it writes. */
abstract class CommandRuns {

    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    int run(String... arguments) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
    }
}
