package dev.warmlane.weather;

import dev.warmlane.files.Printable;

/**
 * One thing that was found, mended or estimated while weather was read, in plain words.
 *
 * @param kind how much it matters
 * @param line the first line of the file it was seen in, counted from 1; 0 where it is of the whole file
 * @param hours in how many hours it occurs; 0 where it is of the whole file
 * @param message what was found, what was done about it, and how to mend the file
 */
public record WeatherFinding(Kind kind, int line, int hours, String message) {

    /** Keeps what a file says printable. */
    public WeatherFinding {
        message = Printable.line(message);
    }

    /** How much a finding matters. */
    public enum Kind {
        /** Worth knowing, nothing to do: an estimate by a named method, an odd but harmless value. */
        NOTE,
        /** A value was replaced; the replacement is named. */
        REPAIR,
        /** Something that may make results wrong. */
        WARNING
    }
}
