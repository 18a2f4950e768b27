package dev.warmlane.collector;

import dev.warmlane.weather.HourlyWeather;
import java.util.Arrays;
import java.util.Locale;

/**
 * The heat that one kind of collector, mounted one way, gives in every hour as a curve over the temperature of the water
 * that enters it, per m² of collector. Immutable; shared by all runs that share mounting, model, flow, roof and weather,
 * whatever their area.
 *
 * <p>The balance is solved directly every 5 K of inlet temperature from 0 to 45 °C, and a smooth curve is drawn through
 * the solutions (a cubic spline after Catmull and Rom). Against the direct solution it is within 0.1 % of a season's
 * heat. Where the collector would only cool the water the curve is followed for another 5 to 10 K and goes on straight
 * from there, as it does below 0 and above 45 °C.
 */
public final class HeatCurves {

    private static final double FIRST_NODE_C = 0;
    private static final double SPACING_K = 5;
    private static final int NODES = 10;

    private static final double LAST_NODE_C = FIRST_NODE_C + (NODES - 1) * SPACING_K;

    /** The nodes of an hour and one more at each end, which carries the curve on straight. */
    private static final int ROW = NODES + 2;

    /**
     * How much steeper or flatter than its neighbour a step between nodes may be for the smooth curve to fall as the nodes
     * do: 5 for this spline (derived from the condition of Fritsch and Carlson, SIAM J. Numerical Analysis 17, 1980,
     * 238-246, from memory), and something left.
     */
    private static final double MOST_BEND = 4;

    /** Between these, the nodes of 20 and 30 °C, the fall of a curve is taken where an uneven flow asks for it. */
    private static final int FALL_FROM = 5;

    private static final int FALL_TO = 7;

    /** Cells of the table of an uneven flow. */
    private static final int DIVIDED = 200;

    /** Steps of Newton's method on a curve, which is nearly straight: three or four are usual. */
    public static final int NEWTON_STEPS = 30;

    /** Where it ends, K. */
    public static final double SETTLED_K = 1e-10;

    private final double[] heats;
    private final double[] stagnationC;
    private final double[] highestPlateC;
    private final double[] lowestPlateC;

    /** The curves of a collector in some hours of so many, rising; there are none in the others. */
    static HeatCurves of(int hours, int[] solved, HourlyHeat collector) {
        HeatCurves curves = new HeatCurves(hours);
        if (solved.length < hours) {
            // who asks for another hour is to notice
            Arrays.fill(curves.heats, Double.NaN);
            Arrays.fill(curves.stagnationC, Double.NaN);
        }
        for (int hour : solved) {
            curves.solve(hour, collector);
        }
        return curves;
    }

    /** To be filled for so many hours. */
    HeatCurves(int hours) {
        this.heats = new double[hours * ROW];
        this.stagnationC = new double[hours];
        this.highestPlateC = new double[hours];
        this.lowestPlateC = new double[hours];
        Arrays.fill(highestPlateC, Double.NEGATIVE_INFINITY);
        Arrays.fill(lowestPlateC, Double.POSITIVE_INFINITY);
    }

    /** Adds a share of an array. */
    void add(double share, HeatCurves other) {
        for (int i = 0; i < heats.length; i++) {
            heats[i] += share * other.heats[i];
        }
        for (int hour = 0; hour < stagnationC.length; hour++) {
            stagnationC[hour] += share * other.stagnationC[hour];
            highestPlateC[hour] = Math.max(highestPlateC[hour], other.highestPlateC[hour]);
            lowestPlateC[hour] = Math.min(lowestPlateC[hour], other.lowestPlateC[hour]);
        }
    }

    /** Draws an hour's curve through what a collector gives. */
    void solve(int hour, HourlyHeat collector) {
        double dryC = collector.stagnationC(hour);
        stagnationC[hour] = dryC;
        highestPlateC[hour] = dryC;
        lowestPlateC[hour] = dryC;
        int at = hour * ROW + 1;
        double last = 0;
        double step = 0;
        int cooling = 0;
        for (int node = 0; node < NODES; node++) {
            double heat =
                    cooling < 2 || node < 2 ? collector.heatWm2(hour, FIRST_NODE_C + node * SPACING_K) : last + step;
            step = heat - last;
            last = heat;
            cooling += heat < 0 ? 1 : 0;
            heats[at + node] = heat;
        }
        heats[at - 1] = 2 * heats[at] - heats[at + 1];
        heats[at + NODES] = 2 * heats[at + NODES - 1] - heats[at + NODES - 2];
    }

