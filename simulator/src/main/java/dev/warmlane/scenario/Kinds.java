package dev.warmlane.scenario;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import java.math.BigDecimal;

/** Kinds of numbers: quantities with their unit, plain numbers, shares, counts. */
final class Kinds {

    /** A larger number tells nobody more than the text it was read from. */
    private static final double LONGEST_TOLD = 1e9;

    private Kinds() {}

    /** A number with a unit, written as text and read into {@code unit}, ends of the range included. */
    static Kind<Double> quantity(Dimension dimension, String unit, double lowest, double highest) {
        return new Measure(dimension, unit, lowest, highest, false);
    }

    /** A dimensionless number, which may also be a percentage, ends of the range included. */
    static Kind<Double> share(double lowest, double highest) {
        return new Measure(Dimension.FRACTION, "", lowest, highest, true);
    }

    /** A dimensionless factor, ends of the range included. */
    static Kind<Double> factor(double lowest, double highest) {
        return new Measure(Dimension.FRACTION, "", lowest, highest, false);
    }

    /** A whole number, ends of the range included. */
    static Kind<Integer> count(int lowest, int highest) {
        return new Count(lowest, highest);
    }

    /** A number without exponent and without a useless ".0", from which the same number is read. */
    static String plain(double value) {
        BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
        return (exact.scale() < 0 ? exact.setScale(0) : exact).toPlainString();
    }

    /** A quantity of the dimension in a unit of it. */
    static double read(String text, Dimension dimension, String unit, String allowed) throws BadValueException {
        try {
            return Quantity.in(unit, Quantity.parse(text, dimension), dimension);
        } catch (QuantityException e) {
            throw new BadValueException(e.getMessage() + "; allowed: " + allowed);
        }
    }

    private record Measure(Dimension dimension, String unit, double lowest, double highest, boolean percent)
            implements Kind<Double> {

        @Override
        public Double read(Object toml) throws BadValueException {
            double value;
            if (toml instanceof String text && (percent || dimension != Dimension.FRACTION)) {
                value = Kinds.read(text, dimension, unit, allowed());
            } else if (toml instanceof Number number && dimension == Dimension.FRACTION) {
                value = number.doubleValue();
            } else if (toml instanceof Number) {
                throw new BadValueException("found " + toml + ", a number without a unit; write it in quotes with its"
                        + " unit, \"" + toml + " " + unit + "\"; allowed: " + allowed());
            } else {
                throw BadValueException.of(toml, allowed());
            }
            if (!(value >= lowest && value <= highest)) {
                throw new BadValueException("found " + BadValueException.show(toml) + inOurUnit(toml, value)
                        + "; allowed: " + allowed() + inPercent(toml, value));
            }
            return value;
        }

        /** A share that was written as a percentage without its sign; what is just above 1 is another slip. */
        private String inPercent(Object toml, double value) {
            boolean meant =
                    percent && toml instanceof Number && value >= 2 && value / 100 >= lowest && value / 100 <= highest;
            return meant ? "; did you mean \"" + toml + " %\"?" : "";
        }

        /** The value beside a text in other units, so that it can be compared with what is allowed. */
        private String inOurUnit(Object toml, double value) {
            boolean same = toml instanceof Number
                    || !(Math.abs(value) < LONGEST_TOLD)
                    || toml.toString().strip().endsWith(" " + unit);
            return same ? "" : ", that is " + show(value);
        }

        @Override
        public String write(Double value) {
            return unit.isEmpty() ? plain(value) : "\"" + plain(value) + " " + unit + "\"";
        }

        @Override
        public String allowed() {
            String range = plain(lowest) + " to " + plain(highest);
            if (dimension == Dimension.FRACTION) {
                return percent ? range + ", or in %" : "a number, " + range;
            }
            return range + " " + unit;
        }

        @Override
        public String show(Double value) {
            return show(value, ReportSettings.Units.METRIC);
        }

        @Override
        public String show(Double value, ReportSettings.Units units) {
            return ReportUnits.show(value, unit, dimension, units);
        }

        @Override
        public Double standIn() {
            return lowest;
        }
    }

    private record Count(int lowest, int highest) implements Kind<Integer> {

        @Override
        public Integer read(Object toml) throws BadValueException {
            if (toml instanceof Long value && value >= lowest && value <= highest) {
                return value.intValue();
            }
            throw BadValueException.of(toml, allowed());
        }

        @Override
        public String write(Integer value) {
            return value.toString();
        }

        @Override
        public String allowed() {
            return "a whole number, " + lowest + " to " + highest;
        }

        @Override
        public Integer standIn() {
            return lowest;
        }
    }
}
