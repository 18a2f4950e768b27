package dev.warmlane.irradiance;

/**
 * Where a row of racks stands among the others. In an array of N rows the first row has nothing before its front and the
 * last nothing behind its back: together they see what one row alone sees once, and the rest what an interior row sees.
 * So a single row weighs 1/N and an interior row (N - 1)/N, exactly for beam and sky, closely for the roof's warmth.
 */
public enum RowPlace {
    /** A row alone: nothing before it, nothing behind it. */
    FIRST,
    /** A row with endlessly many equal rows before and behind it. */
    INTERIOR
}
