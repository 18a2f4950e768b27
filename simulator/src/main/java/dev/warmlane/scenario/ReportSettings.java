package dev.warmlane.scenario;

import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;

/**
 * How the reader of a report wants it.
 *
 * @param title the title
 * @param units the units of its numbers
 * @param notation how they are written
 * @param letterhead who hands it over, and to whom
 */
public record ReportSettings(String title, UnitSystem units, Notation notation, Letterhead letterhead) {

    /** Without a letterhead, in the usual notation of the units. */
    public ReportSettings(String title, UnitSystem units) {
        this(title, units, Letterhead.NONE);
    }

    /** In the usual notation of the units. */
    public ReportSettings(String title, UnitSystem units, Letterhead letterhead) {
        this(title, units, Notation.usual(units), letterhead);
    }
}
