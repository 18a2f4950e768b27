package dev.warmlane.collector;

/**
 * What more long-wave reaches plates that stand still, dry, than plates through which water runs. Water holds the plates
 * that roof and neighbours see near 30 °C; without it they are as warm as they get, and so is what they send around.
 *
 * <p>Straight in the temperature of the plates about one close to it: the roof and the neighbours were solved for that one.
 * For one thread to fill, then immutable.
 */
final class DryView {

    /** Of a collector that sees neither its own kind nor a roof that sees it. */
    static DryView same(int hours) {
        return new DryView(hours, true);
    }

    /** Whether plates without water send around what those with water do. */
    final boolean same;

    private final double[] plateC;
    private final double[] front;
    private final double[] back;
    private final double[] frontPerK;
    private final double[] backPerK;

    private DryView(int hours, boolean same) {
        this.same = same;
        this.plateC = new double[hours];
        this.front = new double[hours];
        this.back = new double[hours];
        this.frontPerK = new double[hours];
        this.backPerK = new double[hours];
    }

    /** To be filled hour by hour. */
    static DryView toFill(int hours) {
        return new DryView(hours, false);
    }

    /** Says what arrives more at front and back with plates of a temperature, W/m², and with each kelvin on, W/m²K. */
    void set(int hour, double atC, double onFront, double onBack, double onFrontPerK, double onBackPerK) {
        plateC[hour] = atC;
        front[hour] = onFront;
        back[hour] = onBack;
        frontPerK[hour] = onFrontPerK;
        backPerK[hour] = onBackPerK;
    }

    /** The temperature of plates that it was found for, °C. */
    double plateC(int hour) {
        return plateC[hour];
    }

    /** What is absorbed more there, W/m², of the share that each face takes. */
    double more(int hour, double shareOfFront, double shareOfBack) {
        return shareOfFront * front[hour] + shareOfBack * back[hour];
    }

    /** What is absorbed more with each kelvin, W/m²K. */
    double perK(int hour, double shareOfFront, double shareOfBack) {
        return shareOfFront * frontPerK[hour] + shareOfBack * backPerK[hour];
    }
}
