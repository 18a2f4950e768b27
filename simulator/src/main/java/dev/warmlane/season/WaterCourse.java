package dev.warmlane.season;

import java.util.Arrays;

/** How warm the water was hour by hour: what is kept of a season whose ledger is not. */
public final class WaterCourse {

    private final double[] waterC;

    private WaterCourse(double[] waterC) {
        this.waterC = waterC;
    }

    /** The course of a season, from the first hour of its ledger. */
    public static WaterCourse of(SeasonLedger ledger) {
        double[] waterC = new double[ledger.hours()];
        Arrays.setAll(waterC, ledger::waterC);
        return new WaterCourse(waterC);
    }

    /** How many hours there are. */
    public int hours() {
        return waterC.length;
    }

    /**
     * Mean water temperature, °C.
     *
     * @param from first hour, counted from that of the ledger
     * @param to the hour after the last, above {@code from}, at most {@link #hours}
     */
    public double meanC(int from, int to) {
        double sum = 0;
        for (int hour = from; hour < to; hour++) {
            sum += waterC[hour];
        }
        return sum / (to - from);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WaterCourse course && Arrays.equals(waterC, course.waterC);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(waterC);
    }

    @Override
    public String toString() {
        return waterC.length + " hours of water";
    }
}
