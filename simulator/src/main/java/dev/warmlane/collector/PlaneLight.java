package dev.warmlane.collector;

import dev.warmlane.irradiance.IncidenceModifier;
import dev.warmlane.irradiance.Plane;
import dev.warmlane.units.Checks;

/**
 * Light on the front of a collector at a moment, in its plane.
 *
 * @param beamWm2 beam, W/m², 0 to 1,500
 * @param diffuseWm2 all other light, W/m², 0 to 1,500; taken as from the sky
 * @param incidenceDeg angle of the beam to the normal, degrees, 0 to 180
 * @param tiltDeg tilt of the plane, degrees, 0 to 90
 */
public record PlaneLight(double beamWm2, double diffuseWm2, double incidenceDeg, double tiltDeg) {

    /** Checks every range. */
    public PlaneLight {
        Checks.within("beam in the plane", beamWm2, 0, 1500, "W/m2");
        Checks.within("diffuse light in the plane", diffuseWm2, 0, 1500, "W/m2");
        Checks.within("angle of incidence", incidenceDeg, 0, 180, "degrees");
        Plane.TILT.check(tiltDeg);
    }

    /** Beam and diffuse together, W/m². */
    public double totalWm2() {
        return beamWm2 + diffuseWm2;
    }

    /** What is left after incidence, K_b·G_b + K_d·G_d, W/m². */
    public double afterWm2(IncidenceModifier incidence) {
        return incidence.beam(incidenceDeg) * beamWm2 + incidence.skyDiffuse(tiltDeg) * diffuseWm2;
    }
}
