package dev.warmlane.examples;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.Console;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * Where answers come from.
 *
 * @param in what is typed, line by line
 * @param echo whether nobody sees what is typed, so that it is printed too
 */
record Terminal(BufferedReader in, boolean echo) {

    /** What this program was started with: a person at a keyboard, or a file of answers. */
    @SuppressWarnings("SystemConsoleNull") // it is null up to Java 21 only, and later asked whether it is a terminal
    static Terminal standard() {
        Console console = System.console();
        boolean person = console != null && isTerminal(console);
        Charset charset = person && console != null
                ? console.charset()
                : Charset.forName(System.getProperty("native.encoding", "UTF-8"));
        return new Terminal(new BufferedReader(new InputStreamReader(System.in, charset)), !person);
    }

    /** What is printed is encoded so: as a console of Windows shows it, and as UTF-8 anywhere else and in files. */
    @SuppressWarnings("SystemConsoleNull") // it is null up to Java 21 only, and later asked whether it is a terminal
    static Charset shows() {
        Console console = System.console();
        return console != null && isTerminal(console)
                ? shown(System.getProperty("os.name", ""), console.charset())
                : StandardCharsets.UTF_8;
    }

    /**
     * The encoding of a terminal on a system: a console of Windows has a code page of its own, in which the two bytes of
     * a degree sign in UTF-8 are two other signs.
     */
    static Charset shown(String system, Charset console) {
        return system.startsWith("Windows") ? console : StandardCharsets.UTF_8;
    }

    /** Prints in an encoding, with other signs for those that it has not. */
    static PrintWriter printing(OutputStream out, Charset charset) {
        return new PrintWriter(new Encodable(new BufferedWriter(new OutputStreamWriter(out, charset)), charset), true);
    }

    /** Up to Java 21 there is a console only where there is a terminal; from 22 on it has to be asked. */
    private static boolean isTerminal(Console console) {
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (ReflectiveOperationException before22) {
            return true;
        }
    }

    Interview interview(PrintWriter out) {
        return new Interview(in, out, echo);
    }
}
