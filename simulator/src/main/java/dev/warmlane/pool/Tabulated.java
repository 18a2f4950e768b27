package dev.warmlane.pool;

import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function of temperature, looked up where it is needed again and again: in each cell the cubic through four of
 * its values, at the cell's ends and at a third and two thirds of it. For a cell of h kelvin it is off by up to
 * h⁴/1944·|f''''|, the remainder of the interpolation (derived). Outside the table the function itself is asked. Immutable.
 */
final class Tabulated {

    private static final int CUBIC = 4;

    private final DoubleUnaryOperator function;
    private final double fromC;
    private final double cellsPerK;
    private final int cells;
    /** The cubic of each cell over 0 to 1, constant term first. */
    private final double[] terms;

    /**
     * Tabulates a function.
     *
     * @param function of a temperature, °C
     * @param fromC where the table begins, °C
     * @param toC where it ends, °C
     * @param cellsPerK how many cells each kelvin has
     */
    Tabulated(DoubleUnaryOperator function, int fromC, int toC, int cellsPerK) {
        this.function = function;
        this.fromC = fromC;
        this.cellsPerK = cellsPerK;
        this.cells = (toC - fromC) * cellsPerK;
        this.terms = new double[cells * CUBIC];
        for (int cell = 0; cell < cells; cell++) {
            double a = value(cell);
            double b = value(cell + 1 / 3.0);
            double c = value(cell + 2 / 3.0);
            double d = value(cell + 1);
            // Newton's divided differences at 0, 1/3, 2/3 and 1, multiplied out
            int at = cell * CUBIC;
            terms[at] = a;
            terms[at + 1] = (-11 * a + 18 * b - 9 * c + 2 * d) / 2;
            terms[at + 2] = 9 * (2 * a - 5 * b + 4 * c - d) / 2;
            terms[at + 3] = 9 * (d - a + 3 * (b - c)) / 2;
        }
    }

    private double value(double cell) {
        return function.applyAsDouble(fromC + cell / cellsPerK);
    }

    /** The function at a temperature, °C. */
    double at(double temperatureC) {
        double x = (temperatureC - fromC) * cellsPerK;
        if (!(x >= 0 && x < cells)) {
            return function.applyAsDouble(temperatureC);
        }
        int cell = (int) x;
        double f = x - cell;
        int at = cell * CUBIC;
        return terms[at] + f * (terms[at + 1] + f * (terms[at + 2] + f * terms[at + 3]));
    }
}
