package dev.warmlane.weather;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;

/** Times written as one cell. */
final class Stamps {

    private Stamps() {}

    /** For example {@code 2020-07-01T13:00}, also with a blank between, with seconds, or with a Z behind it. */
    static LocalDateTime iso(FileText text, int line, String column, @Nullable String cell)
            throws WeatherFileException {
        if (cell != null) {
            String stamp = cell.strip().replace(' ', 'T');
            try {
                return LocalDateTime.parse(stamp.endsWith("Z") ? stamp.substring(0, stamp.length() - 1) : stamp);
            } catch (DateTimeParseException e) {
                // told below, together with the empty cell
            }
        }
        throw text.error(
                line,
                column,
                cell == null ? "an empty cell" : "\"" + cell + "\"",
                "a time as 2020-07-01T13:00",
                "Correct the stamp; a spreadsheet may have rewritten it.");
    }

    /** The same of a full hour. */
    static LocalDateTime fullHour(FileText text, int line, String column, @Nullable String cell)
            throws WeatherFileException {
        LocalDateTime time = iso(text, line, column, cell);
        if (time.getMinute() != 0 || time.getSecond() != 0) {
            throw text.error(
                    line,
                    column,
                    "\"" + cell + "\"",
                    "a full hour",
                    "Only hourly files can be read: average the file to hours.");
        }
        return time;
    }
}
