package dev.warmlane.scenario;

import java.util.List;
import java.util.regex.Pattern;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;

/** Parses TOML; its own errors become findings. */
final class Syntax {

    /** A quantity that somebody forgot to put in quotes: {@code depth = 2 m}. */
    private static final Pattern BARE_QUANTITY =
            Pattern.compile("[^=#]*=\\s*([-+]?[\\d.]+\\s*[A-Za-z°%][^#\"']*?)\\s*(#.*)?");

    private Syntax() {}

    /**
     * The tree of a text.
     *
     * @throws ScenarioException with all errors of syntax, if there are any
     */
    static TomlTable parse(String text, Notes notes) {
        TomlParseResult result = Toml.parse(text);
        List<String> lines = text.lines().toList();
        for (TomlParseError error : result.errors()) {
            int line = error.position().line();
            String source = line <= lines.size() ? lines.get(line - 1) : "";
            notes.error(line, "", "", message(error, source));
        }
        notes.throwIfAny();
        return result;
    }

    private static String message(TomlParseError error, String source) {
        var bare = BARE_QUANTITY.matcher(source);
        String hint = bare.matches() ? "; write a quantity in quotes, \"" + bare.group(1) + "\"" : "";
        return "column " + error.position().column() + ": not TOML: " + error.getMessage() + hint;
    }
}
