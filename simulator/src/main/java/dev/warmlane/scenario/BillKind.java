package dev.warmlane.scenario;

import dev.warmlane.heater.Bill;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** An amount of fuel or energy as a bill has it. What it cost is another key's. */
record BillKind() implements Kind<Bill> {

    @Override
    public Bill read(Object toml) throws BadValueException {
        if (!(toml instanceof String text)) {
            throw BadValueException.of(toml, allowed());
        }
        try {
            Quantity.Written amount = Quantity.written(text);
            Optional<SaleUnit> unit = SaleUnit.of(amount.unit());
            if (unit.isPresent()) {
                return new Bill(amount.number(), unit.get(), OptionalDouble.empty());
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
        return "\"" + Quantity.plain(value.amount()) + " " + value.unit().symbol() + "\"";
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
