package dev.warmlane.scenario;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import dev.warmlane.units.Range;
import dev.warmlane.units.UnitSystem;
import java.util.regex.Pattern;

/** Kinds of numbers: quantities with their unit, plain numbers, shares, counts. All that they are follows from a range. */
final class Kinds {

    /** A larger number tells nobody more than the text it was read from. */
    private static final double LONGEST_TOLD = 1e9;

    private static final Pattern BARE = Pattern.compile("[+-]?\\d+(?:\\.\\d+)?");

    private Kinds() {}

    /** A number of a range: with its unit in quotes, or plain where it has none; a share may also be a percentage. */
    static Kind<Double> of(Range range) {
        return new Amount(range);
    }

    /** A whole number of a range. */
    static Kind<Integer> count(Range range) {
        return new Count(range);
    }

    private record Amount(Range range) implements Kind<Double> {

        @Override
        public Double read(Object toml) throws BadValueException {
            double value;
            if (toml instanceof String text && (percent() || !plain())) {
                value = read(text);
            } else if (toml instanceof Number number && plain()) {
                value = number.doubleValue();
            } else if (toml instanceof Number) {
                throw new BadValueException("found " + toml + ", a number without a unit; write it in quotes with its"
                        + " unit, " + inUnits(toml.toString()) + "; allowed: " + allowed());
            } else {
                throw BadValueException.of(toml, allowed());
            }
            if (!range.holds(value)) {
                throw new BadValueException("found " + BadValueException.show(toml) + inOurUnit(toml, value)
                        + "; allowed: " + allowed() + inPercent(toml, value) + otherwise(toml, value));
            }
            return value;
        }

        private double read(String text) throws BadValueException {
            if (!plain() && BARE.matcher(text.strip()).matches()) {
                throw new BadValueException("\"" + text.strip() + "\" has no unit; did you mean "
                        + inUnits(text.strip()) + "?; allowed: " + allowed());
            }
            try {
                return range.read(text);
            } catch (QuantityException e) {
                throw new BadValueException(e.getMessage() + "; allowed: " + allowed());
            }
        }

        /** A bare number in the unit that people write, and in that of the United States where it is another. */
        private String inUnits(String number) {
            String us = usUnit();
            String metric = "\"" + number + " " + range.written() + "\"";
            return us.isEmpty() ? metric : metric + " or \"" + number + " " + us + "\"";
        }

        private String usUnit() {
            return Measure.of(range.dimension(), range.written())
                    .map(measure -> measure.symbol(UnitSystem.US))
                    .filter(symbol -> !symbol.equals(range.written()))
                    .orElse("");
        }

        /** What was meant by a number that is allowed in the other country's unit, or by a direction from the south. */
        private String otherwise(Object toml, double value) {
            if (range.dimension() == Dimension.DIRECTION) {
                return "; clockwise from north: east 90, south 180, west 270 deg";
            }
            String us = usUnit();
            String written = Quantity.plain(range.inWritten(value));
            boolean meant = !us.isEmpty()
                    && Math.abs(value) < LONGEST_TOLD
                    && toml.toString().strip().replace("°", "deg").endsWith(range.written())
                    && range.holds(range.read(written + " " + us));
            return meant ? "; did you mean \"" + written + " " + us + "\"?" : "";
        }

        @Override
        public boolean takesNumbers() {
            return plain();
        }

        private boolean percent() {
            return range.dimension() == Dimension.FRACTION;
        }

        private boolean plain() {
            return percent() || range.dimension() == Dimension.NUMBER;
        }

        /** A share that was written as a percentage without its sign; what is just above 1 is another slip. */
        private String inPercent(Object toml, double value) {
            boolean meant = percent() && toml instanceof Number && value >= 2 && range.holds(value / 100);
            return meant ? "; did you mean \"" + toml + " %\"?" : "";
        }

        /** The value beside a text in other units, so that it can be compared with what is allowed. */
        private String inOurUnit(Object toml, double value) {
            boolean same = toml instanceof Number
                    || !(Math.abs(range.inWritten(value)) < LONGEST_TOLD)
                    || toml.toString().strip().endsWith(" " + range.written());
            return same ? "" : ", that is " + show(value);
        }

        @Override
        public String write(Double value) {
            return plain() ? range.write(value) : "\"" + range.write(value) + "\"";
        }

        @Override
        public String allowed() {
            String otherwise = range.dimension().otherwise();
            String ends = range.dimension() == Dimension.NUMBER ? "a number, " + range.ends() : range.ends();
            return otherwise.isEmpty() ? ends : ends + ", or " + otherwise;
        }

        @Override
        public String show(Double value) {
            return ReportUnits.message(range.inWritten(value), range.written());
        }

        @Override
        public String show(Double value, UnitSystem units) {
            return ReportUnits.show(range.inWritten(value), range.written(), range.dimension(), units);
        }

        @Override
        public Double standIn() {
            return range.lowest();
        }
    }

    private record Count(Range range) implements Kind<Integer> {

        @Override
        public Integer read(Object toml) throws BadValueException {
            if (toml instanceof Long value && range.holds(value)) {
                return value.intValue();
            }
            throw BadValueException.of(toml, allowed());
        }

        @Override
        public boolean takesNumbers() {
            return true;
        }

        @Override
        public String write(Integer value) {
            return value.toString();
        }

        @Override
        public String allowed() {
            return "a whole number, " + range.ends();
        }

        @Override
        public Integer standIn() {
            return (int) range.lowest();
        }
    }
}
