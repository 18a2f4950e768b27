package dev.warmlane.scenario;

import static java.util.Map.entry;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;

/** Quantities of a scenario in the units of its report. */
final class ReportUnits {

    /** What stands for a metric unit in the United States; a unit that is missing is used there too. */
    private static final Map<String, String> US = Map.ofEntries(
            entry("mm", "in"),
            entry("m", "ft"),
            entry("m2", "ft2"),
            entry("L/m2", "gal/ft2"),
            entry("kg/m2", "lb/ft2"),
            entry("kg/s/m2", "gal/min/ft2"),
            entry("L/day", "gal/day"),
            entry("degC", "degF"),
            entry("K", "degF"),
            entry("m/s", "mph"),
            entry("kW", "Btu/h"),
            entry("W/K", "Btu/h F"),
            entry("W/m2K", "Btu/h ft2 F"),
            entry("W/mK", "Btu/h ft F"),
            entry("m2K/W", "h ft2 F/Btu"));

    /** Enough to read, and free of the noise of conversion. */
    private static final MathContext METRIC_DIGITS = new MathContext(5);

    private static final MathContext US_DIGITS = new MathContext(4);

    private ReportUnits() {}

    /** A value of a metric unit as a report shows it. */
    static String show(double value, String unit, Dimension dimension, ReportSettings.Units units) {
        String us = US.get(unit);
        if (units == ReportSettings.Units.METRIC || us == null) {
            return (rounded(value, METRIC_DIGITS) + " " + unit).strip();
        }
        double base = Quantity.base(value, unit, dimension);
        return rounded(Quantity.in(us, base, dimension), US_DIGITS) + " " + us;
    }

    private static String rounded(double value, MathContext digits) {
        return Quantity.plain(new BigDecimal(value).round(digits).doubleValue());
    }
}
