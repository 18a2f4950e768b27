package dev.warmlane.scenario;

import dev.warmlane.heater.Carrier;
import dev.warmlane.season.Installation;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;

/**
 * How the reader of a report wants it.
 *
 * @param title the title
 * @param units the units of its numbers, see {@link #units(Installation)}
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

    /** The units of a report on an installation: what is heated with electricity is told in kWh in the United States too. */
    public UnitSystem units(Installation built) {
        return built.heater()
                .filter(heater -> heater.fuel().carrier() == Carrier.ELECTRICITY)
                .map(heater -> units.electric())
                .orElse(units);
    }
}
