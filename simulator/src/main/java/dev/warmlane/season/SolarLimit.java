package dev.warmlane.season;

/**
 * The pool temperature at which the collectors stop giving heat. A pure function of the moment.
 *
 * @param limitC the limit, °C
 */
record SolarLimit(double limitC) {

    /**
     * The share of the time in which running collectors give their heat, 0 to 1: all of it below the limit, none above. At
     * the limit none if the pool would warm without them, else just what holds the water there: strictly between 0 and 1
     * the water stays as it is.
     *
     * @param waterC water temperature, °C
     * @param othersWm2 what flows into the water but for the collectors, W/m²
     * @param solarWm2 what the running collectors would give, W/m²
     * @param hold whether the water is to be held below the limit too
     */
    double share(double waterC, double othersWm2, double solarWm2, boolean hold) {
        if (waterC > limitC) {
            return 0;
        }
        if (solarWm2 <= 0 || (waterC < limitC && !hold)) {
            return 1;
        }
        return Math.max(0, Math.min(1, -othersWm2 / solarWm2));
    }
}
