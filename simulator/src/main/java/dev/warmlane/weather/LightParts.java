package dev.warmlane.weather;

import dev.warmlane.sun.SunPath;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Finds the parts of irradiance that a source never had: from the others where two are there, by a published correlation
 * where only global irradiance is, or only sunshine. A column that a format has and that is empty was lost, and is not
 * found here.
 */
final class LightParts {

    /**
     * Ångström's formula with the coefficients of FAO 56 (Allen, Pereira, Raes and Smith 1998, equation 35): "where no actual
     * solar radiation data are available and no calibration has been carried out", read as texts quote it.
     */
    private static final double OVERCAST = 0.25;

    private static final double OF_SUNSHINE = 0.50;

    private static final String UNTESTED =
            ": the parts agree at any hour of the sun, so that clock and labels could not be tested by them";

    private final HourTable table;
    private final SunPath sun;
    private final double[] global;
    private final double[] direct;
    private final double[] directHorizontal;
    private final double[] diffuse;

    private LightParts(HourTable table, SunPath sun) {
        this.table = table;
        this.sun = sun;
        this.global = table.column(WeatherColumn.GLOBAL);
        this.direct = table.column(WeatherColumn.DIRECT);
        this.directHorizontal = table.column(WeatherColumn.DIRECT_HORIZONTAL);
        this.diffuse = table.column(WeatherColumn.DIFFUSE);
    }

    /** Whether the source never had one of global, direct and diffuse irradiance. */
    static boolean areMissing(HourTable table) {
        return !has(table, WeatherColumn.GLOBAL)
                || !has(table, WeatherColumn.DIRECT)
                || !has(table, WeatherColumn.DIFFUSE);
    }

    static void complete(HourTable table, WeatherReadOptions options, Findings findings) {
        boolean global = has(table, WeatherColumn.GLOBAL);
        boolean beam = has(table, WeatherColumn.DIRECT) || has(table, WeatherColumn.DIRECT_HORIZONTAL);
        boolean diffuse = has(table, WeatherColumn.DIFFUSE);
        boolean sunshine = has(table, WeatherColumn.SUNSHINE);
        if (!global && !(beam && diffuse) && !sunshine) {
            return;
        }
        Double given = options.centreHours();
        double centre = given != null ? given : table.centreHours;
        SunPath sun = table.sunAt(centre);
        LightParts parts = new LightParts(table, sun);
        if (beam && (global || diffuse)) {
            parts.fromBeam(findings);
        } else if (global && diffuse) {
            parts.fromGlobalAndDiffuse(findings);
        } else {
            if (!global) {
                parts.fromSunshine(findings);
            }
            parts.split(findings);
        }
        table.declared.addAll(List.of(WeatherColumn.GLOBAL, WeatherColumn.DIRECT, WeatherColumn.DIFFUSE));
        table.lightIsDerived = true;
        NoonCheck.check(table, sun, findings);
    }

    private static boolean has(HourTable table, WeatherColumn column) {
        return table.declared.contains(column);
    }

    /** Beam and one of the two others. */
    private void fromBeam(Findings findings) {
        boolean onHorizontal = !has(table, WeatherColumn.DIRECT);
        boolean needsGlobal = !has(table, WeatherColumn.GLOBAL);
        boolean needsDiffuse = !has(table, WeatherColumn.DIFFUSE);
        for (int hour = 0; hour < global.length; hour++) {
            double beam = onHorizontal ? directHorizontal[hour] : direct[hour] * sun.cosZenith(hour);
            if (needsGlobal) {
                global[hour] = beam + diffuse[hour];
            }
            if (needsDiffuse) {
                diffuse[hour] = Math.max(0, global[hour] - beam);
            }
            if (onHorizontal) {
                direct[hour] = normal(hour, beam);
            }
        }
        findings.note(
                0,
                0,
                (onHorizontal ? "direct irradiance normal to the sun was found from that on the horizontal" : "")
                        + (onHorizontal && needsGlobal ? ", " : "")
                        + (needsGlobal ? "global irradiance is the sum of beam and diffuse" : "")
                        + (needsDiffuse ? "diffuse irradiance is what beam leaves of global" : "")
                        + UNTESTED);
    }