    /**
     * Takes off what an uneven flow costs. The curve's own fall over the middle of its nodes is F_R U, and 1 less F_R U over
     * what the flow carries is e^(-x) of {@link FlowSplit}.
     *
     * @param capacityFlow what the mean flow carries, W/m²K
     */
    void divide(FlowSplit split, double capacityFlow) {
        double[] shares = split.table(DIVIDED);
        for (int row = 0; row < heats.length; row += ROW) {
            double fall = (heats[row + FALL_FROM] - heats[row + FALL_TO]) / ((FALL_TO - FALL_FROM) * SPACING_K);
            double place = DIVIDED * Math.min(1, Math.max(0, fall / capacityFlow));
            int cell = Math.min(DIVIDED - 1, (int) place);
            double share = shares[cell] + (place - cell) * (shares[cell + 1] - shares[cell]);
            for (int i = row; i < row + ROW; i++) {
                heats[i] *= share;
            }
        }
    }

    /** Refuses an hour's curve that does not fall, or bends so sharply that the smooth one would not. */
    void checkFalls(int hour, HourlyWeather weather) {
        double before = 0;
        for (int node = 0; node < NODES - 1; node++) {
            double heat = heats[hour * ROW + 1 + node];
            double fall = heat - heats[hour * ROW + 2 + node];
            if (!(fall > 0)) {
                throw refused(weather.label(hour), node, heat, fall, "it must fall, through 0 to a loss, by night too");
            }
            if (node > 0 && (fall > MOST_BEND * before || before > MOST_BEND * fall)) {
                throw refused(weather.label(hour), node, heat, fall, "it bends too sharply: smooth it over some 10 K");
            }
            before = fall;
        }
    }

    private static IllegalArgumentException refused(String label, int node, double heat, double fall, String how) {
        double inletC = FIRST_NODE_C + node * SPACING_K;
        return new IllegalArgumentException(String.format(
                Locale.ROOT,
                "the collector gives %.2f W/m2 with water of %.0f degC and %.2f W/m2 with water of %.0f degC at %s"
                        + "; look at the curve or film of your own: %s",
                heat,
                inletC,
                heat - fall,
                inletC + SPACING_K,
                label,
                how));
    }

    /**
     * Useful heat with water entering at a temperature, W per m² of collector; negative where the collector would cool
     * the water.
     */
    public double heatWm2(int hour, double inletC) {
        double within = Math.min(LAST_NODE_C, Math.max(FIRST_NODE_C, inletC));
        double heat = withinNodes(hour, within);
        return inletC == within ? heat : heat + (inletC - within) * slopeWm2K(hour, within);
    }

    private double withinNodes(int hour, double inletC) {
        double x = (inletC - FIRST_NODE_C) / SPACING_K;
        int cell = Math.min(NODES - 2, Math.max(0, (int) x));
        double f = x - cell;
        int at = hour * ROW + cell;
        double p0 = heats[at];
        double p1 = heats[at + 1];
        double p2 = heats[at + 2];
        double p3 = heats[at + 3];
        return p1 + f / 2 * (p2 - p0 + f * (2 * p0 - 5 * p1 + 4 * p2 - p3 + f * (3 * (p1 - p2) + p3 - p0)));
    }

    /** How the heat changes with the inlet temperature, W/m²K; below 0. */
    public double slopeWm2K(int hour, double inletC) {
        double x = (Math.min(LAST_NODE_C, Math.max(FIRST_NODE_C, inletC)) - FIRST_NODE_C) / SPACING_K;
        int cell = Math.min(NODES - 2, Math.max(0, (int) x));
        double f = x - cell;
        int at = hour * ROW + cell;
        double p0 = heats[at];
        double p1 = heats[at + 1];
        double p2 = heats[at + 2];
        double p3 = heats[at + 3];
        return (p2 - p0 + f * (2 * (2 * p0 - 5 * p1 + 4 * p2 - p3) + 3 * f * (3 * (p1 - p2) + p3 - p0)))
                / (2 * SPACING_K);
    }

    /** The inlet temperature at which the collector gives a heat, °C, looked for from near {@code guessC}. */
    public double inletC(int hour, double heatWm2, double guessC) {
        double inlet = guessC;
        for (int step = 0; step < NEWTON_STEPS; step++) {
            double change = (heatWm2 - heatWm2(hour, inlet)) / slopeWm2K(hour, inlet);
            inlet += change;
            if (Math.abs(change) < SETTLED_K) {
                break;
            }
        }
        return inlet;
    }

    /**
     * Temperature of the dry plate without flow, °C, mean over the rows: what a collector in the sun reaches when the pump
     * stands, and what starts it.
     */
    public double stagnationC(int hour) {
        return stagnationC[hour];
    }

    /** Temperature of the dry plate of the row that is hottest, °C. */
    public double highestPlateC(int hour) {
        return highestPlateC[hour];
    }

    /** Temperature of the dry plate of the row that is coldest, °C. */
    public double lowestPlateC(int hour) {
        return lowestPlateC[hour];
    }
}
