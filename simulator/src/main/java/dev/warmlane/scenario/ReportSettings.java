package dev.warmlane.scenario;

import dev.warmlane.units.UnitSystem;

/**
 * How the reader of a report wants it.
 *
 * @param title the title
 * @param units the units of its numbers
 */
public record ReportSettings(String title, UnitSystem units) {}
