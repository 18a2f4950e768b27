package dev.warmlane.report.chart;

/**
 * A line with points between its points. The drawing library strokes a straight line segment by segment, each starting
 * its dashes anew, so that dashes vanish; a smooth line is one path, but it curves between points. Smooth lines with
 * points this close together are straight to the eye and keep their dashes. Every point of the line is kept.
 *
 * @param x places
 * @param y values
 */
@SuppressWarnings("ArrayRecordComponent") // on its way into a plot, never compared
record Dense(double[] x, double[] y) {

    /** Points over the width of a plot, about one for every two to three pixels. */
    private static final int POINTS = 360;

    static Dense of(double[] x, double[] y) {
        int segments = x.length - 1;
        boolean level = segments == 1 && y[0] == y[1];
        if (segments < 1 || level) {
            return new Dense(x.clone(), y.clone());
        }
        int parts = Math.max(1, (POINTS + segments - 1) / segments);
        double[] denseX = new double[segments * parts + 1];
        double[] denseY = new double[denseX.length];
        for (int i = 0; i < segments; i++) {
            for (int part = 0; part < parts; part++) {
                double share = (double) part / parts;
                denseX[i * parts + part] = x[i] + share * (x[i + 1] - x[i]);
                denseY[i * parts + part] = y[i] + share * (y[i + 1] - y[i]);
            }
        }
        denseX[denseX.length - 1] = x[segments];
        denseY[denseY.length - 1] = y[segments];
        return new Dense(denseX, denseY);
    }
}
