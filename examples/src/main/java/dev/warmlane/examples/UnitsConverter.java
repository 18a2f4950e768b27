package dev.warmlane.examples;

import dev.warmlane.scenario.ReportSettings;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the units of a report by the words that the help and the scenario files use. */
final class UnitsConverter implements ITypeConverter<ReportSettings.Units> {

    @Override
    public ReportSettings.Units convert(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "metric" -> ReportSettings.Units.METRIC;
            case "us" -> ReportSettings.Units.US;
            default -> throw new TypeConversionException("expected metric or us, but was \"" + text + "\"");
        };
    }
}
