package dev.warmlane.scenario;

import dev.warmlane.units.LoneMark;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Where things stand in the file. */
final class Lines {

    private Lines() {}

    /** What stands behind the equals sign, up to a remark. */
    private static final Pattern VALUE = Pattern.compile("[^=#\"']+=\\s*([^\\s#]+)\\s*(?:#.*)?");

    /**
     * A value, as a text where it is a number with a point that may part thousands: to the parser 1.850 is 1.85, and nobody
     * can ask back what was meant.
     */
    static Object asWritten(Object toml, String line) {
        Matcher value = VALUE.matcher(line);
        return toml instanceof Double
                        && value.matches()
                        && LoneMark.of(value.group(1)).isPresent()
                ? value.group(1)
                : toml;
    }

    /** The line of a key or section of a table, or another where the parser does not know it. */
    static int of(TomlTable table, String name, int otherwise) {
        TomlPosition position = table.inputPositionOf(List.of(name));
        return position == null ? otherwise : position.line();
    }
}
