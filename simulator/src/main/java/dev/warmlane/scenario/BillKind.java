package dev.warmlane.scenario;

import dev.warmlane.heater.Bill;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.units.Quantity;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** An amount of fuel or energy as a bill has it. What it cost is another key's. */
record BillKind() implements Kind<Bill> {

    private static final Pattern AMOUNT = Pattern.compile("(\\d+(?:\\.\\d*)?)\\s*([A-Za-z]\\S*)");

    @Override
    public Bill read(Object toml) throws BadValueException {
        Matcher matcher =
                AMOUNT.matcher(toml instanceof String text ? text.strip().replace("\u00b3", "3") : "");
        Optional<SaleUnit> unit = matcher.matches() ? SaleUnit.of(matcher.group(2)) : Optional.empty();
        if (unit.isEmpty()) {
            throw BadValueException.of(toml, allowed());
        }
        try {
            return new Bill(Double.parseDouble(matcher.group(1)), unit.get(), OptionalDouble.empty());
        } catch (IllegalArgumentException e) {
            throw BadValueException.of(toml, allowed());
        }
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
