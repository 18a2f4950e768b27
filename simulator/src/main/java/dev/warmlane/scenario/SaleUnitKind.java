package dev.warmlane.scenario;

import dev.warmlane.heater.SaleUnit;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** A unit that energy is sold in, by its symbol. */
record SaleUnitKind() implements Kind<SaleUnit> {

    @Override
    public SaleUnit read(Object toml) throws BadValueException {
        Optional<SaleUnit> unit = toml instanceof String text ? SaleUnit.of(text.strip()) : Optional.empty();
        return unit.orElseThrow(() -> BadValueException.of(toml, allowed()));
    }

    @Override
    public String write(SaleUnit value) {
        return "\"" + value.symbol() + "\"";
    }

    @Override
    public String allowed() {
        return Arrays.stream(SaleUnit.values())
                .map(u -> "\"" + u.symbol() + "\"")
                .collect(Collectors.joining(", "));
    }

    @Override
    public SaleUnit standIn() {
        return SaleUnit.KWH;
    }
}
