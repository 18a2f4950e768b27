package dev.warmlane.validation;

import dev.warmlane.DocBlock;
import java.util.Locale;

/**
 * What every experiment of the handbook ends with: a row for each quantity, {@code | quantity | experiment | values | mean |
 * bias | scatter | measured within |}. {@code HandbookTest} puts the rows of all pages together.
 */
final class Handbook {

    static final String HEAD = """
            | quantity | experiment | values | mean measured | bias | scatter | measured within |
            |---|---|---|---|---|---|---|
            """;

    private Handbook() {}

    /** A row in per cent of the mean measured value. */
    static String percent(String quantity, String experiment, Residuals residuals, String unit, double withinPercent) {
        double mean = residuals.meanMeasured();
        return String.format(
                Locale.ROOT,
                "| %s | %s | %d | %s %s | %s %% | %.1f %% | %.1f %% |\n",
                quantity,
                experiment,
                residuals.rows(),
                number(mean),
                unit,
                DocBlock.signed(100 * residuals.bias() / mean, 1),
                100 * residuals.scatter() / mean,
                withinPercent);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.1f" : "%.0f", value);
    }
}
