package dev.warmlane.weather;

import dev.warmlane.physics.MoistAir;
import dev.warmlane.weather.WeatherFinding.Kind;

/** Finds one dew point for every hour from whichever of dew point and relative humidity a file has. */
final class Humidity {

    /** Rounding of dew point and air temperature to 0.1 °C, each. */
    private static final double ROUNDING_K = 0.11;
    /** No place on earth is this dry for an hour: 0 and its like stand for a lost value. */
    private static final double LOST_BELOW_PERCENT = 1;
    /** Beyond rounding of either and either's way of measuring, percent of relative humidity. */
    private static final double DISAGREE_PERCENT = 15;

    /** No rounding and no two ways of measuring make this, K. */
    private static final double ABOVE_AIR_K = 1;

    /** Where typical years are stitched, makers smooth one and not the other. */
    private static final int A_FEW_HOURS = 48;

    private Humidity() {}

    /** Needs an air temperature without gaps; leaves a dew point without gaps that is never above it. */
    static void resolve(HourTable table, Findings findings) throws Refusal {
        double[] air = table.column(WeatherColumn.AIR);
        double[] dew = table.column(WeatherColumn.DEW);
        double[] relative = table.column(WeatherColumn.RELATIVE_HUMIDITY);
        Occurrences lost = new Occurrences(table);
        Occurrences above = new Occurrences(table);
        Occurrences wellAbove = new Occurrences(table);
        Occurrences disagree = new Occurrences(table);
        Occurrences derived = new Occurrences(table);
        for (int hour = 0; hour < dew.length; hour++) {
            double saturated = MoistAir.saturationPressureKpa(air[hour]);
            if (relative[hour] < LOST_BELOW_PERCENT) {
                lost.add(hour, relative[hour]);
                relative[hour] = Double.NaN;
            }
            if (dew[hour] > air[hour] + ABOVE_AIR_K) {
                wellAbove.add(hour, dew[hour]);
            }
            if (relative[hour] > 100.5 || dew[hour] > air[hour] + ROUNDING_K) {
                above.add(hour, relative[hour]);
            } else if (Math.abs(100 * MoistAir.saturationPressureKpa(dew[hour]) / saturated - relative[hour])
                    > DISAGREE_PERCENT) {
                disagree.add(hour, relative[hour]);
            }
            if (Double.isNaN(dew[hour]) && !Double.isNaN(relative[hour])) {
                if (!table.isTold(WeatherColumn.DEW, hour)) {
                    derived.add(hour, relative[hour]);
                }
                dew[hour] = MoistAir.dewPointC(saturated * Math.min(100, relative[hour]) / 100);
            }
            if (dew[hour] > air[hour]) {
                dew[hour] = air[hour];
            }
        }
        if (wellAbove.count() > table.hours().missingAtMost()) {
            throw table.refuse(
                    wellAbove.firstHour(),
                    WeatherColumn.DEW.label(),
                    wellAbove.first() + " °C, above the air temperature, and the like in " + wellAbove.count()
                            + " hours",
                    "a dew point at or below the air temperature",
                    "Are the two columns exchanged, or one of them in another unit? Correct them.");
        }
        report(findings, lost, above, disagree, derived);
        GapFiller.fill(table, WeatherColumn.DEW, findings);
        for (int hour = 0; hour < dew.length; hour++) {
            dew[hour] = Math.min(dew[hour], air[hour]);
        }
    }

    private static void report(
            Findings findings, Occurrences lost, Occurrences above, Occurrences disagree, Occurrences derived) {
        if (derived.count() > 0) {
            findings.note(
                    0,
                    derived.count(),
                    "dew point found from air temperature and relative humidity in " + derived.count() + " hours");
        }
        findings.repair(
                lost,
                "relative humidity 0 " + lost.places()
                        + " cannot be: a value was lost there; the dew point is used, or a line between neighbours");
        findings.repair(
                above,
                "relative humidity above 100 % or dew point above air temperature " + above.places()
                        + ": taken as saturated air");
        findings.add(
                disagree.count() > A_FEW_HOURS ? Kind.WARNING : Kind.NOTE,
                disagree,
                "relative humidity (" + disagree.first() + " % first) and dew point do not agree within 15 % "
                        + disagree.places() + ": the dew point is used");
    }
}
