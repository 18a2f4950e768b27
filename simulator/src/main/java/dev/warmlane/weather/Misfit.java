package dev.warmlane.weather;

import dev.warmlane.files.Printable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Recognises a scenario file, or monthly normals, where a weather file should be. */
final class Misfit {

    private static final Pattern SECTION = Pattern.compile("\\s*(\\[{1,2}[a-z_.]+\\]{1,2})\\s*(#.*)?");
    private static final int LINES_WITH_A_SECTION = 200;

    /** The column names of a file of monthly normals. */
    private static final Pattern NORMALS = Pattern.compile("(?i)\\s*month\\s*,\\s*global.*");

    private static final int LINES_WITH_NORMALS = 40;

    private Misfit() {}

    /** The line with the column names of monthly normals, 0 if there is none. */
    static int normals(FileText text) {
        for (int line = 1; line <= Math.min(text.lines(), LINES_WITH_NORMALS); line++) {
            if (NORMALS.matcher(text.line(line)).matches()) {
                return line;
            }
        }
        return 0;
    }

    /** Refuses what no format can read even where its beginning looks like one. */
    static void refuse(FileText text) throws WeatherFileException {
        if (normals(text) > 0) {
            throw text.error(
                    normals(text),
                    "",
                    "monthly normals, twelve rows",
                    "a typical year, 8760 rows",
                    "Make a year of them with the command \"generate\", and name the file that it writes.");
        }
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
