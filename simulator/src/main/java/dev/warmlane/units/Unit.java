package dev.warmlane.units;

/**
 * One unit of a dimension: value in the base unit = (number + offset) · factor.
 *
 * @param symbol how the unit is written, in plain letters
 * @param factor size in the base unit of its dimension
 * @param offset what is added to the number first, in this unit; zero except for temperatures
 */
record Unit(String symbol, double factor, double offset) {

    static Unit unit(String symbol, double factor) {
        return new Unit(symbol, factor, 0);
    }

    double toBase(double number) {
        return (number + offset) * factor;
    }

    double fromBase(double value) {
        return value / factor - offset;
    }
}
