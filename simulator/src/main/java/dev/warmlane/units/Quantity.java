package dev.warmlane.units;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Numbers written with their unit, such as "8000 ft2", "27 degC", "0.1 gal/min/ft2", "0.12 per kWh".
 *
 * <p>The decimal sign is always a point, whatever the language of the machine. Thousands may be parted by blanks or
 * apostrophes, "400 000 Btu/h"; by a comma where it cannot be a decimal one: with a US unit, with more commas, or before
 * a point; by points where there are several. A single point parts decimals here; where it may part thousands, see
 * {@link Range#read}. Fractions, "5 1/2 ft", are read. "²", "³", "°C", "·", brackets and blanks inside the unit make no difference,
 * nor do units in words, "square feet", and large or small letters where no other unit is written so. Lengths may be
 * written as "5 ft 6 in", areas as two sides, "25 m x 12.5 m", tilts as "4:12", directions as "south-west".
 */
public final class Quantity {

    private static final Pattern MORE_DIGITS = Pattern.compile("[.,'/]?\\d.*");

    private static final double LONGEST_PLAIN = 1e9;
    private static final double SHORTEST_PLAIN = 1e-9;

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

    /** The mark of a quantity that may part thousands or decimals; empty where it has none, or is no single number. */
    static Optional<LoneMark> mark(String text, Dimension dimension) {
        String usual = NumberText.usual(text);
        return dimension.special(usual).isPresent() || unit(usual, dimension) == null
                ? Optional.empty()
                : LoneMark.of(usual);
    }

    /** Whether a number is followed by a unit that only people use who write decimals with a point. */
    static boolean isUs(String text, Dimension dimension) {
        Unit unit = unit(NumberText.usual(text), dimension);
        return unit != null && UnitText.isUs(unit.symbol());
    }

    private static @Nullable Unit unit(String usual, Dimension dimension) {
        NumberText number = NumberText.of(usual);
        return number == null ? null : dimension.find(number.rest());
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
        String usual = NumberText.usual(text);
        OptionalDouble special = dimension.special(usual);
        if (special.isPresent()) {
            return known(in, dimension).fromBase(special.getAsDouble());
        }
        NumberText number = number(text, usual, dimension);
        Unit unit = dimension.find(number.rest());
        if (unit == null) {
            throw QuantityTrouble.unit(text, usual, number, dimension, in);
        }
        if (number.comma() && !UnitText.isUs(unit.symbol())) {
            throw QuantityTrouble.doubtful(text);
        }
        double value = convert(number.value(), unit, known(in, dimension));
        if (Double.isInfinite(value)) {
            throw QuantityException.of(text, dimension, "is too large");
        }
        return value;
    }

    private static NumberText number(String text, String usual, Dimension dimension) {
        NumberText number = NumberText.of(usual);
        String withPoint = NumberText.withPoint(usual);
        if (!withPoint.isEmpty() && (number == null || !number.written().contains(","))) {
            throw QuantityTrouble.decimalComma(text, QuantityTrouble.mended(withPoint, dimension));
        }
        if (number == null) {
            throw QuantityTrouble.noNumber(text, usual, dimension);
        }
        if (MORE_DIGITS.matcher(number.rest()).matches()) {
            throw QuantityTrouble.moreDigits(text, usual, dimension);
        }
        if (Double.isInfinite(number.value())) {
            throw QuantityException.of(text, dimension, "is too large");
        }
        return number;
    }

    /**
     * A number and what follows it, whatever that is.
     *
     * @param number the number
     * @param unit what follows, without blanks around it
     */
    public record Written(double number, String unit) {}

    /**
     * The number that a text begins with, read as {@link #parse} reads it, for what no dimension has.
     *
     * @throws QuantityException if the text does not begin with a number, or with one whose comma may mean two things
     */
    public static Written written(String text) {
        NumberText number = number(text, NumberText.usual(text), Dimension.NUMBER);
        if (number.comma() && !UnitText.isUs(number.rest())) {
            throw QuantityTrouble.doubtful(text);
        }
        return new Written(number.value(), number.rest());
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
            throw QuantityException.of(unit, dimension, "is no unit of it");
        }
        return found;
    }

    /** Turns numbers of one unit of a dimension into numbers of another. */
    static DoubleUnaryOperator converter(String from, String to, Dimension dimension) {
        Unit given = Objects.requireNonNull(dimension.find(from), from);
        Unit wanted = Objects.requireNonNull(dimension.find(to), to);
        return value -> wanted.fromBase(given.toBase(value));
    }
}
