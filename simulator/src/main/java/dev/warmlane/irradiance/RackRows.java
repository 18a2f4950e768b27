package dev.warmlane.irradiance;

import dev.warmlane.units.Checks;
import dev.warmlane.units.Range;

/**
 * Rows of tilted racks on a flat roof, seen from the side: plates without thickness, endlessly long, equally spaced.
 *
 * <p>The profile angle is the height of the sun in that side view, degrees from 0 (the horizon the rows face) over 90
 * to 180 (the horizon behind them). The sun shines on the front up to a profile angle of 180 - tilt, beyond it on the
 * back.
 *
 * <p>A row may be a tent: two equal plates back to back, which meet at the ridge. Seen from one of its two sides the sky, the
 * sun and the shade are those of single plates at the same pitch, since the upper edges are where they were; what is
 * below the sky is the roof between the tents and the side of the next one, and behind the plate lie nothing but the other
 * plate and the roof that both cover. What passes below lower edges is left out.
 *
 * @param rack one of the equal racks; of tents one that faces one of the two ways
 * @param pitchM distance from row to row, m, at least the run of a row on the roof, so that rows do not stand over each
 *     other; infinite for a row alone, where it means nothing
 * @param rows how many rows
 * @param tents whether a row is two plates back to back
 */
public record RackRows(Rack rack, double pitchM, int rows, boolean tents) {

    /** Range of {@link #rows}. */
    public static final Range ROWS = Range.number("number of rows", 1, 1000);

    /** Checks rows and pitch. */
    public RackRows {
        ROWS.check(rows);
        double run = coveredM(rack, tents);
        if (!(pitchM >= run && pitchM > 0)) {
            throw new IllegalArgumentException("row pitch must be at least the run of a "
                    + (tents ? "tent" : "plate") + " on the roof, "
                    + run + " m for a chord of " + rack.chordM() + " m at " + rack.tiltDeg() + " degrees, was " + pitchM
                    + " m: widen the pitch or steepen the tilt");
        }
        if (rows > 1 && Double.isInfinite(pitchM)) {
            throw new IllegalArgumentException("row pitch must be finite where there is more than one row");
        }
    }

    /** Rows of single plates. */
    public RackRows(Rack rack, double pitchM, int rows) {
        this(rack, pitchM, rows, false);
    }

    /** How far a row reaches over the roof, m: a plate, or both of a tent. */
    public static double coveredM(Rack rack, boolean tents) {
        return tents ? 2 * rack.runM() : rack.runM();
    }

    /** How far a row reaches over the roof, m. */
    public double coveredM() {
        return coveredM(rack, tents);
    }

    /** The same tents seen from their other side. */
    public RackRows fromOtherSide() {
        return new RackRows(rack.turned(), pitchM, rows, tents);
    }

    /**
     * The least pitch at which rows do not shade each other while the sun stands at a profile angle:
     * {@code chord·sin(profile + tilt)/sin(profile)}, m. The lower the angle, the longer the shadow, so the sun's lowest
     * profile angle of the hours and dates to be kept free decides; the pitch is never less than the run of a plate.
     *
     * @param chordM length of a plate up its slope, m
     * @param tiltDeg tilt of the plates, degrees
     * @param profileDeg profile angle before the rows, degrees, 1 to 90
     */
    public static double pitchForProfileAngle(double chordM, double tiltDeg, double profileDeg) {
        Plane.TILT.check(tiltDeg);
        Checks.within("profile angle", profileDeg, 1, 90, "degrees");
        double profile = Math.toRadians(profileDeg);
        return chordM * Math.sin(profile + Math.toRadians(tiltDeg)) / Math.sin(profile);
    }

    /** The plane of the plates' fronts. */
    public Plane plane() {
        return rack.plane();
    }

    /** Length of a plate up its slope, m. */
    public double chordM() {
        return rack.chordM();
    }

    /** Height of the lower edge above the roof, m. */
    public double clearanceM() {
        return rack.clearanceM();
    }

