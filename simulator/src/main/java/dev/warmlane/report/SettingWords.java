package dev.warmlane.report;

import dev.warmlane.study.Sensitivity;
import dev.warmlane.study.Setting;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Quantity;
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
    static String of(Setting setting, Numbers numbers) {
        return setting.match(
                given -> values(given, symbol(given, numbers), numbers) + unitOf(setting, numbers),
                Setting.Words::text);
    }

    /** The two ends that something is varied between. */
    static String range(Sensitivity varied, Numbers numbers) {
        return like(varied.described(), varied.low().setting(), numbers) + " to "
                + like(varied.described(), varied.high().setting(), numbers)
                + unitOf(varied.described(), numbers);
    }

    /** Without a unit, which is that of a setting beside it. */
    static String like(Setting beside, Setting setting, Numbers numbers) {
        return setting.match(
                given -> beside.match(
                        other -> values(given, symbol(other, numbers), numbers), words -> of(setting, numbers)),
                Setting.Words::text);
    }

    private static String unitOf(Setting setting, Numbers numbers) {
        return setting.match(given -> (" " + Measure.written(symbol(given, numbers))).stripTrailing(), words -> "");
    }

    private static String values(Setting.Numbers given, String symbol, Numbers numbers) {
        return given.values().stream()
                .map(value -> number(numbers, Quantity.in(symbol, value, given.dimension())))
                .collect(Collectors.joining(", "));
    }

    private static String symbol(Setting.Numbers given, Numbers numbers) {
        Dimension dimension = given.dimension();
        boolean small = dimension == Dimension.LENGTH && given.values().stream().allMatch(value -> value < SHORT_M);
        return small
                ? Measure.SMALL_LENGTH.symbol(numbers.units())
                : Measure.of(dimension)
                        .map(measure -> measure.symbol(numbers.units()))
                        .orElse(dimension.baseUnit());
    }

    private static String number(Numbers numbers, double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS);
        return rounded.signum() == 0
                ? "0"
                : numbers.notation()
                        .numbers()
                        .decimals(rounded.stripTrailingZeros().toPlainString());
    }
}
