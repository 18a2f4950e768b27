package dev.warmlane.circuit;

import dev.warmlane.hydraulics.Liquid;
import dev.warmlane.hydraulics.Manifold;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * What the water of the collectors' circuit has to pass, and what drives it.
 *
 * @param panel panels and their headers
 * @param pipe the pipe there, on the roof and back
 * @param banks at which end the pipes on the roof let the water out: beside the first bank, or behind the last one for a
 *     return that is reversed, so that the way through each bank is as long
 * @param lift where the collectors lie
 * @param pump the pump
 */
public record Hydraulics(PanelTubes panel, PipeRun pipe, Manifold.Outlet banks, Lift lift, PumpChoice pump) {

    /** Water at the temperature that pressures are told for, 25 °C: between the usual set point and the usual limit. */
    public static final Liquid WATER = Liquid.water(25);

    /**
     * Where the collectors lie.
     *
     * @param heightM their highest point above the pool's water, m
     * @param returnsFull whether the return runs full down to the pool, so that what falls in it pulls up what rises; else
     *     air stands in it and all of the height is pumped
     */
    public record Lift(double heightM, boolean returnsFull) {

        /** Range of {@link #heightM}; from 10 m up no return stays full, for there is no pressure left at the top. */
        public static final Range HEIGHT = Range.of("height above the pool's water", Dimension.LENGTH, 0, 100);

        /** Checks every range. */
        public Lift {
            HEIGHT.check(heightM);
        }

        /** What of the height is pumped while the water runs, m. */
        public double pumpedM() {
            return returnsFull ? 0 : heightM;
        }
    }
}
