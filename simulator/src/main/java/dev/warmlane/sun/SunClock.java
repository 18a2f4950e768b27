package dev.warmlane.sun;

import dev.warmlane.physics.StandardAtmosphere;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.Map;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SPA.SpaTimeDependent;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Where the sun stands over a site at any time of a typical year or of the calendar, by the solar position algorithm of Reda and Andreas
 * (2004, NREL/TP-560-34302), apparent, that is with refraction, in the standard atmosphere at the site's height.
 *
 * <p>Nearly all of the algorithm's work is the earth's way around the sun, which is smooth: it is done for noon and
 * midnight, and cubics through four of these lead from one to the next, within a millionth of a degree of the algorithm,
 * which is good to 0.0003. Not safe to share between threads.
 */
public final class SunClock {

    private static final long MILLIS_PER_HOUR = 3_600_000;
    private static final long NODE_MILLIS = 12 * MILLIS_PER_HOUR;

    /** How far the earth turns from node to node, degrees; what it departs from this is in the cubic. */
    private static final double TURN_DEG = 180.4928;

    private final Site site;
    private final double pressureMbar;
    private final Map<Long, SpaTimeDependent> nodes = new HashMap<>();
    private final SpaTimeDependent[] around = new SpaTimeDependent[4];
    private long aroundNode = Long.MIN_VALUE;

    /** Of a site. */
    public SunClock(Site site) {
        this.site = site;
        this.pressureMbar = 10 * StandardAtmosphere.pressureKpa(site.elevationM());
    }

    /**
     * Angle between the sun and the vertical, degrees.
     *
     * @param year the calendar year
     * @param hoursSinceNewYear in local standard time, of a year without 29 February; a little before or after it too
     */
    public double zenithDeg(int year, double hoursSinceNewYear) {
        return position(year, hoursSinceNewYear).zenithAngle();
    }

    SolarPosition position(int year, double hoursSinceNewYear) {
        int day = (int) Math.floor(hoursSinceNewYear / 24);
        // a typical year has no 29 February: month and day are taken from 365 days, then put into the record's year
        int within = Math.floorMod(day, HourOfYear.DAYS);
        int shiftYears = Math.floorDiv(day, HourOfYear.DAYS);
        LocalDate date =
                LocalDate.of(year + shiftYears, HourOfYear.monthOf(within * 24), HourOfYear.dayOfMonth(within * 24));
        return position(date, hoursSinceNewYear - 24.0 * day);
    }

    /** Where the sun stands some hours after the midnight that a date begins with, local standard time. */
    SolarPosition position(LocalDate date, double hoursAfterMidnight) {
        long millis = date.toEpochDay() * 24 * MILLIS_PER_HOUR
                + Math.round(hoursAfterMidnight * MILLIS_PER_HOUR)
                - Math.round(site.utcOffsetHours() * MILLIS_PER_HOUR);
        return SPA.calculateSolarPositionWithTimeDependentParts(
                site.latitudeDeg(),
                site.longitudeDeg(),
                site.elevationM(),
                pressureMbar,
                StandardAtmosphere.REFRACTION_AIR_C,
                among(millis));
    }

    /** What of the algorithm depends on time alone; of it distance, sidereal time, right ascension and declination count. */
    private SpaTimeDependent among(long millis) {
        long node = Math.floorDiv(millis, NODE_MILLIS);
        if (node != aroundNode) {
            for (int i = 0; i < around.length; i++) {
                around[i] = nodes.computeIfAbsent(node + i - 1, SunClock::at);
            }
            aroundNode = node;
        }
        double u = (double) Math.floorMod(millis, NODE_MILLIS) / NODE_MILLIS;
        SpaTimeDependent before = around[0];
        SpaTimeDependent from = around[1];
        SpaTimeDependent to = around[2];
        SpaTimeDependent after = around[3];
        double r = cubic(u, before.r() - from.r(), to.r() - from.r(), after.r() - from.r());
        double turned = cubic(
                u,
                angle(before.nuDegrees() - from.nuDegrees() + TURN_DEG),
                angle(to.nuDegrees() - from.nuDegrees() - TURN_DEG),
                angle(after.nuDegrees() - from.nuDegrees() - 2 * TURN_DEG));
        double ascended = cubic(
                u,
                angle(before.alphaDegrees() - from.alphaDegrees()),
                angle(to.alphaDegrees() - from.alphaDegrees()),
                angle(after.alphaDegrees() - from.alphaDegrees()));
        double declined = cubic(
                u,
                before.deltaDegrees() - from.deltaDegrees(),
                to.deltaDegrees() - from.deltaDegrees(),
                after.deltaDegrees() - from.deltaDegrees());
        return new SpaTimeDependent(
                Double.NaN,
                Double.NaN,
                from.r() + r,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                from.nuDegrees() + u * TURN_DEG + turned,
                from.alphaDegrees() + ascended,
                from.deltaDegrees() + declined);
    }

    private static SpaTimeDependent at(long node) {
        long halfDays = Math.floorMod(node, 2);
        LocalDate date = LocalDate.ofEpochDay(Math.floorDiv(node, 2));
        ZonedDateTime time = date.atTime(LocalTime.of((int) (12 * halfDays), 0)).atZone(ZoneOffset.UTC);
        return SPA.calculateSpaTimeDependentParts(time, DeltaT.estimate(date));
    }

    /** Lagrange's cubic that is 0 at 0 and has these values at -1, 1 and 2. */
    private static double cubic(double u, double before, double to, double after) {
        return u * (-(u - 1) * (u - 2) / 6 * before - (u + 1) * (u - 2) / 2 * to + (u + 1) * (u - 1) / 6 * after);
    }

    /** A difference of two angles, within half a turn. */
    private static double angle(double difference) {
        return difference - 360 * Math.rint(difference / 360);
    }
}
