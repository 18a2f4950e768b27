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
        return parts() > 0 ? (number + offset) / parts() : (number + offset) * factor;
    }

    double fromBase(double value) {
        return (parts() > 0 ? value * parts() : value / factor) - offset;
    }

    /**
     * How many make the base unit, where that is a whole number, else 0: a thousandth has no exact factor, but dividing by
     * a thousand rounds once, so that 9 mm are 0.009 m to the last digit.
     */
    private double parts() {
        double parts = Math.rint(1 / factor);
        return factor < 1 && parts * factor == 1 ? parts : 0;
    }
}
