package dev.warmlane.scenario;

import dev.warmlane.files.Printable;
import java.util.List;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** A value in a scenario file is not allowed. */
final class BadValueException extends Exception {

    private static final long serialVersionUID = 1;

    /** From all there is to say. */
    BadValueException(String message) {
        super(message);
    }

    /** The usual message. */
    static BadValueException of(Object found, String allowed) {
        return new BadValueException("found " + show(found) + "; allowed: " + allowed);
    }

    /** A value of the parsed tree as the file has it. */
    static String show(Object toml) {
        if (toml instanceof String text) {
            return quote(
                    text.length() <= Printable.QUOTED_AT_MOST
                            ? text
                            : text.substring(0, Printable.QUOTED_AT_MOST) + "…");
        }
        if (toml instanceof TomlArray array) {
            List<String> items =
                    array.toList().stream().map(BadValueException::show).toList();
            return "a list " + Printable.quote(items.toString());
        }
        return toml instanceof TomlTable ? "a section" : String.valueOf(toml);
    }

    /** A text in quotes, as TOML writes it: what a person can see stands as it is. */
    static String quote(String text) {
        return "\"" + Printable.line(text.replace("\\", "\\\\").replace("\"", "\\\"")) + "\"";
    }

    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