    /** How far a plate reaches over the roof, m. */
    public double runM() {
        return rack.runM();
    }

    /** How far the upper edge stands above the lower, m. */
    public double riseM() {
        return rack.riseM();
    }

    /**
     * The profile angle of the sun, degrees, 0 to 180.
     *
     * @param zenithDeg zenith angle of the sun, degrees, 0 to 90
     * @param sunAzimuthDeg direction of the sun, degrees clockwise from north
     */
    public double profileDeg(double zenithDeg, double sunAzimuthDeg) {
        double zenith = Math.toRadians(zenithDeg);
        double towards = Math.sin(zenith) * Math.cos(Math.toRadians(sunAzimuthDeg - rack.azimuthDeg()));
        return Math.toDegrees(Math.atan2(Math.cos(zenith), towards));
    }

    /**
     * Share of an interior plate's height that its neighbour shades, of the face the sun stands on, 0 to 1, from the
     * lower edge up: {@code max(0, 1 - pitch·sin p/(chord·|sin(p + tilt)|))} at profile angle p. Before the plates the
     * row in front shades the front, behind them the row behind shades the back.
     */
    public double shadedShare(double profileDeg) {
        double profile = Math.toRadians(profileDeg);
        double across = chordM() * Math.abs(Math.sin(profile + Math.toRadians(rack.tiltDeg())));
        double apart = Double.isInfinite(pitchM) ? pitchM : pitchM * Math.max(0, Math.sin(profile));
        return apart >= across ? 0 : 1 - apart / across;
    }

    /** View factor from the front to the sky. */
    public double frontSkyView(RowPlace place) {
        return alone(place) ? plane().skyView() : narrowView();
    }

    /** View factor from the front to the roof; of a tent among others to the roof between them. */
    public double frontRoofView(RowPlace place) {
        return alone(place) ? 1 - plane().skyView() : tents ? valleyView() : wideView();
    }

    /** View factor from the back to the sky. */
    public double backSkyView(RowPlace place) {
        return tents ? 0 : alone(place) ? 1 - plane().skyView() : wideView();
    }

    /** View factor from the back to the roof; of a tent to what it covers. */
    public double backRoofView(RowPlace place) {
        return tents ? runM() / chordM() : alone(place) ? plane().skyView() : narrowView();
    }

    /** View factor from the front to the row before it: its back, or the near side of a tent. */
    public double frontNeighbourView(RowPlace place) {
        return alone(place) ? 0 : tents ? 1 - narrowView() - valleyView() : neighbourView();
    }

    /** View factor from the back to the front of the row behind it, or to the other back of a tent. */
    public double backNeighbourView(RowPlace place) {
        return tents ? 1 - runM() / chordM() : alone(place) ? 0 : neighbourView();
    }

    private double neighbourView() {
        return (shortDiagonal() + longDiagonal() - 2 * pitchM) / (2 * chordM());
    }

    private boolean alone(RowPlace place) {
        return place == RowPlace.FIRST || Double.isInfinite(pitchM);
    }

    /** Crossed strings over the triangle of plate, gap between upper edges and the short diagonal. */
    private double narrowView() {
        return (chordM() + pitchM - shortDiagonal()) / (2 * chordM());
    }

    /** Crossed strings over the triangle of plate, gap between lower edges and the long diagonal. */
    private double wideView() {
        return (chordM() + pitchM - longDiagonal()) / (2 * chordM());
    }

    /** Crossed strings over the triangle of a tent's side, the roof up to the next tent and the short diagonal. */
    private double valleyView() {
        return (chordM() + pitchM - 2 * runM() - shortDiagonal()) / (2 * chordM());
    }

    /** From a lower edge to the upper edge of the row before it. */
    private double shortDiagonal() {
        return Math.hypot(pitchM - runM(), riseM());
    }

    /** From an upper edge to the lower edge of the row before it. */
    private double longDiagonal() {
        return Math.hypot(pitchM + runM(), riseM());
    }
}
