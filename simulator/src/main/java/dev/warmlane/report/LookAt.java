package dev.warmlane.report;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.scenario.Finding;
import dev.warmlane.season.Installation;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.units.Measure;
import dev.warmlane.weather.WeatherFinding;
import dev.warmlane.weather.WeatherYear;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is allowed but hardly meant, in the scenario and in the weather file: the reader should look at it first. */
final class LookAt {

    /** From this tilt on it matters which way a collector faces, degrees; a judgement. */
    private static final double TILTED_DEG = 10;

    /** Between the tropics the sun at noon stands in the north for a part of the year, in the south for the rest. */
    private static final double TROPIC_DEG = 23.44;

    private LookAt() {}

    /** One point a finding; none where there is nothing to look at. */
    static List<String> points(Subject subject) {
        List<String> points = new ArrayList<>();
        for (Finding warning : subject.warnings()) {
            points.add("Scenario, " + warning.told());
        }
        Installation built = subject.forecast().installation();
        built.lastBill()
                .flatMap(bill ->
                        subject.season().gas().displaced().flatMap(gas -> BillWords.far(subject.numbers(), bill, gas)))
                .ifPresent(points::add);
        WeatherYear weather = subject.forecast().weather();
        Site site = weather.site();
        inWinter(subject.numbers(), built, site).ifPresent(points::add);
        built.arrays()
                .forEach(array -> awayFromTheSun(subject.numbers(), array, site).ifPresent(points::add));
        weather.findings().stream()
                .filter(f -> f.kind() == WeatherFinding.Kind.WARNING)
                .forEach(f -> points.add((weather.fromFile() ? "Weather file: " : "Weather: ") + f.message()));
        return points;
    }

    /** An outdoor season that has the middle of the local winter in it and not that of the summer. */
    static Optional<String> inWinter(Numbers numbers, Installation built, Site site) {
        OpeningSeason season = built.season();
        boolean june = holds(season, MonthDay.of(6, 21));
        boolean december = holds(season, MonthDay.of(12, 21));
        boolean winter = site.southern() ? june && !december : december && !june;
        if (!winter
                || Math.abs(site.latitudeDeg()) < TROPIC_DEG
                || built.pool().setting().outdoor().isEmpty()) {
            return Optional.empty();
        }
        boolean overNewYear = HourOfYear.startOf(season.first()) > HourOfYear.startOf(season.last());
        return Optional.of("The outdoor season, " + numbers.show(season.first()) + " to " + numbers.show(season.last())
                + ", lies in the winter of this site, which is in the " + (site.southern() ? "south" : "north")
                + (overNewYear
                        ? ": its first day is after its last, so that it runs over New Year. If the summer is meant, exchange"
                                + " the two"
                        : ". If the summer is meant, give its dates"));
    }

    /** What only the writer of a scenario can mend. */
    static List<String> toItsWriter(Subject subject) {
        return Stream.of(held(subject), opensCold(subject))
                .flatMap(Optional::stream)
                .toList();
    }

    /** A heated pool that opens cold because nobody said how it starts. */
    private static Optional<String> opensCold(Subject subject) {
        boolean assumed = subject.assumed().stream()
                .anyMatch(one -> one.section().equals("season") && one.key().equals("days_standing"));
        return assumed && Start.isCold(subject.forecast())
                ? Optional.of("The heater starts on the day the pool opens, in water of "
                        + subject.numbers()
                                .show(
                                        Measure.TEMPERATURE,
                                        subject.forecast().with().waterC(0))
                        + ". If the pool is warm when it opens, give the days before opening in which the heater runs, and"
                        + " those in which the collectors do")
                : Optional.empty();
    }

    /** A comfort temperature that the heater makes by itself. */
    private static Optional<String> held(Subject subject) {
        Numbers numbers = subject.numbers();
        Installation built = subject.installation();
        return built.heater()
                .filter(heater -> Telling.heldByHeater(built, subject.season())
                        && !built.arrays().isEmpty())
                .map(heater -> "The heater is set to " + numbers.show(Measure.TEMPERATURE, heater.setPointC())
                        + ", so that the pool is meant to be at " + numbers.show(Measure.TEMPERATURE, built.comfortC())
                        + " with and without collectors: days at comfort say nothing of them. To count the days that they"
                        + " make, give a comfort above the set point");
    }

    private static boolean holds(OpeningSeason season, MonthDay date) {
        return Math.floorMod(HourOfYear.startOf(date) - season.firstHour(), HourOfYear.HOURS) < season.hours();
    }

    /** A frequent slip is an azimuth counted from south, or taken over from the other half of the earth. */
    static Optional<String> awayFromTheSun(Numbers numbers, CollectorArray array, Site site) {
        Mounting mounting = array.mounting();
        // who covers both slopes of a gable means the other one too
        boolean gable = mounting.match(flat -> false, racks -> false, Mounting.FlushOnPitchedRoof::gable);
        boolean faces = mounting.tiltDeg() >= TILTED_DEG && !gable;
        double equatorDeg = site.southern() ? 0 : 180;
        double apartDeg = Math.abs(Math.IEEEremainder(mounting.azimuthDeg() - equatorDeg, 360));
        if (!faces || Math.abs(site.latitudeDeg()) < TROPIC_DEG || apartDeg <= 90) {
            return Optional.empty();
        }
        return Optional.of("The collectors \"" + array.name() + "\" are tilted by "
                + numbers.show(mounting.tiltDeg(), 0) + "° and face " + numbers.show(mounting.azimuthDeg(), 0)
                + "°, away from the sun at noon, which at this site stands in the "
                + (site.southern() ? "north, 0°" : "south, 180°") + ". Azimuth is counted clockwise from north");
    }
}
