package dev.warmlane.report.chart;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/**
 * The range of an axis and the steps of its ticks, which lie at multiples of the step.
 *
 * @param low lowest value shown; a multiple of the step but along a season, which begins on any day
 * @param high highest value shown, likewise
 * @param step from tick to tick: 1, 2 or 5 times a power of ten
 */
record Scale(double low, double high, double step) {

    /** The narrowest scale with about {@code steps} steps that holds two values. */
    static Scale holding(double lowest, double highest, int steps) {
        double span = highest - lowest;
        double step = span > 0 ? roundStep(span / steps) : roundStep(Math.max(1, Math.abs(highest)) / steps);
        double low = Math.floor(lowest / step + 1e-9) * step;
        // a little below nought rounds up to -0, which is no end of an axis: plus 0 makes it 0
        double high = Math.ceil(highest / step - 1e-9) * step + 0.0;
        return new Scale(low, high > low ? high : low + step, step);
    }

    /** The narrowest scale that holds some values and zero. */
    static Scale withZero(int steps, double[]... values) {
        double[] all = Arrays.stream(values).flatMapToDouble(Arrays::stream).toArray();
        return holding(
                Math.min(0, Arrays.stream(all).min().orElse(0)),
                Math.max(0, Arrays.stream(all).max().orElse(0)),
                steps);
    }

    /** The smallest round step that is not below a size. */
    static double roundStep(double size) {
        double power = Math.pow(10, Math.floor(Math.log10(size)));
        double digit = size / power;
        double round = digit <= 1 ? 1 : digit <= 2 ? 2 : digit <= 5 ? 5 : 10;
        return round * power;
    }

    /** Decimals that the ticks need, 0 to 6. */
    int decimals() {
        return (int) Math.min(6, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
    }

    /** The ticks of an axis with this range. */
    List<Plot.Tick> ticks(DoubleFunction<String> label) {
        double first = Math.ceil(low / step - 1e-9) * step;
        return IntStream.rangeClosed(0, (int) Math.floor((high - first) / step + 1e-9))
                .mapToDouble(i -> first + i * step)
                .mapToObj(at -> new Plot.Tick(at, label.apply(at)))
                .toList();
    }

    /** How many steps fit the range. */
    double steps() {
        return (high - low) / step;
    }
}
