package dev.warmlane.fit;

import dev.warmlane.files.Printable;
import java.io.IOException;
import java.nio.file.Path;

/** A log, bills or meter file that cannot be read: where, what was found, what was expected and how to mend it. */
public final class LogFileException extends IOException {

    private static final long serialVersionUID = 1L;

    private static final int FOUND_AT_MOST = 200;

    LogFileException(Path file, long line, String found, String expected, String remedy) {
        super(Printable.line(file + (line > 0 ? ":" + line : "")) + ": found " + Printable.cut(found, FOUND_AT_MOST)
                + "; expected " + expected + ". " + remedy);
    }
}
