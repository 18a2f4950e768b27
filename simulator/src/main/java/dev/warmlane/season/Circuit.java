package dev.warmlane.season;

import dev.warmlane.circuit.Control;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.collector.HeatCurves;
import dev.warmlane.weather.HourlyWeather;

/**
 * One array with its share of the pipes: what it gives the pool at a temperature, and when its pump runs. Heat is per m²
 * of collector. Immutable.
 *
 * <p>Supply and return each hold half of the pipes' conductance UA, and leave exp(-UA/(2m'c)) of what stood between water
 * and air: the solution of m'c dT = UA/2 (Tair - T) dx along a pipe (derived). So pipes never cool water below the air, nor
 * warm it above, whatever their conductance. The collector itself is taken to meet the pool's temperature.
 *
 * <p>A pump runs for heat that arrives: the water must warm by the stop difference on its way through the collectors, and
 * still by as much when it is back at the pool.
 */
final class Circuit {

    /** Water of the array over water of the pool: collector area over water surface. */
    final double areaRatio;

    /** What the flow carries, W/m²K. */
    final double capacityFlow;

    private final CollectorForcing collectors;
    private final HeatCurves curves;
    private final double stopHeat;
    private final double startDifferenceK;
    /** Share of the collectors' heat that the return loses. */
    private final double returnShare;
    /** What both pipes lose of water that comes through as warm as the pool, W/m²K. */
    private final double pipesWm2K;

    /**
     * @param pipesWm2K conductance of the pipes for each m² of collector, W/m²K
     * @param poolAreaM2 water surface, m²
     */
    Circuit(CollectorArray array, CollectorForcing collectors, double pipesWm2K, Control control, double poolAreaM2) {
        this.collectors = collectors;
        this.curves = collectors.curves();
        this.areaRatio = array.areaM2() / poolAreaM2;
        this.capacityFlow = array.flowKgSM2() * PoolHour.WATER_HEAT_J_KGK;
        this.stopHeat = capacityFlow * control.offDifferenceK();
        this.startDifferenceK = control.onDifferenceK();
        this.returnShare = -Math.expm1(-pipesWm2K / capacityFlow / 2);
        this.pipesWm2K = -capacityFlow * Math.expm1(-pipesWm2K / capacityFlow);
    }

    /** The weather it was prepared in. */
    HourlyWeather weather() {
        return collectors.weather();
    }

    /** Heat that the collectors give, W/m². */
    double heatWm2(int hour, double poolC) {
        return curves.heatWm2(hour, poolC);
    }

    /** What the pipes lose while the collectors give a heat, W/m²; negative where the air warms them. */
    double toAirWm2(int hour, double poolC, double heat) {
        return pipesWm2K * (poolC - collectors.airC(hour)) + returnShare * heat;
    }

    /** How the heat that the collectors give changes with the pool's temperature, W/m²K; below 0. */
    double heatSlopeWm2K(int hour, double poolC) {
        return curves.slopeWm2K(hour, poolC);
    }

    /** How what the pipes lose changes with it, W/m²K. */
    double toAirSlopeWm2K(double heatSlopeWm2K) {
        return pipesWm2K + returnShare * heatSlopeWm2K;
    }

    /** Heat that arrives in the pool, W/m². */
    double givenWm2(int hour, double poolC) {
        double heat = curves.heatWm2(hour, poolC);
        return heat - toAirWm2(hour, poolC, heat);
    }

    /** How the heat that arrives changes with the pool's temperature, W/m²K; below 0. */
    double givenSlopeWm2K(int hour, double poolC) {
        return (1 - returnShare) * curves.slopeWm2K(hour, poolC) - pipesWm2K;
    }

    /** Whether a pump that runs goes on, while the collectors give a heat and the pipes lose another, W/m². */
    boolean warmsEnough(double heat, double toAir) {
        return heat > stopHeat && heat - toAir > stopHeat;
    }

    /** The same at a pool temperature. */
    boolean warmsEnough(int hour, double poolC) {
        double heat = curves.heatWm2(hour, poolC);
        return warmsEnough(heat, toAirWm2(hour, poolC, heat));
    }

    /** Whether a pump that stands may start: the dry plate is warmer than the pool by the start difference. */
    boolean mayStart(int hour, double poolC) {
        return poolC <= startC(hour);
    }

    /** Whether it would cool the pool as surely as it warms it when it starts. */
    boolean coolsEnough(int hour, double poolC) {
        double heat = curves.heatWm2(hour, poolC);
        return poolC >= curves.stagnationC(hour) + startDifferenceK
                && heat < -stopHeat
                && heat - toAirWm2(hour, poolC, heat) < -stopHeat;
    }

    /** Temperature of a collector that stands dry, °C. */
    double dryPlateC(int hour) {
        return curves.stagnationC(hour);
    }

    /** The pool temperature at which it starts, unless it would stop there at once. */
    double startC(int hour) {
        return curves.stagnationC(hour) - startDifferenceK;
    }

    /** The pool temperature at which it stops; infinite if that is beyond {@code uptoC}. */
    double stopC(int hour, double uptoC) {
        double heat = curves.heatWm2(hour, uptoC);
        double stop = heat > stopHeat ? Double.POSITIVE_INFINITY : curves.inletC(hour, stopHeat, uptoC);
        return heat - toAirWm2(hour, uptoC, heat) > stopHeat ? stop : Math.min(stop, arrivesC(hour, uptoC));
    }

    /** The pool temperature at which just the stop heat arrives, looked for from near {@code guessC}. */
    private double arrivesC(int hour, double guessC) {
        double poolC = guessC;
        for (int step = 0; step < HeatCurves.NEWTON_STEPS; step++) {
            double change = (stopHeat - givenWm2(hour, poolC)) / givenSlopeWm2K(hour, poolC);
            poolC += change;
            if (Math.abs(change) < HeatCurves.SETTLED_K) {
                break;
            }
        }
        return poolC;
    }
}