    private void fromGlobalAndDiffuse(Findings findings) {
        for (int hour = 0; hour < global.length; hour++) {
            direct[hour] = normal(hour, Math.max(0, global[hour] - diffuse[hour]));
        }
        findings.note(0, 0, "direct irradiance was found from global less diffuse" + UNTESTED);
    }

    /** Never more than outside the atmosphere: at a low sun a watt on the horizontal is many normal to it. */
    private double normal(int hour, double horizontal) {
        if (Double.isNaN(horizontal)) {
            return Double.NaN;
        }
        double cosine = sun.cosZenith(hour);
        return !sun.isUp(hour) || cosine <= 0
                ? 0
                : Math.min(
                        horizontal / cosine,
                        Math.min(sun.extraterrestrialNormalWm2(hour), WeatherColumn.DIRECT.highest()));
    }

    private void fromSunshine(Findings findings) {
        double[] sunshine = table.column(WeatherColumn.SUNSHINE);
        for (int hour = 0; hour < global.length; hour++) {
            global[hour] = sun.isUp(hour) ? outside(hour) * (OVERCAST + OF_SUNSHINE * Math.min(1, sunshine[hour])) : 0;
        }
        findings.gravest(
                0,
                0,
                "the file has sunshine and no irradiance: global irradiance is a quarter of that outside the atmosphere"
                        + " without sunshine and three quarters in full (Ångström's formula with the coefficients of FAO 56,"
                        + " meant for days and not for hours); a measured irradiance is better by far");
    }

    private double outside(int hour) {
        return sun.extraterrestrialNormalWm2(hour) * sun.cosZenith(hour) * sun.upFraction(hour);
    }

    private void split(Findings findings) {
        DiffuseSplit split = table.hours().options().split();
        DiffuseSplit other = split == DiffuseSplit.ERBS ? DiffuseSplit.ORGILL_HOLLANDS : DiffuseSplit.ERBS;
        double first = 0;
        double second = 0;
        for (int hour = 0; hour < global.length; hour++) {
            double light = global[hour];
            double outside = outside(hour);
            double clearness = outside > 0 ? light / outside : 0;
            double fraction = Double.isNaN(light) ? Double.NaN : split.diffuseShare(clearness);
            diffuse[hour] = fraction * light;
            direct[hour] = normal(hour, light - diffuse[hour]);
            if (!Double.isNaN(light)) {
                first += diffuse[hour];
                second += other.diffuseShare(clearness) * light;
            }
        }
        double all = Arrays.stream(global).filter(light -> !Double.isNaN(light)).sum();
        findings.warning(
                0,
                0,
                String.format(
                        Locale.ROOT,
                        "%s has global irradiance alone: its diffuse part, %.0f %% of the %s's, is estimated from"
                                + " the clearness of each hour (%s; %.0f %% by %s). %s. A flat collector hardly minds, a"
                                + " tilted one does%s",
                        table.sourceWord(),
                        100 * first / all,
                        table.hours().word(),
                        split.source(),
                        100 * second / all,
                        other.source(),
                        SPLIT_ERROR,
                        UNTESTED));
    }

    /** Measured by SplitErrorTest, which holds these numbers against real years; the whole table is in the docs. */
    static final double DIFFUSE_RMS_WM2 = 67;

    static final double DIFFUSE_YEAR_PERCENT = 9;
    private static final String SPLIT_ERROR = String.format(
            Locale.ROOT,
            "In real years that hold all three it is wrong by %.0f W/m² root mean square by day at worst, the year's sum of it by up"
                    + " to %.0f %%",
            DIFFUSE_RMS_WM2,
            DIFFUSE_YEAR_PERCENT);
}
