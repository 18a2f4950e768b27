package dev.warmlane.roof;

/**
 * Axes turned against those of a surface: u along the rows of banks, v across them, to the left of u. Coordinates are
 * whole micrometres, so that a roof and the same roof turned give the same layout to the last bit.
 */
final class Frame {

    private static final double MICROMETRES = 1e6;

    private final double alongDeg;
    private final double cos;
    private final double sin;

    Frame(double alongDeg) {
        this.alongDeg = alongDeg;
        this.cos = Math.cos(Math.toRadians(alongDeg));
        this.sin = Math.sin(Math.toRadians(alongDeg));
    }

    double alongDeg() {
        return alongDeg;
    }

    double u(RoofPoint point) {
        return whole(point.xM() * cos + point.yM() * sin);
    }

    double v(RoofPoint point) {
        return whole(point.yM() * cos - point.xM() * sin);
    }

    RoofPoint point(double u, double v) {
        return new RoofPoint(u * cos - v * sin, u * sin + v * cos);
    }

    /** The u and v of a place that is given in another frame. */
    double[] from(Frame other, double u, double v) {
        double x = u * other.cos - v * other.sin;
        double y = u * other.sin + v * other.cos;
        return new double[] {whole(x * cos + y * sin), whole(y * cos - x * sin)};
    }

    static double whole(double metres) {
        return Math.rint(metres * MICROMETRES) / MICROMETRES;
    }
}
