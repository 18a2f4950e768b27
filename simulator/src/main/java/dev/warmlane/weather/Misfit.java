package dev.warmlane.weather;

import dev.warmlane.files.Printable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Recognises a scenario file where a weather file should be. */
final class Misfit {

    private static final Pattern SECTION = Pattern.compile("\\s*(\\[{1,2}[a-z_.]+\\]{1,2})\\s*(#.*)?");
    private static final int LINES_WITH_A_SECTION = 200;

    private Misfit() {}

    /** Refuses what no format can read even where its beginning looks like one. */
    static void refuse(FileText text) throws WeatherFileException {
        for (int line = 1; line <= Math.min(text.lines(), LINES_WITH_A_SECTION); line++) {
            Matcher section = SECTION.matcher(text.line(line));
            if (section.matches()) {
                throw text.error(
                        line,
                        "",
                        "the section " + Printable.quote(section.group(1)) + ", as a scenario file has",
                        "a weather file",
                        "Give the weather file itself; the scenario names it in [site] as weather.");
            }
        }
    }
}
