package dev.warmlane.pool;

import dev.warmlane.units.Range;

/**
 * The days before the pool opens in which something warms it already. Nobody swims in them, the circulation pump's heat and
 * make-up water are not counted, and the cover lies as its schedule says.
 *
 * @param collectorDays from so many days before opening on the collectors may run; 0 from opening on
 * @param heaterDays from so many days before opening on the heater may run; 0 from opening on
 */
public record BeforeOpening(int collectorDays, int heaterDays) {

    /** Range of both; the upper end is our own choice. */
    public static final Range DAYS = Range.number("days before opening", 0, 180);

    /** Nothing runs before opening. */
    public static final BeforeOpening NOTHING = new BeforeOpening(0, 0);

    /** Checks both ranges. */
    public BeforeOpening {
        DAYS.named("days of the collectors before opening").check(collectorDays);
        DAYS.named("days of the heater before opening").check(heaterDays);
    }

    /** How many days before opening the first of them begins. */
    public int days() {
        return Math.max(collectorDays, heaterDays);
    }

    /**
     * Whether the collectors may run.
     *
     * @param hours hours until opening; 0 or less once it is open
     */
    public boolean collectorsMay(int hours) {
        return hours <= collectorDays * 24;
    }

    /**
     * Whether the heater may run.
     *
     * @param hours hours until opening; 0 or less once it is open
     */
    public boolean heaterMay(int hours) {
        return hours <= heaterDays * 24;
    }
}
