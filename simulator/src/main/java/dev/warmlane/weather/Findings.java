package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherFinding.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Collects findings; the gravest come first, those that were made first before others of the same weight. */
final class Findings {

    private final List<WeatherFinding> all = new ArrayList<>();
    private final List<WeatherFinding> gravest = new ArrayList<>();

    void note(int line, int hours, String message) {
        all.add(new WeatherFinding(Kind.NOTE, line, hours, message));
    }

    void warning(int line, int hours, String message) {
        all.add(new WeatherFinding(Kind.WARNING, line, hours, message));
    }

    /** A warning that comes before all others. */
    void gravest(int line, int hours, String message) {
        gravest.add(new WeatherFinding(Kind.WARNING, line, hours, message));
    }

    void repair(int line, int hours, String message) {
        all.add(new WeatherFinding(Kind.REPAIR, line, hours, message));
    }

    /** A repair of the hours counted, if there are any. */
    void repair(Occurrences found, String message) {
        add(Kind.REPAIR, found, message);
    }

    /** A warning of the hours counted, if there are any. */
    void warning(Occurrences found, String message) {
        add(Kind.WARNING, found, message);
    }

    void add(Kind kind, Occurrences found, String message) {
        if (found.count() > 0) {
            all.add(new WeatherFinding(kind, found.firstLine(), found.count(), message));
        }
    }

    Findings copy() {
        Findings copy = new Findings();
        copy.all.addAll(all);
        copy.gravest.addAll(gravest);
        return copy;
    }

    List<WeatherFinding> all() {
        Stream<WeatherFinding> others = all.stream()
                .sorted(Comparator.comparing(WeatherFinding::kind)
                        .reversed()
                        .thenComparing(Comparator.comparingInt(Findings::extent).reversed()));
        return Stream.concat(gravest.stream(), others).toList();
    }

    /** Hours that are concerned: the whole file counts as the whole year. */
    private static int extent(WeatherFinding finding) {
        return finding.hours() == 0 ? HourOfYear.HOURS : finding.hours();
    }
}
