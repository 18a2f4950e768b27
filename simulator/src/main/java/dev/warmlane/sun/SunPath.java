package dev.warmlane.sun;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Where the sun stands in each hour of a typical year or of a record, one position an hour: the one that belongs to that
 * hour's irradiance. Immutable; made once for a weather file and shared by everything that needs it.
 *
 * <p>Positions are those of {@link SunClock}.
 */
public final class SunPath {

    /** Solar constant, W/m², Kopp and Lean 2011 (Geophysical Research Letters 38:L01706), rounded; from memory. */
    private static final double SOLAR_CONSTANT_W_M2 = 1361;

    /** Half an hour of the sun's travel is at most 7.5 degrees; outside this band an hour is all day or all night. */
    private static final double EDGE_ZENITH_DEG = 8;

    private final int[] yearOfHour;
    private final double[] offsetOfMonth;
    private final boolean meanOverHour;
    private final double[] zenithDeg;
    private final double[] azimuthDeg;
    private final double[] cosZenith;
    private final double[] upFraction;
    private final double[] extraterrestrialWm2;

    private SunPath(int[] yearOfHour, double[] offsetOfMonth, boolean meanOverHour) {
        int hours = yearOfHour.length;
        this.yearOfHour = yearOfHour;
        this.offsetOfMonth = offsetOfMonth;
        this.meanOverHour = meanOverHour;
        this.zenithDeg = new double[hours];
        this.azimuthDeg = new double[hours];
        this.cosZenith = new double[hours];
        this.upFraction = new double[hours];
        this.extraterrestrialWm2 = new double[hours];
    }

    /** Finds the sun of every hour by a clock. */
    private void fill(Clock clock, IntUnaryOperator dayOfYear) {
        for (int hour = 0; hour < hours(); hour++) {
            double at = hour + offsetHours(hour);
            SolarPosition position = clock.position(hour, at);
            double fraction = position.zenithAngle() < 90 ? 1 : 0;
            if (meanOverHour && Math.abs(position.zenithAngle() - 90) < EDGE_ZENITH_DEG) {
                double before = clock.position(hour, at - 0.5).zenithAngle();
                double after = clock.position(hour, at + 0.5).zenithAngle();
                if (before < 90 != after < 90) {
                    fraction = Math.abs((90 - Math.min(before, after)) / (after - before));
                    double middle = before < 90 ? at - 0.5 + fraction / 2 : at + 0.5 - fraction / 2;
                    position = clock.position(hour, middle);
                }
            }
            zenithDeg[hour] = position.zenithAngle();
            azimuthDeg[hour] = position.azimuth();
            upFraction[hour] = fraction;
            cosZenith[hour] = fraction > 0 ? Math.max(0, Math.cos(Math.toRadians(position.zenithAngle()))) : 0;
            extraterrestrialWm2[hour] = extraterrestrialNormal(dayOfYear.applyAsInt(hour));
        }
    }

    private static SunPath ofYear(Site site, int[] yearOfHour, double[] offsetOfMonth, boolean meanOverHour) {
        if (yearOfHour.length != HourOfYear.HOURS) {
            throw new IllegalArgumentException("a typical year has 8760 hours, got years for " + yearOfHour.length);
        }
        if (offsetOfMonth.length != 12) {
            throw new IllegalArgumentException("a year has 12 months, got times for " + offsetOfMonth.length);
        }
        SunPath path = new SunPath(yearOfHour.clone(), offsetOfMonth.clone(), meanOverHour);
        SunClock clock = new SunClock(site);
        path.fill((hour, at) -> clock.position(path.yearOfHour[hour], at), hour -> HourOfYear.dayOf(hour) + 1);
        return path;
    }

    /**
     * The path of a record of real hours, one after another, 29 February included.
     *
     * @param site where
     * @param start when its first hour begins, local standard time
     * @param hours how many hours it has
     * @param centreHours the time that irradiance belongs to, hours after the start of its hour: a mean's middle, or the instant
     * @param meanOverHour whether irradiance is a mean over an hour; else it is an instant
     */
    public static SunPath ofRecord(
            Site site, LocalDateTime start, int hours, double centreHours, boolean meanOverHour) {
        int[] year = new int[hours];
        Arrays.setAll(year, hour -> start.plusHours(hour).getYear());
        SunPath path = new SunPath(year, sameInEveryMonth(centreHours), meanOverHour);
        SunClock clock = new SunClock(site);
        path.fill(
                (hour, at) -> {
                    double sinceMidnight = start.getHour() + at;
                    int day = (int) Math.floor(sinceMidnight / 24);
                    return clock.position(start.toLocalDate().plusDays(day), sinceMidnight - 24.0 * day);
                },
                hour -> start.plusHours(hour).getDayOfYear());
        return path;
    }

    /** The sun at a time about an hour, counted in hours from the start of hour 0. */
    @FunctionalInterface
    private interface Clock {
        SolarPosition position(int hour, double at);
    }

