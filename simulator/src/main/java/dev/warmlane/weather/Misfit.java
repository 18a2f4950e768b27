package dev.warmlane.weather;

import dev.warmlane.files.Printable;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Recognises what is known and is no weather file that can be used, and says what to fetch in its place. */
final class Misfit {

    private static final Pattern SECTION = Pattern.compile("\\s*(\\[{1,2}[a-z_.]+\\]{1,2})\\s*(#.*)?");
    private static final int LINES_WITH_A_SECTION = 200;

    /** The column names of a file of monthly normals. */
    private static final Pattern NORMALS = Pattern.compile("(?i)\\s*month\\s*,\\s*global.*");

    private static final int LINES_WITH_NORMALS = 40;

    private Misfit() {}

    private static final String WITH_PARTS =
            "global, direct and diffuse irradiance, air temperature, humidity and wind by the hour";

    private static final String FETCH =
            "Fetch the weather itself: a typical year (TMY3, EPW, PVGIS) or real years (NSRDB,"
                    + " PVGIS, Open-Meteo) as csv.";

    /** Refuses files of other kinds by their first bytes. */
    static void refuse(Path path, byte[] bytes) throws WeatherFileException {
        String found = "";
        String remedy = FETCH;
        if (Unpacked.startsWith(bytes, '%', 'P', 'D', 'F')) {
            found = "a PDF document";
        } else if (Unpacked.startsWith(bytes, 0x89, 'H', 'D', 'F') || Unpacked.startsWith(bytes, 'C', 'D', 'F')) {
            found = "a NetCDF or HDF file of gridded data";
        } else if (Unpacked.startsWith(bytes, 'G', 'R', 'I', 'B')) {
            found = "a GRIB file of gridded data";
        } else if (Unpacked.startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
            found = "a workbook of a spreadsheet, or another office document";
            remedy = AS_CSV;
        } else if (isHtml(bytes)) {
            found = "a web page (HTML)";
            remedy = "The download saved the page and not the file: fetch the file that the page links to.";
        }
        if (!found.isEmpty()) {
            throw new WeatherFileException(path, 0, "", found, "a weather file", remedy);
        }
    }

    private static final String AS_CSV = "Save the sheet with the hours as csv, UTF-8, and give that.";

    private static boolean isHtml(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, 200), StandardCharsets.ISO_8859_1)
                .replaceFirst("^\u00EF\u00BB\u00BF", "")
                .strip()
                .toLowerCase(Locale.ROOT);
        return start.startsWith("<!doctype html") || start.startsWith("<html");
    }

    /** Refuses a zip that is the inside of an office document. */
    static void refuse(Path path, List<Unpacked.Entry> entries) throws WeatherFileException {
        for (Unpacked.Entry entry : entries) {
            if (entry.name().equals("[Content_Types].xml") || entry.name().equals("content.xml")) {
                throw new WeatherFileException(
                        path,
                        0,
                        "",
                        "a workbook of a spreadsheet, or another office document",
                        "a weather file",
                        AS_CSV);
            }
        }
    }

    private static void refuseReanalysis(FileText text) throws WeatherFileException {
        String names = text.line(text.first());
        if (names.contains("ssrd") && names.contains("t2m")) {
            throw text.error(
                    text.first(),
                    "",
                    "an ERA5 series, whose irradiance (ssrd) is global alone, summed in J/m²",
                    WITH_PARTS,
                    "Fetch the same reanalysis with direct and diffuse irradiance, by the hour and as csv: Open-Meteo has"
                            + " it so.");
        }
    }

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
        refuseReanalysis(text);
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
