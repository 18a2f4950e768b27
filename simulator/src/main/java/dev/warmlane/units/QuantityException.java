package dev.warmlane.units;

import dev.warmlane.files.Printable;
import java.util.Optional;
import java.util.stream.Collectors;

/** A text that is not a quantity of the kind asked for. The message says what was found and what is allowed. */
public final class QuantityException extends IllegalArgumentException {

    private static final long serialVersionUID = 1;

    private final String found;
    private final Dimension dimension;
    private final String nearest;

    QuantityException(String found, Dimension dimension, String what, String nearest) {
        super(message(found, dimension, what, nearest));
        this.found = found;
        this.dimension = dimension;
        this.nearest = nearest;
    }

    /** The text as it was written. */
    public String found() {
        return found;
    }

    /** What the text should have been. */
    public Dimension dimension() {
        return dimension;
    }

    /** The allowed unit that is spelt most like the one found, if one is close. */
    public Optional<String> nearestUnit() {
        return nearest.isEmpty() ? Optional.empty() : Optional.of(nearest);
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
