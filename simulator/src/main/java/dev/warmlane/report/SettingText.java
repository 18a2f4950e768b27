package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.study.Sensitivity;
import dev.warmlane.study.Setting;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.Collectors;

/** What something is set to, with its unit. */
final class SettingText {

    /** Digits that a person reads without effort and that no input betters. */
    private static final MathContext DIGITS = new MathContext(3);

    /** Lengths below this are shown in mm or inches, m. */
    private static final double SHORT_M = 0.1;

    private SettingText() {}

    /** With its unit. */
    static String of(Setting setting, ReportSettings.Units units) {
        if (setting instanceof Setting.Words words) {
            return words.text();
        }
        Setting.Numbers numbers = (Setting.Numbers) setting;
        String unit = unit(numbers, units == ReportSettings.Units.US);
        return (values(numbers, unit) + " " + shown(unit)).strip();
    }

    /** The two ends that something is varied between. */
    static String range(Sensitivity varied, ReportSettings.Units units) {
        return like(varied.described(), varied.low().setting(), units) + " to "
                + like(varied.described(), varied.high().setting(), units)
                + unitOf(varied.described(), units);
    }

    private static String unitOf(Setting setting, ReportSettings.Units units) {
        return setting instanceof Setting.Numbers numbers
                ? (" " + shown(unit(numbers, units == ReportSettings.Units.US))).stripTrailing()
                : "";
    }

    private static String shown(String unit) {
        return unit.replace("2", "²").replace("deg", "°");
    }

    /** Without a unit, which is that of a setting beside it. */
    static String like(Setting beside, Setting setting, ReportSettings.Units units) {
        return setting instanceof Setting.Numbers numbers && beside instanceof Setting.Numbers other
                ? values(numbers, unit(other, units == ReportSettings.Units.US))
                : of(setting, units);
    }

    private static String values(Setting.Numbers numbers, String unit) {
        return numbers.values().stream()
                .map(value -> number(Quantity.in(unit, value, numbers.dimension())))
                .collect(Collectors.joining(", "));
    }

    private static String unit(Setting.Numbers numbers, boolean us) {
        Dimension dimension = numbers.dimension();
        return switch (dimension) {
            case LENGTH -> {
                boolean small = numbers.values().stream().allMatch(value -> value < SHORT_M);
                yield us ? small ? "in" : "ft" : small ? "mm" : "m";
            }
            case CONDUCTANCE -> us ? "Btu/h F" : "W/K";
            case HEAT_TRANSFER_COEFFICIENT -> us ? "Btu/h ft2 F" : "W/m2K";
            case CONDUCTIVITY -> us ? "Btu/h ft F" : "W/mK";
            case MASS_FLOW_PER_AREA -> us ? "gal/min/ft2" : "kg/s/m2";
            case TEMPERATURE_DIFFERENCE -> us ? "degF" : "K";
            case DURATION -> "h";
            default -> dimension.baseUnit();
        };
    }

    private static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
