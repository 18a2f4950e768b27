package dev.warmlane.scenario;

import dev.warmlane.weather.WeatherFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Pattern;

/**
 * Reads a scenario file, see docs/scenario.md for its sections and keys. Everything that is wrong with it is reported
 * at once; only errors of TOML syntax hide what lies behind them.
 */
public final class ScenarioReader {

    private static final Pattern SECTION = Pattern.compile("(?m)^\\s*\\[");

    private static final String MEND =
            "a scenario says what is built, and names the weather file in its section [site],"
                    + " weather = \"...\"; docs/guide.md shows one";

    private ScenarioReader() {}

    /**
     * Reads a scenario.
     *
     * @param file a TOML file in UTF-8; the weather file that it names must be there, but is not opened
     * @throws IOException if the file cannot be read
     * @throws ScenarioException if anything in it is wrong, with all that is
     */
    public static Scenario read(Path file) throws IOException {
        Notes notes = new Notes(file);
        String text = ScenarioText.load(file, notes);
        refuseWeather(text, notes, file);
        return ScenarioAssembly.of(new Document(Syntax.parse(text, notes), notes), notes, file);
    }

    /**
     * Reads a scenario that is not written yet, as if it stood in a file.
     *
     * @param text the scenario, TOML
     * @param file where it is to stand; files that it names are seen from there
     * @throws ScenarioException if anything in it is wrong, with all that is
     */
    public static Scenario parse(String text, Path file) {
        Notes notes = new Notes(file);
        return ScenarioAssembly.of(new Document(Syntax.parse(text, notes), notes), notes, file);
    }

    /** A weather file or monthly normals, given where the scenario that names them should be. */
    private static void refuseWeather(String text, Notes notes, Path file) {
        if (SECTION.matcher(text).find()) {
            return;
        }
        WeatherFiles.kindOf(file).ifPresent(kind -> notes.error(0, 0, "is " + kind + ", not a scenario; " + MEND));
        notes.throwIfAny();
    }
}
