package dev.warmlane.units;

import dev.warmlane.files.Printable;
import java.util.stream.Collectors;

/** A text that is not a quantity of the kind asked for. The message says what was found and what is allowed. */
public final class QuantityException extends IllegalArgumentException {

    private static final long serialVersionUID = 1;

    private QuantityException(String message) {
        super(message);
    }

    /** With all units that are allowed. */
    static QuantityException of(String found, Dimension dimension, String what) {
        String units = dimension.allowedUnits().stream()
                .map(symbol -> symbol.isEmpty() ? "a plain number" : symbol)
                .collect(Collectors.joining(", "));
        String otherwise = dimension.otherwise().isEmpty() || dimension == Dimension.FRACTION
                ? ""
                : ", or " + dimension.otherwise();
        return told(found, what + "; write " + dimension.phrase() + " as a number with one of: " + units + otherwise);
    }

    /** With what to do about it, where that is known. */
    static QuantityException told(String found, String whatAndMend) {
        return new QuantityException("\"" + Printable.quote(found) + "\" " + whatAndMend);
    }
}
