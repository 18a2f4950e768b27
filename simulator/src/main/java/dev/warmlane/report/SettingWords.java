package dev.warmlane.report;

import dev.warmlane.study.Sensitivity;
import dev.warmlane.study.Setting;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.Collectors;

/** What something is set to, with its unit. */
final class SettingWords {

    /** Digits that a person reads without effort and that no input betters. */
    private static final MathContext DIGITS = new MathContext(3);

    /** Lengths below this are shown in mm or inches, m. */
    private static final double SHORT_M = 0.1;

    private SettingWords() {}

    /** With its unit. */
    static String of(Setting setting, UnitSystem units) {
        return setting.match(
                numbers -> values(numbers, symbol(numbers, units)) + unitOf(setting, units), Setting.Words::text);
    }

    /** The two ends that something is varied between. */
    static String range(Sensitivity varied, UnitSystem units) {
        return like(varied.described(), varied.low().setting(), units) + " to "
                + like(varied.described(), varied.high().setting(), units)
                + unitOf(varied.described(), units);
    }

    /** Without a unit, which is that of a setting beside it. */
    static String like(Setting beside, Setting setting, UnitSystem units) {
        return setting.match(
                numbers -> beside.match(other -> values(numbers, symbol(other, units)), words -> of(setting, units)),
                Setting.Words::text);
    }

    private static String unitOf(Setting setting, UnitSystem units) {
        return setting.match(numbers -> (" " + Measure.written(symbol(numbers, units))).stripTrailing(), words -> "");
    }

    private static String values(Setting.Numbers numbers, String symbol) {
        return numbers.values().stream()
                .map(value -> number(Quantity.in(symbol, value, numbers.dimension())))
                .collect(Collectors.joining(", "));
    }

    private static String symbol(Setting.Numbers numbers, UnitSystem units) {
        Dimension dimension = numbers.dimension();
        boolean small =
                dimension == Dimension.LENGTH && numbers.values().stream().allMatch(value -> value < SHORT_M);
        return small
                ? Measure.SMALL_LENGTH.symbol(units)
                : Measure.of(dimension).map(measure -> measure.symbol(units)).orElse(dimension.baseUnit());
    }

    private static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
