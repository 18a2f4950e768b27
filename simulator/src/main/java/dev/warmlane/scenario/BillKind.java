package dev.warmlane.scenario;

import dev.warmlane.heater.Bill;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.units.LoneMark;
import dev.warmlane.units.PriceText;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** An amount of fuel or energy as a bill has it. What it cost is another key's. */
record BillKind() implements Kind<Bill> {

    /** Units so small that no bill has thousandths of them. */
    private static final Set<SaleUnit> SMALL = EnumSet.of(
            SaleUnit.M3, SaleUnit.CCF, SaleUnit.LITRE, SaleUnit.GALLON, SaleUnit.KWH, SaleUnit.THERM, SaleUnit.MJ);

    /** Three letters are a currency where they are no unit. */
    private static final String CURRENCY = "(?!CCF|MCF|THM|DTH|KWH|MWH)" + PriceText.CURRENCY;

    private static final Pattern MONEY = Pattern.compile(CURRENCY + "\\s*\\d.*|\\d[\\d.,' ]*(?:,-)?\\s*" + CURRENCY);

    private static final Pattern ABOUT =
            Pattern.compile("(?i)^(?:(?:about|approx\\.?|around|ca\\.?)\\s+|~\\s*)(?=\\d)");

    @Override
    public Bill read(Object toml) throws BadValueException {
        if (!(toml instanceof String text)) {
            throw BadValueException.of(toml, allowed());
        }
        if (MONEY.matcher(text.strip()).matches()) {
            throw new BadValueException("found " + BadValueException.show(toml)
                    + "; write how much was bought, not what was paid; allowed: " + allowed());
        }
        try {
            Quantity.Written amount =
                    Quantity.written(ABOUT.matcher(text.strip()).replaceFirst(""));
            Optional<SaleUnit> unit = SaleUnit.of(amount.unit());
            if (unit.isEmpty()) {
                throw new BadValueException(
                        "found " + BadValueException.show(toml) + "; allowed: " + allowed() + meant(amount));
            }
            Optional<LoneMark> mark = LoneMark.of(text).filter(m -> m.point() && SMALL.contains(unit.get()));
            if (mark.isPresent()) {
                throw new BadValueException("found " + BadValueException.show(toml) + "; "
                        + mark.get().told() + "; allowed: " + allowed());
            }
            return new Bill(amount.number(), unit.get(), OptionalDouble.empty());
        } catch (QuantityException unclear) {
            throw text.matches(".*\\d.*")
                    ? new BadValueException(unclear.getMessage() + "; allowed: " + allowed())
                    : BadValueException.of(toml, allowed());
        } catch (IllegalArgumentException e) {
            throw BadValueException.of(toml, allowed());
        }
    }

    /** What was meant by words behind the unit, or by a unit that is some of another. */
    private static String meant(Quantity.Written amount) {
        String unit = amount.unit();
        if (unit.isEmpty()) {
            return "; it has no unit, such as kWh";
        }
        if (unit.equalsIgnoreCase("mcf")) {
            return "; an mcf is 10 ccf; did you mean \"" + Quantity.plain(10 * amount.number()) + " ccf\"?";
        }
        return SaleUnit.of(unit.replaceFirst("\\s.*", ""))
                .map(u -> "; did you mean \"" + Quantity.plain(amount.number()) + " " + u.symbol() + "\"?")
                .orElse("");
    }

    @Override
    public String write(Bill value) {
        String text = Quantity.plain(value.amount()) + " " + value.unit().symbol();
        return "\""
                + LoneMark.of(text)
                        .filter(mark -> SMALL.contains(value.unit()))
                        .map(LoneMark::decimals)
                        .orElse(text)
                + "\"";
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
