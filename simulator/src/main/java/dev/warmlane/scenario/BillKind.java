package dev.warmlane.scenario;

import dev.warmlane.heater.Bill;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** An amount of fuel or energy as a bill has it. What it cost is another key's. */
record BillKind() implements Kind<Bill> {

    /** Three digits behind a point, in units so small that no bill has thousandths of them. */
    private static final Pattern POINT =
            Pattern.compile("[1-9]\\d{0,2}(?:\\.\\d{3})+\\s*(?i:m3|m\u00b3|ccf|l|gal\\w*|kwh|therms?|mj)");

    private static final Pattern MONEY = Pattern.compile("[$\u20ac\u00a3]|[A-Z]{3}|(?i:euros?|dollars?|pounds?)");

    @Override
    public Bill read(Object toml) throws BadValueException {
        if (!(toml instanceof String text)) {
            throw BadValueException.of(toml, allowed());
        }
        if (POINT.matcher(text.strip()).matches()) {
            throw new BadValueException("found " + BadValueException.show(toml)
                    + "; its point may part thousands or decimals; write "
                    + BadValueException.quote(text.strip().replace(".", ""))
                    + ", or a point with more digits behind it; allowed: "
                    + allowed());
        }
        try {
            Quantity.Written amount = Quantity.written(text);
            Optional<SaleUnit> unit = SaleUnit.of(amount.unit());
            if (unit.isPresent()) {
                return new Bill(amount.number(), unit.get(), OptionalDouble.empty());
            }
            if (MONEY.matcher(amount.unit()).matches()) {
                throw new BadValueException("found " + BadValueException.show(toml)
                        + "; write how much was bought, not what was paid; allowed: " + allowed());
            }
        } catch (QuantityException unclear) {
            throw new BadValueException(unclear.getMessage() + "; allowed: " + allowed());
        } catch (IllegalArgumentException e) {
            throw BadValueException.of(toml, allowed());
        }
        throw BadValueException.of(toml, allowed());
    }

    @Override
    public String write(Bill value) {
        String amount = Quantity.plain(value.amount());
        String clear = POINT.matcher(amount + " " + value.unit().symbol()).matches() ? amount + "0" : amount;
        return "\"" + clear + " " + value.unit().symbol() + "\"";
    }

    @Override
    public String allowed() {
        return "an amount above 0 in " + units();
    }

    /** The units that energy is sold in. */
    static String units() {
        return Arrays.stream(SaleUnit.values()).map(SaleUnit::symbol).collect(Collectors.joining(", "));
    }

    @Override
    public Bill standIn() {
        return new Bill(1, SaleUnit.KWH, OptionalDouble.empty());
    }
}
