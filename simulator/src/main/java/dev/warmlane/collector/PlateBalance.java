package dev.warmlane.collector;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.NaturalFace;
import dev.warmlane.physics.Water;

/**
 * The energy balance of a mounted absorber: what its plate absorbs, loses and passes on, W per m². Keeps the last
 * solution as the start of the next, so use one for a thread.
 *
 * <p>Useful heat after Duffie and Beckman, Solar Engineering of Thermal Processes, chapter 6: q = F_R (S − losses at
 * inlet temperature), F_R = (m'c/U_L)(1 − exp(−U_L F'/(m'c))), plate mean temperature T_in + q(1 − F_R)/(F_R U_L).
 * Losses are not straight in temperature, so U_L is the secant from the inlet to the plate mean, iterated.
 */
final class PlateBalance implements HourlyHeat {

    private static final int MOST_STEPS = 40;

    /**
     * Relative change of U_L at which the iteration ends. The heat depends on U_L only through F_R, about a tenth as
     * much, so it is then settled to 1e-4.
     */
    private static final double SETTLED = 1e-3;

    private static final double SETTLED_K = 1e-4;

    /** The shortest secant, K: shorter ones would divide rounding errors. */
    private static final double SHORTEST_SECANT_K = 0.01;

    private final Exposure exposure;
    private final Absorber absorber;
    private final AirHours air;
    private final double capacityFlow;
    private double lossWm2K = 15;
    private double dryPlateC = 20;

    PlateBalance(Exposure exposure, Absorber absorber, AirHours air, double flowKgSM2) {
        this.exposure = exposure;
        this.absorber = absorber;
        this.air = air;
        this.capacityFlow = flowKgSM2 * Water.specificHeatJKgK(25);
    }

    /** Short-wave absorbed by both faces, W/m². */
    double absorbedWm2(int hour) {
        return absorber.absorptance() * (exposure.modifiedFront[hour] + exposure.modifiedBack[hour]);
    }

    /** Everything the plate loses at a temperature, W/m². */
    double lossWm2(int hour, double plateC) {
        double black = Constants.blackBody(plateC);
        double difference = plateC - air.temperatureC[hour];
        double drive = NaturalFace.drive(difference);
        double film = exposure.front.coefficient(hour, difference, drive);
        double loss = exposure.closed.lossWm2(hour, plateC)
                + film * difference
                + absorber.emittance() * (black - exposure.longWaveFront[hour]);
        if (exposure.back != null) {
            loss += exposure.back.coefficient(hour, difference, drive) * difference
                    + absorber.emittance() * (black - exposure.longWaveBack[hour]);
        }
        return loss;
    }

    /** The same while no water runs, when roof and neighbours are as the dry plates make them. */
    double dryLossWm2(int hour, double plateC) {
        double back = exposure.back == null ? exposure.closed.longWaveShare(hour) : absorber.emittance();
        double more = exposure.dry.more(hour, absorber.emittance(), back)
                + exposure.dry.perK(hour, absorber.emittance(), back) * (plateC - exposure.dry.plateC(hour));
        return lossWm2(hour, plateC) - more;
    }

    @Override
    public double stagnationC(int hour) {
        double absorbed = absorbedWm2(hour);
        double below = exposure.dry.same ? dryPlateC : exposure.dry.plateC(hour);
        double surplusBelow = absorbed - dryLossWm2(hour, below);
        double plate = below + surplusBelow / lossWm2K;
        for (int step = 0; step < MOST_STEPS && Math.abs(plate - below) > SETTLED_K; step++) {
            double surplus = absorbed - dryLossWm2(hour, plate);
            double slope = (surplus - surplusBelow) / (plate - below);
            below = plate;
            surplusBelow = surplus;
            plate -= surplus / slope;
        }
        dryPlateC = plate;
        return plate;
    }

    @Override
    public double heatWm2(int hour, double inletC) {
        solve(hour, inletC);
        return heat;
    }

    /** Adds a share of this plate's flows with water entering at a temperature. */
    void addFlows(int hour, double inletC, double share, PlateFlows out) {
        solve(hour, inletC);
        double difference = plate - air.temperatureC[hour];
        double black = Constants.blackBody(plate);
        double front = exposure.front.coefficient(hour, difference);
        double back = exposure.back == null ? 0 : exposure.back.coefficient(hour, difference);
        out.addState(share, exposure.irradiance[hour], front, back, plate);
        out.add(PlateFlow.ABSORBED_FRONT, share * absorber.absorptance() * exposure.modifiedFront[hour]);
        out.add(PlateFlow.ABSORBED_BACK, share * absorber.absorptance() * exposure.modifiedBack[hour]);
        out.add(PlateFlow.CONVECTION_FRONT, share * front * difference);
        out.add(PlateFlow.CONVECTION_BACK, share * back * difference);
        out.add(PlateFlow.LONG_WAVE_FRONT, share * absorber.emittance() * (black - exposure.longWaveFront[hour]));
        if (exposure.back != null) {
            out.add(PlateFlow.LONG_WAVE_BACK, share * absorber.emittance() * (black - exposure.longWaveBack[hour]));
        }
        out.add(PlateFlow.THROUGH_BACK, share * exposure.closed.lossWm2(hour, plate));
        out.add(PlateFlow.USEFUL, share * heat);
    }

    private double heat;
    private double plate;

    private void solve(int hour, double inletC) {
        double atInlet = lossWm2(hour, inletC);
        double surplus = absorbedWm2(hour) - atInlet;
        for (int step = 0; step < MOST_STEPS; step++) {
            double factor =
                    heatRemovalFactor(absorber.plateToFluid().efficiencyFactor(lossWm2K), lossWm2K, capacityFlow);
            heat = factor * surplus;
            double above = heat * (1 - factor) / (factor * lossWm2K);
            plate = inletC + above;
            double secant = Math.abs(above) < SHORTEST_SECANT_K ? Math.copySign(SHORTEST_SECANT_K, above) : above;
            double next = (lossWm2(hour, inletC + secant) - atInlet) / secant;
            double change = next - lossWm2K;
            lossWm2K = next;
            if (Math.abs(change) < SETTLED * next) {
                break;
            }
        }
    }

    /**
     * Collector heat removal factor F_R = (m'c/U_L)(1 − exp(−U_L F'/(m'c))), Duffie and Beckman chapter 6.
     *
     * @param efficiencyFactor F'
     * @param lossWm2K U_L, W/m²K
     * @param capacityFlow m'c, W/m²K
     */
    static double heatRemovalFactor(double efficiencyFactor, double lossWm2K, double capacityFlow) {
        double ratio = capacityFlow / lossWm2K;
        double exponent = efficiencyFactor / ratio;
        // the plain exponential is several times as quick; from here up it loses two digits of sixteen at most
        return ratio * (exponent < 0.01 ? -Math.expm1(-exponent) : 1 - Math.exp(-exponent));
    }
}
