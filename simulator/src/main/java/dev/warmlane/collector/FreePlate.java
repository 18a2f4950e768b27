package dev.warmlane.collector;

import dev.warmlane.physics.FilmCorrelation;
import dev.warmlane.physics.NaturalFace;
import dev.warmlane.physics.PlateFace;
import dev.warmlane.units.Checks;

/**
 * An absorber that stands alone in the wind with its back closed, as on a test stand: the balance of {@code PlateBalance}, the
 * film of a rack's front over its own length.
 *
 * @param absorber the absorber
 * @param lengthM length along the wind and along the slope, m, 0.1 to 100
 * @param widthM width across, m, 0.1 to 100
 * @param backWm2K what the closed back lets through to the air, W/m²K, 0 to 20
 * @param pressureKpa pressure of the air, kPa, 40 to 110
 */
public record FreePlate(Absorber absorber, double lengthM, double widthM, double backWm2K, double pressureKpa)
        implements HeatAtMoment {

    /** So much water, kg/s m², that it leaves as warm as it entered: the plate's heat at a mean temperature. */
    private static final double PLENTY = 1000;

    /** Checks every range. */
    public FreePlate {
        Checks.within("length of the plate", lengthM, 0.1, 100, "m");
        Checks.within("width of the plate", widthM, 0.1, 100, "m");
        Checks.within("conductance of the back", backWm2K, 0, 20, "W/m2K");
        Checks.within("pressure of the air", pressureKpa, 40, 110, "kPa");
    }

    @Override
    public double heatAtMeanWm2(CollectorMoment at, double meanC) {
        return balance(at, PLENTY).heatWm2(0, meanC);
    }

    /** With F_R of Duffie and Beckman, chapter 6, as in a season. */
    @Override
    public double heatAtInletWm2(CollectorMoment at, double inletC, double flowKgSM2) {
        HeatAtMoment.capacityFlowWm2K(flowKgSM2);
        return balance(at, flowKgSM2).heatWm2(0, inletC);
    }

    private PlateBalance balance(CollectorMoment at, double flowKgSM2) {
        double tilt = at.light().tiltDeg();
        AirHours air = new AirHours(1, hour -> at.airC(), hour -> pressureKpa, hour -> "the moment asked for");
        NaturalFace natural = new NaturalFace(
                new PlateFace(tilt, true, lengthM, lengthM * widthM / (2 * (lengthM + widthM))), AirHours.PRANDTL);
        FaceFilm front = FaceFilm.of(
                FilmCorrelation.PHYSICAL,
                air,
                new double[] {at.windMs()},
                new FilmCorrelation.Face(tilt, true, lengthM, false),
                absorber.roughnessFactor(),
                natural);
        Exposure exposure = Exposure.atMoment(front, ClosedBack.to(at.airC(), backWm2K, 1));
        exposure.irradiance[0] = at.light().totalWm2();
        exposure.modifiedFront[0] = at.light().afterWm2(absorber.incidence());
        exposure.longWaveFront[0] = at.longWaveWm2();
        return new PlateBalance(exposure, absorber, air, flowKgSM2);
    }
}
