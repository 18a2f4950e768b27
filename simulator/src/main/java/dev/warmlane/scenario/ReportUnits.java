package dev.warmlane.scenario;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/** Quantities of a scenario in the units of its report. */
final class ReportUnits {

    /** Enough to read, and free of the noise of conversion. */
    private static final MathContext METRIC_DIGITS = new MathContext(5);

    private static final MathContext US_DIGITS = new MathContext(4);

    private ReportUnits() {}

    /** A value of a metric unit as a report shows it. */
    static String show(double value, String unit, Dimension dimension, UnitSystem units) {
        return show(value, unit, Measure.of(dimension, unit), units);
    }

    /** The same, in another unit where the measure has one. */
    static String show(double value, String unit, Optional<Measure> told, UnitSystem units) {
        Optional<Measure> us = told.filter(m -> units.us() && !m.symbol(units).equals(unit));
        if (us.isEmpty()) {
            return (rounded(value, METRIC_DIGITS) + " " + Measure.written(unit)).strip();
        }
        Dimension dimension = us.get().dimension();
        double base = Quantity.base(value, unit, dimension);
        return rounded(Quantity.in(us.get().symbol(units), base, dimension), US_DIGITS) + " "
                + us.get().unit(units);
    }

    /** A share as a report shows it. */
    static String percent(double share) {
        return rounded(100 * share, METRIC_DIGITS) + " %";
    }

    /** A value of a metric unit as a message has it, spelled as in the file. */
    static String message(double value, String unit) {
        return (rounded(value, METRIC_DIGITS) + " " + unit).strip();
    }

    private static String rounded(double value, MathContext digits) {
        return Quantity.plain(new BigDecimal(value).round(digits).doubleValue());
    }
}
