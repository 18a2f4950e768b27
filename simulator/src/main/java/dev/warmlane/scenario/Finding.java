package dev.warmlane.scenario;

import dev.warmlane.files.Printable;
import java.nio.file.Path;

/**
 * One thing found in a scenario file, in one line.
 *
 * @param file the file
 * @param line its line, 1 the first; 0 where the finding is of the whole file
 * @param column the column in the line, 1 the first; 0 where it is not known
 * @param section the section, such as {@code pool}, or empty where the finding is not about one
 * @param key the key in the section, or empty where the finding is about the section
 * @param message what was found and what is allowed
 */
public record Finding(Path file, int line, int column, String section, String key, String message) {

    /** What a message may have of a file is quoted and short; the rest of it is a line or two. */
    private static final int MESSAGE_AT_MOST = 1500;

    /** Keeps what was written by others printable and short. */
    public Finding {
        section = Printable.quote(section);
        key = Printable.quote(key);
        message = Printable.cut(message, MESSAGE_AT_MOST);
    }

    /** What it is about, as somebody who has not seen the file would say it. */
    private String words() {
        return key.isEmpty() ? section : KeyWords.of(section, key);
    }

    /** The finding as somebody reads it who has not seen the file: no names of keys. */
    public String told() {
        return words() + ": " + KeyWords.told(section.replaceAll(" [0-9]+", ""), message);
    }

    /** The finding as a person reads it: {@code job.toml:12: [pool] depth: found "20 m", allowed 0.2 to 10 m}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(Printable.line(file.toString()));
        if (line > 0) {
            text.append(':').append(line);
        }
        if (column > 0) {
            text.append(':').append(column);
        }
        text.append(": ");
        if (!section.isEmpty()) {
            text.append('[').append(section).append("] ");
        }
        if (!key.isEmpty()) {
            text.append(key).append(": ");
        }
        return text.append(message).toString();
    }
}
