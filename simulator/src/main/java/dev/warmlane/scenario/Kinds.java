package dev.warmlane.scenario;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.LoneMark;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import dev.warmlane.units.Range;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tomlj.TomlArray;

/** Kinds of numbers: quantities with their unit, plain numbers, shares, counts. All that they are follows from a range. */
final class Kinds {

    /** A larger number tells nobody more than the text it was read from. */
    private static final double LONGEST_TOLD = 1e9;

    /** Digits that somebody put into quotes, with whatever parts thousands or decimals. */
    private static final Pattern NUMERIC = Pattern.compile("[+-]?\\d[\\d.,]*");

    private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");

    private static final Pattern BARE = Pattern.compile("[+-]?\\d+(?:\\.\\d+)?");

    private Kinds() {}

    /** A number of a range: with its unit in quotes, or plain where it has none; a share may also be a percentage. */
    static Kind<Double> of(Range range) {
        return new Amount(range, Measure.of(range.dimension(), range.written()));
    }

    /** The same, told by a report as something else than what its unit is first of. */
    static Kind<Double> of(Range range, Measure told) {
        return new Amount(range, Optional.of(told));
    }

    /** A whole number of a range. */
    static Kind<Integer> count(Range range) {
        return new Count(range);
    }

    private record Amount(Range range, Optional<Measure> told) implements Kind<Double> {

        @Override
        public Double read(Object toml) throws BadValueException {
            double value;
            if (toml instanceof String text
                    && (percent() || !plain() || NUMERIC.matcher(text.strip()).matches())) {
                value = read(text);
            } else if (toml instanceof Number number && plain()) {
                value = number.doubleValue();
            } else if (toml instanceof Number) {
                throw new BadValueException("found " + toml + ", a number without a unit; write it in quotes with its"
                        + " unit, " + inUnits(toml.toString()) + "; allowed: " + allowed());
            } else {
                throw new BadValueException("found " + BadValueException.show(toml) + "; allowed: " + allowed()
                        + (toml instanceof String text ? LooseNumber.meant(text.strip(), range) : ""));
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

        /**
         * A bare number in the unit that people write, and in that of the United States where it is another; where one of
         * them is out of range, the other alone.
         */
        private String inUnits(String number) {
            String us = usUnit();
            List<String> all = us.isEmpty()
                    ? List.of(number + " " + range.written())
                    : List.of(number + " " + range.written(), number + " " + us);
            List<String> held = all.stream().filter(this::holds).toList();
            return "\"" + String.join("\" or \"", held.isEmpty() ? all : held) + "\"";
        }

        private boolean holds(String text) {
            try {
                return range.holds(range.read(text));
            } catch (QuantityException none) {
                return false;
            }
        }

        private String usUnit() {
            return Measure.of(range.dimension(), range.written())
                    .map(measure -> measure.symbol(UnitSystem.US))
                    .filter(symbol -> !symbol.equals(range.written()))
                    .orElse("");
        }

        /** What was meant by a number in thousands, by one in the other country's unit, or by a direction from the south. */
        private String otherwise(Object toml, double value) {
            if (range.dimension() == Dimension.DIRECTION) {
                return "; clockwise from north: east 90, south 180, west 270 deg";
            }
            Optional<String> thousands = toml instanceof String written ? range.inThousands(written) : Optional.empty();
            if (thousands.isPresent()) {
                return "; did you mean " + BadValueException.quote(thousands.get()) + "?";
            }
            String us = usUnit();
            if (us.isEmpty() || !(Math.abs(value) < LONGEST_TOLD)) {
                return "";
            }
            String text =
                    toml.toString().strip().replaceAll("\\s*(?:°|deg)\\s*(?=[CF]$)|(?<=\\d)\\s*(?=[CF]$)", " deg");
            String meant = text.endsWith(range.written())
                    ? Quantity.plain(range.inWritten(value)) + " " + us
                    : text.endsWith(us)
                            ? text.substring(0, text.length() - us.length()).strip() + " " + range.written()
                            : "";
            return holds(meant) ? "; did you mean \"" + meant + "\"?" : "";
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
            String text = toml.toString().strip();
            boolean meant = percent() && BARE.matcher(text).matches() && value >= 2 && range.holds(value / 100);
            return meant ? "; did you mean \"" + text + " %\"?" : "";
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
            return plain() ? range.write(value) : BadValueException.quote(range.write(value));
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
            return percent()
                    ? ReportUnits.percent(value)
                    : ReportUnits.show(range.inWritten(value), range.written(), told, units);
        }

        @Override
        public Double standIn() {
            return range.lowest();
        }
    }

    private record Count(Range range) implements Kind<Integer> {

        @Override
        public Integer read(Object toml) throws BadValueException {
            String text = toml.toString().strip();
            String whole = text.replaceFirst("\\.0+$", "");
            String said = "found " + BadValueException.show(toml);
            Optional<String> thousands = range.inThousands(text);
            if (!(toml instanceof TomlArray)
                    && WHOLE.matcher(whole).matches()
                    && range.holds(Integer.parseInt(whole))) {
                if (thousands.isEmpty()) {
                    return Integer.parseInt(whole);
                }
                throw new BadValueException(
                        said + "; " + LoneMark.of(text).map(LoneMark::told).orElse("") + "; allowed: " + allowed());
            }
            throw new BadValueException(said + "; allowed: " + allowed()
                    + thousands
                            .map(meant -> "; did you mean " + meant + "?")
                            .orElseGet(() -> toml instanceof String ? LooseNumber.meant(text, range) : ""));
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
