package dev.warmlane.scenario;

import dev.warmlane.units.UnitSystem;

/**
 * How the reader of a report wants it.
 *
 * @param title the title
 * @param units the units of its numbers
 * @param letterhead who hands it over, and to whom
 */
public record ReportSettings(String title, UnitSystem units, Letterhead letterhead) {

    /** Without a letterhead. */
    public ReportSettings(String title, UnitSystem units) {
        this(title, units, Letterhead.NONE);
    }
}
