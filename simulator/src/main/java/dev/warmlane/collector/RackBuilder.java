package dev.warmlane.collector;

import dev.warmlane.collector.Mounting.Back;
import dev.warmlane.collector.Mounting.OpenRack;
import dev.warmlane.collector.Mounting.WindRun;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;

/**
 * Gathers racks, see {@link OpenRack#builder}. Defaults: one row, its lower edge 0.3 m above the roof (common practice, no
 * source), an open back, a film of its own chord, inner rows in the wind of the first.
 */
public final class RackBuilder {

    private static final double USUAL_CLEARANCE_M = 0.3;

    private final double tiltDeg;
    private final double azimuthDeg;
    private final double chordM;
    private double pitchM;
    private int rows = 1;
    private double clearanceM = USUAL_CLEARANCE_M;
    private Back back = Back.OPEN;
    private WindRun windRun = WindRun.CHORD;
    private double innerWind = OpenRack.USUAL_INNER_WIND;

    RackBuilder(double tiltDeg, double azimuthDeg, double chordM) {
        this.tiltDeg = tiltDeg;
        this.azimuthDeg = azimuthDeg;
        this.chordM = chordM;
        this.pitchM = chordM;
    }

    /** How many rows, and the distance from row to row on the roof, m. */
    public RackBuilder rows(int count, double distanceM) {
        rows = count;
        pitchM = distanceM;
        return this;
    }

    /** See {@link OpenRack#clearanceM}. */
    public RackBuilder clearanceM(double value) {
        clearanceM = value;
        return this;
    }

    /** See {@link OpenRack#back}. */
    public RackBuilder back(Back value) {
        back = value;
        return this;
    }

    /** See {@link OpenRack#windRun}. */
    public RackBuilder windRun(WindRun value) {
        windRun = value;
        return this;
    }

    /** See {@link OpenRack#innerWind}. */
    public RackBuilder innerWind(double value) {
        innerWind = value;
        return this;
    }

    /**
     * The finished racks.
     *
     * @throws IllegalArgumentException if a value is out of range
     */
    public OpenRack build() {
        RackRows layout = new RackRows(new Rack(tiltDeg, azimuthDeg, chordM, clearanceM), pitchM, rows);
        return new OpenRack(layout, back, windRun, innerWind);
    }
}
