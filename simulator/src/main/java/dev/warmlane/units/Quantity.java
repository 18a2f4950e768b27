package dev.warmlane.units;

import dev.warmlane.files.Printable;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers written with their unit, such as "8000 ft2", "27 degC", "0.1 gal/min/ft2", "0.12 per kWh".
 *
 * <p>The decimal sign is always a point, whatever the language of the machine. Units keep their case (m, M). "²", "³",
 * "°C", "·", brackets and blanks inside the unit make no difference, and "per h per m²" is written with strokes: L/h/m2.
 */
public final class Quantity {

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)(.*)");
    private static final Pattern MORE_DIGITS = Pattern.compile("[,.']?\\d.*");

    private static final double LONGEST_PLAIN = 1e9;
    private static final double SHORTEST_PLAIN = 1e-9;

    private static final Pattern SECOND_NUMBER = Pattern.compile(".*\\s\\d.*");

    private Quantity() {}

    /**
     * The value in the base unit of the dimension, {@link Dimension#baseUnit}.
     *
     * @param text a number and a unit
     * @param dimension what the text must be
     * @throws QuantityException if the text is not a number with a unit of that dimension
     */
    public static double parse(String text, Dimension dimension) {
        return parse(text, dimension, dimension.baseUnit());
    }

    /**
     * The value in a unit of the dimension; a number that was written in that unit comes back as it stands.
     *
     * @param text a number and a unit
     * @param dimension what the text must be
     * @param in one of {@link Dimension#allowedUnits}
     * @throws QuantityException if the text is not a number with a unit of that dimension
     */
    public static double parse(String text, Dimension dimension, String in) {
        String trimmed = text.strip().replace('\u2212', '-');
        Matcher matcher = NUMBER_AND_UNIT.matcher(trimmed);
        if (!matcher.matches()) {
            throw failure(text, dimension, "does not begin with a number", "");
        }
        String written = matcher.group(2).strip();
        if (MORE_DIGITS.matcher(written).matches()) {
            throw failure(text, dimension, "has a number with a comma or a gap; write a decimal point only", "");
        }
        double number = Double.parseDouble(matcher.group(1));
        if (Double.isInfinite(number)) {
            throw failure(text, dimension, "is too large", "");
        }
        Unit unit = dimension.find(written);
        if (unit == null) {
            throw unknownUnit(text, dimension, written);
        }
        double value = convert(number, unit, known(in, dimension));
        if (Double.isInfinite(value)) {
            throw failure(text, dimension, "is too large", "");
        }
        return value;
    }

    /**
     * A value of the base unit in another unit of the dimension.
     *
     * @param value in the base unit
     * @param unit one of {@link Dimension#allowedUnits}
     * @throws QuantityException if the dimension has no such unit
     */
    public static double in(String unit, double value, Dimension dimension) {
        return known(unit, dimension).fromBase(value);
    }

    /**
     * A value of a unit in the base unit of the dimension.
     *
     * @param value in the unit
     * @param unit one of {@link Dimension#allowedUnits}
     * @throws QuantityException if the dimension has no such unit
     */
    public static double base(double value, String unit, Dimension dimension) {
        return known(unit, dimension).toBase(value);
    }

    /**
     * A number without exponent and without a useless ".0", from which the same number is read; one that would be very
     * long as Java writes it.
     */
    public static String plain(double value) {
        double size = Math.abs(value);
        if (!(size < LONGEST_PLAIN) || (size > 0 && size < SHORTEST_PLAIN)) {
            return Double.toString(value);
        }
        BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
        return (exact.scale() < 0 ? exact.setScale(0) : exact).toPlainString();
    }

    private static double convert(double number, Unit from, Unit to) {
        return from.equals(to) ? number : to.fromBase(from.toBase(number));
    }

    private static Unit known(String unit, Dimension dimension) {
        Unit found = dimension.find(unit);
        if (found == null) {
            throw unknownUnit(unit, dimension, unit);
        }
        return found;
    }

    /** Turns numbers of one unit of a dimension into numbers of another. */
    static DoubleUnaryOperator converter(String from, String to, Dimension dimension) {
        Unit given = Objects.requireNonNull(dimension.find(from), from);
        Unit wanted = Objects.requireNonNull(dimension.find(to), to);
        return value -> wanted.fromBase(given.toBase(value));
    }

    private static QuantityException unknownUnit(String text, Dimension dimension, String written) {
        if (written.isEmpty()) {
            return failure(text, dimension, "has no unit", "");
        }
        if (SECOND_NUMBER.matcher(written).matches()) {
            return failure(text, dimension, "has two numbers; write one number and one unit", "");
        }
        Unit meant = dimension.find(UnitWords.symbols(written));
        if (meant != null) {
            return failure(
                    text, dimension, "has an unknown unit, \"" + Printable.quote(written) + "\"", meant.symbol());
        }
        Optional<Dimension> other = Arrays.stream(Dimension.values())
                .filter(candidate -> candidate.find(written) != null)
                .findFirst();
        if (other.isPresent()) {
            return failure(text, dimension, "is " + other.get().phrase(), "");
        }
        List<String> symbols = dimension.allowedUnits();
        String nearest = Spelling.nearest(written, symbols).orElse("");
        return failure(text, dimension, "has an unknown unit, \"" + Printable.quote(written) + "\"", nearest);
    }

    private static QuantityException failure(String text, Dimension dimension, String what, String nearest) {
        return new QuantityException(text, dimension, what, nearest);
    }
}
