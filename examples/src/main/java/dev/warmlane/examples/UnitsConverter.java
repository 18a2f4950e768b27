package dev.warmlane.examples;

import dev.warmlane.units.UnitSystem;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the units of a report by the words that the help and the scenario files use. */
final class UnitsConverter implements ITypeConverter<UnitSystem> {

    @Override
    public UnitSystem convert(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "metric" -> UnitSystem.METRIC;
            case "us" -> UnitSystem.US;
            default -> throw new TypeConversionException("expected metric or us, but was \"" + text + "\"");
        };
    }
}