    private SunPath(List<SunPath> paths, int[] pathOfHour) {
        this(new int[HourOfYear.HOURS], new double[12], paths.get(0).meanOverHour);
        SunPath first = paths.get(0);
        if (paths.stream().anyMatch(path -> path.meanOverHour != first.meanOverHour)) {
            throw new IllegalArgumentException(
                    "irradiance is a mean over an hour in some of the years and an instant in others");
        }
        for (int month = 0; month < 12; month++) {
            int hour = HourOfYear.firstHourOf(month + 1);
            offsetOfMonth[month] = paths.get(pathOfHour[hour]).offsetOfMonth[month];
        }
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            SunPath from = paths.get(pathOfHour[hour]);
            yearOfHour[hour] = from.yearOfHour[hour];
            zenithDeg[hour] = from.zenithDeg[hour];
            azimuthDeg[hour] = from.azimuthDeg[hour];
            cosZenith[hour] = from.cosZenith[hour];
            upFraction[hour] = from.upFraction[hour];
            extraterrestrialWm2[hour] = from.extraterrestrialWm2[hour];
        }
    }

    /**
     * The path of a year whose hours come from several years of one place.
     *
     * @param paths theirs, all for means over an hour or all for instants
     * @param pathOfHour which of them each of the 8760 hours comes from
     */
    public static SunPath composed(List<SunPath> paths, int[] pathOfHour) {
        return new SunPath(paths, pathOfHour);
    }

    /**
     * The path for irradiance that is a mean over an hour.
     *
     * @param site where
     * @param yearOfHour the calendar year that each of the 8760 hours was taken from
     * @param centreHours the middle of the hour that a record's irradiance is the mean of, in hours after the hour's
     *     start: 0.5 where the file keeps its own convention. In the hours of sunrise and sunset the sun is taken in
     *     the middle of the part in which it is up.
     */
    public static SunPath ofHourlyMeans(Site site, int[] yearOfHour, double centreHours) {
        return ofHourlyMeans(site, yearOfHour, sameInEveryMonth(centreHours));
    }

    /** The same with a middle of the hour for each of the twelve months, for files in which they differ. */
    public static SunPath ofHourlyMeans(Site site, int[] yearOfHour, double[] centreHoursOfMonth) {
        return ofYear(site, yearOfHour, centreHoursOfMonth, true);
    }

    /**
     * The path for irradiance that is an instant.
     *
     * @param site where
     * @param yearOfHour the calendar year that each of the 8760 hours was taken from
     * @param offsetHours the instant, in hours after the hour's start
     */
    public static SunPath ofInstants(Site site, int[] yearOfHour, double offsetHours) {
        return ofInstants(site, yearOfHour, sameInEveryMonth(offsetHours));
    }

    /** The same with an instant for each of the twelve months, for files in which they differ. */
    public static SunPath ofInstants(Site site, int[] yearOfHour, double[] offsetHoursOfMonth) {
        return ofYear(site, yearOfHour, offsetHoursOfMonth, false);
    }

    private static double[] sameInEveryMonth(double offsetHours) {
        double[] ofMonth = new double[12];
        Arrays.fill(ofMonth, offsetHours);
        return ofMonth;
    }

    /** How many hours it has: 8760, or those of a record. */
    public int hours() {
        return yearOfHour.length;
    }

    /** The calendar year that an hour was taken from. */
    public int calendarYear(int hour) {
        return yearOfHour[hour];
    }

    /**
     * The time that irradiance belongs to, hours after the start of the hour: a mean's middle, or an instant. In a month
     * composed of several years it is that of the month's first hour.
     */
    public double offsetHours(int hour) {
        // in a record it is the same in every month
        return offsetOfMonth[hours() == HourOfYear.HOURS ? HourOfYear.monthOf(hour) - 1 : 0];
    }

    /** The same for the year: the middle one of the twelve months, of which a few may have a time of their own. */
    public double usualOffsetHours() {
        double[] sorted = offsetOfMonth.clone();
        Arrays.sort(sorted);
        return sorted[6];
    }

    /** Whether irradiance is a mean over an hour and not an instant. */
    public boolean isHourlyMean() {
        return meanOverHour;
    }

    /** Angle between the sun and the vertical, degrees; above 90 the sun is down. */
    public double zenithDeg(int hour) {
        return zenithDeg[hour];
    }

    /** Direction of the sun, degrees clockwise from north. */
    public double azimuthDeg(int hour) {
        return azimuthDeg[hour];
    }

    /** Cosine of the zenith angle; 0 where the sun is down. */
    public double cosZenith(int hour) {
        return cosZenith[hour];
    }

    /** Share of the hour in which the sun is up, 0 to 1. */
    public double upFraction(int hour) {
        return upFraction[hour];
    }

    /** Whether the sun is up in any part of the hour. */
    public boolean isUp(int hour) {
        return upFraction[hour] > 0;
    }

    /**
     * Irradiance on a plane normal to the sun outside the atmosphere, W/m²: the solar constant times the Fourier series
     * of Spencer (1971, Search 2:172; from memory). The series takes whole days, so that it is up to half a day from the
     * hour: with what it leaves out it departs by about
     * 0.1 % at most from an orbit by Kepler's laws (derived; 0.09 to 0.14 %, with the day of the perihelion, 2 to 5 January).
     */
    public double extraterrestrialNormalWm2(int hour) {
        return extraterrestrialWm2[hour];
    }

    /** The series of Spencer 1971 for the squared ratio of mean to actual distance. */
    private static double extraterrestrialNormal(int dayOfYear) {
        double b = 2 * Math.PI * (dayOfYear - 1) / 365;
        return SOLAR_CONSTANT_W_M2
                * (1.000110
                        + 0.034221 * Math.cos(b)
                        + 0.001280 * Math.sin(b)
                        + 0.000719 * Math.cos(2 * b)
                        + 0.000077 * Math.sin(2 * b));
    }
}
