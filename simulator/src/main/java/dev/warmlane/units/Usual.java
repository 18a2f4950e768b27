package dev.warmlane.units;

/**
 * What is taken where nobody says otherwise. It stands beside the range of its value: code takes the value from here, the
 * scenario's key refers to it, and report and documentation tell its source from it.
 *
 * @param range what the value may be
 * @param value the value, in {@link Range#unit}
 * @param source where it comes from, in words that a report can show; it says so where there is no source
 */
public record Usual(Range range, double value, String source) {

    /** Checks that the value lies in its range, and that a source is named. */
    public Usual {
        range.check(value);
        if (source.isBlank()) {
            throw new IllegalArgumentException("say where the usual " + range.what() + " of " + range.write(value)
                    + " comes from, or that there is no source");
        }
    }
}
