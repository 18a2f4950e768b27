package dev.warmlane.study;

import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.sun.SolarDay;
import dev.warmlane.units.Checks;
import java.time.MonthDay;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** How far rows of racks stand apart. */
public sealed interface RowSpacing {

    /**
     * The distance from row to row, m.
     *
     * @param chordM length of a rack up its slope, m
     * @param tiltDeg tilt, degrees
     * @param azimuthDeg direction the rows face, degrees clockwise from north
     * @param latitudeDeg latitude of the site, degrees, north positive
     * @param season when the pool is open
     * @throws IllegalArgumentException if the rule cannot be kept there
     */
    double pitchM(double chordM, double tiltDeg, double azimuthDeg, double latitudeDeg, OpeningSeason season);

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<FixedPitch, T> fixed, Function<Unshaded, T> unshaded);

    /**
     * A given distance.
     *
     * @param pitchM from row to row, m; at least the run of a rack on the roof
     */
    record FixedPitch(double pitchM) implements RowSpacing {

        /** Checks the range. */
        public FixedPitch {
            Mounting.OpenRack.PITCH.check(pitchM);
        }

        @Override
        public double pitchM(
                double chordM, double tiltDeg, double azimuthDeg, double latitudeDeg, OpeningSeason season) {
            return pitchM;
        }

        @Override
        public <T> T match(Function<FixedPitch, T> fixed, Function<Unshaded, T> unshaded) {
            return fixed.apply(this);
        }
    }

    /**
     * As close as rows can stand without shading each other's fronts in some hours of a day: the lowest profile angle of
     * the sun in those hours decides, see {@link RackRows#pitchForProfileAngle}. While the sun stands behind the rows
     * they do not shade each other's fronts, so those hours ask for nothing.
     *
     * @param fromSolarHour first hour of solar time, 0 to 24, noon 12
     * @param toSolarHour last hour of solar time, at or after the first
     * @param date the day; without it the day of the season with the lowest sun at noon
     */
    record Unshaded(double fromSolarHour, double toSolarHour, Optional<MonthDay> date) implements RowSpacing {

        /** The lowest sun that rows can be laid out for, degrees of profile angle. */
        private static final double LOWEST_PROFILE_DEG = 1;

        private static final double MINUTE = 1.0 / 60;

        /** Checks the hours. */
        public Unshaded {
            Checks.within("first unshaded solar hour", fromSolarHour, 0, 24, "h");
            Checks.within("last unshaded solar hour", toSolarHour, fromSolarHour, 24, "h");
        }

        /** The day that the rule is kept on. */
        public MonthDay dateAt(double latitudeDeg, OpeningSeason season) {
            return date.orElseGet(() -> lowestNoonSun(latitudeDeg, season));
        }

        @Override
        public double pitchM(
                double chordM, double tiltDeg, double azimuthDeg, double latitudeDeg, OpeningSeason season) {
            MonthDay day = dateAt(latitudeDeg, season);
            double profile = lowestProfileDeg(day, azimuthDeg, latitudeDeg);
            if (profile < LOWEST_PROFILE_DEG) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "rows facing %.0f degrees cannot be kept free of shade from %s to %s o'clock solar time on"
                                + " --%02d-%02d at latitude %.1f: the sun is down or lower than %.0f degree before"
                                + " them; choose hours nearer noon, another date, or a fixed pitch",
                        azimuthDeg,
                        fromSolarHour,
                        toSolarHour,
                        day.getMonthValue(),
                        day.getDayOfMonth(),
                        latitudeDeg,
                        LOWEST_PROFILE_DEG));
            }
            return RackRows.pitchForProfileAngle(chordM, tiltDeg, profile);
        }

        /** The lowest profile angle before the rows, minute by minute, degrees, 90 at most; below 0 with the sun down. */
        private double lowestProfileDeg(MonthDay day, double azimuthDeg, double latitudeDeg) {
            SolarDay sun = SolarDay.of(latitudeDeg, day);
            // any rows that face this way have the same profile angle
            RackRows rows = new RackRows(new Rack(0, azimuthDeg, 1, 0), 1, 1);
            double lowest = 90;
            int minutes = (int) Math.ceil((toSolarHour - fromSolarHour) / MINUTE);
            for (int minute = 0; minute <= minutes; minute++) {
                double hour = Math.min(toSolarHour, fromSolarHour + minute * MINUTE);
                double zenith = sun.zenithDeg(hour);
                if (zenith >= 90) {
                    return 90 - zenith;
                }
                lowest = Math.min(lowest, rows.profileDeg(zenith, sun.azimuthDeg(hour)));
            }
            return lowest;
        }

        private static MonthDay lowestNoonSun(double latitudeDeg, OpeningSeason season) {
            MonthDay lowest = season.first();
            double farthest = 0;
            for (int day = 0; day < season.days(); day++) {
                MonthDay date = HourOfYear.dateOf((season.firstHour() + 24 * day) % HourOfYear.HOURS);
                double zenith = SolarDay.of(latitudeDeg, date).zenithDeg(12);
                if (zenith > farthest) {
                    farthest = zenith;
                    lowest = date;
                }
            }
            return lowest;
        }

        @Override
        public <T> T match(Function<FixedPitch, T> fixed, Function<Unshaded, T> unshaded) {
            return unshaded.apply(this);
        }
    }
}
