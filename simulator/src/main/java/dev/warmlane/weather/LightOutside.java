package dev.warmlane.weather;

import dev.warmlane.sun.SunPath;

/** The light outside the atmosphere on the horizontal, and the share of it that a year has on the ground. */
final class LightOutside {

    private final SunPath sun;
    private final double[] global;

    LightOutside(HourTable table, SunPath sun) {
        this.sun = sun;
        this.global = table.column(WeatherColumn.GLOBAL);
    }

    /** From an hour to before another, Wh/m². */
    double wh(int start, int end) {
        double sum = 0;
        for (int hour = start; hour < end; hour++) {
            sum += wh(hour);
        }
        return sum;
    }

    double wh(int hour) {
        return sun.extraterrestrialNormalWm2(hour) * sun.cosZenith(hour) * sun.upFraction(hour);
    }

    /** The share on the ground; a missing value counts as nothing. */
    double clearness(int start, int end) {
        double measured = 0;
        for (int hour = start; hour < end; hour++) {
            measured += Double.isNaN(global[hour]) ? 0 : global[hour];
        }
        return measured / wh(start, end);
    }
}
