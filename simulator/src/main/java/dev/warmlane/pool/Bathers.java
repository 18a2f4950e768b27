package dev.warmlane.pool;

import dev.warmlane.site.Schedule;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.Locale;

/**
 * The people in the water.
 *
 * @param whenFull swimmers in the water at once when the pool is full
 * @param heatEachW heat that each gives to the water, W
 * @param greatestRise by how much many swimmers raise evaporation at most, as a share of that of the quiet pool;
 *     see {@link #riseOfEvaporation}
 * @param presence how full the pool is, 0 to 1, by hour
 */
public record Bathers(double whenFull, double heatEachW, double greatestRise, Schedule presence) {

    /** Range of {@link #whenFull}. */
    public static final Range WHEN_FULL = Range.number("swimmers when full", 0, 10_000);

    /** Range of {@link #heatEachW}. */
    public static final Range HEAT_EACH = Range.of("heat of a swimmer", Dimension.POWER, 0, 1500);

    /** Range of {@link #greatestRise}. */
    public static final Range GREATEST_RISE = Range.number("greatest rise of evaporation by swimmers", 0, 2);

    /** Usual {@link #heatEachW}. */
    public static final Usual USUAL_HEAT = HEAT_EACH.usually(600, "from metabolic tables, low certainty");

    /**
     * Usual {@link #greatestRise}, reached from 15 to 20 swimmers per 1000 ft² on: 26 % above the ASHRAE equation, of which
     * quiet water has 0.74 (the paper read in the abstract; the ratio derived).
     */
    public static final Usual USUAL_GREATEST_RISE = GREATEST_RISE.usually(
            0.7, "to 1.70 times quiet, Smith, Löf and Jones, ASHRAE Transactions, paper 4146; 0.4 to 0.7 is published");

    /** {@link #USUAL_HEAT}, W. */
    public static final double USUAL_HEAT_W = USUAL_HEAT.value();

    /** {@link #USUAL_GREATEST_RISE}. */
    public static final double USUAL_RISE = USUAL_GREATEST_RISE.value();

    /** The least rise measured in use, 40 % above quiet water (the same paper, read in the abstract). */
    public static final double LEAST_RISE = 0.4;

    /**
     * Water for each swimmer at which the rise is full, m²: the middle of 15 to 20 swimmers per 1000 ft², one per 4.6 to
     * 6.2 m² (the same paper).
     */
    private static final double FULL_RISE_M2_PER_SWIMMER = 5.3;

    /**
     * Water for each at which people who stand touch, m²; Fruin, Pedestrian Planning and Design, 1971, from memory. More of
     * them do not fit into a pool.
     */
    private static final double STANDING_M2 = 0.28;

    /** 28 m² over 0.28 m² is a little less than 100 to a computer. */
    private static final double ROUNDING = 1e-12;

    /** Nobody. */
    public static final Bathers NONE = new Bathers(0, 0, 0, Schedule.NEVER);

    /** Checks every range. */
    public Bathers {
        WHEN_FULL.check(whenFull);
        HEAT_EACH.check(heatEachW);
        GREATEST_RISE.check(greatestRise);
    }

    /**
     * Checks that they can stand in a pool.
     *
     * @param areaM2 water surface, m²
     * @throws IllegalArgumentException if they are more than one on 0.28 m² of it
     */
    public void checkRoom(double areaM2) {
        double room = areaM2 / STANDING_M2 * (1 + ROUNDING);
        if (whenFull > room) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%.0f bathers at once are more than can stand in %.1f m2 of water, %.0f at most; check both",
                    whenFull,
                    areaM2,
                    Math.floor(room)));
        }
    }

    /** Swimmers in the water in an hour of the year. */
    public double inTheWater(int hour) {
        return presence.at(hour) * whenFull;
    }

    /**
     * By how much those in the water raise evaporation in an hour, as a share of that of the quiet pool: r·min(1, 5.3
     * m²·n/A), with n swimmers on A m² of water. That it grows straight with them up to 5.3 m² each is our own choice: the
     * source says that it rises with their number, and gives both ends.
     */
    double riseOfEvaporation(double areaM2, int hour) {
        return greatestRise * Math.min(1, FULL_RISE_M2_PER_SWIMMER * inTheWater(hour) / areaM2);
    }

    /** The same people with another greatest rise of evaporation. */
    public Bathers withGreatestRise(double value) {
        return new Bathers(whenFull, heatEachW, value, presence);
    }
}
