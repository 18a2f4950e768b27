package dev.warmlane.units;

import dev.warmlane.files.Printable;
import java.util.stream.Collectors;

/** A text that is not a quantity of the kind asked for. The message says what was found and what is allowed. */
public final class QuantityException extends IllegalArgumentException {

    private static final long serialVersionUID = 1;

    QuantityException(String found, Dimension dimension, String what, String nearest) {
        super(message(found, dimension, what, nearest));
    }

    private static String message(String found, Dimension dimension, String what, String nearest) {
        String units = dimension.allowedUnits().stream()
                .map(symbol -> symbol.isEmpty() ? "a plain number" : symbol)
                .collect(Collectors.joining(", "));
        String hint = nearest.isEmpty() ? "" : ", did you mean " + nearest + "?";
        return "\"" + Printable.quote(found) + "\" " + what + hint + "; write " + dimension.phrase()
                + " as a number with one of: " + units;
    }
}
