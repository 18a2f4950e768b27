package dev.warmlane.examples;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.units.QuantityException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads an area with its unit, in m². */
final class AreaConverter implements ITypeConverter<Double> {

    @Override
    public Double convert(String text) {
        try {
            return CollectorArray.AREA.read(text);
        } catch (QuantityException e) {
            throw new TypeConversionException(String.valueOf(e.getMessage()));
        }
    }
}
