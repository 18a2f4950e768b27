package dev.warmlane.pool;

import dev.warmlane.site.Schedule;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * A pool cover and when it is drawn.
 *
 * @param name what it is
 * @param evaporationCut share of evaporation it stops while on
 * @param resistanceM2KW thermal resistance, m²K/W; while on, convection and long-wave are multiplied by
 *     1/(1 + R(h_c + h_r))
 * @param solarLoss share of the sun it keeps from the water
 * @param drawn share of the surface that is covered, by hour
 */
public record Cover(String name, double evaporationCut, double resistanceM2KW, double solarLoss, Schedule drawn) {

    /** Range of {@link #evaporationCut}. */
    public static final Range EVAPORATION_CUT = Range.share("evaporation cut of the cover", 0, 1);

    /** Range of {@link #resistanceM2KW}. */
    public static final Range RESISTANCE =
            Range.of("thermal resistance of the cover", Dimension.THERMAL_RESISTANCE, 0, 2);

    /** Range of {@link #solarLoss}. */
    public static final Range SOLAR_LOSS = Range.share("solar loss of the cover", 0, 1);

    /** Checks every range. */
    public Cover {
        EVAPORATION_CUT.check(evaporationCut);
        RESISTANCE.check(resistanceM2KW);
        SOLAR_LOSS.check(solarLoss);
    }

    /**
     * Floating bubble sheet, clear. Evaporation cut 94.9 % (highest value measured, trade press) and solar loss 10 %
     * (middle of 5-15 %, trade press); resistance 0.03 m²K/W (common practice, no source).
     */
    public static Cover bubble(Schedule drawn) {
        return new Cover("bubble sheet", 0.949, 0.03, 0.10, drawn);
    }

    /**
     * Foam blanket, opaque. Evaporation cut 95.9 % (highest measured) and solar loss 30 % (middle of 20-40 %), both
     * trade press; resistance 0.13 m²K/W: 5 mm of closed-cell foam at 0.04 W/mK (derived; thickness common practice, no
     * source).
     */
    public static Cover foam(Schedule drawn) {
        return new Cover("foam blanket", 0.959, 0.13, 0.30, drawn);
    }

    /**
     * Solid sheet on tracks, opaque. Evaporation cut 93.9 % (highest measured) and solar loss 30 % (middle of 20-40 %),
     * both trade press; its thin sheet has no resistance worth counting.
     */
    public static Cover solidTrack(Schedule drawn) {
        return new Cover("solid track cover", 0.939, 0, 0.30, drawn);
    }

    /** Liquid film. Evaporation cut about 15 % (trade press); it stops neither light nor heat. */
    public static Cover liquidFilm(Schedule drawn) {
        return new Cover("liquid film", 0.15, 0, 0, drawn);
    }

    /** The same cover, drawn in other hours. */
    public Cover withDrawn(Schedule value) {
        return new Cover(name, evaporationCut, resistanceM2KW, solarLoss, value);
    }
}
