package dev.warmlane.examples;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads an area with its unit, in m². */
final class AreaConverter implements ITypeConverter<Double> {

    @Override
    public Double convert(String text) {
        try {
            return Quantity.parse(text, Dimension.AREA);
        } catch (QuantityException e) {
            throw new TypeConversionException(String.valueOf(e.getMessage()));
        }
    }
}
