package dev.warmlane.scenario;

import java.util.List;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Where things stand in the file. */
final class Lines {

    private Lines() {}

    /** The line of a key or section of a table, or another where the parser does not know it. */
    static int of(TomlTable table, String name, int otherwise) {
        TomlPosition position = table.inputPositionOf(List.of(name));
        return position == null ? otherwise : position.line();
    }
}
