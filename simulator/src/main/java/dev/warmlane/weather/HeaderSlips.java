package dev.warmlane.weather;

import dev.warmlane.site.Site;
import dev.warmlane.units.Units;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Errors of a header that would explain why irradiance does not follow the sun. */
final class HeaderSlips {

    /** No land keeps a standard time further from its longitude's, but for the west of China (our own choice). */
    private static final double FAR_FROM_ZONE_H = 2;

    private static final double HALF_AN_HOUR = 0.5;

    /** Any time of these years. */
    private static final Instant NOWADAYS = Instant.ofEpochSecond(1_600_000_000L);

    /** The offsets of standard time that are kept anywhere, from the time zone database of the JDK. */
    private static final Set<Double> KEPT = ZoneId.getAvailableZoneIds().stream()
            .map(id -> ZoneId.of(id).getRules().getStandardOffset(NOWADAYS))
            .map(offset -> offset.getTotalSeconds() / Units.HOUR)
            .collect(Collectors.toUnmodifiableSet());

    private HeaderSlips() {}

    /**
     * The offset from UTC with which irradiance follows the sun that closes {@code shift} hours later than the header
     * says; none where nobody there keeps such a time.
     */
    private static OptionalDouble offset(Site site, double shift) {
        double zone = site.longitudeDeg() / 15;
        double implied = site.utcOffsetHours() - shift;
        double offset = implied - 24 * Math.rint((implied - zone) / 24);
        boolean kept = KEPT.contains(offset) && Math.abs(offset - zone) < FAR_FROM_ZONE_H;
        return kept && offset != site.utcOffsetHours() ? OptionalDouble.of(offset) : OptionalDouble.empty();
    }

    /**
     * An offset that the header should have.
     *
     * @param offset from UTC, hours
     * @param labelsOffHours how much later than stated irradiance still belongs to, with that offset
     */
    record Slip(double offset, double labelsOffHours) {}

    /**
     * The offset that explains a shift: alone if one does, or together with labels that are half an hour off, as files
     * with 30 in the column of minutes have them; then only one that is nearer to the longitude's than the header's.
     */
    static Optional<Slip> find(Site site, double shift) {
        OptionalDouble alone = offset(site, shift);
        if (alone.isPresent()) {
            return Optional.of(new Slip(alone.getAsDouble(), 0));
        }
        if (!ClockVerdict.isHalfHours(shift)) {
            return Optional.empty();
        }
        return Stream.of(-HALF_AN_HOUR, HALF_AN_HOUR)
                .flatMap(labels -> offset(site, shift - labels).stream()
                        .filter(offset -> isNearer(site, offset))
                        .mapToObj(offset -> new Slip(offset, labels)))
                .min(Comparator.comparingDouble(slip -> Math.abs(slip.offset() - site.longitudeDeg() / 15)));
    }

    /** Whether an offset is nearer to the one of the longitude than the header's. */
    static boolean isNearer(Site site, double offset) {
        double zone = site.longitudeDeg() / 15;
        return Math.abs(offset - zone) < Math.abs(site.utcOffsetHours() - zone);
    }

    /** What the header would have to say for the year to close, if a sign of it was lost; empty where none was. */
    static List<String> lostSigns(HourTable table, double closesWm2) {
        Site s = table.site;
        List<String> signs = new ArrayList<>();
        if (closes(table, place(s, -s.latitudeDeg(), s.longitudeDeg()), closesWm2)) {
            signs.add("latitude " + Occurrences.number(-s.latitudeDeg()));
        }
        if (closes(table, place(s, s.latitudeDeg(), -s.longitudeDeg()), closesWm2)) {
            signs.add("longitude " + Occurrences.number(-s.longitudeDeg()));
        }
        return signs;
    }

    private static Site place(Site s, double latitude, double longitude) {
        return new Site(s.name(), latitude, longitude, s.elevationM(), s.utcOffsetHours());
    }

    private static boolean closes(HourTable table, Site site, double closesWm2) {
        ClosureScan scan = new ClosureScan(table, site);
        return DoubleStream.of(0, -HALF_AN_HOUR, HALF_AN_HOUR).anyMatch(labels -> scan.rmseAt(labels) <= closesWm2);
    }
}
