package dev.warmlane.scenario;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Reads a scenario file, see docs/scenario.md for its sections and keys. Everything that is wrong with it is reported
 * at once; only errors of TOML syntax hide what lies behind them.
 */
public final class ScenarioReader {

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
        return ScenarioAssembly.of(new Document(Syntax.parse(text, notes), notes), notes, file);
    }
}
